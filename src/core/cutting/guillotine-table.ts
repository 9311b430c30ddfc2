import { at, type Vector } from './vector.ts'

/** A rectangle that may be cut from a sheet: sizes in whole units, kerf included, and what one is worth. */
export interface SheetItem {
  readonly length: number
  readonly width: number
  readonly value: number
  /** The most that are wanted; no limit if left out. */
  readonly most?: number
  /** Whether it may be turned a quarter; no if left out. */
  readonly turns?: boolean
}

/** How a rectangle is cut up: straight cuts from edge to edge, one after the other. */
export type CutTree =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'item'; readonly item: number; readonly turned: boolean }
  /** `first` lies next to the origin, `second` beyond the cut. */
  | { readonly kind: 'split'; readonly across: 'length' | 'width'; readonly first: CutTree; readonly second: CutTree }

/** An item as it lies. */
export interface Lying {
  readonly item: number
  readonly turned: boolean
  readonly length: number
  readonly width: number
  readonly value: number
}

/** Every way the items can lie, each once. */
export const waysToLie = (items: readonly SheetItem[]): Lying[] =>
  items.flatMap(({ length, width, value, turns }, item) => [
    { item, turned: false, length, width, value },
    ...(turns === true && length !== width ? [{ item, turned: true, length: width, width: length, value }] : []),
  ])

/** Sums of sizes up to a limit, rising from 0; `undefined` when there are more than `most`. */
function sumsUpTo(limit: number, sizes: readonly number[], most: number): Vector | undefined {
  const sums = new Set([0])
  for (const size of new Set(sizes)) {
    for (const sum of sums) {
      if (sum + size <= limit) sums.add(sum + size)
      if (sums.size > most) return undefined
    }
  }
  return Float64Array.from(sums).sort()
}

/** Place of the largest sum that is not above x. */
export function placeOf(sums: Vector, x: number): number {
  let low = 0
  let high = sums.length - 1
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if (at(sums, middle) <= x) low = middle
    else high = middle - 1
  }
  return low
}

/** The most that can be cut from every size of rectangle up to a sheet, when no item runs out. */
export interface GuillotineTable {
  readonly lengths: Vector
  readonly widths: Vector
  /** Most value from a rectangle, by places in `lengths` and `widths`. */
  readonly most: (length: number, width: number) => number
  readonly tree: (length: number, width: number) => CutTree
}

const MOST_SUMS = 1_200

/**
 * Exact dynamic program for guillotine cutting with any number of stages and no limit on copies: a rectangle is worth its
 * best item, or its best split at a sum of item sizes (P. C. Gilmore and R. E. Gomory, The theory and computation of
 * knapsack functions, Operations Research 14, 1966; sums of sizes: J. E. Beasley, Algorithms for unconstrained
 * two-dimensional guillotine cutting, JORS 36, 1985). `undefined` when there are too many different sums.
 */
export function guillotineTable(
  length: number,
  width: number,
  items: readonly SheetItem[],
): GuillotineTable | undefined {
  const lying = waysToLie(items).filter((w) => w.length <= length && w.width <= width)
  const found = [
    sumsUpTo(
      length,
      lying.map((w) => w.length),
      MOST_SUMS,
    ),
    sumsUpTo(
      width,
      lying.map((w) => w.width),
      MOST_SUMS,
    ),
  ]
  const [lengths, widths] = found
  if (lengths === undefined || widths === undefined || lengths.length * widths.length > MOST_CELLS) return undefined
  const across = widths.length
  const value = new Float64Array(lengths.length * across)
  /** −1 nothing; else 4 p + 0: item way p, + 1: split across the length at place p, + 2: across the width. */
  const choice = new Float64Array(lengths.length * across).fill(-1)
  for (const [w, way] of lying.entries()) {
    const i = placeOf(lengths, way.length)
    const j = placeOf(widths, way.width)
    if (way.value > at(value, i * across + j)) {
      value[i * across + j] = way.value
      choice[i * across + j] = 4 * w
    }
  }
  for (let i = 1; i < lengths.length; i++) {
    for (let j = 1; j < across; j++) {
      const here = i * across + j
      let best = at(value, here)
      let how = at(choice, here)
      // What fits a smaller rectangle fits this one.
      if (at(value, here - across) > best) {
        best = at(value, here - across)
        how = at(choice, here - across)
      }
      if (at(value, here - 1) > best) {
        best = at(value, here - 1)
        how = at(choice, here - 1)
      }
      const x = at(lengths, i)
      let rest = i
      for (let p = 1; at(lengths, p) * 2 <= x; p++) {
        while (at(lengths, rest) + at(lengths, p) > x) rest--
        const sum = at(value, p * across + j) + at(value, rest * across + j)
        if (sum > best) {
          best = sum
          how = 1 + 4 * p
        }
      }
      const y = at(widths, j)
      rest = j
      for (let p = 1; at(widths, p) * 2 <= y; p++) {
        while (at(widths, rest) + at(widths, p) > y) rest--
        const sum = at(value, i * across + p) + at(value, i * across + rest)
        if (sum > best) {
          best = sum
          how = 2 + 4 * p
        }
      }
      value[here] = best
      choice[here] = how
    }
  }
  const tree = (i: number, j: number): CutTree => {
    const how = at(choice, i * across + j)
    if (how < 0) return { kind: 'nothing' }
    const kind = how % 4
    const p = (how - kind) / 4
    if (kind === 0) {
      const way = lying[p] as Lying
      return { kind: 'item', item: way.item, turned: way.turned }
    }
    if (kind === 1) {
      const rest = placeOf(lengths, at(lengths, i) - at(lengths, p))
      return { kind: 'split', across: 'length', first: tree(p, j), second: tree(rest, j) }
    }
    const rest = placeOf(widths, at(widths, j) - at(widths, p))
    return { kind: 'split', across: 'width', first: tree(i, p), second: tree(i, rest) }
  }
  return { lengths, widths, most: (i, j) => at(value, i * across + j), tree }
}

const MOST_CELLS = 400_000
