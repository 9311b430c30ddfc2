import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { counted } from '../../../src/core/basics/derived.ts'
import type { Firing, Plan, Upkeep } from '../../../src/core/plan/schema.ts'
import { fishLoad } from '../../../src/core/fish/load.ts'
import { trayFrame } from '../../../src/core/fish/tray-frame.ts'
import { firingTimetable } from '../../../src/core/fish/timetable.ts'
import { firingAccount, missingPrices } from '../../../src/core/schedule/firing-account.ts'
import { firingLog } from '../../../src/core/schedule/firing-log.ts'
import { payback } from '../../../src/core/schedule/payback.ts'
import { todaysLoad } from '../../../src/core/schedule/todays-load.ts'
import { repairNeeds, upkeepDue } from '../../../src/core/schedule/upkeep.ts'
import { workOut } from '../../../src/core/work-out.ts'
import { wrongWorkings } from '../fish/check-working.ts'
import { anyPlan, plainPlan } from '../fish/plans.ts'

const firing = (day: string, change: Partial<Firing> = {}): Firing => ({
  day,
  freshKg: 60,
  productKg: 17,
  woodKg: 30,
  hours: 12,
  fishCostMinor: 100,
  woodCostMinor: 10,
  otherCostMinor: 5,
  salesMinor: 200,
  note: '',
  ...change,
})
const upkeep = (day: string, part: Upkeep['part'], bad: number, mended = false): Upkeep => ({
  day,
  part,
  mended,
  bad,
  costMinor: null,
  note: '',
})
const running = (run: Partial<Plan['run']>): Plan => {
  const plan = plainPlan()
  return { ...plan, run: { ...plan.run, ...run } }
}
const priced = { freshPriceMinor: 500, woodPriceMinor: 50, smokedPriceMinor: 3000, otherCostMinor: 2000 }

describe('timetable', () => {
  it('brings every tray near the fire while it cooks, keeps all trays, and ends after the hours of the plan', () => {
    fc.assert(
      fc.property(anyPlan, fc.double({ min: 0.25, max: 12, noNaN: true }), (plan, cookHours) => {
        const steps = firingTimetable({ ...plan, firing: { ...plan.firing, cookHours } })
        const trays = Array.from({ length: plan.trays.perChamber }, (_, index) => index + 1)
        expect(steps.filter((step) => step.order.toSorted((a, b) => a - b).join() !== trays.join())).toEqual([])
        const times = steps.map((step) => step.atHours)
        expect(times).toEqual(times.toSorted((a, b) => a - b))
        expect(times.at(-1)).toBeCloseTo(0.5 + cookHours + plan.firing.dryHours, 9)
        const turns = steps.filter((step) => step.stage === 'cook' && step.action === 'turn')
        const moved = turns[0]?.moves ?? trays.length
        const near = new Set(
          steps.filter((step) => step.stage === 'cook').flatMap((step) => step.order.slice(0, moved)),
        )
        expect(near.size).toBe(trays.length)
      }),
    )
  })
  // International Labour Office, Small-scale processing of fish, 1982, ch. II: trays are turned about every 45 minutes while cooking.
  it('turns trays every 45 minutes', () => {
    const turns = firingTimetable(plainPlan()).filter((step) => step.action === 'turn' && step.stage === 'cook')
    expect(turns.map((step) => step.atHours)).toEqual([1.25, 2])
  })
})

describe('today’s load', () => {
  it('holds all of today’s fish in its trays and firings, and one fewer does not', () => {
    fc.assert(
      fc.property(anyPlan, fc.double({ min: 1, max: 3000, noNaN: true }), (plan, fresh) => {
        const load = fishLoad(plan)
        const today = todaysLoad(plan, load, fresh)
        const room = today.trays.value * load.perTray.value
        expect(room).toBeGreaterThanOrEqual(today.dried.dressed.value * (1 - 1e-8))
        expect(room - load.perTray.value).toBeLessThan(today.dried.dressed.value * (1 + 1e-8))
        expect(today.firings.value * plan.chambers.count * plan.trays.perChamber).toBeGreaterThanOrEqual(
          today.trays.value,
        )
        expect(wrongWorkings(today)).toEqual([])
      }),
    )
  })
})

describe('too much fish today', () => {
  it('is told by how much', () => {
    const plan = plainPlan()
    const load = fishLoad(plan)
    const found = todaysLoad(plan, load, load.freshPerDay.value + 25).findings
    expect(found.map((one) => one.kind)).toEqual(['today-too-much'])
    expect(found[0]?.args['over']).toMatchObject({ value: expect.closeTo(25, 6) as number })
    expect(todaysLoad(plan, load, load.freshPerDay.value).findings).toEqual([])
  })
})

