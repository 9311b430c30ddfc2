import { counted } from '../../../core/basics/derived.ts'
import type { TableProblem } from '../../../core/documents/price-table.ts'
import { CATALOGUE_UNITS } from '../../../core/plan/catalogue.ts'
import type { Offer } from '../../../core/plan/schema.ts'
import { isItemKey, itemOf } from '../../../core/quantities/items.ts'
import type { Words } from '../../words/words.ts'
import { lotText } from '../buy/line-text.ts'

/** What is sold: the thing, and of wall units and rails which make or section. */
export function soldName({ item, variant = '' }: Pick<Offer, 'item' | 'variant'>, words: Words): string {
  const unit = CATALOGUE_UNITS.find(({ key }) => key === variant)
  if (item === 'wall-unit' && unit !== undefined)
    return `${words.named(`family.${unit.family}`)} ${words.sizes(unit.lengthM, unit.widthM, unit.heightM)}`
  const name = isItemKey(item) ? words.named(`item.${item}`) : item
  const section = /^(\d+)x(\d+)$/.exec(variant)
  if (section === null) return variant === '' ? name : `${name}, ${variant}`
  return `${name} ${words.sizes(Number(section[1]) / 1000, Number(section[2]) / 1000)}`
}

/** `GH₵ 104 / bag, 50 kg`: what one lot costs and what it holds. */
export function pricedLot(offer: Offer, words: Words): string {
  const own = isItemKey(offer.item) ? itemOf(offer.item).unit : 'piece'
  const unit = offer.widthM > 0 || own === 'm2' ? 'm' : own
  const size = lotText({ ...offer, lotSize: counted('buy.lot-size', unit, offer.lotSize) }, words)
  const price = offer.priceMinor === null ? words.say('prices.no-price') : words.money(offer.priceMinor)
  return `${price} / ${words.named(`lot.${offer.lotName}`, { count: 1 })}${size === '' ? '' : `, ${size}`}`
}

/** What is wrong with a line of a table, and where. */
export function tableProblemText({ kind, ...args }: TableProblem, { named }: Pick<Words, 'named'>): string {
  return named(`prices.problem.${kind}`, args)
}
