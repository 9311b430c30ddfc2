import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Head, LayoutRequest } from '../../src/core/layout/contract.ts'
import { layOut } from '../../src/core/layout/lay-out.ts'
import { request, UNIT_NAMES, UNITS } from '../core/layout/requests.ts'
import { judged } from '../core/layout/judge.ts'
import { outsideIn, overlapIn, solidsOf, volumeOf } from '../core/layout/solids.ts'
import { cases } from './cases.ts'

const heads: fc.Arbitrary<Head> = fc.oneof(
  fc.record({
    kind: fc.constant('lintel' as const),
    bearingM: fc.constantFrom(0.1, 0.15, 0.2),
    courses: fc.constantFrom(1, 2),
  }),
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
  const whole =
    axis === 'x' ? plan.chambers * (plan.clearSideM + thickness) + thickness : plan.clearSideM + 2 * thickness
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
    chambers: fc.constantFrom(1, 1, 1, 2, 2, 3, 5),
    clearSideM: millimetres(400, 1400, 5),
    openingM: millimetres(200, 600, 10),
    head: heads,
    slope: fc.option(slopes, { freq: 3 }),
  })
  .map(({ name, bond: [leaf, bond], slope, ...rest }) => {
    const plan = request({ ...rest, unit: UNITS[name], leaf, bond })
    return slope === null ? plan : stepped(plan, slope)
  })

/** Stops at the first case that breaks a law: shrinking a whole wall takes minutes. */
const runs = (count: number) => ({ numRuns: cases(count), endOnFailure: true })

describe('laws of the layout', () => {
  it('nothing overlaps, everything lies in the walls, volumes close, counts agree', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const layout = layOut(plan)
        expect(overlapIn(layout)).toBeNull()
        expect(outsideIn(layout)).toBeNull()
        const walls = layout.walls.reduce((sum, wall) => sum + volumeOf(wall), 0)
        const units = layout.units.reduce((sum, unit) => sum + volumeOf(unit), 0)
        const carried = layout.lintels.reduce((sum, { volumeM3 }) => sum + volumeM3, 0)
        const openings = layout.openings.reduce((sum, { volumeM3 }) => sum + volumeM3, 0)
        expect(Math.abs(walls - layout.wallVolumeM3)).toBeLessThan(1e-9)
        expect(Math.abs(units - layout.unitVolumeM3)).toBeLessThan(1e-9)
        expect(Math.abs(walls - units - carried - openings - layout.mortarM3)).toBeLessThan(1e-9)
        expect(layout.mortarM3).toBeGreaterThan(0)
        const { counts } = layout
        expect(counts.laid).toBe(layout.units.length)
        expect(counts.whole + counts.cutPieces + counts.fittedUnits).toBe(layout.units.length + counts.archUnits)
        expect(layout.courses.reduce((sum, { firstUnit, endUnit }) => sum + endUnit - firstUnit, 0)).toBe(counts.laid)
        expect(counts.cuts.reduce((sum, { count }) => sum + count, 0)).toBe(counts.cutPieces)
        expect(counts.lowerBound).toBeLessThanOrEqual(counts.bought)
        expect(solidsOf(layout).every((solid) => volumeOf(solid) > 0)).toBe(true)
      }),
      runs(900),
    )
  })

  it(
    'every joint and lap outside its rule, read off the boxes, has a finding at that place',
    { timeout: 60_000 },
    () => {
      const thin = plans.filter(({ leaf, bond }) => leaf === 'single' || bond === 'header')
      fc.assert(
        fc.property(thin, (plan) => {
          const layout = layOut(plan)
          for (const seen of judged(layout, plan)) {
            const told = layout.findings.some(
              (finding) =>
                // A lintel's tall joint told as a short lap is told the more sternly.
                (finding.kind === seen.kind || (seen.kind === 'lintel-end' && finding.kind === 'lap-short')) &&
                finding.courses.includes(seen.course) &&
                Math.hypot(finding.xM - seen.xM, finding.yM - seen.yM) < 0.01,
            )
            expect(told ? null : seen).toBeNull()
          }
        }),
        runs(500),
      )
    },
  )

  it('the cut plan gives every cut piece from whole units, the cuts counted', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const { counts } = layOut(plan)
        const made = new Map<string, number>()
        for (const { way, piecesM, units } of counts.cutPatterns) {
          const whole = way === 'across' ? plan.unit.lengthM : plan.unit.widthM
          const used = piecesM.reduce((sum, piece) => sum + piece + plan.cutLossM, 0)
          expect(used).toBeLessThanOrEqual(whole + plan.cutLossM + 1e-9)
          for (const piece of piecesM) made.set(`${way}${piece}`, (made.get(`${way}${piece}`) ?? 0) + units)
        }
        for (const { way, lengthM, count } of counts.cuts) expect(made.get(`${way}${lengthM}`)).toBe(count)
        const stock = counts.cutPatterns.reduce((sum, { units }) => sum + units, 0)
        expect(counts.bought).toBe(counts.whole + counts.fittedUnits + stock)
      }),
      runs(200),
    )
  })

  it('the same plan gives the same layout, and so do the choices written into it', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const first = layOut(plan)
        expect(layOut(plan)).toEqual(first)
        const again = layOut({ ...plan, turned: first.trace.choices })
        expect(again.units).toEqual(first.units)
        expect(again.counts).toEqual(first.counts)
      }),
      runs(150),
    )
  })

  it('the mirrored plan needs the same', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(plans, slopes, (plan, slope) => {
        const steep = stepped(plan, { ...slope, axis: 'x' })
        const layout = layOut(steep)
        const { lowestCourseAt } = steep
        const mirrored = layOut({
          ...steep,
          lowestCourseAt: (xM, yM) => lowestCourseAt?.(layout.lengthM - xM, yM) ?? 0,
        })
        expect(mirrored.counts).toEqual(layout.counts)
        expect(mirrored.findings.length).toBe(layout.findings.length)
        expect(mirrored.fillableVoidM3).toBeCloseTo(layout.fillableVoidM3, 9)
      }),
      runs(150),
    )
  })

  it('a chamber more lays more units', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(
        plans.filter(({ chambers }) => chambers < 5),
        (plan) => {
          const { counts } = layOut(plan)
          expect(layOut({ ...plan, chambers: plan.chambers + 1 }).counts.bought).toBeGreaterThan(counts.bought)
        },
      ),
      runs(100),
    )
  })
})
