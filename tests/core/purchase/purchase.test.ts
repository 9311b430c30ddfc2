import { describe, expect, it } from 'vitest'
import type { Plan } from '../../../src/core/plan/schema.ts'
import { offerFits, variantOf } from '../../../src/core/quantities/variant.ts'
import { workOut } from '../../../src/core/work-out.ts'
import { examplePlan, offered } from '../costs/plans.ts'

const base: Plan = { ...examplePlan('one-chamber'), offers: {} }
const linesOf = (item: string, offers: Plan['offers'], plan: Plan = base) =>
  workOut({ ...plan, offers }).purchase.lines.filter((line) => line.item === item)
const blocks = linesOf('wall-unit', {})[0]?.gross.value ?? Number.NaN
const cementKg = linesOf('cement', {})[0]?.gross.value ?? Number.NaN

describe('buying', () => {
  it('takes the usual lot where there is no offer, without a price', () => {
    const [line] = linesOf('cement', {})
    expect(line?.offerId).toBeNull()
    expect(line?.lotSize.value).toBe(50)
    expect(line?.lots.value).toBe(Math.ceil(cementKg / 50))
    expect(line?.cost).toBeNull()
  })

  it('takes the offer the user chose, though another is cheaper', () => {
    const offers = { cheap: offered('cement', 50, 10), dear: offered('cement', 50, 99, { chosen: true }) }
    expect(linesOf('cement', offers).map(({ offerId }) => offerId)).toEqual(['dear'])
    expect(
      linesOf('cement', { ...offers, dear: { ...offers.dear, chosen: false } }).map(({ offerId }) => offerId),
    ).toEqual(['cheap'])
  })

  it('passes over an offer without a price while another has one', () => {
    expect(
      linesOf('cement', { a: offered('cement', 50, null), b: offered('cement', 50, 70) }).map(({ offerId }) => offerId),
    ).toEqual(['b'])
    const [line] = linesOf('cement', { a: offered('cement', 40, null) })
    expect([line?.offerId, line?.lots.value, line?.cost]).toEqual(['a', Math.ceil(cementKg / 40), null])
  })

  it('orders no less than the seller’s least, and pays each trip', () => {
    const [line] = linesOf('wall-unit', {
      a: offered('wall-unit', 1, 7, { leastLots: 200, transportMinor: 1000, tripLots: 75 }),
    })
    expect(line?.lots.value).toBe(200)
    // 200 blocks in trips of 75 are three trips.
    expect(line?.carriage?.value).toBe(3000)
    expect(line?.cost?.value).toBe(200 * 7 + 3000)
    expect(line?.surplus.value).toBeCloseTo(200 - blocks, 9)
  })

  it('weighs a trip against a nearer, dearer seller', () => {
    const lots = Math.ceil(blocks)
    const far = offered('wall-unit', 1, 10, { transportMinor: 500 })
    const near = offered('wall-unit', 1, 10 + Math.ceil(500 / lots) + 1)
    expect(linesOf('wall-unit', { far, near }).map(({ offerId }) => offerId)).toEqual(['far'])
    const closer = offered('wall-unit', 1, 10 + Math.floor(499 / lots))
    expect(linesOf('wall-unit', { far, closer }).map(({ offerId }) => offerId)).toEqual(['closer'])
  })

  it('never prices one make by the offer for another', () => {
    const named = offered('wall-unit', 1, 10, { variant: 'earth-290-140-90' })
    expect(offerFits(base, 'wall-unit', named)).toBe(false)
    expect(linesOf('wall-unit', { named })[0]?.cost).toBeNull()
    expect(linesOf('wall-unit', { named: { ...named, variant: base.walls.unit.key } })[0]?.price?.value).toBe(10)
    expect(variantOf(base, 'rail')).toBe('20x60')
    const rail = offered('rail', 3.6, 10, { variant: '25x50' })
    expect(linesOf('rail', { rail })[0]?.cost).toBeNull()
  })

  it('says so where a piece is longer than all that is sold, and cuts the rest', () => {
    const worked = workOut({ ...base, offers: { short: offered('rail', 0.9, 10) } })
    const found = worked.findings.find(({ kind }) => kind === 'buy.piece-too-long')
    expect(found?.level).toBe('problem')
    // Rails with handles are 1.11 m; cross rails and battens of less than 0.9 m are cut all the same.
    expect(worked.purchase.lines.find(({ item }) => item === 'rail')?.lots.value).toBeGreaterThan(0)
  })

  it('lists water as fetched, and buys it only where somebody sells it', () => {
    expect(workOut(base).purchase.free.map(({ item }) => item)).toEqual(['water'])
    const { purchase } = workOut({ ...base, offers: { drum: offered('water', 200, 30) } })
    expect(purchase.free).toEqual([])
    expect(purchase.lines.find(({ item }) => item === 'water')?.cost?.value).toBeGreaterThan(0)
  })

  it('takes a whole roll where that is cheaper than metres, and counts whole rows out of each', () => {
    const side = workOut(base).tray.mesh.value
    const metre = offered('mesh', 1, 100, { lotName: 'metre', widthM: 0.9 })
    const roll = offered('mesh', 2, 150, { lotName: 'roll', widthM: 0.9 })
    const [line] = linesOf('mesh', { metre, roll })
    const rows = base.trays.perChamber
    const inRoll = Math.floor(2 / side)
    const rolls = Math.ceil(rows / inRoll)
    const metres = Math.ceil(rows * side)
    expect(line?.offerId).toBe(rolls * 150 < metres * 100 ? 'roll' : 'metre')
    expect(line?.lots.value).toBe(line?.offerId === 'roll' ? rolls : metres)
  })
})
