import type { WorkedOut } from '../../../core/work-out.ts'
import { showDay } from '../../words/dates.ts'
import type { Words } from '../../words/words.ts'
import { itemName, lotsText, lotText } from './line-text.ts'

/** Longer messages are cut or refused by some messaging apps. */
const MOST_SIGNS = 4000

/** One seller's part of the list, or the total. */
interface Section {
  readonly name: string | null
  readonly lines: readonly string[]
}

const sizeOf = (lines: readonly string[]): number => lines.reduce((sum, line) => sum + line.length + 1, 0)

/**
 * The list for the market as plain text: by seller, one line for each thing, the total last. Where it is longer than a message holds it comes in several,
 * each with its head and its number, split between sellers; only a seller with more than a message's worth is split between lines, with the name again.
 */
export function listAsTexts(worked: WorkedOut, words: Words, atMs: number, most = MOST_SIGNS): string[] {
  const { say } = words
  const { plan } = worked
  const head = (part: string) => [
    `${plan.name}${plan.example ? ` ${say('print.example')}` : ''}`,
    `${say('print.title')}, ${showDay(atMs)}${part}`,
  ]
  const partText = (n: number, of: number) => `, ${say('buy.text-part', { n, of })}`
  const parts = packed(sectionsOf(worked, words), most - sizeOf(head(partText(99, 99))))
  return parts.map((lines, index) => {
    const part = parts.length === 1 ? '' : partText(index + 1, parts.length)
    return [...head(part), ...lines].join('\n').replaceAll('\u00a0', ' ')
  })
}

/** The whole list as one text, however long. */
export const listAsText = (worked: WorkedOut, words: Words, atMs: number): string =>
  listAsTexts(worked, words, atMs, Number.POSITIVE_INFINITY).join('\n')

function sectionsOf({ plan, list }: WorkedOut, words: Words): Section[] {
  const { say, named, money } = words
  const sellers = list.groups.map(({ seller, sellerName, rows }) => ({
    name: sellerName === '' ? named(`seller.${seller}`) : `${named(`seller.${seller}`)}, ${sellerName}`,
    lines: rows.map((row) => {
      const lot = lotText(row, words)
      const thing = `${lotsText(row, words)} × ${itemName(row.item, plan, words)}${lot === '' ? '' : `, ${lot}`}`
      return `- ${thing}: ${row.cost === null ? say('print.no-price') : money(row.cost.value)}`
    }),
  }))
  const total = `${say(list.unpriced === 0 ? 'print.total' : 'print.total-so-far')}: ${money(list.total.value)}`
  return [...sellers, { name: null, lines: [total] }]
}

/** Sections in as few messages as keep each within its room. */
function packed(sections: readonly Section[], room: number): string[][] {
  const parts: string[][] = [[]]
  for (const { name, lines } of sections) {
    const opening = name === null ? [''] : ['', name]
    const whole = [...opening, ...lines]
    const here = parts.at(-1) ?? []
    if (sizeOf(here) + sizeOf(whole) <= room) here.push(...whole)
    else if (sizeOf(whole) <= room) parts.push(whole)
    else {
      let open = [...opening]
      parts.push(open)
      for (const line of lines) {
        if (sizeOf(open) + line.length + 1 > room) {
          open = [...opening]
          parts.push(open)
        }
        open.push(line)
      }
    }
  }
  return parts.filter((part) => part.length > 0)
}
