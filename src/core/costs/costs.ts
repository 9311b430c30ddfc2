import { sumOf, type Derived } from '../basics/derived.ts'
import type { Offer } from '../plan/schema.ts'
import type { PurchaseLine } from '../purchase/line.ts'
import { sectionCosts, type SectionCost } from './sections.ts'
import type { Totals } from './totals.ts'

export interface SellerCost {
  readonly seller: Offer['seller']
  readonly sellerName: string
  readonly lines: readonly PurchaseLine[]
  readonly cost: Derived<'money'>
  /** Lines without a price: their cost is not in the sum. */
  readonly unpriced: number
}

/** The totals told apart by part of the kiln and by seller. */
export interface Costs extends Totals {
  readonly sections: readonly SectionCost[]
  readonly sellers: readonly SellerCost[]
}

/**
 * The totals with their lines told apart by part of the kiln and by seller; each way adds up to the same subtotal in
 * minor units.
 */
export const costs = (totals: Totals, lines: readonly PurchaseLine[]): Costs => ({
  ...totals,
  sections: sectionCosts(lines),
  sellers: sellerCosts(lines),
})

function sellerCosts(lines: readonly PurchaseLine[]): SellerCost[] {
  const groups = new Map<string, PurchaseLine[]>()
  for (const line of lines) {
    const key = `${line.seller}\n${line.sellerName}`
    const group = groups.get(key)
    if (group === undefined) groups.set(key, [line])
    else group.push(line)
  }
  return [...groups.values()].map((group) => {
    const [first] = group
    if (first === undefined) throw new Error('a seller without lines')
    const { seller, sellerName } = first
    const priced = group.flatMap(({ cost }) => (cost === null ? [] : [cost]))
    return {
      seller,
      sellerName,
      lines: group,
      cost: sumOf('cost.seller', 'money', priced, {
        args: { seller: sellerName === '' ? `seller.${seller}` : sellerName },
      }),
      unpriced: group.length - priced.length,
    }
  })
}
