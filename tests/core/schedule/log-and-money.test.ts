import { describe, expect, it } from 'vitest'
import { cited, counted } from '../../../src/core/basics/derived.ts'
import { drying } from '../../../src/core/fish/drying.ts'
import { firingHours, firingTime } from '../../../src/core/fish/timetable.ts'
import { airFindings } from '../../../src/core/heat/air-findings.ts'
import { bothAllow } from '../../../src/core/heat/agreement.ts'
import { fuel } from '../../../src/core/heat/fuel.ts'
import type { Firing, Plan } from '../../../src/core/plan/schema.ts'
import { openMoneyByPrices } from '../../../src/core/schedule/firing-account.ts'
import { firingLog } from '../../../src/core/schedule/firing-log.ts'
import { paidBack, payback } from '../../../src/core/schedule/payback.ts'
import { workOut } from '../../../src/core/work-out.ts'
import { wrongWorkings } from '../fish/check-working.ts'
import { plainPlan } from '../fish/plans.ts'

const firing = (day: string, change: Partial<Firing> = {}): Firing => ({
  day,
  freshKg: 100,
  productKg: 30,
  woodKg: 50,
  hours: 12,
  fishCostMinor: 1000,
  woodCostMinor: 100,
  otherCostMinor: 50,
  salesMinor: 1400,
  note: '',
  ...change,
})
const running = (run: Partial<Plan['run']>, build: Partial<Plan['build']> = {}): Plan => {
  const plan = plainPlan()
  return { ...plan, run: { ...plan.run, ...run }, build: { ...plan.build, ...build } }
}

describe('the log over all its firings', () => {
  // By hand: 30 + 20 of 100 + 100 weighed; 50 + 30 of 100 + 60 with wood. The third was not weighed, the second has no wood.
  it('sets product and wood against the fish of the firings that were weighed', () => {
    const log = firingLog(
      running({
        firings: {
          a: firing('2026-03-01'),
          b: firing('2026-03-02', { productKg: 20, woodKg: null }),
          c: firing('2026-03-03', { freshKg: 60, productKg: null, woodKg: 30 }),
        },
      }),
    )
    expect(log.yieldOfFresh?.value).toBeCloseTo(50 / 200, 12)
    expect(log.woodPerFresh?.value).toBeCloseTo(80 / 160, 12)
    expect(wrongWorkings(log)).toEqual([])
  })
  it('says nothing while nothing is weighed', () => {
    const log = firingLog(running({ firings: { a: firing('2026-03-01', { productKg: null, woodKg: null }) } }))
    expect([log.yieldOfFresh, log.woodPerFresh]).toEqual([null, null])
  })
  // FAO Technical Paper 535, table 9: a third of a kilogram to one kilogram of wood for a kilogram of fresh fish.
  it('expects the wood of the published accounts', () => {
    const { expectedWood } = firingLog(running({}))
    expect(expectedWood.low.value).toBeCloseTo(100 / 300, 9)
    expect(expectedWood.high.value).toBeCloseTo(150 / 150, 9)
  })
  // Dry matter stays (ILO 1982): 100 kg at 75 % water hold 25 kg of it, 25 / 0.95 at 5 % water and 25 / 0.9 at 10 %.
  it('expects the yield of the product’s own range of water', () => {
    const plan = running({ firings: { a: firing('2026-03-01') } })
    const fish = { ...plan.catch, moistureFresh: 0.75, moistureFinal: 0.1, dressingLoss: 0 }
    const expected = firingLog({ ...plan, catch: fish }).firings[0]?.expectedYield
    expect(expected?.low.value).toBeCloseTo(0.25 / 0.95, 9)
    expect(expected?.high.value).toBeCloseTo(0.25 / 0.9, 9)
  })
})

describe('days of the log that cross', () => {
  const kindsOf = (day: string, build: Partial<Plan['build']> = {}) =>
    firingLog(running({ firings: { a: firing(day) } }, build), '2026-06-01').findings.map(({ kind }) => kind)
  it('are told and kept', () => {
    expect(kindsOf('2026-05-31')).toEqual([])
    expect(kindsOf('2026-06-02')).toEqual(['firing-to-come'])
    expect(kindsOf('2026-02-31')).toEqual(['firing-no-such-day'])
    expect(kindsOf('2026-03-01', { startDay: '2026-03-02' })).toEqual(['firing-before-building'])
  })
})

