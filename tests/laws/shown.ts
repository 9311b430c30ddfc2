import { groupAccount } from '../../src/core/costs/group-account.ts'
import { spendingAccount } from '../../src/core/costs/spending.ts'
import { settingOut } from '../../src/core/geometry/setting-out.ts'
import type { Plan } from '../../src/core/plan/schema.ts'
import { batchBox, batchesFor, mixedUses, unitsPerBatch } from '../../src/core/quantities/batch-box.ts'
import { unitsBought } from '../../src/core/quantities/wall-needs.ts'
import { stepMaterials } from '../../src/core/schedule/step-materials.ts'
import { stillNeeded } from '../../src/core/schedule/still-needed.ts'
import { workOut } from '../../src/core/work-out.ts'

/** Everything that screens show of a plan, the work on its site and the books of its money among it. */
export function shownOf(plan: Plan) {
  const worked = workOut(plan)
  const { geometry, layout, needs, schedule } = worked
  const site = {
    batches: mixedUses(needs).map(({ use, mix }) => {
      const batch = batchBox(plan, mix)
      return { batch, count: batchesFor(batch, needs, use), lays: unitsPerBatch(batch, needs, unitsBought(layout)) }
    }),
    left: stillNeeded(plan, layout, schedule.steps, needs),
    pegs: settingOut(geometry, worked.site.facing, plan.place.declinationDeg),
    materials: schedule.steps.map((step) => stepMaterials(step, schedule.steps, layout, needs)),
  }
  return { worked, site, spent: spendingAccount(plan, worked.purchase.lines, worked.costs), group: groupAccount(plan) }
}

/** The plan with damp sand and with more units broken than its list allows. */
export const onSite = (plan: Plan): Plan => ({
  ...plan,
  built: {
    ...plan.built,
    broken: { one: { units: 900, day: '2026-01-05', who: '' } },
    laid: { c1: { units: 2, day: '2026-01-05', who: '' } },
    batch: { ...plan.built.batch, measure: 'bucket', settledM: 0.16 },
  },
})
