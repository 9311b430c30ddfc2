import { showNumber } from './locale.ts'
import { readNumber } from './read-number.ts'
import type { Figure, Show } from './show.ts'

/** Exact by definition (international yard and pound agreement, 1959). */
const POUND_KG = 0.45359237

/** A mass as this reader wants it: more places the smaller it is. */
export function showMass(massKg: number, show: Pick<Show, 'mass'>): Figure {
  const amount = show.mass === 'lb' ? massKg / POUND_KG : massKg
  const size = Math.abs(amount)
  return { figure: showNumber(amount, size >= 100 ? 0 : size >= 10 ? 1 : 2), unit: show.mass }
}

const UNIT_KG: Readonly<Record<string, number>> = { g: 0.001, kg: 1, t: 1000, lb: POUND_KG, lbs: POUND_KG }

/** What someone typed as a mass, in kg; a unit written beside the number goes first. */
export function readMass(typed: string, show: Pick<Show, 'mass'>): number | null {
  const [, amount = '', unit = show.mass] = /^(.*?)\s*(kg|g|lbs?|t)?\.?$/i.exec(typed.trim()) ?? []
  const value = readNumber(amount)
  const unitKg = UNIT_KG[unit.toLowerCase()]
  return value === null || unitKg === undefined ? null : value * unitKg
}
