import type { Plan } from '../../../core/plan/schema.ts'
import type { PurchaseLine } from '../../../core/purchase/line.ts'
import type { Words } from '../../words/words.ts'

/** The thing itself: wall units by their kind and size, everything else by its name. */
export function itemName(item: string, { walls: { unit } }: Plan, words: Words): string {
  if (item !== 'wall-unit') return words.named(`item.${item}`)
  return `${words.named(`family.${unit.family}`)} ${words.sizes(unit.lengthM, unit.widthM, unit.heightM)}`
}

/** The size of the lot it is sold in: `50 kg`, `3600 mm`, `900 mm wide`; nothing where the count says it. */
export function lotText(
  { lotName, lotSize, widthM }: Pick<PurchaseLine, 'lotName' | 'lotSize' | 'widthM'>,
  words: Words,
): string {
  if (lotName === 'kg' || lotName === 'm3' || lotName === 'day') return ''
  if (lotName === 'piece' && lotSize.value === 1) return ''
  if (lotName === 'metre') return widthM > 0 ? words.say('buy.wide', { width: words.length(widthM) }) : ''
  return widthM > 0 ? words.sizes(lotSize.value, widthM) : words.inLine(lotSize.value, lotSize.unit)
}

/** `2 bags`, `60`, `14 lengths`: how many lots, by what they are called. */
export function lotsText({ lots, lotName, lotSize, bought }: PurchaseLine, words: Words): string {
  const count = words.number(lots.value)
  if (lotName === 'piece' && lotSize.value === 1) return count
  if (lotName === 'kg' || lotName === 'm3') return words.inLine(bought.value, bought.unit)
  return `${count}\u00a0${words.named(`lot.${lotName}`, { count: lots.value })}`
}

/** Why so much: what the work needs, what is left over, and for what it is. */
export function whyText(line: PurchaseLine, words: Words): string {
  const { covers, surplus, needs } = line
  const needed = words.inLine(covers.value, covers.unit)
  const amounts =
    surplus.value > covers.value * 0.005
      ? words.say('buy.needed-over', { needed, over: words.inLine(surplus.value, surplus.unit) })
      : words.say('buy.needed', { needed })
  const uses = [...new Set(needs.map(({ use }) => words.named(`use.${use}`)))].join(', ')
  return `${amounts}, ${words.say('buy.for', { uses })}`
}
