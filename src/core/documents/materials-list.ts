import type { Derived } from '../basics/derived.ts'
import type { Costs } from '../costs/costs.ts'
import type { Offer } from '../plan/schema.ts'
import type { ItemTotal, PurchaseLine } from '../purchase/line.ts'
import type { Purchase } from '../purchase/purchase.ts'

/** The list that goes to market: one group for each seller to be asked, in the order of a morning's errands, then what is fetched for nothing. */
export interface MaterialsList {
  readonly groups: readonly MaterialsGroup[]
  readonly free: readonly ItemTotal[]
  readonly subtotal: Derived<'money'>
  readonly contingency: Derived<'money'>
  readonly total: Derived<'money'>
  /** Lines without a price; the total does not know them. */
  readonly unpriced: number
}

export interface MaterialsGroup {
  readonly seller: Offer['seller']
  readonly sellerName: string
  readonly rows: readonly PurchaseLine[]
  readonly cost: Derived<'money'>
  readonly unpriced: number
}

const ERRANDS: readonly Offer['seller'][] = ['block-maker', 'hardware', 'timber', 'sand-stone', 'labour']

/** What to take to each seller, and what costs nothing. */
export const materialsList = (bought: Pick<Purchase, 'free'>, costs: Costs): MaterialsList => ({
  groups: costs.sellers
    .map(({ lines, ...group }) => ({ ...group, rows: lines }))
    .toSorted((a, b) => ERRANDS.indexOf(a.seller) - ERRANDS.indexOf(b.seller)),
  free: bought.free,
  subtotal: costs.subtotal,
  contingency: costs.contingency,
  total: costs.total,
  unpriced: costs.unpriced.length,
})
