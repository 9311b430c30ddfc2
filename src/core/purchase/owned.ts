import { byText } from '../basics/order.ts'
import type { Plan } from '../plan/schema.ts'
import type { ItemKey } from '../quantities/items.ts'
import { offerFits } from '../quantities/variant.ts'

/** Pieces at hand of one size: stock that costs nothing, and no more of it than there is. */
export interface OwnedStock {
  readonly key: string
  readonly lengthM: number
  /** 0 for boards and bars. */
  readonly widthM: number
  readonly available: number
}

/** What the plan says is at hand of an item, in the order of ids so that every phone cuts the same. */
export const ownedOf = (plan: Plan, item: ItemKey): readonly OwnedStock[] =>
  Object.entries(plan.trays.owned)
    .filter(([, one]) => offerFits(plan, item, one))
    .toSorted(([a], [b]) => byText(a, b))
    .map(([id, { lengthM, widthM, count }]) => ({ key: `owned ${id}`, lengthM, widthM, available: count }))
