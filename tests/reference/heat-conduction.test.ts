import { describe, expect, it } from 'vitest'
import { conduct } from '../../src/core/heat/conduct.ts'
import { layersResistance, transmittance, type Slab, type SlabLayer } from '../../src/core/heat/slab.ts'
import { cellResistance, outerWall, sharedWall } from '../../src/core/heat/wall-section.ts'
import { CATALOGUE_UNITS } from '../../src/core/plan/catalogue.ts'
import { wallsFor } from '../../src/core/plan/defaults.ts'
import { plainPlan } from '../core/fish/plans.ts'
import { erf } from 'mathjs'

const brick = (thicknessM: number): SlabLayer => ({
  thicknessM,
  conductivityWmK: 0.84,
  densityKgM3: 1700,
  heatJkgK: 800,
})
const block = CATALOGUE_UNITS.find((unit) => unit.key === 'hollow-450-225-225')
if (block === undefined) throw new Error('no such block')
const plaster: SlabLayer = { thicknessM: 0.013, conductivityWmK: 0.5, densityKgM3: 1300, heatJkgK: 1000 }

describe('steady wall', () => {
  // Building Construction Handbook, U-value of a one-brick wall: 215 mm brick λ 0.84, 13 mm plaster λ 0.50, surface resistances 0.123 and 0.055 → 2.17.
  it('of 215 mm brick and 13 mm plaster has U = 2.17 W/m²K', () => {
    const wall: Slab = { layers: [plaster, brick(0.215)], outsideFilmWm2K: 1 / 0.055 }
    expect(transmittance(wall, 1 / 0.123)).toBeCloseTo(2.17, 2)
  })
  // The same book: 102 mm brick λ 0.84 → R 0.121 m²K/W.
  it('of 102 mm brick has R = 0.121 m²K/W', () => {
    expect(layersResistance({ layers: [brick(0.102)], outsideFilmWm2K: 1 })).toBeCloseTo(0.121, 3)
  })
  it('is what the transient model settles to, inside and outside', () => {
    const wall: Slab = { layers: [plaster, brick(0.215)], outsideFilmWm2K: 1 / 0.055 }
    const films = { gasDegC: 90, insideFilmWm2K: 1 / 0.123 }
    const long = conduct(
      wall,
      [
        { hours: 200, ...films },
        { hours: 1, ...films },
      ],
      { airDegC: 25, start: 25, stepS: 600 },
    )
    const flow = transmittance(wall, 1 / 0.123) * (90 - 25) * 3600
    expect(Math.abs((long.phases[1]?.inJm2 ?? 0) / flow - 1)).toBeLessThan(1e-6)
    expect(Math.abs((long.phases[1]?.outJm2 ?? 0) / flow - 1)).toBeLessThan(1e-6)
    expect(long.peakOutsideDegC).toBeCloseTo(25 + (flow / 3600) * 0.055, 4)
  })
})

describe('a closed air cell', () => {
  // ISO 6946, table for unventilated air layers at about 10 °C, heat flowing sideways, from memory: 0.11 at 5 mm, 0.15 at 10 mm, 0.17 at 15 mm, 0.18 from 25 mm.
  it.each([
    [0.005, 0.11],
    [0.01, 0.15],
    [0.015, 0.17],
    [0.025, 0.18],
    [0.1, 0.18],
  ])('%d m wide resists %d m²K/W', (widthM, resistance) => {
    expect(Math.abs(cellResistance(widthM, 10) - resistance)).toBeLessThan(0.006)
  })
  it('resists less in a hot wall', () => expect(cellResistance(0.06, 60)).toBeLessThan(cellResistance(0.06, 10)))
})

describe('a hollow block in section', () => {
  // Geometry of the published 450 × 225 × 225 block: two cells of 150 × 125 mm, 37.0 % void; with one 10 mm perpend a course is 460 mm.
  const walls = { ...plainPlan().walls, ...wallsFor(block) }
  const plan = { ...plainPlan(), walls: { ...walls, liningM: 0, renderM: 0 } }
  const massOf = (filling: 'none' | 'sand' | 'solid') =>
    outerWall(plan, filling).layers.reduce((sum, layer) => sum + layer.thicknessM * layer.densityKgM3, 0)
  it('weighs what its solid part weighs, and sand adds its own', () => {
    const voidM = (2 * 0.15 * 0.125) / 0.46
    expect(massOf('solid')).toBeCloseTo(0.225 * 2000, 6)
    expect(massOf('none')).toBeCloseTo((0.225 - voidM) * 2000 + voidM * 1.1, 6)
    expect(massOf('sand')).toBeCloseTo((0.225 - voidM) * 2000 + voidM * 1600, 6)
  })
  it('is halved exactly between two chambers', () => {
    const whole = outerWall(plan, 'sand').layers.reduce((sum, layer) => sum + layer.thicknessM, 0)
    const half = sharedWall(plan, 'sand').layers.reduce((sum, layer) => sum + layer.thicknessM, 0)
    expect(half).toBeCloseTo(whole / 2, 12)
    expect(whole).toBeCloseTo(0.225, 12)
  })
})

