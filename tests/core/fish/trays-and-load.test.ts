import { describe, expect, it } from 'vitest'
import { chambersFor, fishLoad } from '../../../src/core/fish/load.ts'
import { trayFrame } from '../../../src/core/fish/tray-frame.ts'
import type { Plan } from '../../../src/core/plan/schema.ts'
import { plainPlan } from './plans.ts'

const plan = plainPlan()
const withTrays = (trays: Partial<Plan['trays']>): Plan => ({ ...plan, trays: { ...plan.trays, ...trays } })
const withCatch = (fish: Partial<Plan['catch']>): Plan => ({ ...plan, catch: { ...plan.catch, ...fish } })
const kindsOf = (of: Plan) => trayFrame(of).findings.map((one) => one.kind)

describe('corner joints', () => {
  // Joinery: two through rails; a butted cross rail stands between them, a lapped one enters half a rail at each end, a half-lapped one reaches the outside.
  it.each([
    ['butt', 0.78 - 2 * 0.02],
    ['lap', 0.78 - 0.02],
    ['half-lap', 0.78],
  ] as const)('%s makes cross rails of %d m', (corner, lengthM) => {
    expect(trayFrame(withTrays({ corner })).crossRail.value).toBeCloseTo(lengthM, 12)
  })
})

describe('the stack', () => {
  // FAO field reports: 4–5 trays in use, 8 usual, 15 at most.
  it.each([
    [8, []],
    [12, []],
    [13, ['stack-tall']],
    [15, ['stack-tall']],
    [16, ['stack-too-tall']],
  ])('of %d trays is told as %s', (perChamber, expected) => {
    const kinds = kindsOf(withTrays({ perChamber, railDepthM: 0.02 }))
    expect(kinds.filter((kind) => kind === 'stack-tall' || kind === 'stack-too-tall')).toEqual(expected)
  })
  it('that would be lifted above the shoulder is told', () => {
    expect(kindsOf(withTrays({ perChamber: 14, railDepthM: 0.06 }))).toContain('stack-over-shoulder')
    expect(kindsOf(withTrays({ perChamber: 8, railDepthM: 0.06 }))).not.toContain('stack-over-shoulder')
  })
})

describe('seating', () => {
  it('tells rails over the fire, frames over the edge, and trays that clash', () => {
    expect(kindsOf(withTrays({ setbackM: 0 }))).toContain('rail-over-fire')
    expect(kindsOf(withTrays({ setbackM: 0.005 }))).toContain('rail-near-fire')
    expect(kindsOf(withTrays({ setbackM: 0.13 }))).toContain('tray-over-edge')
    expect(kindsOf(withTrays({ setbackM: 0.06 }))).toContain('trays-clash')
    expect(kindsOf({ ...withTrays({ setbackM: 0.06 }), chambers: { ...plan.chambers, count: 1 } })).not.toContain(
      'trays-clash',
    )
  })
  it('tells handles too short to grip and handles over the wall', () => {
    expect(kindsOf(withTrays({ handleM: 0.08 }))).toContain('handle-short')
    const thick = { ...plan, walls: { ...plan.walls, unit: { ...plan.walls.unit, widthM: 0.3 } } }
    expect(kindsOf(thick)).toContain('handle-inside')
  })
})

describe('mesh', () => {
  it('under packed fish wants more battens than under a single layer', () => {
    const packed = { ...plan, catch: { ...plan.catch, loading: 'packed' as const, loadKgPerTray: 18 } }
    const remedy = trayFrame(packed).findings.find((one) => one.kind === 'mesh-sags')?.remedies[0]
    expect(kindsOf(plan)).not.toContain('mesh-sags')
    expect(remedy?.set).toEqual({ 'trays.battens': 2 })
    const { mostSpan, span, meshSag } = trayFrame(packed).strength
    expect(meshSag.value * (mostSpan.value / span.value) ** 4).toBeCloseTo(0.25 * plan.trays.railDepthM, 12)
  })
})