describe('log of firings', () => {
  it('stands in order of days whatever the order of writing', () => {
    const firings = { c: firing('2026-03-02'), a: firing('2026-03-03'), b: firing('2026-03-02') }
    expect(firingLog(running({ firings })).firings.map((one) => one.id)).toEqual(['b', 'c', 'a'])
  })
  it('says nothing about what was not weighed or paid, and counts it nowhere', () => {
    const firings = {
      a: firing('2026-03-01', { productKg: null, woodKg: null, salesMinor: null }),
      b: firing('2026-03-02'),
    }
    const log = firingLog(running({ firings }))
    expect(log.firings[0]).toMatchObject({ yieldOfFresh: null, woodPerFresh: null, woodPerProduct: null, net: null })
    expect([log.product.value, log.wood.value, log.net.value, log.netOf]).toEqual([17, 30, 85, 1])
    expect(wrongWorkings(log)).toEqual([])
  })
  it('keeps an entry that cannot be and says so', () => {
    const log = firingLog(running({ firings: { a: firing('2026-03-01', { productKg: 70 }), b: firing('2026-03-02') } }))
    expect(log.findings.map((one) => [one.kind, one.args['day']])).toEqual([['more-out-than-in', '2026-03-01']])
    expect(log.firings).toHaveLength(2)
  })
  it('tells a wet or a burnt-up firing from the expected', () => {
    const plan = running({
      firings: {
        a: firing('2026-03-01', { productKg: 30, woodKg: 90 }),
        b: firing('2026-03-02', { productKg: 12, woodKg: 10 }),
        c: firing('2026-03-03', { productKg: 16, woodKg: 30 }),
      },
    })
    const log = firingLog(plan).firings.map((one) => [one.yieldIs, one.woodIs])
    expect(log).toEqual([
      ['above', 'above'],
      ['below', 'below'],
      ['within', 'within'],
    ])
  })
})

describe('money', () => {
  it('waits for the prices it wants and names them', () => {
    const plan = running({ freshPriceMinor: 500 })
    expect(missingPrices(plan)).toEqual(['run.woodPriceMinor', 'run.smokedPriceMinor', 'run.otherCostMinor'])
    const { product, fresh } = fishLoad(plan).fullFiring
    expect(firingAccount(plan, { fresh, product, wood: product })).toBeNull()
  })
  it('pays back after as many firings as bring the cost, and one fewer does not', () => {
    const plan = running(priced)
    const worked = workOut(plan)
    const cost = { ...worked.costs, total: counted('cost.total', 'money', 100_000) }
    const paid = payback(plan, worked.fish, cost, 'high')
    const net = paid?.account.net.value ?? 0
    const count = paid?.firings?.value ?? 0
    expect(count * net).toBeGreaterThanOrEqual(100_000)
    expect((count - 1) * net).toBeLessThan(100_000)
    expect(wrongWorkings(paid ?? {})).toEqual([])
  })
  it('never pays back where a firing leaves nothing', () => {
    const plan = running({ ...priced, smokedPriceMinor: 100 })
    const worked = workOut(plan)
    expect(payback(plan, worked.fish, worked.costs, 'low')?.firings).toBeNull()
  })
})

describe('upkeep', () => {
  it('falls due from the last look, or from the first day of use', () => {
    const plan = running({ upkeep: { a: upkeep('2026-05-01', 'trays', 2) } })
    const due = upkeepDue(plan, '2026-04-01', '2026-06-10')
    expect(due.find((one) => one.part === 'trays')).toMatchObject({
      lastDay: '2026-05-01',
      dueDay: '2026-05-31',
      late: 10,
      bad: 2,
    })
    expect(due.find((one) => one.part === 'hearth')).toMatchObject({
      lastDay: '2026-04-01',
      dueDay: '2026-04-08',
      late: 63,
    })
    expect(due.map((one) => one.late)).toEqual(due.map((one) => one.late).toSorted((a, b) => (b ?? 0) - (a ?? 0)))
  })
  it('leaves out parts that the kiln has not', () => {
    const plan = plainPlan()
    const bare = { ...plan, walls: { ...plan.walls, liningM: 0, fill: 'none' as const } }
    expect(upkeepDue(bare, null, '2026-06-10').filter((one) => one.part === 'lining' || one.part === 'fill')).toEqual(
      [],
    )
  })
  it('buys for what is broken and not yet mended', () => {
    const plan = running({
      upkeep: {
        a: upkeep('2026-05-01', 'trays', 5),
        b: upkeep('2026-05-02', 'trays', 0, true),
        c: upkeep('2026-06-01', 'trays', 3),
        d: upkeep('2026-06-01', 'cover', 1),
        e: upkeep('2026-06-02', 'walls', 2),
      },
    })
    const needs = repairNeeds(plan, trayFrame(plan))
    const rails = needs.find((one) => one.item === 'rail')
    expect(rails?.pieces?.find((piece) => piece.label === 'piece.through-rail')?.count).toBe(6)
    expect(needs.find((one) => one.item === 'cover-sheet')?.pieces?.[0]?.count).toBe(1)
    expect(needs.some((one) => one.item === 'cement' && one.gross.value > 0)).toBe(true)
    expect(wrongWorkings(needs)).toEqual([])
    expect(repairNeeds(plainPlan(), trayFrame(plainPlan()))).toEqual([])
  })
})
