import { describe, expect, it } from 'vitest'
import { kilnGeometry } from '../../src/core/geometry/kiln.ts'
import { clearSideFromDepth, clearSideFromOutside, outsideFromClearSide } from '../../src/core/geometry/outline.ts'
import { areaOf } from '../../src/core/geometry/shape.ts'
import { LEVELS, planWith } from '../core/geometry/plans.ts'

/** Wall volume above ground for a wall that begins at the ground. */
const fromGround = { ...LEVELS, belowM: 0 }

describe('two chambers of one metre square over walls of 16 cm', () => {
  // Zinsou & Wentholt, Practical guide to building an improved smoker (FAO/IDAF), ch. 2: chambers of 1 m × 1 m, walls 16 cm marked inside
  // the perimeter, at most 60 cm high, the dividing wall shared. The figures follow by plain geometry: 1.84 × 1.00 − 2 × 0.68².
  const kiln = () => kilnGeometry(planWith(2, 0.68, 0.16), fromGround)

  it('is 1.84 m long over all and 1.00 m deep', () => {
    expect(kiln().outsideLength.value).toBeCloseTo(1.84, 12)
    expect(kiln().outsideDepth.value).toBeCloseTo(1, 12)
  })
  it('stands on 0.9152 m² of wall, 0.5491 m³ at 60 cm high', () => {
    expect(kiln().wallPlanArea.value).toBeCloseTo(0.9152, 10)
    expect(kiln().wallVolumeGross.value).toBeCloseTo(0.5491, 4)
  })
  it('has diagonals of 2.0942 m; a single kiln of 1.00 m square 1.4142 m', () => {
    // Same guide: the two diagonals are compared with a thread. Length by Pythagoras.
    expect(kiln().diagonal.value).toBeCloseTo(2.0942, 4)
    expect(kilnGeometry(planWith(1, 0.68, 0.16), fromGround).diagonal.value).toBeCloseTo(1.4142, 4)
  })
})

describe('one chamber as commonly built', () => {
  // Common practice, no published source: 1.00 m × 1.00 m over all, wall about 160 mm, trench edge 1.20 m × 1.20 m, dig 300 mm,
  // footing 100 mm, 200 mm of wall below ground and 600 mm above.
  const kiln = () => kilnGeometry(planWith(1, 0.68, 0.16), LEVELS)
  const trench = () => kiln().footing.shape.outline

  it('is one metre square over all with 0.68 m inside', () => {
    expect([kiln().outsideLength.value, kiln().outsideDepth.value]).toEqual([1, 1])
    expect(kiln().clearSide.value).toBe(0.68)
  })
  it('has a trench edge of 1.20 m, dug 300 mm for 100 mm of concrete', () => {
    expect(trench().x1M - trench().x0M).toBeCloseTo(1.2, 12)
    expect(trench().y1M - trench().y0M).toBeCloseTo(1.2, 12)
    expect(kiln().footing.depth.value).toBeCloseTo(0.3, 12)
  })
  it('has a strip of 1.2096 m², 0.3629 m³ dug and 0.1210 m³ of concrete', () => {
    // Plain geometry: 1.20² − 0.48² = 1.2096; × 0.30 = 0.36288; × 0.10 = 0.12096.
    expect(kiln().footing.area.value).toBeCloseTo(1.2096, 12)
    expect(areaOf(kiln().footing.shape)).toBeCloseTo(1.2096, 12)
    expect(kiln().earthworks.dig.value).toBeCloseTo(0.36288, 12)
    expect(kiln().footing.concrete.value).toBeCloseTo(0.12096, 12)
  })
})

describe('inside or outside', () => {
  // Plain geometry: two one-metre squares with a shared wall are 2.00 m or 1.84 m over all.
  it('reads 1.84 m over all as 0.68 m inside, and back', () => {
    expect(clearSideFromOutside(1.84, 2, 0.16)).toBeCloseTo(0.68, 12)
    expect(outsideFromClearSide(0.68, 2, 0.16)).toBeCloseTo(1.84, 12)
  })
  it('reads 2.00 m over all as 0.76 m inside, which the depth of 1.00 m does not give', () => {
    expect(clearSideFromOutside(2, 2, 0.16)).toBeCloseTo(0.76, 12)
    expect(clearSideFromDepth(1, 0.16)).toBeCloseTo(0.68, 12)
  })
})
