import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Plan } from '../../src/core/plan/schema.ts'
import type { Need } from '../../src/core/quantities/need.ts'
import { unitsBought } from '../../src/core/quantities/wall-needs.ts'
import { workOut } from '../../src/core/work-out.ts'
import { anyPlan } from './plans.ts'
import { cases } from './cases.ts'
import { forAnyPlan } from './for-any-plan.ts'

/** Gross amounts by item, all uses together. */
function grossByItem(needs: readonly Need[]): Map<string, number> {
  const found = new Map<string, number>()
  for (const { item, gross } of needs) found.set(item, (found.get(item) ?? 0) + gross.value)
  return found
}

const withCount = (plan: Plan, count: number): Plan => ({ ...plan, chambers: { ...plan.chambers, count } })

describe('quantities of any plan', () => {
  it('are finite, positive, and waste is what lies between net and gross', () => {
    forAnyPlan(60, (plan) => {
      for (const { net, waste, gross } of workOut(plan).needs) {
        expect(Number.isFinite(net.value) && net.value >= 0).toBe(true)
        expect(gross.value).toBeCloseTo(net.value * (1 + waste.value), 9)
        expect(gross.unit).toBe(net.unit)
      }
    })
  }, 120_000)

  it('never fall when a chamber is added', () => {
    fc.assert(
      fc.property(anyPlan, fc.integer({ min: 1, max: 7 }), (any, count) => {
        // Other lengths are laid in other pieces, and what can be filled hangs on cells that come to lie over each other.
        const plan: Plan = { ...any, walls: { ...any.walls, fill: 'none' } }
        const few = grossByItem(workOut(withCount(plan, count)).needs)
        const more = grossByItem(workOut(withCount(plan, count + 1)).needs)
        for (const [item, amount] of few)
          expect([item, (more.get(item) ?? 0) >= amount * (1 - 1e-9)]).toEqual([item, true])
      }),
      { numRuns: cases(60) },
    )
  }, 120_000)

  it('count in the list what the drawings show, course by course', () => {
    forAnyPlan(60, (plan) => {
      const { layout, needs } = workOut(plan)
      const listed = needs.find((one) => one.item === 'wall-unit')
      const units = unitsBought(layout)
      expect(listed?.net.value).toBe(units.value)
      expect(units.value).toBe(layout.counts.bought)
      const drawn = layout.units.filter((unit) => unit.cutLengthM === null).length
      const cut = layout.units.length - drawn
      // Bricks of arches lie in no course: in a single leaf they are bats, in a one-brick wall whole, and beside them pieces cut to fit.
      const { whole, cutPieces, archUnits, fittedUnits } = layout.counts
      expect(whole + cutPieces).toBe(drawn + cut + archUnits - fittedUnits)
      expect(plan.walls.leaf === 'single' ? whole : drawn).toBe(drawn)
      // Cut units give at least the pieces that are drawn.
      expect(units.value).toBeLessThanOrEqual(whole + cut + archUnits)
    })
  }, 120_000)

  it('do not change when the plan is turned to another wind', () => {
    fc.assert(
      fc.property(anyPlan, fc.integer({ min: 0, max: 359 }), (plan, deg) => {
        // Levels go by the ground at the front left peg, which a mirror moves where the ground rises across.
        const level: Plan = { ...plan, ground: { ...plan.ground, slopeAcross: 0 } }
        const turned: Plan = {
          ...level,
          place: { ...plan.place, facing: 'own', frontDeg: deg, windDayDeg: (deg + 90) % 360 },
        }
        const one = grossByItem(workOut(level).needs)
        const other = grossByItem(workOut(turned).needs)
        expect([...other.keys()]).toEqual([...one.keys()])
        for (const [item, amount] of one) expect([item, other.get(item)]).toEqual([item, expect.closeTo(amount, 6)])
      }),
      { numRuns: cases(40) },
    )
  }, 120_000)
})
