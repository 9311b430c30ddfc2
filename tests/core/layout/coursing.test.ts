import { describe, expect, it } from 'vitest'
import { courseChoices, gaugeRod } from '../../../src/core/layout/coursing.ts'

const bed = { minM: 0.008, usualM: 0.01, maxM: 0.015 }
const wanted = { belowM: 0.2, aboveM: 0.6, headM: 0.35 }

describe('coursing', () => {
  it('finds a coursing that meets every level where one exists', () => {
    // 90 + 10: 2 courses below, 4 to the head, 6 to the top. Plain arithmetic.
    const [best] = courseChoices({
      unitHeightM: 0.09,
      bed,
      wanted: { belowM: 0.2, aboveM: 0.6, headM: 0.4 },
      levelling: 0,
    })
    expect(best?.moves).toBeNull()
    expect(best?.plan).toMatchObject({ count: 8, sillCourses: 2, headCourses: 6 })
    expect(best?.plan.bedM).toBeCloseTo(0.01, 9)
  })

  it('offers 4 courses of 235 mm for blocks 225 high: 340 below, 600 above, head at 365', () => {
    // 600 − 235 = 365 and 4 × 235 − 600 = 340: plain arithmetic on the block of NIS 87.
    const choice = courseChoices({ unitHeightM: 0.225, bed, wanted, levelling: 0 }).find(
      ({ plan, moved }) => Math.abs(plan.bedM - 0.01) < 1e-9 && moved.above === 0,
    )
    expect(choice?.reached.belowM).toBeCloseTo(0.34, 9)
    expect(choice?.reached.headM).toBeCloseTo(0.365, 9)
    expect(choice?.moves).toBe('below')
    expect(choice?.plan.sillCourses).toBe(1)
  })

  it('never offers a choice that another beats on every count, nor a joint out of range', () => {
    for (const unitHeightM of [0.065, 0.076, 0.09, 0.102, 0.11, 0.19, 0.225]) {
      const choices = courseChoices({ unitHeightM, bed, wanted, levelling: 0 })
      expect(choices.length).toBeGreaterThan(0)
      for (const { plan, reached, moved, rod } of choices) {
        expect(plan.bedM).toBeGreaterThanOrEqual(bed.minM - 1e-9)
        expect(plan.bedM).toBeLessThanOrEqual(bed.maxM + 1e-9)
        expect(plan.count * (unitHeightM + plan.bedM)).toBeCloseTo(reached.belowM + reached.aboveM, 9)
        expect(moved.head).toBeCloseTo(reached.headM - wanted.headM, 9)
        expect(rod.fewer + rod.more).toBe(plan.count)
      }
      const worse = choices.filter((a) =>
        choices.some(
          (b) =>
            b !== a &&
            (['below', 'above', 'head'] as const).every(
              (level) => Math.abs(b.moved[level]) <= Math.abs(a.moved[level]) - 0.001,
            ) &&
            Math.abs(b.plan.bedM - bed.usualM) < Math.abs(a.plan.bedM - bed.usualM),
        ),
      )
      expect(worse).toEqual([])
    }
  })

  it('takes up a difference in a thicker bed on the footing where that is allowed', () => {
    const choices = courseChoices({
      unitHeightM: 0.19,
      bed,
      wanted: { belowM: 0.22, aboveM: 0.6, headM: 0.4 },
      levelling: 0.04,
    })
    expect(
      choices.some(
        ({ plan, moved }) => plan.firstBedM > plan.bedM && Math.abs(moved.below) < 1e-9 && moved.above === 0,
      ),
    ).toBe(true)
  })

  it('shares a height in whole millimetres', () => {
    const rod = gaugeRod(0.94, 4)
    expect(rod).toEqual({ courses: 4, gaugeMm: 235, fewer: 4, wideGaugeMm: 236, more: 0 })
  })
})
