import type { Offer, Plan } from '../../../core/plan/schema.ts'
import { itemOf, type ItemKey } from '../../../core/quantities/items.ts'
import { variantOf } from '../../../core/quantities/variant.ts'
import { todayIso } from '../../words/dates.ts'

/** The usual lot of a thing, seen today and without a price. */
export function firstOffer(key: ItemKey): Offer {
  const { lotSize, lotName, seller, widthM = 0 } = itemOf(key)
  return {
    item: key,
    lotSize,
    lotName,
    priceMinor: null,
    seller,
    sellerName: '',
    place: '',
    seen: todayIso(),
    leastLots: 1,
    transportMinor: 0,
    tripLots: 0,
    widthM,
    chosen: false,
  }
}

/** The same of the make that a plan takes, to begin from. */
export function usualOffer(plan: Plan, key: ItemKey): Offer {
  const variant = variantOf(plan, key)
  return { ...firstOffer(key), ...(variant !== '' && { variant }) }
}
