import type { Offer } from '../plan/schema.ts'

export type SellerKind = Offer['seller']
export type LotName = Offer['lotName']
export type ItemUnit = 'piece' | 'kg' | 'm' | 'm2' | 'm3' | 'l' | 'day'

export interface Item {
  /** The item's own unit: needs and purchases are counted in it, and lot sizes too but for rolls and sheets, whose lot is a length of a width. */
  readonly unit: ItemUnit
  readonly seller: SellerKind
  /** The lot taken where the plan holds no offer: the usual one of the trade, common practice. */
  readonly lotSize: number
  readonly lotName: LotName
  /** Width of a roll or sheet, m. */
  readonly widthM?: number
  /** Lots are found by laying out the cuts, not by dividing amounts. */
  readonly cut?: 'lengths' | 'roll' | 'sheets'
  /** Usually had for nothing where the kiln stands: listed as shown, bought only where the plan holds an offer. */
  readonly free?: boolean
}

/** Everything that a kiln can need, by the key that needs, offers and spending share. */
export const ITEMS = {
  'wall-unit': { unit: 'piece', seller: 'block-maker', lotSize: 1, lotName: 'piece' },
  'lining-brick': { unit: 'piece', seller: 'block-maker', lotSize: 1, lotName: 'piece' },
  cement: { unit: 'kg', seller: 'hardware', lotSize: 50, lotName: 'bag' },
  sand: { unit: 'm3', seller: 'sand-stone', lotSize: 0.5, lotName: 'm3' },
  stone: { unit: 'm3', seller: 'sand-stone', lotSize: 0.5, lotName: 'm3' },
  hardcore: { unit: 'm3', seller: 'sand-stone', lotSize: 0.5, lotName: 'm3' },
  clay: { unit: 'm3', seller: 'sand-stone', lotSize: 0.5, lotName: 'm3' },
  water: { unit: 'l', seller: 'sand-stone', lotSize: 1, lotName: 'piece', free: true },
  bar: { unit: 'm', seller: 'hardware', lotSize: 6, lotName: 'length', cut: 'lengths' },
  angle: { unit: 'm', seller: 'hardware', lotSize: 6, lotName: 'length', cut: 'lengths' },
  'damp-course': { unit: 'm', seller: 'hardware', lotSize: 1, lotName: 'metre' },
  rail: { unit: 'm', seller: 'timber', lotSize: 3.6, lotName: 'length', cut: 'lengths' },
  mesh: { unit: 'm2', seller: 'hardware', lotSize: 1, lotName: 'metre', widthM: 0.9, cut: 'roll' },
  'cover-sheet': { unit: 'm2', seller: 'timber', lotSize: 2.44, lotName: 'sheet', widthM: 1.22, cut: 'sheets' },
  'cover-board': { unit: 'm', seller: 'timber', lotSize: 3.6, lotName: 'length', widthM: 0.15, cut: 'lengths' },
  nails: { unit: 'kg', seller: 'hardware', lotSize: 0.5, lotName: 'kg' },
  staples: { unit: 'kg', seller: 'hardware', lotSize: 0.5, lotName: 'kg' },
  'roof-post': { unit: 'm', seller: 'timber', lotSize: 3.6, lotName: 'length', cut: 'lengths' },
  'roof-rafter': { unit: 'm', seller: 'timber', lotSize: 3.6, lotName: 'length', cut: 'lengths' },
  'roof-sheet': { unit: 'piece', seller: 'hardware', lotSize: 1, lotName: 'sheet' },
  'roof-nails': { unit: 'kg', seller: 'hardware', lotSize: 0.5, lotName: 'kg' },
  'roof-strap': { unit: 'piece', seller: 'hardware', lotSize: 1, lotName: 'piece' },
  mason: { unit: 'day', seller: 'labour', lotSize: 1, lotName: 'day' },
  labourer: { unit: 'day', seller: 'labour', lotSize: 1, lotName: 'day' },
  carpenter: { unit: 'day', seller: 'labour', lotSize: 1, lotName: 'day' },
} as const satisfies Record<string, Item>

export type ItemKey = keyof typeof ITEMS
/** The keys of all items, in the order of the list. */
export const ITEM_KEYS = Object.keys(ITEMS) as readonly ItemKey[]
/** Whether a text names an item of the list. */
export const isItemKey = (text: string): text is ItemKey => Object.hasOwn(ITEMS, text)

/** The item's entry by its key, in the general shape. */
export const itemOf = (key: ItemKey): Item => ITEMS[key]
