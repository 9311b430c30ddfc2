import { wholeUp } from '../basics/count.ts'
import { type Columns } from './columns.ts'
import { at, type Vector } from './vector.ts'

/**
 * The least cost of a covering when columns may be taken in parts: a bound that no whole plan can beat.
 * `basis[i]` is a column, or −1 − row for the surplus of a row.
 */
export interface LinearBound {
  readonly value: number
  /** What one more piece is worth, by row; never negative. */
  readonly worth: Vector
  readonly basis: Vector
  readonly amounts: Vector
  /** Inverse of the basis matrix, by rows. */
  readonly inverse: Vector
}

const SMALL = 1e-9

/** Cost of a column less the worth of what it holds: what one use of it loses against the bound. */
export function lossOf(columns: Columns, column: number, worth: Vector): number {
  const { start, row, value, cost } = columns
  let loss = at(cost, column)
  const end = at(start, column + 1)
  for (let k = at(start, column); k < end; k++) loss -= at(worth, at(row, k)) * at(value, k)
  return loss
}

/**
 * Revised simplex method with an explicit inverse (G. B. Dantzig, Linear Programming and Extensions, 1963), enough for a
 * few dozen rows. Steepest loss first; after many steps the lowest column, which cannot cycle (R. G. Bland, New finite
 * pivoting rules for the simplex method, Mathematics of Operations Research 2, 1977).
 */
export function linearBound(columns: Columns, need: Vector, barred?: Vector): LinearBound {
  const { rows, count, cost, start, row, value } = columns
  const inverse = new Float64Array(rows * rows)
  const basis = new Float64Array(rows)
  const amounts = new Float64Array(rows)
  const worth = new Float64Array(rows)
  const entering = new Float64Array(rows)
  let largest = 1
  for (let p = columns.pieceRows; p < count; p++) if (at(cost, p) > largest) largest = at(cost, p)
  const small = SMALL * largest
  for (let i = 0; i < rows; i++) {
    const lacking = i < columns.pieceRows && at(need, i) > 0
    basis[i] = lacking ? i : -1 - i
    inverse[i * rows + i] = lacking ? 1 : -1
    const n = at(need, i)
    amounts[i] = lacking ? n : -n
  }
  const patience = 40 + 8 * rows
  for (let step = 0; ; step++) {
    worth.fill(0)
    for (let i = 0; i < rows; i++) {
      const id = at(basis, i)
      if (id < 0) continue
      const c = at(cost, id)
      if (c === 0) continue
      for (let j = 0; j < rows; j++) worth[j] = at(worth, j) + c * at(inverse, i * rows + j)
    }
    let best = -small
    let enter = Number.NaN
    for (let j = 0; j < rows && !(step > patience && best < -small); j++) {
      if (at(worth, j) < best) {
        best = at(worth, j)
        enter = -1 - j
      }
    }
    for (let p = 0; p < count; p++) {
      if (barred !== undefined && at(barred, p) === 1) continue
      let loss = at(cost, p)
      const end = at(start, p + 1)
      for (let k = at(start, p); k < end; k++) loss -= at(worth, at(row, k)) * at(value, k)
      if (loss < best) {
        best = loss
        enter = p
        if (step > patience) break
      }
    }
    if (Number.isNaN(enter)) break

    entering.fill(0)
    if (enter < 0) {
      const j = -1 - enter
      for (let i = 0; i < rows; i++) entering[i] = -at(inverse, i * rows + j)
    } else {
      const end = at(start, enter + 1)
      for (let k = at(start, enter); k < end; k++) {
        const j = at(row, k)
        const v = at(value, k)
        for (let i = 0; i < rows; i++) entering[i] = at(entering, i) + v * at(inverse, i * rows + j)
      }
    }
    let leave = -1
    let ratio = Infinity
    for (let i = 0; i < rows; i++) {
      const e = at(entering, i)
      if (e <= SMALL) continue
      const r = at(amounts, i) / e
      if (r < ratio - SMALL || (r <= ratio + SMALL && leave >= 0 && at(basis, i) < at(basis, leave))) {
        ratio = r
        leave = i
      }
    }
    if (leave < 0) throw new Error('A covering at positive cost is never unbounded')
    const pivot = at(entering, leave)
    for (let j = 0; j < rows; j++) inverse[leave * rows + j] = at(inverse, leave * rows + j) / pivot
    amounts[leave] = at(amounts, leave) / pivot
    for (let i = 0; i < rows; i++) {
      const e = at(entering, i)
      if (i === leave || e === 0) continue
      for (let j = 0; j < rows; j++) {
        inverse[i * rows + j] = at(inverse, i * rows + j) - e * at(inverse, leave * rows + j)
      }
      const left = at(amounts, i) - e * at(amounts, leave)
      amounts[i] = left < 0 ? 0 : left
    }
    basis[leave] = enter
  }
  let total = 0
  for (let i = 0; i < rows; i++) {
    const w = at(worth, i)
    if (w < 0) worth[i] = 0
    total += at(worth, i) * at(need, i)
  }
  return { value: total, worth, basis, amounts, inverse }
}

/** The least cost, counted in steps, that is not below a bound found with the rounding of ordinary arithmetic. */
export const wholeBound = (bound: number, step: number): number => step * wholeUp((bound - 1e-7 - 1e-10 * bound) / step)
