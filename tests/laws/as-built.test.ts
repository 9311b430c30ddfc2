// A law may speak of some plans only, and then asks only those.
/* oxlint-disable vitest/no-conditional-expect, vitest/expect-expect */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { asBuilt, courseKey, MISSED_M } from '../../src/core/layout/as-built.ts'
import { asBuiltFindings } from '../../src/core/layout/as-built-findings.ts'
import type { CoursePlan, JointRange } from '../../src/core/layout/contract.ts'
import type { Plan } from '../../src/core/plan/schema.ts'
import { cases } from './cases.ts'

const joint: fc.Arbitrary<JointRange> = fc
  .tuple(fc.integer({ min: 5, max: 12 }), fc.integer({ min: 0, max: 6 }), fc.integer({ min: 0, max: 12 }))
  .map(([min, more, most]) => ({ minM: min / 1000, usualM: (min + more) / 1000, maxM: (min + more + most) / 1000 }))

const coursed = fc
  .record({
    joint,
    unitMm: fc.integer({ min: 60, max: 240 }),
    count: fc.integer({ min: 2, max: 24 }),
    sill: fc.integer({ min: 0, max: 4 }),
    head: fc.nat(20),
    share: fc.nat(100),
  })
  .map(({ joint: range, unitMm, count, sill, head, share }) => {
    const unitHeightM = unitMm / 1000
    const bedM = range.minM + ((range.maxM - range.minM) * share) / 100
    const sillCourses = Math.min(sill, count - 1)
    const gaugeM = unitHeightM + bedM
    const plan: CoursePlan = {
      unitHeightM,
      bedM,
      firstBedM: bedM,
      count,
      belowM: sillCourses * gaugeM,
      aboveM: (count - sillCourses) * gaugeM,
      sillCourses,
      headCourses: sillCourses + 1 + (head % (count - sillCourses)),
    }
    return { plan, joint: range }
  })

/** Some courses measured, each off its planned level by up to 30 mm. */
const measured = coursed.chain((one) =>
  fc
    .array(fc.tuple(fc.integer({ min: 1, max: one.plan.count }), fc.integer({ min: -30, max: 30 })), {
      minLength: 1,
      maxLength: 5,
    })
    .map((readings) => {
      const { belowM, unitHeightM, bedM } = one.plan
      const risen: Plan['built']['risen'] = {}
      for (const [index, offMm] of readings)
        risen[courseKey(index)] = {
          topM: -belowM + index * (unitHeightM + bedM) + offMm / 1000,
          day: '2026-01-05',
          who: '',
        }
      return { ...one, risen }
    }),
)

