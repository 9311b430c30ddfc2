import { separators } from './locale.ts'

/** Spaces and marks that group, and the unseen marks of direction that some locales put before a sign. */
const SPACES = /[\s\u00a0\u202f'’_\u061c\u200e\u200f]/g

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

/** Thousands in groups of three, or of two above the last three (12,34,567), or null: 1,23,4 is a slip and not a number. */
function ungrouped(whole: string, mark: string, fraction: string): string | null {
  const [first = '', ...groups] = whole.split(mark)
  const higher = groups.slice(0, -1)
  const isEven = [2, 3].some((size) => higher.every((group) => group.length === size))
  const isSound = /^-?\d{1,3}$/.test(first) && isEven && groups.at(-1)?.length === 3
  return isSound ? first + groups.join('') + fraction : null
}
