// A law may speak of some plans only, and then asks only those.
/* oxlint-disable vitest/no-conditional-expect, vitest/expect-expect */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { courseKey } from '../../src/core/layout/as-built.ts'
import { piecesOf } from '../../src/core/layout/pieces-to-lay.ts'
import type { Plan } from '../../src/core/plan/schema.ts'
import { besideTheWall } from '../../src/core/schedule/beside-the-wall.ts'
import { stillNeeded } from '../../src/core/schedule/still-needed.ts'
import { coursesOf, stepOfCourse } from '../../src/core/schedule/site-work.ts'
import { stepMaterials } from '../../src/core/schedule/step-materials.ts'
import { workOut, type WorkedOut } from '../../src/core/work-out.ts'
import { unbuiltPlan } from './plans.ts'
import { cases } from './cases.ts'

const tick = { day: '2026-01-05', who: '' }
const piecesIn = (courses: WorkedOut['layout']['courses']) =>
  courses.reduce((sum, { firstUnit, endUnit }) => sum + endUnit - firstUnit, 0)
const leftOf = ({ plan, layout, schedule, needs }: WorkedOut) => stillNeeded(plan, layout, schedule.steps, needs)
const withSite = (plan: Plan, built: Partial<Plan['built']>, ticks: Plan['build']['ticks'] = {}): WorkedOut =>
  workOut({ ...plan, built: { ...plan.built, ...built }, build: { ...plan.build, ticks } })

describe('pieces to lay', () => {
  it('of all courses together are the layout’s own counts', () => {
    fc.assert(
      fc.property(unbuiltPlan, (plan) => {
        const { layout } = workOut(plan)
        const all = piecesOf(
          layout,
          layout.courses.map((course) => ({ course })),
          plan.walls.unit,
          plan.walls.cutLossM,
        )
        expect(all.pieces).toBe(layout.counts.laid)
        expect(all.toFetch).toBeGreaterThanOrEqual(all.whole)
        expect(all.toFetch).toBeLessThanOrEqual(all.pieces)
        // Bricks of an arch lie in no course.
        if (layout.counts.archUnits === 0) {
          expect(all.whole).toBe(layout.counts.whole)
          expect(all.toFetch).toBe(layout.counts.bought)
          expect(all.cuts).toEqual(layout.counts.cuts)
        }
      }),
      { numRuns: cases(60) },
    )
  }, 60_000)

  it('of the steps together are all of the walls, each course in one step', () => {
    fc.assert(
      fc.property(unbuiltPlan, (plan) => {
        const { layout, schedule } = workOut(plan)
        const laid = schedule.steps.flatMap((step) => coursesOf(step, schedule.steps, layout).map(({ index }) => index))
        expect(laid.toSorted((one, other) => one - other)).toEqual(layout.courses.map(({ index }) => index))
      }),
      { numRuns: cases(60) },
    )
  }, 60_000)
})

