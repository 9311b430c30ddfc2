import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Plan } from '../../src/core/plan/schema.ts'
import { APART_FROM_MASONRY, masonryOf, rememberingMasonry, workOut } from '../../src/core/work-out.ts'
import { anyPlan } from './plans.ts'
import { cases } from './cases.ts'

/** One plan's masonry with all else of another. */
const crossed = (masonry: Plan, rest: Plan): Plan => ({
  ...masonry,
  ...(Object.fromEntries(Object.entries(rest).filter(([part]) => APART_FROM_MASONRY.has(part))) as Partial<Plan>),
})

describe('masonry', () => {
  it('follows from nothing that is said to be apart from it', () => {
    fc.assert(
      fc.property(anyPlan, anyPlan, (plan, other) => {
        expect(masonryOf(crossed(plan, other))).toEqual(masonryOf(plan))
      }),
      { numRuns: cases(40) },
    )
  }, 120_000)

  it('that is remembered gives what a fresh one gives, in any order of plans', () => {
    fc.assert(
      fc.property(
        fc.array(anyPlan, { minLength: 2, maxLength: 3 }),
        fc.array(fc.nat({ max: 8 }), { maxLength: 8 }),
        (plans, turns) => {
          const remembered = rememberingMasonry(2)
          const mixed = plans.flatMap((plan) => plans.map((other) => crossed(plan, other)))
          for (const turn of turns) {
            const plan = mixed[turn % mixed.length]
            if (plan === undefined) continue
            expect(workOut(plan, remembered).costs).toEqual(workOut(plan).costs)
          }
        },
      ),
      { numRuns: cases(10) },
    )
  }, 120_000)

  it('is not laid again for a new price or name', () => {
    const [plan] = fc.sample(anyPlan, { numRuns: 1, seed: 5 })
    if (plan === undefined) throw new Error('no plan')
    const remembered = rememberingMasonry()
    const first = remembered(plan)
    expect(remembered({ ...structuredClone(plan), name: 'Another', offers: {} })).toBe(first)
    expect(remembered({ ...plan, chambers: { ...plan.chambers, count: plan.chambers.count === 1 ? 2 : 1 } })).not.toBe(
      first,
    )
  })
})
