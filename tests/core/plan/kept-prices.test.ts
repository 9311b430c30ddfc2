import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { priceTable, readPriceTable } from '../../../src/core/documents/price-table.ts'
import { bookOf, bookPriceSchema, pricesToKeep, withPrices, type KeptPrice } from '../../../src/core/plan/price-book.ts'
import type { Offer } from '../../../src/core/plan/schema.ts'
import { examplePlan } from '../costs/plans.ts'

const GHS = { code: 'GHS', digits: 2 }
const XOF = { code: 'XOF', digits: 0 }
const cement: Offer = {
  item: 'cement',
  lotSize: 50,
  lotName: 'bag',
  priceMinor: 10_450,
  seller: 'hardware',
  sellerName: 'Corner',
  place: '',
  seen: '2026-11-01',
  leastLots: 1,
  transportMinor: 0,
  tripLots: 0,
  widthM: 0,
  chosen: false,
}
const kept = (id: string, offer: Offer, currency = GHS): KeptPrice => ({ id, currency, offer })
const same = (id: string) => id

describe('the price book of a phone', () => {
  it('takes a later price of the same seller in place of the earlier, and never an earlier one', () => {
    const known = [kept('a', cement)]
    const later = { ...cement, priceMinor: 10_900, seen: '2026-11-20' }
    const earlier = { ...cement, priceMinor: 9000, seen: '2026-05-20' }
    expect(pricesToKeep(known, GHS, { new: later }, same)).toEqual([kept('a', later)])
    expect(pricesToKeep(known, GHS, { new: earlier }, same)).toEqual([])
    expect(pricesToKeep(known, GHS, { new: { ...cement } }, same)).toEqual([])
  })

  it('keeps another seller, another lot and another currency beside it, and forgets what was chosen in a plan', () => {
    const known = [kept('a', cement)]
    const other = { ...cement, sellerName: 'Market row', chosen: true }
    expect(pricesToKeep(known, GHS, { b: other }, same)).toEqual([kept('b', { ...other, chosen: false })])
    expect(pricesToKeep(known, GHS, { c: { ...cement, lotSize: 25 } }, same)).toHaveLength(1)
    expect(pricesToKeep(known, XOF, { d: cement }, same)).toEqual([kept('d', cement, XOF)])
  })

  it('gives a plan only what is in its own currency, and keeps what the plan chose', () => {
    const plan = { ...examplePlan('two-chambers'), offers: { mine: { ...cement, chosen: true } } }
    const book = [kept('x', { ...cement, priceMinor: 11_000, seen: '2026-11-20' }), kept('y', cement, XOF)]
    const taken = withPrices(plan, bookOf('', plan.currency, book))
    expect(taken.ok && taken.value.offers).toEqual({
      mine: { ...cement, priceMinor: 11_000, seen: '2026-11-20', chosen: true },
    })
    expect(withPrices(plan, bookOf('', XOF, book)).ok).toBe(false)
  })

  it('gives back through a table whatever it holds', () => {
    const label = fc.string({ maxLength: 80 }).map((text) => text.trim())
    const offer = fc.record({
      item: fc.constantFrom('cement', 'mesh', 'rail', 'wall-unit', 'sand'),
      lotSize: fc.integer({ min: 1, max: 100_000 }).map((n) => n / 100),
      lotName: fc.constantFrom('bag', 'roll', 'length', 'piece', 'm3'),
      priceMinor: fc.option(fc.integer({ min: 0, max: 1e9 })),
      seller: fc.constantFrom('hardware', 'timber', 'labour'),
      sellerName: label,
      place: label,
      seen: fc.constantFrom(null, '2026-02-28'),
      leastLots: fc.integer({ min: 1, max: 99 }),
      transportMinor: fc.integer({ min: 0, max: 1e6 }),
      tripLots: fc.integer({ min: 0, max: 99 }),
      widthM: fc.constantFrom(0, 0.9, 1.22),
      chosen: fc.constant(false),
    }) as fc.Arbitrary<Offer>
    fc.assert(
      fc.property(offer, fc.constantFrom(0, 2, 3), (one, digits) => {
        const currency = { code: 'TND', digits }
        const prices = [kept('1', one, currency)]
        expect(bookPriceSchema.safeParse({ currency, offer: one }).success).toBe(true)
        const { book, problems } = readPriceTable(priceTable(bookOf('', currency, prices)), 'b', currency, () => '1')
        expect(problems).toEqual([])
        expect(book.offers).toEqual({ 1: one })
      }),
      { numRuns: 300 },
    )
  })
})