describe('a thick wall with its face brought at once to a temperature', () => {
  // Carslaw & Jaeger, Conduction of Heat in Solids: T = T0 + ΔT · erfc(x / (2 √(α t))); heat taken in 2 · λ · ΔT · √(t / (π α)).
  const layer: SlabLayer = { thicknessM: 1.2, conductivityWmK: 1.2, densityKgM3: 1800, heatJkgK: 1000 }
  const wall: Slab = { layers: [layer], outsideFilmWm2K: 0 }
  const alpha = 1.2 / (1800 * 1000)
  const seconds = 4 * 3600
  const run = conduct(wall, [{ hours: 4, gasDegC: 120, insideFilmWm2K: 1e9 }], { airDegC: 20, start: 20 })
  it('warms by the complementary error function at every depth', () => {
    const sizeM = 1.2 / run.temperatures.length
    const off = Array.from(run.temperatures, (found, cell) => {
      const depthM = (cell + 0.5) * sizeM
      const exact = 20 + 100 * (1 - erf(depthM / (2 * Math.sqrt(alpha * seconds))))
      return Math.abs(found - exact)
    })
    expect(Math.max(...off)).toBeLessThan(0.02)
  })
  it('takes in the heat of the closed form', () => {
    const exact = 2 * 1.2 * 100 * Math.sqrt(seconds / (Math.PI * alpha))
    expect(Math.abs(run.inJm2 / exact - 1)).toBeLessThan(0.002)
  })
})

describe('a thin plate that is of one temperature throughout', () => {
  // Newton's cooling: T = Tg + (T0 − Tg) · exp(−h t / (ρ c d)), for a Biot number near zero.
  it('warms exponentially', () => {
    const plate: Slab = {
      layers: [{ thicknessM: 0.004, conductivityWmK: 400, densityKgM3: 8000, heatJkgK: 400 }],
      outsideFilmWm2K: 0,
    }
    const run = conduct(plate, [{ hours: 0.5, gasDegC: 100, insideFilmWm2K: 15 }], {
      airDegC: 20,
      start: 20,
      stepS: 10,
    })
    const exact = 100 - 80 * Math.exp((-15 * 1800) / (8000 * 400 * 0.004))
    expect(run.temperatures[0] ?? 0).toBeCloseTo(exact, 1)
  })
})

describe('order of the scheme', () => {
  const wall: Slab = {
    layers: [brick(0.05), { thicknessM: 0.06, conductivityWmK: 0.35, densityKgM3: 1600, heatJkgK: 800 }, brick(0.05)],
    outsideFilmWm2K: 10,
  }
  const phases = [
    { hours: 2, gasDegC: 90, insideFilmWm2K: 20 },
    { hours: 4, gasDegC: 60, insideFilmWm2K: 20 },
  ]
  const face = (cellM: number, stepS: number) => {
    const run = conduct(wall, phases, { airDegC: 30, start: 30, cellM, stepS, everyS: 6 * 3600 })
    return run.moments.at(-1)?.outsideFaceDegC ?? Number.NaN
  }
  const orderOf = (coarse: number, middle: number, fine: number) => Math.log2((coarse - middle) / (middle - fine))
  it('is two when cells and steps are halved together', () => {
    const order = orderOf(face(0.01, 480), face(0.005, 240), face(0.0025, 120))
    expect(order).toBeGreaterThan(1.8)
    expect(order).toBeLessThan(2.3)
  })
  it('is two in space', () => {
    const order = orderOf(face(0.01, 30), face(0.005, 30), face(0.0025, 30))
    expect(order).toBeGreaterThan(1.9)
    expect(order).toBeLessThan(2.1)
  })
  it('leaves less than a tenth of a kelvin at the usual cell and step', () => {
    expect(Math.abs(face(0.005, 60) - face(0.00125, 15))).toBeLessThan(0.1)
  })
})
