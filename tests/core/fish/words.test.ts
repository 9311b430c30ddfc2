import { readFileSync } from 'node:fs'
import path from 'node:path'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Finding } from '../../../src/core/basics/finding.ts'
import { drying } from '../../../src/core/fish/drying.ts'
import { fishLoad } from '../../../src/core/fish/load.ts'
import { trayFrame } from '../../../src/core/fish/tray-frame.ts'
import { fuel } from '../../../src/core/heat/fuel.ts'
import { kilnHeat } from '../../../src/core/heat/kiln-heat.ts'
import type { Plan } from '../../../src/core/plan/schema.ts'
import { firingLog } from '../../../src/core/schedule/firing-log.ts'
import { payback } from '../../../src/core/schedule/payback.ts'
import { todaysLoad } from '../../../src/core/schedule/todays-load.ts'
import { repairNeeds, upkeepDue } from '../../../src/core/schedule/upkeep.ts'
import { workOut } from '../../../src/core/work-out.ts'
import { derivedIn } from '../../laws/formula.ts'
import { anyPlan, plainPlan } from './plans.ts'

const folder = path.resolve(import.meta.dirname, '../../../src/app/words/en')
const read = (name: string) =>
  Object.keys(JSON.parse(readFileSync(path.join(folder, name), 'utf8')) as Record<string, string>)
const words = new Set(
  ['fish-working', 'fish-findings', 'ground-working', 'money-working'].flatMap((name) => read(`${name}.json`)),
)

const unworded = (root: object) => [
  ...new Set(derivedIn(root).flatMap((one) => (words.has(`working.${one.id}`) ? [] : [one.id]))),
]
const unwordedFindings = (findings: readonly Finding[]) =>
  findings.flatMap((one) => [
    ...(words.has(`finding.${one.kind}`) ? [] : [one.kind]),
    ...one.remedies.flatMap((remedy) => (words.has(`remedy.${remedy.kind}`) ? [] : [remedy.kind])),
  ])

/** A plan in which everything that runs has something to say. */
const lively = (): Plan => {
  const plan = plainPlan(60)
  const firing = { day: '2026-03-01', freshKg: 60, productKg: 70, woodKg: 30, hours: 12, note: '' }
  const paid = { fishCostMinor: 1, woodCostMinor: 1, otherCostMinor: 1, salesMinor: 9 }
  const record = { day: '2026-03-01', mended: false, bad: 2, costMinor: null, note: '' }
  return {
    ...plan,
    catch: { ...plan.catch, peakKgPerDay: 50, leanKgPerDay: 70 },
    build: { ...plan.build, masons: 0, labourers: 0, carpenters: 0, startDay: '2026-02-31' },
    run: {
      ...plan.run,
      freshPriceMinor: 500,
      woodPriceMinor: 50,
      smokedPriceMinor: 3000,
      otherCostMinor: 2000,
      firings: { one: { ...firing, ...paid } },
      upkeep: {
        a: { ...record, part: 'trays' },
        b: { ...record, part: 'mesh' },
        c: { ...record, part: 'cover' },
        d: { ...record, part: 'walls' },
      },
    },
  }
}

describe('words', () => {
  it('exist for every number of running a kiln', () => {
    const plan = lively()
    const worked = workOut(plan)
    const dried = drying(plan, worked.fish.fullFiring.fresh)
    const all = [
      worked.fish,
      worked.schedule,
      fuel(plan, dried),
      kilnHeat(plan, worked.tray),
      firingLog(plan),
      payback(plan, worked.fish, worked.costs, 'low') ?? {},
      todaysLoad(plan, worked.fish, 40),
      upkeepDue(plan, '2026-03-01', '2026-04-01'),
      repairNeeds(plan, worked.tray),
    ]
    expect(unworded(all)).toEqual([])
    expect(unwordedFindings([...worked.schedule.findings, ...firingLog(plan).findings])).toEqual([])
  })

  it('exist for every finding on fish, trays and heat, and for every remedy', () => {
    fc.assert(
      fc.property(anyPlan, fc.double({ min: 31, max: 100, noNaN: true }), (plan, dryDegC) => {
        const found = { ...plan, firing: { ...plan.firing, dryDegC, cookDegC: dryDegC + 40 } }
        expect(unwordedFindings([...trayFrame(found).findings, ...fishLoad(found).findings])).toEqual([])
        expect(unworded([trayFrame(found), fishLoad(found)])).toEqual([])
      }),
    )
    expect(unwordedFindings(kilnHeat(plainPlan(), trayFrame(plainPlan())).findings)).toEqual([])
  })

  it('exist for every task, caution and part', () => {
    const { schedule } = workOut(plainPlan())
    const keys = schedule.steps.flatMap((step) => [
      `task.${step.kind}`,
      ...step.cautions.map((caution) => `task-caution.${caution}`),
    ])
    const parts = upkeepDue(plainPlan(), null, '2026-04-01').map((due) => `upkeep.${due.part}`)
    expect([...keys, ...parts].filter((key) => !words.has(key))).toEqual([])
  })
})
