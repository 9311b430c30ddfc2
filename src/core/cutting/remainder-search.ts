import { wholeNear } from '../basics/count.ts'
import { type BestCover, roundingOf } from './best-cover.ts'
import { type Columns, takeColumn } from './columns.ts'
import { LeastFirst } from './heap.ts'
import { type LinearBound } from './linear-bound.ts'
import { remainderClasses } from './remainder-classes.ts'
import { lossySteps, RemainderLosses } from './remainder-losses.ts'
import { type Searched } from './searched.ts'
import { at, type Vector } from './vector.ts'

/** What the searches on losses share. */
export interface LossSearch {
  readonly columns: Columns
  readonly need: Vector
  readonly bound: LinearBound
  readonly best: BestCover
  /** Columns already taken on the way to `need`, and their cost. */
  readonly taken: Vector
  readonly paid: number
  /** All costs count in this step. */
  readonly step: number
  /** Columns that may not be taken are 1. */
  readonly barred?: Vector
}

/** Classes beyond which their table costs more than it saves. */
const MOST_CLASSES = 20_000

/**
 * Exact search on what a linear plan loses.
 *
 * Every whole plan costs the linear bound plus the losses of the columns outside the basis that it takes, so the cheapest
 * plan is the cheapest such choice whose rest the basis columns cover in whole, not negative numbers. Choices are tried
 * cheapest first; what a rest must still lose is read from its remainder class (shortest paths in Gomory's group), which
 * for long lists of few lengths is nearly always exact.
 */
export function searchOnLosses(start: LossSearch, budget: number): Searched | undefined {
  const { columns, need, bound, best, step, paid: before } = start
  const rows = columns.rows
  /** What a plan cheaper than the best may lose against the linear bound; below zero when there is none. */
  const allowance = (): number => best.toBeat - step - before - bound.value + roundingOf(best.cost)
  const classes = remainderClasses(columns, bound.basis, MOST_CLASSES)
  if (classes === undefined) return undefined
  const steps = lossySteps(columns, bound, allowance(), classes, start.barred)
  const losses = new RemainderLosses(classes, steps, allowance())
  const isBasic = new Float64Array(rows)
  for (let i = 0; i < rows; i++) if (at(bound.basis, i) < 0) isBasic[-1 - at(bound.basis, i)] = 1

  let pool = new Float64Array(rows * 256)
  const parent: number[] = []
  const taken: number[] = []
  const paid: number[] = []
  const kind: number[] = []
  const queue = new LeastFirst()
  const rest = new Float64Array(rows)
  const spent = new Float64Array(rows)

  const put = (from: number, by: number, g: number): void => {
    spent.set(rest)
    const id = classes.classOf(spent)
    const f = g + losses.least(id)
    if (f > allowance()) return
    const node = parent.length
    if ((node + 1) * rows > pool.length) {
      const larger = new Float64Array(pool.length * 2)
      larger.set(pool)
      pool = larger
    }
    pool.set(rest, node * rows)
    parent.push(from)
    taken.push(by)
    paid.push(g)
    kind.push(id)
    if (id === 0) offerWhole(node)
    queue.push(f, node)
  }
  const times = new Float64Array(columns.count)
  const offerWhole = (node: number): void => {
    times.set(start.taken)
    for (let i = 0; i < rows; i++) {
      let x = 0
      for (let j = 0; j < rows; j++) x += at(bound.inverse, i * rows + j) * at(rest, j)
      const whole = wholeNear(x)
      if (whole < 0) return
      const id = at(bound.basis, i)
      if (id >= 0) times[id] = at(times, id) + whole
    }
    for (let k = node; k > 0; k = parent[k] as number) {
      const id = at(steps.id, taken[k] as number)
      if (id >= 0) times[id] = at(times, id) + 1
    }
    best.offer(times)
  }

  rest.set(need)
  put(-1, 0, 0)
  let nodes = 0
  while (queue.length > 0) {
    const f = queue.least
    if (f > allowance()) break
    if (nodes + losses.steps > budget) {
      return { bound: before + bound.value + f, proven: false, nodes: nodes + losses.steps }
    }
    const node = queue.pop()
    const g = paid[node] as number
    const sharper = g + losses.settle(kind[node] as number, f - g)
    if (sharper > f) {
      queue.push(sharper, node)
      continue
    }
    for (let s = taken[node] as number; s < steps.count; s++) {
      const next = g + at(steps.loss, s)
      if (next > allowance()) {
        if (s >= steps.surpluses) break
        continue
      }
      nodes++
      for (let i = 0; i < rows; i++) rest[i] = at(pool, node * rows + i)
      const id = at(steps.id, s)
      if (id < 0) rest[-1 - id] = at(rest, -1 - id) + 1
      else {
        takeColumn(columns, id, 1, rest)
        if (overshoots(columns, rest, isBasic)) continue
      }
      put(node, s, next)
    }
  }
  return { bound: best.cost, proven: true, nodes: nodes + losses.steps }
}

/** No basis column can give pieces back, nor a stock that has run out. */
function overshoots(columns: Columns, rest: Vector, isBasic: Vector): boolean {
  for (let i = 0; i < columns.pieceRows; i++) if (at(rest, i) < 0 && at(isBasic, i) === 0) return true
  for (let i = columns.pieceRows; i < columns.rows; i++) if (at(rest, i) > 0) return true
  return false
}
