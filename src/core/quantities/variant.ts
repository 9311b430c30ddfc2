import { wholeNear } from '../basics/count.ts'
import type { Offer, Plan } from '../plan/schema.ts'
import type { ItemKey } from './items.ts'

/**
 * Which make of an item a plan takes, where the price hangs on it: the wall unit by its key, tray timber by its section in millimetres.
 * Empty where the item is the same in every plan.
 */
export function variantOf({ walls, trays }: Plan, item: ItemKey): string {
  switch (item) {
    case 'wall-unit':
      return walls.unit.key
    case 'rail':
      return `${String(wholeNear(trays.railThicknessM * 1000))}x${String(wholeNear(trays.railDepthM * 1000))}`
    default:
      return ''
  }
}

/** Is an offer for what this plan takes? One that names no make is for any. */
export const offerFits = (plan: Plan, item: ItemKey, offer: Offer): boolean =>
  offer.item === item &&
  (offer.variant === undefined || offer.variant === '' || offer.variant === variantOf(plan, item))
