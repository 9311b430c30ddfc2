import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Head, LayoutRequest } from '../../src/core/layout/contract.ts'
import { layOut } from '../../src/core/layout/lay-out.ts'
import { request, UNIT_NAMES, UNITS } from '../core/layout/requests.ts'
import { outsideIn, overlapIn, solidsOf, volumeOf } from '../core/layout/solids.ts'

const heads: fc.Arbitrary<Head> = fc.oneof(
  fc.record({ kind: fc.constant('lintel' as const), bearingM: fc.constantFrom(0.1, 0.15, 0.2), courses: fc.constantFrom(1, 2) }),
  fc.record({ kind: fc.constant('steel' as const), bearingM: fc.constantFrom(0.1, 0.15) }),
  fc.constant({ kind: 'corbel' as const }),
  fc.record({ kind: fc.constant('arch' as const), riseM: fc.constantFrom(0.03, 0.06, 0.1) }),
)

const slopes = fc.record({
  axis: fc.constantFrom('x', 'y'),
  share: fc.double({ min: 0.1, max: 0.9, noNaN: true }),
  fall: fc.constantFrom(1, 2, 3),
  up: fc.boolean(),
})

/** Footing stepped once, along or across the row, from nought to some courses deeper on one side. */
const stepped = (
  plan: LayoutRequest,
  { axis, share, fall, up }: { axis: string; share: number; fall: number; up: boolean },
): LayoutRequest => {
  const thickness = plan.leaf === 'single' ? plan.unit.widthM : plan.unit.lengthM
  const whole = axis === 'x' ? plan.chambers * (plan.clearSideM + thickness) + thickness : plan.clearSideM + 2 * thickness
  return {
    ...plan,
    lowestCourseAt: (xM, yM) => ((axis === 'x' ? xM : yM) > share * whole === up ? -fall : 0),
  }
}

const millimetres = (from: number, to: number, step: number) =>
  fc.integer({ min: from / step, max: to / step }).map((n) => (n * step) / 1000)

const plans = fc
  .record({
    name: fc.constantFrom(...UNIT_NAMES),
    bond: fc.constantFrom(
      ['single', 'stretcher'] as const,
      ['single', 'stretcher'] as const,
      ['one-brick', 'english'] as const,
      ['one-brick', 'header'] as const,
    ),
    chambers: fc.constantFrom(1, 1, 2, 2, 3, 4, 8),
    clearSideM: millimetres(400, 2000, 5),
    openingM: millimetres(200, 600, 10),
    head: heads,
    slope: fc.option(slopes, { freq: 3 }),
  })
  .map(({ name, bond: [leaf, bond], slope, ...rest }) => {
    const plan = request({ ...rest, unit: UNITS[name], leaf, bond })
    return slope === null ? plan : stepped(plan, slope)
  })

/** Seed fixed: the same cases on every machine. */
const CASES = { numRuns: 500, seed: 20260, endOnFailure: true }

/** Mortar worked out from the joints themselves: beds between courses, perpends between neighbours; independent of the walls' volume. */
describe('laws of the layout', () => {
  it('nothing overlaps, everything lies in the walls, volumes close, counts agree', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const layout = layOut(plan)
        expect(overlapIn(layout)).toBeNull()
        expect(outsideIn(layout)).toBeNull()
        const walls = layout.walls.reduce((sum, wall) => sum + volumeOf(wall), 0)
        const units = layout.units.reduce((sum, unit) => sum + volumeOf(unit), 0)
        const heads_ = layout.lintels.reduce((sum, { volumeM3 }) => sum + volumeM3, 0)
        const openings = layout.openings.reduce((sum, { volumeM3 }) => sum + volumeM3, 0)
        expect(Math.abs(walls - layout.wallVolumeM3)).toBeLessThan(1e-9)
        expect(Math.abs(units - layout.unitVolumeM3)).toBeLessThan(1e-9)
        expect(Math.abs(walls - units - heads_ - openings - layout.mortarM3)).toBeLessThan(1e-9)
        expect(layout.mortarM3).toBeGreaterThan(0)
        const { counts } = layout
        expect(counts.laid).toBe(layout.units.length)
        expect(counts.whole + counts.cutPieces + counts.fittedUnits).toBe(layout.units.length + counts.archUnits)
        expect(layout.courses.reduce((sum, { firstUnit, endUnit }) => sum + endUnit - firstUnit, 0)).toBe(counts.laid)
        expect(counts.cuts.reduce((sum, { count }) => sum + count, 0)).toBe(counts.cutPieces)
        expect(counts.lowerBound).toBeLessThanOrEqual(counts.bought)
        expect(solidsOf(layout).every((solid) => volumeOf(solid) > 0)).toBe(true)
      }),
      CASES,
    )
  })
})
