import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { foundationOf } from '../../src/core/geometry/foundation.ts'
import { extraCoursesAt, kilnGeometry } from '../../src/core/geometry/kiln.ts'
import { clearSideFromDepth, clearSideFromOutside, outsideFromClearSide } from '../../src/core/geometry/outline.ts'
import { settingOut } from '../../src/core/geometry/setting-out.ts'
import { angleBetween, asBearing, bearingOfLine, eastNorth, facingOf } from '../../src/core/geometry/wind.ts'
import { trayFrame } from '../../src/core/fish/tray-frame.ts'
import { CATALOGUE_SOILS } from '../../src/core/plan/catalogue.ts'
import type { Plan } from '../../src/core/plan/schema.ts'
import { LEVELS, planWith } from '../core/geometry/plans.ts'
import { cases } from './cases.ts'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const degrees = between(0, 359.9)

const anyPlan = fc
  .record({
    count: fc.integer({ min: 1, max: 8 }),
    side: between(0.4, 2),
    wall: between(0.09, 0.24),
    projection: between(0, 0.3),
    hearth: fc.constantFrom(0, 0.05),
    apron: fc.constantFrom(0, 0.05, 0.6),
    hardcore: fc.constantFrom(0, 0.1),
    footing: fc.constantFrom('strip' as const, 'pad' as const),
    formation: fc.constantFrom('level' as const, 'stepped' as const),
  })
  .map(({ count, side, wall, ...ground }) =>
    planWith(count, side, wall, (plan) => {
      Object.assign(plan.ground, {
        projectionM: ground.projection,
        hearthM: ground.hearth,
        apronM: ground.apron,
        hardcoreM: ground.hardcore,
        footing: ground.footing,
        formation: ground.formation,
      })
    }),
  )

const withGround = (plan: Plan, ground: Partial<Plan['ground']>): Plan => ({
  ...plan,
  ground: { ...plan.ground, ...ground },
})

describe('outline', { timeout: 60_000 }, () => {
  it('goes from inside to over all and back', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 8 }), between(0.4, 2), between(0.05, 0.6), (count, side, wall) => {
        expect(clearSideFromOutside(outsideFromClearSide(side, count, wall), count, wall)).toBeCloseTo(side, 12)
        const kiln = kilnGeometry(planWith(count, side, wall), LEVELS)
        expect(clearSideFromOutside(kiln.outsideLength.value, count, wall)).toBeCloseTo(side, 12)
        expect(clearSideFromDepth(kiln.outsideDepth.value, wall)).toBeCloseTo(side, 12)
      }),
    )
  })

  it('tape marks run forward along each side, end at its length and agree with the drawn chambers and openings', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const narrow = {
          ...plan,
          openings: { ...plan.openings, widthM: Math.min(plan.openings.widthM, plan.chambers.clearSideM) },
        }
        const kiln = kilnGeometry(narrow, LEVELS)
        for (const run of kiln.tapeRuns) {
          const at = run.marks.map((mark) => mark.at.value)
          expect(at.every((value, index) => index === 0 || value >= (at[index - 1] ?? 0) - 1e-12)).toBe(true)
          expect(at.at(-1)).toBe(
            run.side === 'front' || run.side === 'back' ? kiln.outsideLength.value : kiln.outsideDepth.value,
          )
        }
        for (const mark of kiln.tapeRuns[0]?.marks ?? []) {
          const chamber = kiln.chambers[(mark.chamber ?? 0) - 1]
          const opening = kiln.openings[(mark.chamber ?? 0) - 1]
          if (!chamber || !opening) continue
          const drawn = {
            'chamber-start': chamber.x0M,
            'chamber-end': chamber.x1M,
            'opening-start': opening.x0M,
            'opening-end': opening.x1M,
            start: 0,
            end: 0,
          }
          expect(mark.at.value).toBeCloseTo(drawn[mark.kind], 10)
        }
      }),
    )
  })
})

