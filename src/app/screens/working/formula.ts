import type { Derived } from '../../../core/basics/derived.ts'
import { say } from '../../words/catalogue.ts'

/** Functions of the formulas, as people say them. */
const SPOKEN = {
  ceil: 'sheet.round-up',
  floor: 'sheet.round-down',
  round: 'sheet.round',
  max: 'sheet.larger',
  min: 'sheet.smaller',
  sqrt: 'sheet.root',
} as const

const isSpoken = (name: string): name is keyof typeof SPOKEN => Object.hasOwn(SPOKEN, name)

const POWERS: Readonly<Record<string, string>> = { '2': '²', '3': '³', '4': '⁴' }

/** A formula with its signs as they are written by hand: × ÷ − and small powers. */
const written = (formula: string): string =>
  formula
    .replaceAll(/\s*[·*]\s*/g, '\u00a0× ')
    .replaceAll(/\s*\/\s*/g, '\u00a0÷ ')
    .replaceAll(/\^([234])/g, (_all, power: string) => POWERS[power] ?? power)
    .replaceAll(/\b(ceil|floor|round|max|min|sqrt)\(/g, (_all, name: string) =>
      isSpoken(name) ? `${say(SPOKEN[name])}\u00a0(` : `${name}(`,
    )

export const formulaInSymbols = (formula: string): string => written(formula)

/** The same with each symbol's number in its place. Names of functions and numbers of the formula stay. */
export function formulaInNumbers(
  { formula = '', inputs }: Pick<Derived, 'formula' | 'inputs'>,
  show: (input: Derived) => string,
): string {
  const marks: string[] = []
  // Numbers go in last, so that nothing inside them is taken for a sign of the formula.
  const marked = formula.replaceAll(/[\p{L}_][\p{L}\p{N}_]*/gu, (name) => {
    const input = Object.hasOwn(inputs, name) ? inputs[name] : undefined
    if (input === undefined) return name
    marks.push(show(input))
    return `\u0001${String(marks.length - 1)}\u0002`
  })
  // oxlint-disable-next-line no-control-regex
  return written(marked).replaceAll(/\u0001(\d+)\u0002/g, (_all, index: string) => marks[Number(index)] ?? '')
}
