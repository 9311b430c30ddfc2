import { type Columns, takeColumn } from './columns.ts'
import { type LinearBound } from './linear-bound.ts'
import { wholeDown } from '../basics/count.ts'
import { at, type Vector } from './vector.ts'

/** How far the rounding of ordinary arithmetic may move a cost of this size. */
export const roundingOf = (cost: number): number => 1e-7 + 1e-10 * cost

/** The cheapest whole plan found so far: how often each column is taken, and what that costs. */
export class BestCover {
  readonly columns: Columns
  readonly times: Vector
  cost = Infinity
  /** A plan at this cost or less ends the search: when any plan that fits will do. */
  readonly enough: number

  constructor(columns: Columns, enough = -Infinity) {
    this.enough = enough
    this.columns = columns
    this.times = new Float64Array(columns.count)
  }

  /** The cost that a plan must stay under to be of interest. */
  get toBeat(): number {
    return this.cost <= this.enough ? -Infinity : this.cost
  }

  /** Whether nothing above this bound, costs counted in steps, can be of interest. */
  isMetBy(bound: number, step: number): boolean {
    return bound > this.toBeat - step + roundingOf(this.cost)
  }

  /** Keeps a plan if it is cheaper; the vector is copied. */
  offer(times: Vector): boolean {
    let cost = 0
    for (let p = 0; p < times.length; p++) if (at(times, p) !== 0) cost += at(times, p) * at(this.columns.cost, p)
    if (cost >= this.cost) return false
    this.cost = cost
    this.times.set(times)
    return true
  }
}

/** Rows up to which every pattern in turn is tried with one bar less. */
const MOST_VARIANTS = 14

/**
 * Whole plans from a fractional one: the whole part of each amount, then bar after bar the column that gives most worth
 * for its cost; again with one bar less of each pattern. `taken` is what is already decided on the way to `need`.
 */
export function roundToWhole(
  columns: Columns,
  need: Vector,
  bound: LinearBound,
  taken: Vector,
  best: BestCover,
  barred?: Vector,
): void {
  const times = new Float64Array(columns.count)
  const left = new Float64Array(columns.rows)
  const variants = columns.rows > MOST_VARIANTS ? 0 : columns.rows
  for (let less = -1; less < variants; less++) {
    if (less >= 0 && !(at(bound.basis, less) >= 0 && at(bound.amounts, less) >= 1)) continue
    times.set(taken)
    left.set(need)
    for (let i = 0; i < columns.rows; i++) {
      const p = at(bound.basis, i)
      if (p < columns.pieceRows) continue
      const whole = wholeDown(at(bound.amounts, i) + 1e-7) - (i === less ? 1 : 0)
      times[p] = at(times, p) + whole
      takeColumn(columns, p, whole, left)
    }
    finish(columns, left, bound.worth, times, best, barred)
  }
}

/** Covers what is left bar by bar; before each bar also tries to end with a single one. */
function finish(
  columns: Columns,
  left: Vector,
  worth: Vector,
  times: Vector,
  best: BestCover,
  barred: Vector | undefined,
): void {
  const { start, row, value, cost, count, pieceRows } = columns
  for (;;) {
    let lacking = 0
    for (let i = 0; i < pieceRows; i++) if (at(left, i) > 0) lacking++
    if (lacking === 0) break
    let pick = -1
    let pickRate = Infinity
    let last = -1
    for (let p = 0; p < count; p++) {
      if (barred !== undefined && at(barred, p) === 1) continue
      let gain = 0
      let closes = 0
      let allowed = true
      const end = at(start, p + 1)
      for (let k = at(start, p); k < end; k++) {
        const i = at(row, k)
        const r = at(left, i)
        const v = at(value, k)
        if (v < 0) {
          if (r >= 0) allowed = false
          continue
        }
        if (r <= 0) continue
        if (v >= r) closes++
        gain += (v < r ? v : r) * (at(worth, i) + 1e-6)
      }
      if (!allowed || gain === 0) continue
      const c = at(cost, p)
      if (closes === lacking && (last < 0 || c < at(cost, last))) last = p
      const rate = c === 0 ? -gain : c / gain
      if (rate < pickRate) {
        pickRate = rate
        pick = p
      }
    }
    if (pick < 0) return
    if (last >= 0) {
      times[last] = at(times, last) + 1
      best.offer(times)
      times[last] = at(times, last) - 1
    }
    times[pick] = at(times, pick) + 1
    takeColumn(columns, pick, 1, left)
  }
  best.offer(times)
}

/** Whole plans bar by bar from nothing, each time the column that holds most by the given weights for its cost. */
export function buildUp(columns: Columns, need: Vector, weights: readonly Vector[], best: BestCover): void {
  for (const weight of weights) {
    finish(columns, need.slice(), weight, new Float64Array(columns.count), best, undefined)
  }
}