describe('two ways of loading', () => {
  // International Labour Office, Small-scale processing of fish, 1982, ch. II: 6–8 kg on a square metre of mesh in a single layer; small fish packed up to 18 kg a tray.
  it('are never mixed: a single layer goes by the mesh, packed fish by the tray', () => {
    const single = fishLoad(withCatch({ loading: 'single-layer', loadKgPerM2: 7, loadKgPerTray: 18 }))
    const packed = fishLoad(withCatch({ loading: 'packed', loadKgPerM2: 7, loadKgPerTray: 18 }))
    expect(single.perTray.value).toBeCloseTo(7 * 0.74 ** 2, 12)
    expect(packed.perTray.value).toBe(18)
  })
})

describe('the catch', () => {
  it('is carried by the best season, and the lean one says how full it leaves the kiln', () => {
    // By hand: 288 kg packed 18 to a tray is 16 trays, two chambers of eight; the lean day's 36 kg fills 36 / 288 of them.
    const load = fishLoad(
      withCatch({ loading: 'packed', loadKgPerTray: 18, freshKgPerDay: 100, peakKgPerDay: 288, leanKgPerDay: 36 }),
    )
    expect([load.traysNeeded.value, load.chambersNeeded.value]).toEqual([16, 2])
    expect(load.seasons.map((one) => [one.season, one.fullness.value])).toEqual([
      ['usual', 100 / 288],
      ['peak', 1],
      ['lean', 0.125],
    ])
    expect(load.trade.slice(0, 3)).toEqual([
      { chambers: 1, traysPerChamber: 16, level: 'too-tall' },
      { chambers: 2, traysPerChamber: 8, level: 'usual' },
      { chambers: 3, traysPerChamber: 6, level: 'usual' },
    ])
  })
  it('takes half the trays in two firings', () => {
    const once = withCatch({ loading: 'packed', loadKgPerTray: 18, freshKgPerDay: 576 })
    const twice = withCatch({ loading: 'packed', loadKgPerTray: 18, freshKgPerDay: 576, firingsPerDay: 2 })
    expect([chambersFor(once).count, chambersFor(twice).count]).toEqual([4, 2])
  })
  it('loaded outside what was published is told, each way by its own figures', () => {
    const kinds = (of: Partial<Plan['catch']>) => fishLoad(withCatch(of)).findings.map((one) => one.kind)
    expect(kinds({ loading: 'single-layer', loadKgPerM2: 9 })).toContain('layer-load')
    expect(kinds({ loading: 'single-layer', loadKgPerM2: 7, loadKgPerTray: 30 })).not.toContain('packed-heavy')
    expect(kinds({ loading: 'packed', loadKgPerTray: 19 })).toContain('packed-heavy')
    expect(kinds({ loading: 'packed', loadKgPerTray: 18, loadKgPerM2: 12 })).not.toContain('layer-load')
  })
  // FAO wood-fuel tables: 14.72 MJ/kg at 20 % moisture, 10.44 at 40 %: 29.1 % less.
  it('dried with wet wood is told how much heat is lost', () => {
    const wet = { ...plan, firing: { ...plan.firing, woodMoisture: 0.4 } }
    const told = fishLoad(wet).findings.find((one) => one.kind === 'wood-wet')
    expect(Number(told?.args['less'])).toBeCloseTo(1 - 10.44 / 14.72, 9)
  })
  it('too large for any kiln of the plan is told so', () => {
    expect(chambersFor(withCatch({ freshKgPerDay: 5000 }))).toEqual({ count: 8, carries: false })
  })
  it('with crossing seasons or more firings than a day holds is told', () => {
    const kinds = fishLoad(withCatch({ peakKgPerDay: 10, leanKgPerDay: 99, firingsPerDay: 4 })).findings.map(
      (one) => one.kind,
    )
    expect(kinds).toEqual(expect.arrayContaining(['peak-below-usual', 'lean-above-usual', 'firings-over-day']))
  })
})
