import type { SourceId } from '../sources/sources.ts'
import type { Unit } from './unit.ts'

/**
 * A number that can say where it came from: what it is, in which unit, by which formula, from which other numbers, down to what was typed or published.
 *
 * `id` names it in the message catalogue (`working.<id>`), `args` fill its message. The formula is written with the symbols of `inputs`, in a form that
 * a general expression evaluator reads once · is * and − is -; a test evaluates every formula of every example so and compares it with `value`.
 */
export interface Derived<U extends Unit = Unit> {
  readonly id: string
  readonly args?: Readonly<Record<string, string | number>>
  readonly value: number
  readonly unit: U
  readonly formula?: string
  readonly inputs: Readonly<Record<string, Derived>>
  /** Where a figure or a method was published; 'common-practice' and 'memory' say so too. */
  readonly source?: SourceId
  /** The plan's field that holds a typed number, as a path with dots. */
  readonly field?: string
  /** True where the sum of many like things is meant and `inputs` lists the addends: shown as a written sum. */
  readonly addends?: boolean
}

type Args = Readonly<Record<string, string | number>>

const NONE: Readonly<Record<string, never>> = {}

/** What the user decided: it stands in a box on some screen, and `field` says in which. */
export const typed = <U extends Unit>(id: string, unit: U, value: number, field: string, args?: Args): Derived<U> =>
  args === undefined ? { id, value, unit, inputs: NONE, field } : { id, value, unit, inputs: NONE, field, args }

/** A figure taken from a source. */
export const cited = <U extends Unit>(id: string, unit: U, value: number, source: SourceId, args?: Args): Derived<U> =>
  args === undefined ? { id, value, unit, inputs: NONE, source } : { id, value, unit, inputs: NONE, source, args }

/** A figure that follows from placed things (a count, a measured solid), with no formula to show but a drawing to look at. */
export const counted = <U extends Unit>(id: string, unit: U, value: number, args?: Args): Derived<U> =>
  args === undefined ? { id, value, unit, inputs: NONE } : { id, value, unit, inputs: NONE, args }

interface Extras {
  readonly source?: SourceId
  readonly args?: Args
}

/**
 * A number worked out from others. `compute` and `formula` say the same thing, once to the machine and once to the reader;
 * `tests/laws/working.test.ts` holds them together.
 */
export function derive<U extends Unit, const I extends Readonly<Record<string, Derived>>>(
  id: string,
  unit: U,
  formula: string,
  inputs: I,
  compute: (value: { readonly [K in keyof I]: number }) => number,
  extras?: Extras,
): Derived<U> {
  const values: Record<string, number> = {}
  for (const symbol in inputs) values[symbol] = (inputs[symbol] as Derived).value
  const value = compute(values as { readonly [K in keyof I]: number })
  // Spelled out: hundreds are made for every answer, and a spread costs more than all the rest.
  return extras === undefined ? { id, value, unit, formula, inputs } : { id, value, unit, formula, inputs, ...extras }
}

/** The sum of like things, shown as a written sum: figures in a column, a rule, the total. */
export function sumOf<U extends Unit>(
  id: string,
  unit: U,
  addends: readonly Derived<U>[],
  extras?: Extras,
): Derived<U> {
  const inputs: Record<string, Derived> = {}
  let value = 0
  for (const [index, addend] of addends.entries()) {
    inputs[addendSymbol(index)] = addend
    value += addend.value
  }
  return { id, value, unit, formula: sumFormula(addends.length), inputs, addends: true, ...extras }
}

const symbols: string[] = []
const addendSymbol = (index: number): string => (symbols[index] ??= `x${String(index + 1)}`)

const sumFormulas: string[] = ['0']
const sumFormula = (count: number): string =>
  (sumFormulas[count] ??= Array.from({ length: count }, (_, index) => addendSymbol(index)).join(' + '))