describe('ground', { timeout: 60_000 }, () => {
  it('a slope too slight to see gives the level case in every volume', () => {
    fc.assert(
      fc.property(anyPlan, fc.constantFrom(1, -1), fc.constantFrom(1, -1), (plan, across, back) => {
        const level = kilnGeometry(plan, LEVELS)
        const tilted = kilnGeometry(withGround(plan, { slopeAcross: across * 1e-8, slopeBack: back * 1e-8 }), LEVELS)
        for (const amount of ['dig', 'backfill', 'wallBelow', 'surplus'] as const)
          expect(tilted.earthworks[amount].value).toBeCloseTo(level.earthworks[amount].value, 5)
        expect(tilted.footing.concrete.value).toBeCloseTo(level.footing.concrete.value, 9)
        expect(tilted.footing.depth.value).toBeCloseTo(level.footing.depth.value, 5)
      }),
    )
  })

  it('a level formation on a slope is as deep under the lowest ground as on level ground, to a course', () => {
    fc.assert(
      fc.property(anyPlan, between(-0.2, 0.2), between(-0.14, 0.14), (plan, slopeAcross, slopeBack) => {
        const kiln = kilnGeometry(withGround(plan, { slopeAcross, slopeBack, formation: 'level' }), LEVELS)
        const { outline } = kiln.footing.shape
        const low =
          Math.min(slopeAcross * outline.x0M, slopeAcross * outline.x1M) +
          Math.min(slopeBack * outline.y0M, slopeBack * outline.y1M)
        const cover = low - (kiln.footing.beds[0]?.topM ?? 0)
        expect(cover).toBeGreaterThanOrEqual(LEVELS.belowM - 1e-6)
        // Ground that nowhere lies lower than the front left peg keeps the level case and may be covered deeper.
        expect(low >= 0 || cover < LEVELS.belowM + LEVELS.gaugeM + 1e-6).toBe(true)
      }),
    )
  })

  it('every part of a stepped footing is covered as on level ground, and steps only go down where the ground does', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 8 }),
        between(0.5, 1.5),
        between(-0.2, 0.2),
        between(-0.05, 0.05),
        (count, side, slopeAcross, slopeBack) => {
          const plan = withGround(planWith(count, side, 0.1), {
            slopeAcross,
            slopeBack,
            formation: 'stepped',
            thicknessM: 0.16,
          })
          const kiln = kilnGeometry(plan, { ...LEVELS, gaugeM: 0.08 })
          const step = extraCoursesAt(kiln)
          const { outline } = kiln.footing.shape
          for (let i = 0; i <= 20; i++)
            for (const yM of [outline.y0M, outline.y1M]) {
              const xM = outline.x0M + ((outline.x1M - outline.x0M) * i) / 20
              expect(step(xM, yM)).toBeLessThanOrEqual(0)
              expect(slopeAcross * xM + slopeBack * yM - (-LEVELS.belowM + step(xM, yM) * 0.08)).toBeGreaterThanOrEqual(
                LEVELS.belowM - 1e-6,
              )
            }
        },
      ),
    )
  })

  it('soil is kept: what is dug on level ground is put back, carried away or has made room for something', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const { earthworks, footing } = kilnGeometry(plan, LEVELS)
        const room =
          footing.concrete.value +
          footing.hardcoreVolume.value +
          earthworks.wallBelow.value +
          earthworks.hearthSlab.value +
          earthworks.apronSlab.value
        expect(earthworks.dig.value).toBeCloseTo(room + earthworks.backfill.value, 9)
        const soil = earthworks.dig.value - earthworks.backfill.value / 0.95
        expect(earthworks.surplus.value).toBeCloseTo(soil * 1.11, 9)
        expect(earthworks.surplusPans.value * plan.ground.panM3).toBeGreaterThanOrEqual(earthworks.surplus.value - 1e-9)
      }),
    )
  })
})

