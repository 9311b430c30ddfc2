import { wholeDown } from '../basics/count.ts'
import { type Columns, takeColumn } from './columns.ts'
import { at, greatestCommonDivisor, type Vector } from './vector.ts'

/**
 * Sorts whole vectors into classes: two vectors are in one class when their difference is a whole combination of the
 * basis columns. What the basis alone cannot cover in whole numbers is exactly what is not in class 0.
 */
export interface RemainderClasses {
  readonly count: number
  /** Class of a vector: a whole number from 0 to count − 1. The vector itself is spent in the working. */
  readonly classOf: (spent: Vector) => number
  /** Class of the sum of a vector of class `a` and one of class `b`. */
  readonly sum: (a: number, b: number) => number
}

const TOO_LONG = 2 ** 40

/**
 * The classes of a basis, from its triangular (Hermite) form; `undefined` when there are more than `most`
 * (R. E. Gomory, On the relation between integer and non-integer solutions to linear programs, PNAS 53, 1965).
 */
export function remainderClasses(columns: Columns, basis: Vector, most: number): RemainderClasses | undefined {
  const n = columns.rows
  const grid: Vector[] = []
  for (let k = 0; k < n; k++) {
    const column = new Float64Array(n)
    const id = at(basis, k)
    if (id < 0) column[-1 - id] = 1
    else takeColumn(columns, id, -1, column)
    grid.push(column)
  }
  let count = 1
  for (let i = 0; i < n; i++) {
    const pivotColumn = clearRow(grid, i)
    if (pivotColumn === undefined) return undefined
    count *= at(pivotColumn, i)
    if (count > most) return undefined
  }
  const flat = new Float64Array(n * n)
  grid.forEach((column, k) => flat.set(column, k * n))

  const classOf = (spent: Vector): number => {
    let id = 0
    for (let i = 0; i < n; i++) {
      const base = at(flat, i * n + i)
      const q = base === 1 ? at(spent, i) : wholeDown(at(spent, i) / base)
      if (q !== 0) for (let k = i; k < n; k++) spent[k] = at(spent, k) - q * at(flat, i * n + k)
      if (base !== 1) id = id * base + at(spent, i)
    }
    return id
  }
  const both = new Float64Array(n)
  const addMember = (id: number): void => {
    let rest = id
    for (let i = n - 1; i >= 0; i--) {
      const base = at(flat, i * n + i)
      if (base === 1) continue
      const digit = rest % base
      both[i] = at(both, i) + digit
      rest = (rest - digit) / base
    }
  }
  const sum = (a: number, b: number): number => {
    both.fill(0)
    addMember(a)
    addMember(b)
    return classOf(both)
  }
  return { count, classOf, sum }
}

/** Makes row i zero in all columns after the i-th and positive in the i-th, by whole column steps. */
function clearRow(grid: Vector[], i: number): Vector | undefined {
  for (;;) {
    let least = -1
    let others = 0
    for (let k = i; k < grid.length; k++) {
      const v = abs(entry(grid, k, i))
      if (v === 0) continue
      if (v > TOO_LONG) return undefined
      others++
      if (least < 0 || v < abs(entry(grid, least, i))) least = k
    }
    if (least < 0) return undefined
    const pivot = grid[least] as Vector
    if (others === 1) {
      grid[least] = grid[i] as Vector
      grid[i] = pivot
      if (at(pivot, i) < 0) for (let k = 0; k < pivot.length; k++) pivot[k] = -at(pivot, k)
      return pivot
    }
    for (let k = i; k < grid.length; k++) {
      const column = grid[k] as Vector
      if (k === least || at(column, i) === 0) continue
      const q = wholeDown(at(column, i) / at(pivot, i))
      for (let j = 0; j < column.length; j++) column[j] = at(column, j) - q * at(pivot, j)
    }
  }
}

const entry = (grid: readonly Vector[], k: number, i: number): number => at(grid[k] as Vector, i)
const abs = (x: number): number => (x < 0 ? -x : x)

/** The largest step in which all costs of real columns count. */
export function costStep(columns: Columns): number {
  let step = 0
  for (let p = columns.pieceRows; p < columns.count; p++) step = greatestCommonDivisor(step, at(columns.cost, p))
  return step === 0 ? 1 : step
}
