import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parsePlan } from '../../src/core/plan/parse-plan.ts'
import { PLAN_SHAPE } from '../../src/device/database/plan-shape.ts'
import { valueAt } from '../../src/device/database/json.ts'
import { anyPlan } from './plans.ts'

/** What no random plan varies: who and what it is, and what only a longer search or a tap on a choice writes. */
const FIXED: ReadonlySet<string> = new Set([
  'format',
  'version',
  'id',
  'name',
  'example',
  'walls.laying',
  'walls.coursing',
])

describe('the random plans that laws are tried on', () => {
  const plans = fc.sample(anyPlan, { numRuns: 400, seed: 7 })

  it('are all plans that the door lets in', () => {
    const refused = plans.map(parsePlan).filter(({ ok }) => !ok)
    expect(refused).toEqual([])
  })

  it('vary every field of the plan', () => {
    const still = PLAN_SHAPE.leaves.filter(
      (path) => new Set(plans.map((plan) => JSON.stringify(valueAt(plan, path)))).size < 2,
    )
    expect(still.filter((path) => !FIXED.has(path))).toEqual([])
  })

  it('fill every collection in some and leave it empty in others', () => {
    const always = new Set(['members', 'payouts'])
    for (const { path } of PLAN_SHAPE.records) {
      const sizes = new Set(plans.map((plan) => Object.keys(valueAt(plan, path) as object).length > 0))
      expect([path, sizes.has(true), always.has(path) || sizes.has(false)]).toEqual([path, true, true])
    }
  })
})
