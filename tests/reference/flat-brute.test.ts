import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cases } from '../laws/cases.ts'
import type { Offer, Plan } from '../../src/core/plan/schema.ts'
import { rememberingMasonry, workOut } from '../../src/core/work-out.ts'
import { examplePlan } from '../core/costs/plans.ts'

// Least cost by trying every way to share the pieces among the offers, written from the shop's terms alone. No row of equal squares holds more than
// width / side of them and no sheet more than (length / side) · (width / side), rounded down: lines one side apart each way meet every square.

const masonry = rememberingMasonry(8)
const base: Plan = { ...examplePlan('two-chambers'), offers: {} }
const market = (item: 'mesh' | 'cover-sheet') =>
  fc.record({
    lotSize: fc.constantFrom(...(item === 'mesh' ? [1, 5, 10, 25] : [1.22, 1.83, 2.44])),
    widthM: fc.constantFrom(...(item === 'mesh' ? [0.9, 1, 1.2, 1.8] : [0.92, 1.22])),
    priceMinor: fc.integer({ min: 100, max: 9000 }),
    leastLots: fc.constantFrom(1, 1, 3),
    transportMinor: fc.constantFrom(0, 0, 700),
    tripLots: fc.constantFrom(0, 2),
    isRoll: fc.boolean(),
  })
type Terms = ReturnType<typeof market> extends fc.Arbitrary<infer T> ? T : never

const paid = (lots: number, { priceMinor, leastLots, transportMinor, tripLots }: Terms): number => {
  if (lots === 0) return 0
  const taken = Math.max(lots, leastLots)
  return taken * priceMinor + transportMinor * (tripLots === 0 ? 1 : Math.ceil(taken / tripLots))
}

/** Whole parts of a length, where a length that is a hair short by the machine's rounding counts as whole. */
const whole = (of: number, by: number): number => Math.floor(of / by + 1e-9)
const up = (of: number): number => Math.ceil(of - 1e-9)

function leastCost(pieces: number, terms: readonly Terms[], lotsFor: (n: number, one: Terms) => number): number {
  const [first, ...others] = terms
  if (first === undefined) return pieces === 0 ? 0 : Number.POSITIVE_INFINITY
  let least = Number.POSITIVE_INFINITY
  for (let taken = 0; taken <= pieces; taken++) {
    const lots = taken === 0 ? 0 : lotsFor(taken, first)
    if (lots === Number.POSITIVE_INFINITY) break
    least = Math.min(least, paid(lots, first) + leastCost(pieces - taken, others, lotsFor))
  }
  return least
}

const asOffers = (item: string, terms: readonly Terms[]): Plan['offers'] =>
  Object.fromEntries(
    terms.map(({ isRoll, ...one }, index): [string, Offer] => [
      `o${String(index)}`,
      {
        ...one,
        item,
        lotName: item === 'mesh' ? (isRoll ? 'roll' : 'metre') : 'sheet',
        seller: 'hardware',
        sellerName: '',
        place: '',
        seen: null,
        chosen: false,
      },
    ]),
  )

const bill = (plan: Plan, item: string): number => {
  const lines = workOut(plan, masonry).purchase.lines.filter((line) => line.item === item)
  expect(lines.length).toBeGreaterThan(0)
  return lines.reduce((sum, { cost }) => sum + (cost?.value ?? Number.NaN), 0)
}

describe('mesh and covers cost the least that any sharing among the offers costs', () => {
  it('squares of mesh from rolls and by the metre', () => {
    fc.assert(
      fc.property(
        fc.array(market('mesh'), { minLength: 1, maxLength: 3 }),
        fc.integer({ min: 1, max: 6 }),
        (terms, perChamber) => {
          const plan = { ...base, trays: { ...base.trays, perChamber }, offers: asOffers('mesh', terms) }
          const { tray } = workOut(plan, masonry)
          const side = tray.mesh.value
          const lotsFor = (n: number, { lotSize, widthM, isRoll }: Terms) => {
            const rows = Math.ceil(n / whole(widthM, side))
            if (!isRoll) return up((rows * side) / lotSize)
            const inOne = whole(lotSize, side)
            return inOne === 0 ? Number.POSITIVE_INFINITY : Math.ceil(rows / inOne)
          }
          expect(bill(plan, 'mesh')).toBe(leastCost(tray.count.value, terms, lotsFor))
        },
      ),
      { numRuns: cases(120) },
    )
  }, 300_000)

  it('covers from sheets', () => {
    fc.assert(
      fc.property(
        fc.array(market('cover-sheet'), { minLength: 1, maxLength: 3 }),
        fc.integer({ min: 1, max: 8 }),
        (terms, count) => {
          const plan: Plan = {
            ...base,
            chambers: { ...base.chambers, count },
            trays: { ...base.trays, cover: 'sheet', kerfM: 0 },
            offers: asOffers('cover-sheet', terms),
          }
          const side = workOut(plan, masonry).tray.side.value
          const lotsFor = (n: number, { lotSize, widthM }: Terms) =>
            Math.ceil(n / (whole(lotSize, side) * whole(widthM, side)))
          expect(bill(plan, 'cover-sheet')).toBe(leastCost(count, terms, lotsFor))
        },
      ),
      { numRuns: cases(120) },
    )
  }, 300_000)
})