describe('courses as built', () => {
  it('are the planned ones while nothing is measured', () => {
    fc.assert(
      fc.property(coursed, ({ plan, joint: range }) => {
        const built = asBuilt(plan, range, {})
        for (const course of built.courses) {
          expect(course.topM).toBeCloseTo(course.plannedTopM, 12)
          expect(course.bedM).toBeCloseTo(plan.bedM, 12)
        }
        expect(built.courses.at(-1)?.topM).toBeCloseTo(plan.aboveM, 12)
        expect(asBuiltFindings(built, plan, range)).toEqual([])
      }),
      { numRuns: cases(300) },
    )
  })

  it('stand where they were measured, and the rest keeps its joints within their range', () => {
    fc.assert(
      fc.property(measured, ({ plan, joint: range, risen }) => {
        const built = asBuilt(plan, range, risen)
        expect(built.courses).toHaveLength(plan.count)
        for (const course of built.courses) {
          const reading = risen[courseKey(course.index)]
          if (reading !== undefined) expect(course.topM).toBeCloseTo(reading.topM, 12)
          if (course.known !== 'ahead') continue
          expect(course.bedM).toBeGreaterThanOrEqual(range.minM - 2e-6)
          expect(course.bedM).toBeLessThanOrEqual(range.maxM + 2e-6)
        }
        // Every course stands on the one below it with its joint between.
        const [, ...upper] = built.courses
        for (const [i, course] of upper.entries())
          expect(course.topM - (built.courses[i]?.topM ?? 0)).toBeCloseTo(course.bedM + plan.unitHeightM, 12)
      }),
      { numRuns: cases(500) },
    )
  })

  it('meet the top whenever any joints in the range can, and else a finding says by how much', () => {
    fc.assert(
      fc.property(measured, ({ plan, joint: range, risen }) => {
        const built = asBuilt(plan, range, risen)
        const left = plan.count - built.measuredTo
        const fromM = built.courses[built.measuredTo - 1]?.topM ?? NaN
        const low = fromM + left * (plan.unitHeightM + range.minM)
        const high = fromM + left * (plan.unitHeightM + range.maxM)
        const canMeet = low <= plan.aboveM + 1e-9 && plan.aboveM - 1e-9 <= high
        if (canMeet) expect(Math.abs(built.offTopM)).toBeLessThan(1e-4)
        else {
          // As near as joints can bring it.
          const nearest = plan.aboveM < low ? low : high
          expect(plan.aboveM + built.offTopM).toBeCloseTo(nearest, 4)
        }
        const kinds = asBuiltFindings(built, plan, range).map(({ kind }) => kind)
        const isTold = kinds.some((kind) => /top-|level-impossible/.test(kind) && kind !== 'built.rest-meets-top')
        expect(isTold || Math.abs(built.offTopM) < MISSED_M).toBe(true)
        expect(kinds.includes('built.top-missed') && Math.abs(built.offTopM) < MISSED_M).toBe(false)
      }),
      { numRuns: cases(800) },
    )
  })

  it('meet the head of the openings whenever one joint can', () => {
    fc.assert(
      fc.property(measured, ({ plan, joint: range, risen }) => {
        const built = asBuilt(plan, range, risen)
        const left = plan.headCourses - built.measuredTo
        if (left <= 0) return
        const fromM = built.courses[built.measuredTo - 1]?.topM ?? NaN
        const headM = -plan.belowM + plan.headCourses * (plan.unitHeightM + plan.bedM)
        const needed = (headM - fromM) / left - plan.unitHeightM
        if (needed >= range.minM && needed <= range.maxM) expect(Math.abs(built.offHeadM)).toBeLessThan(1e-9)
      }),
      { numRuns: cases(500) },
    )
  })

  it('say another number of courses only where its joint is in the range and meets the top', () => {
    fc.assert(
      fc.property(measured, ({ plan, joint: range, risen }) => {
        const built = asBuilt(plan, range, risen)
        if (built.other === null) return
        const fromM = built.courses[built.measuredTo - 1]?.topM ?? NaN
        const { courses, bedM } = built.other
        expect(fromM + courses * (plan.unitHeightM + bedM)).toBeCloseTo(plan.aboveM, 9)
        expect(bedM).toBeGreaterThanOrEqual(range.minM - 2e-6)
        expect(bedM).toBeLessThanOrEqual(range.maxM + 2e-6)
      }),
      { numRuns: cases(500) },
    )
  })
})

describe('a wall worked by hand', () => {
  // Six courses of 225 mm at 10 mm: tops at 235, 470, 705, 940, 1175, 1410 over a footing 470 under the ground.
  const plan: CoursePlan = {
    unitHeightM: 0.225,
    bedM: 0.01,
    firstBedM: 0.01,
    count: 6,
    belowM: 0.47,
    aboveM: 0.94,
    sillCourses: 2,
    headCourses: 4,
  }
  const range = { minM: 0.008, usualM: 0.01, maxM: 0.015 }
  const at = (topM: number) => ({ topM, day: '2026-01-05', who: '' })

  it('shares what a low course lacks over the joints up to the head: 6 mm over 3 joints is 12 mm each', () => {
    const built = asBuilt(plan, range, { c1: at(-0.241) })
    expect(built.courses.slice(1, 4).map(({ bedM }) => Math.round(bedM * 1e5) / 100)).toEqual([12, 12, 12])
    expect(built.courses.slice(4).map(({ bedM }) => Math.round(bedM * 1e5) / 100)).toEqual([10, 10])
    expect(built.offTopM).toBeCloseTo(0, 12)
  })

  it('lets the head go where its joints cannot follow, and meets the top: 18 mm are too much for one joint', () => {
    const low = asBuilt(plan, range, { c3: at(0.235 - 0.008) })
    // One course to the head takes 15 of the 18 mm; the head is 3 mm low; two courses share the 3 mm.
    expect(low.offHeadM).toBeCloseTo(-0.003, 9)
    expect(low.courses.slice(3).map(({ bedM }) => Math.round(bedM * 1e5) / 100)).toEqual([15, 11.5, 11.5])
    expect(low.offTopM).toBeCloseTo(0, 12)
  })

  it('says by how much the top is missed', () => {
    // 28 mm low under three joints that can give 5 mm each.
    const built = asBuilt(plan, range, { c3: at(0.235 - 0.028) })
    expect(built.offTopM).toBeCloseTo(-0.013, 9)
    expect(asBuiltFindings(built, plan, range)).toContainEqual(
      expect.objectContaining({
        level: 'problem',
        kind: 'built.top-missed',
        args: { by: { value: expect.closeTo(0.013, 9) as number, unit: 'm' }, way: 'low', courses: 3 },
      }),
    )
  })

  it('refuses a level under its own unit', () => {
    const built = asBuilt(plan, range, { c1: at(-0.235), c2: at(-0.03) })
    expect(asBuiltFindings(built, plan, range).map(({ kind }) => kind)).toEqual(['built.level-impossible'])
  })
})
