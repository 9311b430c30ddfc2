import { describe, expect, it } from 'vitest'
import { bearingRange, PUBLISHED_BEARING } from '../../src/core/geometry/bearing-tables.ts'
import { stepOverlap } from '../../src/core/geometry/footing-steps.ts'
import { foundationOf } from '../../src/core/geometry/foundation.ts'
import { kilnGeometry } from '../../src/core/geometry/kiln.ts'
import { KEPT_DISTANCES } from '../../src/core/geometry/neighbours.ts'
import { compassPoint } from '../../src/core/geometry/wind.ts'
import { trayFrame } from '../../src/core/fish/tray-frame.ts'
import { CATALOGUE_SOILS, soilOf } from '../../src/core/plan/catalogue.ts'
import { LEVELS, planWith } from '../core/geometry/plans.ts'

describe('stepped strip footing', () => {
  // NHBC Standards 4.3.8, table 3: overlap not less than twice the step, the thickness (at most 500 mm), or 300 mm, whichever is largest;
  // a step no higher than the foundation is thick.
  it.each([
    [0.2, 0.2, 0.4],
    [0.1, 0.1, 0.3],
    [0.1, 0.2, 0.3],
    [0.15, 0.45, 0.45],
  ])('a step of %s m in a footing %s m thick laps %s m', (step, thickness, overlap) => {
    expect(stepOverlap(step, thickness)).toBeCloseTo(overlap, 12)
  })

  it('makes no step higher than the footing is thick', () => {
    const kiln = kilnGeometry(
      planWith(4, 1, 0.1, (plan) => {
        Object.assign(plan.ground, { slopeAcross: -0.08, formation: 'stepped', thicknessM: 0.15 })
      }),
      { ...LEVELS, gaugeM: 0.075 },
    )
    expect(kiln.footing.beds.length).toBeGreaterThan(1)
    expect(kiln.footing.steps.stepM).toBeLessThanOrEqual(0.15)
    expect(kiln.footing.steps.overlapM).toBeCloseTo(0.3, 12)
  })
})

describe('wind points', () => {
  // Convention of sixteen points, 22.5° each, the boundary belonging to the clockwise one.
  it.each([
    [11.24, 'N'],
    [11.25, 'NNE'],
    [348.74, 'NNW'],
    [348.75, 'N'],
    [0, 'N'],
    [90, 'E'],
    [225, 'SW'],
    [-90, 'W'],
  ])('%s° is %s', (deg, point) => {
    expect(compassPoint(deg)).toBe(point)
  })
})

describe('allowable bearing', () => {
  // International Building Code 2012, table 1806.2: clay and silt 1500 lb/ft², sand and silty or clayey sand and gravel 2000, sandy gravel 3000,
  // sedimentary rock 4000. One pound-force per square foot is 47.88026 Pa by definition of pound, foot and standard gravity.
  const psf = 47.88026
  it.each([
    ['clay-firm', 1500],
    ['sand-dense', 2000],
    ['gravel-sandy', 3000],
    ['rock-soft', 4000],
  ])('%s is %s lb/ft² in the American table', (soil, value) => {
    const found = PUBLISHED_BEARING[soil]?.find(({ source }) => source === 'ibc-2012')
    expect(Math.abs((found?.bearingPa ?? 0) - value * psf)).toBeLessThan(0.1)
  })

  // Canadian housing table of allowable bearing pressures, kPa: dense sand or gravel 150, loose sand or gravel 50, stiff clay 150, firm clay 75, soft clay 40.
  it.each([
    ['sand-dense', 150],
    ['sand-loose', 50],
    ['clay-stiff', 150],
    ['clay-firm', 75],
    ['clay-soft', 40],
  ])('%s is %s kPa in the Canadian table', (soil, kPa) => {
    const found = PUBLISHED_BEARING[soil]?.find(({ source }) => source === 'canada-housing')
    expect(found?.bearingPa).toBe(kPa * 1000)
  })

  it('plans start from the lower of the two, and from none where no table gives one', () => {
    const started = CATALOGUE_SOILS.map((soil) => ({ ...soil, range: bearingRange(soil.key) }))
    expect(started.filter(({ range }) => range === null).map(({ build }) => build)).toEqual([false])
    // The catalogue is rounded to a tenth of a kilopascal, rock to one.
    const off = started.filter(
      ({ key, bearingKPa, range }) =>
        range !== null && Math.abs(bearingKPa * 1000 - range.low.bearingPa) > (key === 'rock-soft' ? 500 : 51),
    )
    expect(off).toEqual([])
  })
})

describe('soil dug', () => {
  it('sand swells from 1 to 1.11 loose and packs to 0.95', () => {
    // US Navy and Army soil conversion table, sand: bank 1.00, loose 1.11, compacted 0.95.
    const kiln = kilnGeometry(planWith(1, 0.68, 0.16), LEVELS)
    expect(kiln.earthworks.loose.value / kiln.earthworks.dig.value).toBeCloseTo(1.11, 12)
    expect(soilOf('sand-dense').compacted).toBe(0.95)
    expect(soilOf('sand-loose').loose).toBe(1.11)
  })
  it('digs at 1.20 h/m³ in sand, 2.20 in medium, 3.30 in heavy soil', () => {
    // NAVFAC P-405 figures for trenches by hand to one metre, in US Navy Builder manual 14045.
    expect(soilOf('sand-dense').digHoursPerM3).toBe(1.2)
    expect(soilOf('clay-firm').digHoursPerM3).toBe(2.2)
    expect(soilOf('clay-stiff').digHoursPerM3).toBe(3.3)
  })
})

describe('weights', () => {
  // Código Técnico de la Edificación DB-SE-AE, table C.1, kN/m³: concrete 24, hollow block 16, solid brick 18, adobe 16.
  it.each([
    ['hollow-block', 16],
    ['fired-brick', 18],
    ['clay-brick', 16],
  ] as const)('%s weighs %s kN/m³ and its footing 24', (family, weight) => {
    const plan = planWith(1, 0.68, 0.16, (change) => {
      change.walls.unit = { ...change.walls.unit, family, voidFraction: 0 }
    })
    const geometry = kilnGeometry(plan, LEVELS)
    const { pressure } = foundationOf(plan, geometry, trayFrame(plan))
    const wall = pressure.inputs['W']
    expect(wall?.inputs['w']?.value).toBe(weight * 1000)
    expect(pressure.inputs['y']?.value).toBe(24_000)
    // By hand: weight × 0.16 m × 0.80 m of wall over a footing 0.36 m wide; the footing's own 0.10 m adds 2.4 kPa.
    const stack = pressure.inputs['S']?.value ?? 0
    expect(pressure.value).toBeCloseTo((weight * 1000 * 0.16 * 0.8 + stack) / 0.36 + 2400, 6)
  })
})

describe('distances', () => {
  // International Fire Code 308: open-flame cooking 10 ft (3.05 m) from what burns; 307: small open fires 25 ft (7.62 m) from structures. Analogues, in whole metres.
  it('keeps 3 m from a house and 8 m from thatch', () => {
    const least = Object.fromEntries(KEPT_DISTANCES.map(({ field, leastM }) => [field, leastM]))
    expect(Math.abs((least['houseM'] ?? 0) - 10 * 0.3048)).toBeLessThan(0.1)
    expect(least['thatchM']).toBeGreaterThanOrEqual(25 * 0.3048)
  })
})
