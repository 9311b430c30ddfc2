import { separators } from './locale.ts'

const SPACES = /[\s\u00a0\u202f'’_]/g

/**
 * What someone typed as a number, or null where it is none. Comma and point are both taken for the decimal mark, whatever the locale,
 * except where a mark can only group thousands: it occurs more than once, or it is this locale's group mark in front of exactly three digits.
 */
export function readNumber(typed: string): number | null {
  const text = typed.replace(SPACES, '').replace('−', '-').replace(/^\+/, '')
  if (!/^-?[\d.,]*\d[\d.,]*$/.test(text)) return null
  const marks = text.match(/[.,]/g) ?? []
  const plain = marks.length === 0 ? text : withPoint(text, marks)
  return plain === null || !/^-?\d*\.?\d+$|^-?\d+\.$/.test(plain) ? null : Number(plain)
}

function withPoint(text: string, marks: readonly string[]): string | null {
  const last = marks.at(-1) ?? '.'
  const other = last === ',' ? '.' : ','
  const isMixed = marks.includes(other)
  const repeats = marks.filter((mark) => mark === last).length > 1
  if (isMixed && repeats) return null
  if (isMixed)
    return ungrouped(text.slice(0, text.lastIndexOf(last)), other, `.${text.slice(text.lastIndexOf(last) + 1)}`)
  if (repeats) return ungrouped(text, last, '')
  if (last === separators().group && /^-?[1-9]\d{0,2}[.,]\d{3}$/.test(text)) return text.replace(last, '')
  return text.replace(last, '.')
}

/** Thousands in groups of three, or null: 1,23,4 is a slip and not a number. */
function ungrouped(whole: string, mark: string, fraction: string): string | null {
  const groups = whole.split(mark)
  const sound = /^-?\d{1,3}$/.test(groups[0] ?? '') && groups.slice(1).every((group) => group.length === 3)
  return sound ? groups.join('') + fraction : null
}
