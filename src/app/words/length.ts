import { showMeasure, showNumber } from './locale.ts'
import { readNumber } from './read-number.ts'
import type { Figure, Show } from './show.ts'

/** Exact by definition (international yard and pound agreement, 1959): 1 ft is 0.3048 m, 1 in is 0.0254 m. */
export const FOOT_M = 0.3048
export const INCH_M = 0.0254

const MM_M = 0.001
const CM_M = 0.01
/** From here a length in millimetres or centimetres is easier read in metres. */
const LONG_M = 10
/** The finest line on a carpenter's inch tape. */
const PER_INCH = 16

/** A length as this reader wants it. `exact` keeps one more place, for what was typed. */
export function showLength(lengthM: number, show: Pick<Show, 'length'>, exact = false): Figure {
  const more = exact ? 1 : 0
  switch (show.length) {
    case 'mm':
      if (Math.abs(lengthM) >= LONG_M && !exact) return { figure: showNumber(lengthM, 2), unit: 'm' }
      return { figure: showMeasure(lengthM / MM_M, 1 + more), unit: 'mm' }
    case 'cm':
      if (Math.abs(lengthM) >= LONG_M && !exact) return { figure: showNumber(lengthM, 2), unit: 'm' }
      return { figure: showMeasure(lengthM / CM_M, 1 + more), unit: 'cm' }
    case 'm':
      return { figure: showNumber(lengthM, 3 + more, 2), unit: 'm' }
    case 'ft-in':
      return { figure: feetAndInches(lengthM), unit: '' }
    default:
      return show.length satisfies never
  }
}

/** 0.6985 m is 2 ft 3 1/2 in: to the nearest sixteenth of an inch, in lowest terms. Short, as a mason writes it on a drawing: 2′ 3 1/2″. */
export function feetAndInches(lengthM: number, isShort = false): string {
  const sixteenths = Math.round((Math.abs(lengthM) / INCH_M) * PER_INCH)
  const feet = Math.floor(sixteenths / (12 * PER_INCH))
  const inches = Math.floor(sixteenths / PER_INCH) % 12
  const rest = sixteenths % PER_INCH
  const [foot, inch] = isShort ? ['′', '″'] : ['\u00a0ft', '\u00a0in']
  const words: string[] = []
  if (feet > 0) words.push(`${showNumber(feet)}${foot}`)
  const part = rest === 0 ? '' : lowestTerms(rest)
  if (inches > 0 || rest > 0 || feet === 0)
    words.push(`${[inches > 0 || rest === 0 ? String(inches) : '', part].filter(Boolean).join('\u00a0')}${inch}`)
  return (lengthM < 0 && sixteenths > 0 ? '−' : '') + words.join('\u00a0')
}

function lowestTerms(rest: number): string {
  let [over, under] = [rest, PER_INCH]
  while (over % 2 === 0) [over, under] = [over / 2, under / 2]
  return `${String(over)}/${String(under)}`
}

const UNIT_M: Readonly<Record<string, number>> = {
  mm: MM_M,
  cm: CM_M,
  m: 1,
  ft: FOOT_M,
  foot: FOOT_M,
  feet: FOOT_M,
  "'": FOOT_M,
  '’': FOOT_M,
  '′': FOOT_M,
  in: INCH_M,
  inch: INCH_M,
  inches: INCH_M,
  '"': INCH_M,
  '”': INCH_M,
  '″': INCH_M,
}

/** A whole or decimal number, thousands perhaps set off by a space. */
const NUMBER = String.raw`[\d.,]+(?:\s\d{3}(?![\d/]))*`
/** One amount at the start of the text: `3 1/2`, `1/2` or `3.5`, and the unit beside it. */
const ONE = new RegExp(
  String.raw`^(?:(?:(${NUMBER})[\s-]+)?(\d+)\s*/\s*(\d+)|(${NUMBER}))\s*(mm|cm|m|ft|foot|feet|inches|inch|in|['’′"”″])?`,
  'i',
)

/**
 * What someone typed as a length, in metres: a bare number is in the unit the reader chose (feet and inches: feet when alone, then inches),
 * a unit written beside it goes first; `2 ft 3 1/2 in`, `2' 3.5"`, `0,68 m`, `68 cm`. Null where it is no length.
 */
export function readLength(typed: string, show: Pick<Show, 'length'>): number | null {
  let rest = typed.trim().replace('−', '-')
  const isBelow = rest.startsWith('-')
  if (isBelow) rest = rest.slice(1)
  let totalM = 0
  let last: number | null = null
  while (rest !== '') {
    const [all, before, over, under, alone, name] = ONE.exec(rest) ?? []
    if (all === undefined) return null
    const whole = before ?? alone
    const unitM: number | undefined = name === undefined ? bareUnit(show, last) : UNIT_M[name.toLowerCase()]
    const amount = whole === undefined ? 0 : readNumber(whole)
    if (amount === null || unitM === undefined || amount < 0 || (last !== null && unitM >= last)) return null
    const fraction = over === undefined ? 0 : Number(over) / Number(under)
    if (!Number.isFinite(fraction)) return null
    totalM += (amount + fraction) * unitM
    last = unitM
    rest = rest.slice(all.length).trim()
  }
  return last === null ? null : isBelow ? -totalM : totalM
}

function bareUnit(show: Pick<Show, 'length'>, last: number | null): number {
  if (last === FOOT_M) return INCH_M
  switch (show.length) {
    case 'mm':
      return MM_M
    case 'cm':
      return CM_M
    case 'm':
      return 1
    case 'ft-in':
      return FOOT_M
    default:
      return show.length satisfies never
  }
}
