import { byText } from '../basics/order.ts'
import type { Offer, Plan } from '../plan/schema.ts'
import { isItemKey, itemOf, type ItemKey } from '../quantities/items.ts'
import { offerFits } from '../quantities/variant.ts'

/** A way to buy an item; `id` is null for the usual lot of the trade, taken where the plan holds no offer. */
export interface Terms {
  readonly id: string | null
  readonly lotSize: number
  readonly lotName: Offer['lotName']
  readonly widthM: number
  readonly priceMinor: number | null
  readonly seller: Offer['seller']
  readonly sellerName: string
  readonly leastLots: number
  readonly transportMinor: number
  readonly tripLots: number
}

/** The same terms with a price. */
export type PricedTerms = Terms & { readonly priceMinor: number }
/** Whether the price is known; an unknown one is never taken for nothing. */
export const isPriced = (terms: Terms): terms is PricedTerms => terms.priceMinor !== null

/** The offers that fit a plan by item, in the order of their ids, so that every phone meets them in the same order. */
export function offersByItem(plan: Plan): ReadonlyMap<string, readonly (readonly [string, Offer])[]> {
  const by = new Map<string, (readonly [string, Offer])[]>()
  for (const entry of inOrder(plan.offers)) {
    if (!isItemKey(entry[1].item) || !offerFits(plan, entry[1].item, entry[1])) continue
    const list = by.get(entry[1].item)
    if (list === undefined) by.set(entry[1].item, [entry])
    else list.push(entry)
  }
  return by
}

const ordered = new WeakMap<Plan['offers'], readonly (readonly [string, Offer])[]>()

/** Offers in the order of their ids; the same offers are sorted once, however many designs are priced by them. */
function inOrder(offers: Plan['offers']): readonly (readonly [string, Offer])[] {
  const known = ordered.get(offers)
  if (known !== undefined) return known
  const sorted = Object.entries(offers).toSorted(([a], [b]) => byText(a, b))
  ordered.set(offers, sorted)
  return sorted
}

/**
 * What may be bought: the offers the user chose, else all of them; of these the priced ones, else the first; and the usual lot of the trade
 * where there is no offer at all.
 */
export function termsFor(item: ItemKey, offers: readonly (readonly [string, Offer])[] | undefined): readonly Terms[] {
  if (offers === undefined || offers.length === 0) return [usualTerms(item)]
  const chosen = offers.filter(([, offer]) => offer.chosen)
  const open = (chosen.length > 0 ? chosen : offers).map(([id, offer]): Terms => asTerms(id, offer))
  const priced = open.filter(isPriced)
  return priced.length > 0 ? priced : open.slice(0, 1)
}

const asTerms = (id: string, offer: Offer): Terms => ({
  id,
  lotSize: offer.lotSize,
  lotName: offer.lotName,
  widthM: offer.widthM,
  priceMinor: offer.priceMinor,
  seller: offer.seller,
  sellerName: offer.sellerName,
  leastLots: offer.leastLots,
  transportMinor: offer.transportMinor,
  tripLots: offer.tripLots,
})

const usualTerms = (key: ItemKey): Terms => {
  const item = itemOf(key)
  return {
    id: null,
    lotSize: item.lotSize,
    lotName: item.lotName,
    widthM: item.widthM ?? 0,
    priceMinor: null,
    seller: item.seller,
    sellerName: '',
    leastLots: 1,
    transportMinor: 0,
    tripLots: 0,
  }
}
