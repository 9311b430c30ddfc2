import { lotsFor } from '../basics/count.ts'
import { byText } from '../basics/order.ts'
import { variantOf } from '../quantities/variant.ts'
import type { ItemKey } from '../quantities/items.ts'
import type { WorkedOut } from '../work-out.ts'

/** One thing to buy for several kilns together. */
export interface BulkLine {
  readonly item: ItemKey
  /** The make, where the item comes in several: the wall unit's key, the timber's section. */
  readonly variant: string
  readonly unit: string
  readonly gross: number
  readonly lotSize: number
  readonly widthM: number
  /** Whole lots when every kiln buys for itself, and when they buy together. */
  readonly lotsApart: number
  readonly lotsTogether: number
}

/**
 * The order of an office for many kilns: needs of the same item, make and lot put together before they are rounded up to lots.
 * What is cut from lengths or laid out on a roll keeps the lots of each kiln: their offcuts lie in different yards.
 */
export function bulkOrder(kilns: readonly WorkedOut[]): BulkLine[] {
  const lines = new Map<string, BulkLine>()
  for (const { plan, purchase } of kilns)
    for (const { item, covers, lotSize, lots, widthM } of purchase.lines) {
      const variant = variantOf(plan, item)
      const key = [item, variant, lotSize.value, widthM].join(' ')
      const before = lines.get(key)
      const gross = (before?.gross ?? 0) + covers.value
      const lotsApart = (before?.lotsApart ?? 0) + lots.value
      const isCut = purchase.cutting.has(item) || widthM > 0
      lines.set(key, {
        item,
        variant,
        unit: covers.unit,
        gross,
        lotSize: lotSize.value,
        widthM,
        lotsApart,
        lotsTogether: isCut ? lotsApart : lotsFor(gross, lotSize.value),
      })
    }
  return [...lines.values()].toSorted((a, b) => byText(a.item, b.item) || a.lotSize - b.lotSize)
}
