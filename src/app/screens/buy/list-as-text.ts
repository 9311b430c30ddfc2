import type { WorkedOut } from '../../../core/work-out.ts'
import { showDay } from '../../words/dates.ts'
import type { Words } from '../../words/words.ts'
import { itemName, lotsText, lotText } from './line-text.ts'

/** The list for the market as plain text for a message: by seller, one line for each thing, the total last. */
export function listAsText({ plan, list }: WorkedOut, words: Words, atMs: number): string {
  const { say, named, money } = words
  const lines = [
    `${plan.name}${plan.example ? ` ${say('print.example')}` : ''}`,
    `${say('print.title')}, ${showDay(atMs)}`,
  ]
  for (const { seller, sellerName, rows } of list.groups) {
    lines.push('', sellerName === '' ? named(`seller.${seller}`) : `${named(`seller.${seller}`)}, ${sellerName}`)
    for (const row of rows) {
      const lot = lotText(row, words)
      const thing = `${lotsText(row, words)} × ${itemName(row.item, plan, words)}${lot === '' ? '' : `, ${lot}`}`
      lines.push(`- ${thing}: ${row.cost === null ? say('print.no-price') : money(row.cost.value)}`)
    }
  }
  lines.push('', `${say(list.unpriced === 0 ? 'print.total' : 'print.total-so-far')}: ${money(list.total.value)}`)
  return lines.join('\n').replaceAll('\u00a0', ' ')
}
