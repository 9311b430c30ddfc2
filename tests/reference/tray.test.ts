import { describe, expect, it } from 'vitest'
import { cited } from '../../src/core/basics/derived.ts'
import { nailsPerKg } from '../../src/core/fish/tray-fixings.ts'
import { trayFrame } from '../../src/core/fish/tray-frame.ts'
import type { Plan } from '../../src/core/plan/schema.ts'
import { plainPlan } from '../core/fish/plans.ts'

const withTrays = (plan: Plan, clearSideM: number, widthM: number, trays: Partial<Plan['trays']>): Plan => ({
  ...plan,
  chambers: { count: 1, clearSideM },
  walls: { ...plan.walls, unit: { ...plan.walls.unit, widthM } },
  trays: { ...plan.trays, ...trays },
})

describe('common practice for one chamber of 1.00 m overall and 160 mm walls', () => {
  const frame = () =>
    trayFrame(withTrays(plainPlan(), 1 - 2 * 0.16, 0.16, { railThicknessM: 0.02, setbackM: 0.03, handleM: 0.12 }))
  it('makes a frame 780 mm square', () => expect(frame().side.value).toBeCloseTo(0.78, 12))
  it('bears 50 mm on each wall', () => expect(frame().bearing.value).toBeCloseTo(0.05, 12))
  it('runs its handles to 1,020 mm, 10 mm beyond each outer face', () => {
    expect(frame().throughRail.value).toBeCloseTo(1.02, 12)
    expect((frame().throughRail.value - 1) / 2).toBeCloseTo(0.01, 12)
  })
  it('has no timber over the fire, and says so', () => {
    expect(frame().inner.value).toBeCloseTo(0.68 + 2 * 0.03, 12)
    expect(frame().findings.some((one) => one.kind === 'trays-seat' && one.level === 'good')).toBe(true)
  })
})

describe('a loaded tray: 0.92 m frame of 50 × 50 timber at 600 kg/m³, 1 kg of mesh, 18 kg of fish', () => {
  // Recomputed by hand from the tray described in FAO Fisheries and Aquaculture Technical Paper 535: 4 rails of 0.92 m butted, 3.48 m × 0.0025 m² × 600.
  it('weighs 24.2 kg', () => {
    const wireM = 0.001
    const pitchM = 2 * 0.92 ** 2 * ((Math.PI * wireM ** 2) / 4) * 7850
    const plan = withTrays(plainPlan(), 0.76, 0.225, {
      railThicknessM: 0.05,
      railDepthM: 0.05,
      setbackM: 0.03,
      handleM: 0,
      battens: 0,
      meshLapM: 0.05,
      meshWireM: wireM,
      meshPitchM: pitchM,
    })
    const frame = trayFrame({ ...plan, catch: { ...plan.catch, loading: 'packed', loadKgPerTray: 18 } })
    expect(frame.side.value).toBeCloseTo(0.92, 12)
    expect(frame.mass.mesh.value).toBeCloseTo(1, 9)
    expect(Math.abs(frame.mass.loaded.value - 24.2)).toBeLessThan(0.05)
  })
})

describe('mesh for 7 trays of 1.24 m', () => {
  // FAO Fisheries and Aquaculture Technical Paper 535, table 15: 8.68 m net.
  it('is 8.68 m of roll', () => {
    const plan = withTrays(plainPlan(), 1.14, 0.225, { setbackM: 0.03, meshLapM: 0.02, perChamber: 7, spares: 0 })
    const frame = trayFrame(plan)
    expect(frame.mesh.value * frame.count.value).toBeCloseTo(8.68, 9)
  })
})

describe('wire nails in a kilogram', () => {
  // IS 723, table of wire nails: 1.25 × 20 mm, about 5069 per kg.
  it('is about 5069 for 1.25 × 20 mm', () => {
    const count = nailsPerKg(cited('nail-diameter', 'm', 0.00125, 'is-723'), cited('nail-length', 'm', 0.02, 'is-723'))
    expect(Math.abs(count.value - 5069) / 5069).toBeLessThan(0.001)
  })
})

describe('beams', () => {
  // Simple beam under an even load, any strength-of-materials text: 5 w L⁴ / (384 E I); by hand for one rail: w = 100 N/m, L = 0.78 m, 20 × 60 mm, E = 8 GPa → 0.16735 mm.
  it('sags as the text says', () => {
    const plan = withTrays(plainPlan(), 0.68, 0.16, {})
    const frame = trayFrame(plan)
    const perMetre = (9.80665 * frame.mass.loaded.value) / 2 / 0.78
    expect(frame.strength.railSag.value).toBeCloseTo((0.16735e-3 * perMetre) / 100, 7)
  })
})
