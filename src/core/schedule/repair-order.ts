import { sumOf, type Derived } from '../basics/derived.ts'
import type { TrayFrame } from '../fish/tray-frame.ts'
import type { Plan } from '../plan/schema.ts'
import { purchase, type Purchase } from '../purchase/purchase.ts'
import { trayRepairNeeds, type TrayRepair } from './upkeep.ts'

/** A list for the market to mend trays, apart from the list that the kiln was built from. */
export interface RepairOrder {
  readonly purchase: Purchase
  /** Priced lines together. */
  readonly cost: Derived<'money'>
  /** Lines without a price: their cost is not in the sum. */
  readonly unpriced: number
}

/** Boards, mesh, sheets and fixings for so many trays, squares of mesh and covers, cut anew at today's offers and from what is at hand. */
export function repairOrder(plan: Plan, tray: TrayFrame, repair: TrayRepair): RepairOrder {
  const bought = purchase(plan, trayRepairNeeds(plan, tray, repair))
  const priced = bought.lines.flatMap(({ cost }) => (cost === null ? [] : [cost]))
  return {
    purchase: bought,
    cost: sumOf('repair.cost', 'money', priced),
    unpriced: bought.lines.length - priced.length,
  }
}