describe('footing', { timeout: 60_000 }, () => {
  it('better ground never asks for a wider footing', () => {
    const soils = CATALOGUE_SOILS.filter((soil) => soil.build).toSorted(
      (one, other) => one.bearingKPa - other.bearingKPa,
    )
    fc.assert(
      fc.property(anyPlan, fc.nat(soils.length - 2), (plan, index) => {
        const needed = [soils[index], soils[index + 1]].map((soil) => {
          const here = withGround(plan, { soil: soil?.key ?? '' })
          return foundationOf(here, kilnGeometry(here, LEVELS), trayFrame(here)).neededProjection?.value ?? Infinity
        })
        expect(needed[1]).toBeLessThanOrEqual(needed[0] ?? 0)
      }),
    )
  })

  it('as wide as needed, it presses no more than the ground may carry', () => {
    fc.assert(
      fc.property(anyPlan, between(0.5, 3), (plan, heavy) => {
        const here = withGround(
          { ...plan, walls: { ...plan.walls, unit: { ...plan.walls.unit, family: 'solid-block' } } },
          { soil: 'clay-soft' },
        )
        const levels = { ...LEVELS, aboveM: heavy }
        const needed = foundationOf(here, kilnGeometry(here, levels), trayFrame(here)).neededProjection?.value ?? 0
        const wide = withGround(here, { projectionM: needed })
        // Strips so wide that they meet become a pad, which is judged as a whole.
        const geometry = kilnGeometry(wide, levels)
        const before = kilnGeometry(here, levels).footing.kind
        if (geometry.footing.kind !== before) return
        const after = foundationOf(wide, geometry, trayFrame(here))
        expect(after.pressure.value).toBeLessThanOrEqual(after.bearing.value * (1 + 1e-9))
      }),
    )
  })
})

describe('turning the site', { timeout: 60_000 }, () => {
  it('turns directions and nothing else', () => {
    fc.assert(
      fc.property(anyPlan, degrees, degrees, (plan, one, other) => {
        const geometry = kilnGeometry(plan, LEVELS)
        const turnedTo = (windDayDeg: number) => {
          const place = { ...plan.place, windDayDeg }
          return settingOut(kilnGeometry({ ...plan, place }, LEVELS), facingOf({ ...plan, place }), 0)
        }
        const [a, b] = [turnedTo(one), turnedTo(other)]
        const { bearings: aBearings, steps: aSteps, ...aRest } = a
        const { bearings: bBearings, steps: bSteps, ...bRest } = b
        expect(aRest).toEqual(bRest)
        expect(aSteps.map(({ diagram }) => diagram)).toEqual(bSteps.map(({ diagram }) => diagram))
        const angle = ((other - one) * Math.PI) / 180
        for (const [index, point] of (aBearings?.points ?? []).entries()) {
          const there = bBearings?.points[index]
          // Clockwise from north by the difference of the two winds.
          expect(there?.eastM).toBeCloseTo(point.eastM * Math.cos(angle) + point.northM * Math.sin(angle), 9)
          expect(there?.northM).toBeCloseTo(point.northM * Math.cos(angle) - point.eastM * Math.sin(angle), 9)
          const plain = geometry.points[index]
          expect(Math.hypot(point.eastM, point.northM)).toBeCloseTo(Math.hypot(plain?.xM ?? 0, plain?.yM ?? 0), 9)
        }
      }),
      { numRuns: cases(50) },
    )
  })

  it('the front looks where it was told, and a line bears as its end does', () => {
    fc.assert(
      fc.property(degrees, between(-3, 3), between(-3, 3), (front, dx, dy) => {
        fc.pre(Math.hypot(dx, dy) > 0.01)
        const ahead = eastNorth(front, 0, -1)
        expect(angleBetween((Math.atan2(ahead.eastM, ahead.northM) * 180) / Math.PI, front)).toBeLessThan(
          1e-9 * 360 + 1e-6,
        )
        const end = eastNorth(front, dx, dy)
        expect(
          angleBetween(bearingOfLine(front, dx, dy), (Math.atan2(end.eastM, end.northM) * 180) / Math.PI),
        ).toBeLessThan(1e-6)
      }),
    )
  })

  it('lee is into the wind turned round, and the compass differs by the declination', () => {
    fc.assert(
      fc.property(degrees, between(-30, 30), (windDayDeg, declinationDeg) => {
        const plan = planWith(2, 0.68, 0.15)
        const facing = (side: 'into-wind' | 'lee') =>
          facingOf({ ...plan, place: { ...plan.place, windDayDeg, declinationDeg, facing: side } })
        const into = facing('into-wind')
        expect(into.front?.value).toBe(windDayDeg)
        expect(into.day).toBe('into')
        expect(facing('lee').day).toBe('from-behind')
        expect(facing('lee').front?.value).toBeCloseTo(into.otherDeg ?? 0, 9)
        expect(angleBetween(asBearing((into.frontMagnetic?.value ?? 0) + declinationDeg), windDayDeg)).toBeLessThan(
          1e-9,
        )
      }),
    )
  })
})