describe('money still open in a firing', () => {
  const prices = { freshPriceMinor: 10, woodPriceMinor: 3, smokedPriceMinor: 50, otherCostMinor: 200 }
  it('is filled in by the prices, and what was typed stands', () => {
    const open = firing('2026-03-01', { fishCostMinor: null, woodCostMinor: null, salesMinor: null })
    expect(openMoneyByPrices(running(prices), open)).toEqual({
      fishCostMinor: 1000,
      woodCostMinor: 150,
      salesMinor: 1500,
    })
  })
  it('stays open where a price or a mass is missing', () => {
    const open = firing('2026-03-01', { fishCostMinor: null, salesMinor: null, productKg: null })
    expect(openMoneyByPrices(running({ ...prices, freshPriceMinor: null }), open)).toEqual({})
  })
})

describe('paid back by the log', () => {
  const costs = { total: counted('cost.total', 'money', 1000) }
  // By hand: each firing leaves 1400 − 1000 − 100 − 50 = 250; 1000 − 500 = 500 to go, two more.
  it('counts what is left and how many more like those', () => {
    const log = firingLog(running({ firings: { a: firing('2026-03-01'), b: firing('2026-03-02') } }))
    const back = paidBack(log, costs)
    expect([back?.left.value, back?.mean.value, back?.more?.value]).toEqual([500, 250, 2])
    expect(wrongWorkings(back ?? {})).toEqual([])
  })
  it('owes nothing more once the cost is back, and never less than nothing', () => {
    const log = firingLog(running({ firings: { a: firing('2026-03-01', { salesMinor: 9000 }) } }))
    expect(paidBack(log, costs)).toMatchObject({ left: { value: 0 }, more: { value: 0 } })
  })
  it('has no number of firings where they leave nothing, and nothing to say without money', () => {
    expect(paidBack(firingLog(running({ firings: { a: firing('2026-03-01', { salesMinor: 0 }) } })), costs)?.more).toBe(
      null,
    )
    expect(paidBack(firingLog(running({})), costs)).toBeNull()
  })
  it('puts every cost on a kilogram of product: sold at that price a firing pays for itself and the kiln’s wear', () => {
    const plan = running({ freshPriceMinor: 500, woodPriceMinor: 50, smokedPriceMinor: 3000, otherCostMinor: 2000 })
    const worked = workOut(plan)
    const paid = payback(plan, worked.fish, worked.costs, 'high')
    const productKg = (paid?.account.sales.value ?? 0) / 3000
    const spent = (paid?.account.cost.value ?? 0) + (paid?.perKilogram.value ?? 0) * productKg
    expect(productKg).toBeGreaterThan(0)
    expect(Math.abs((paid?.costPerKilogram.value ?? 0) * productKg - spent)).toBeLessThan(1)
    expect(wrongWorkings(paid ?? {})).toEqual([])
  })
})

describe('wood by two routes', () => {
  const kg = (value: number) => cited('test', 'kg', value, 'memory')
  const energy = (value: number) => ({
    ...fuel(plainPlan(), drying(plainPlan(), kg(60))).byEnergy.low,
    wood: kg(value),
  })
  const met = (a: readonly [number, number], b: readonly [number, number]) => {
    const both = bothAllow({
      byRatio: { low: kg(a[0]), high: kg(a[1]) },
      byEnergy: { low: energy(b[0]), high: energy(b[1]) },
    })
    return both && [both.low.value, both.high.value]
  }
  it('meet where both allow it, whichever is the narrower', () => {
    expect(met([20, 60], [10, 50])).toEqual([20, 50])
    expect(met([20, 60], [30, 40])).toEqual([30, 40])
    expect(met([20, 30], [30, 40])).toEqual([30, 30])
    expect(met([20, 30], [31, 40])).toBeNull()
  })
})

describe('the air of the place', () => {
  const kinds = (firing_: Partial<Plan['firing']>) => {
    const plan = plainPlan()
    return airFindings({ ...plan, firing: { ...plan.firing, ...firing_ } }).map(({ kind }) => kind)
  }
  it('holds drying up where it is damp and hardly warmed, and not where it is dry and warmed well', () => {
    expect(kinds({ airDegC: 30, airHumidity: 1, dryDegC: 33 })).toEqual(['air-limits-drying'])
    expect(kinds({ airDegC: 30, airHumidity: 0.3, dryDegC: 60 })).toEqual(['air-dries'])
    expect(kinds({ dryHours: 0 })).toEqual([])
  })
})

describe('hours of a firing', () => {
  it('are half an hour to embers and the two stages', () => {
    const plan = plainPlan()
    const timed = { ...plan, firing: { ...plan.firing, cookHours: 2, dryHours: 10 } }
    expect([firingTime(timed).value, firingHours(timed)]).toEqual([12.5, 12.5])
    expect(wrongWorkings(firingTime(timed))).toEqual([])
  })
})
