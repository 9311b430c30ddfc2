import { wholeNear } from '../basics/count.ts'
import { byText } from '../basics/order.ts'
import type { Plan } from '../plan/schema.ts'
import { purchase } from '../purchase/purchase.ts'
import type { ItemKey } from '../quantities/items.ts'
import type { Need } from '../quantities/need.ts'
import { totals } from './totals.ts'

/** How far the total moves when every price of one item falls or rises by a share, minor units. */
export interface PriceSwing {
  readonly item: ItemKey
  readonly lowMinor: number
  readonly highMinor: number
  /** From the low end to the high end: the longest bar matters most. */
  readonly spanMinor: number
}

/**
 * What matters most: each item's prices moved by ± a share (a fifth unless told), all else as it is, bought anew at the least cost. Longest
 * swing first.
 */
export function priceSwings(plan: Plan, needs: readonly Need[], share = 0.2): readonly PriceSwing[] {
  const bought = purchase(plan, needs, { tidyNodes: 0 })
  const priced = new Set(bought.lines.flatMap(({ item, price }) => (price === null ? [] : [item])))
  return [...priced]
    .map((item): PriceSwing => {
      const lowMinor = totalWith(plan, needs, item, 1 - share)
      const highMinor = totalWith(plan, needs, item, 1 + share)
      return { item, lowMinor, highMinor, spanMinor: highMinor - lowMinor }
    })
    .toSorted((a, b) => b.spanMinor - a.spanMinor || byText(a.item, b.item))
}

function totalWith(plan: Plan, needs: readonly Need[], item: ItemKey, by: number): number {
  const offers = Object.fromEntries(
    Object.entries(plan.offers).map(([id, offer]) => [
      id,
      offer.item === item && offer.priceMinor !== null
        ? { ...offer, priceMinor: wholeNear(offer.priceMinor * by) }
        : offer,
    ]),
  )
  const moved = { ...plan, offers }
  return totals(moved, purchase(moved, needs, { tidyNodes: 0 }).lines).total.value
}
