import type { Offer, Plan } from '../../../core/plan/schema.ts'
import { itemOf, type ItemKey } from '../../../core/quantities/items.ts'
import { variantOf } from '../../../core/quantities/variant.ts'
import { todayIso } from '../../words/dates.ts'

/** The usual lot of the trade as an offer without a price, to begin from. */
export function usualOffer(plan: Plan, key: ItemKey): Offer {
  const item = itemOf(key)
  const variant = variantOf(plan, key)
  return {
    item: key,
    ...(variant !== '' && { variant }),
    lotSize: item.lotSize,
    lotName: item.lotName,
    priceMinor: null,
    seller: item.seller,
    sellerName: '',
    place: '',
    seen: todayIso(),
    leastLots: 1,
    transportMinor: 0,
    tripLots: 0,
    widthM: item.widthM ?? 0,
    chosen: false,
  }
}
