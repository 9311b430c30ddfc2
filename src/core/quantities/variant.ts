import { wholeNear } from '../basics/count.ts'
import type { Offer, Plan } from '../plan/schema.ts'
import type { ItemKey } from './items.ts'

/**
 * Which make of an item a plan takes, where the price hangs on it: the wall unit by its key, tray timber by its section in millimetres.
 * Empty where the item is the same in every plan.
 */
export function variantOf({ walls, trays }: Plan, item: ItemKey): string {
  if (item === 'wall-unit') return walls.unit.key
  if (item === 'rail') return `${millimetres(trays.railThicknessM)}x${millimetres(trays.railDepthM)}`
  return ''
}

const millimetres = (lengthM: number): string => String(wholeNear(lengthM * 1000))

/** Is an offer, or a thing at hand, for what this plan takes? One that names no make is for any. */
export const offerFits = (plan: Plan, item: ItemKey, offer: Pick<Offer, 'item' | 'variant'>): boolean =>
  offer.item === item &&
  (offer.variant === undefined || offer.variant === '' || offer.variant === variantOf(plan, item))