describe('what is still needed', () => {
  it('is the whole list before the work, and of the walls nothing when all steps are ticked', () => {
    fc.assert(
      fc.property(unbuiltPlan, (plan) => {
        const before = workOut(plan)
        for (const { left, all } of leftOf(before)) expect(left.value).toBeCloseTo(all.value, 6)
        const ticks = Object.fromEntries(before.schedule.steps.map(({ id }) => [id, tick]))
        const after = leftOf(withSite(plan, {}, ticks))
        for (const { item, left } of after)
          if (!item.startsWith('roof')) expect([item, Math.abs(left.value) < 1e-9]).toEqual([item, true])
      }),
      { numRuns: cases(40) },
    )
  }, 60_000)

  it('falls with every unit laid, and what was used and what is left make the list', () => {
    fc.assert(
      fc.property(unbuiltPlan, fc.array(fc.nat(400), { minLength: 1, maxLength: 12 }), (plan, units) => {
        const before = workOut(plan)
        const laid = Object.fromEntries(
          before.layout.courses
            .slice(0, units.length)
            .map(({ index }, i) => [courseKey(index), { units: units[i] ?? 0, ...tick }]),
        )
        const after = withSite(plan, { laid })
        const lies = after.layout.courses.reduce(
          (sum, course) => sum + Math.min(laid[courseKey(course.index)]?.units ?? 0, course.endUnit - course.firstUnit),
          0,
        )
        const share = 1 - lies / piecesIn(after.layout.courses)
        const units1 = leftOf(after).find(({ item }) => item === 'wall-unit')
        const gross = after.needs.find(({ item }) => item === 'wall-unit')?.gross.value ?? NaN
        expect(units1?.left.value).toBe(Math.max(0, Math.ceil(gross * share - 1e-9)))
        for (const { left, all } of leftOf(after)) {
          expect(left.value).toBeGreaterThanOrEqual(0)
          expect(left.value).toBeLessThanOrEqual(all.value + 1e-9)
        }
      }),
      { numRuns: cases(60) },
    )
  }, 60_000)

  it('of the steps together is what the list has for them', () => {
    fc.assert(
      fc.property(unbuiltPlan, (plan) => {
        const { layout, schedule, needs } = workOut(plan)
        const sum = (item: string) =>
          schedule.steps
            .flatMap((step) => stepMaterials(step, schedule.steps, layout, needs))
            .filter((one) => one.item === item)
            .reduce((total, { amount }) => total + amount.value, 0)
        for (const item of ['wall-unit', 'cement', 'sand'] as const) {
          const listed = needs.filter((need) => need.item === item).reduce((total, { gross }) => total + gross.value, 0)
          expect(sum(item)).toBeCloseTo(listed, 6)
        }
      }),
      { numRuns: cases(40) },
    )
  }, 60_000)
})

describe('beside the wall today', () => {
  it('holds only what is not laid, from the course in hand up, within one step', () => {
    fc.assert(
      fc.property(unbuiltPlan, fc.nat(400), (plan, units) => {
        const first = workOut(plan).layout.courses[0]
        if (first === undefined) return
        const worked = withSite(plan, { laid: { [courseKey(first.index)]: { units, ...tick } } })
        const { layout, schedule } = worked
        const today = besideTheWall(worked.plan, layout, schedule)
        const all = first.endUnit - first.firstUnit
        const inHand = units >= all ? layout.courses[1] : layout.courses[0]
        expect(today.courses[0]?.index).toBe(inHand?.index)
        expect(today.pieces.pieces).toBe(piecesIn(today.courses) - (inHand === layout.courses[0] ? units : 0))
        const steps = new Set(today.courses.map((course) => stepOfCourse(schedule.steps, course)?.id))
        expect(steps.size).toBe(1)
      }),
      { numRuns: cases(60) },
    )
  }, 60_000)
})

describe('broken units', () => {
  it('change no list while the allowance holds, and beyond it are bought one for one', () => {
    fc.assert(
      fc.property(unbuiltPlan, fc.nat(60), (plan, units) => {
        const before = workOut(plan)
        const after = withSite(plan, { broken: { one: { units, ...tick } } })
        const own = before.needs.find(({ item, use }) => item === 'wall-unit' && use === 'walls')
        const allowed = (own?.gross.value ?? NaN) - (own?.net.value ?? NaN)
        const grossOf = ({ needs }: WorkedOut) =>
          needs.filter(({ item }) => item === 'wall-unit').reduce((sum, { gross }) => sum + gross.value, 0)
        expect(grossOf(after) - grossOf(before)).toBeCloseTo(Math.max(0, units - allowed), 6)
        const boughtBy = ({ purchase }: WorkedOut) =>
          purchase.lines.filter(({ item }) => item === 'wall-unit').reduce((sum, { bought }) => sum + bought.value, 0)
        expect(boughtBy(after)).toBeGreaterThanOrEqual(grossOf(after) - 1e-6)
      }),
      { numRuns: cases(40) },
    )
  }, 60_000)
})
