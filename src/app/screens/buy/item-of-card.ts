import type { Plan } from '../../../core/plan/schema.ts'
import { isItemKey, type ItemKey } from '../../../core/quantities/items.ts'

/** The item that a card of the address is about: by its own name, or by one of its offers. */
export function itemOfCard(card: string | null, { offers }: Pick<Plan, 'offers'>): ItemKey | null {
  const [kind, key = ''] = (card ?? '').split(':')
  const item = kind === 'offer' ? offers[key]?.item : kind === 'item' ? key : undefined
  return item !== undefined && isItemKey(item) ? item : null
}
