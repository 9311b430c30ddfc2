import { wholeDown, wholeNear } from '../basics/count.ts'
import { type Bar, type BarColumns } from './bars.ts'
import { BestCover, buildUp, roundToWhole } from './best-cover.ts'
import { ColumnList, type Columns } from './columns.ts'
import { linearBound, type LinearBound } from './linear-bound.ts'
import { branchAndBound } from './branching.ts'
import { type Searched } from './searched.ts'
import { at, type Vector } from './vector.ts'

/** The least and the most that may be taken of each bar. */
interface Between {
  readonly least: Vector
  readonly most: Vector
}

/** Steps for packing one choice of bars before it is left open. */
const PACKING_STEPS = 40_000

/**
 * Branch and bound on how many of each bar are taken. Cost depends on nothing else, so the bound climbs fast, and a choice
 * of bars that meets its bound is either packed, which settles the node, or shown not to hold the pieces.
 */
export function branchOnCounts(
  job: BarColumns,
  bars: readonly Bar[],
  best: BestCover,
  weights: readonly Vector[],
  step: number,
  known: number,
  budget: number,
): Searched {
  const pieces = job.columns.pieceRows
  const columns = withCountRows(job, bars)
  const need = new Float64Array(columns.rows)
  const counted = new BestCover(columns)
  const run = { steps: 0, finished: true }
  let total = 0
  for (let i = 0; i < pieces; i++) total += at(job.need, i)

  const isHopeless = (bound: number): boolean => best.isMetBy(Math.max(bound, known), step)

  const offer = (cover: Vector, leading: number): void => {
    const times = new Float64Array(job.columns.count)
    for (let k = 0; k < job.fillings.length; k++) times[pieces + k] = at(cover, leading + k)
    best.offer(times)
  }
  const packs = (counts: Vector): boolean | undefined => {
    const room = bars.reduce((sum, bar, b) => sum + at(counts, b) * bar.room, 0)
    const packing = packingColumns(job, bars, room + 1)
    const wanted = Float64Array.from([...job.need.subarray(0, pieces), ...counts.map((c) => -c)])
    const linear = linearBound(packing, wanted)
    run.steps += packing.count
    if (linear.value > room + 0.5) return false
    const found = new BestCover(packing, room)
    roundToWhole(packing, wanted, linear, new Float64Array(packing.count), found)
    if (found.cost > room) buildUp(packing, wanted, weights, found)
    if (found.cost > room) {
      const searched = branchAndBound(packing, wanted, linear, found, 1, PACKING_STEPS)
      run.steps += searched.nodes
      if (found.cost > room) return searched.proven ? false : undefined
    }
    offer(found.times, pieces)
    return true
  }

  const look = ({ least, most }: Between): void => {
    if (run.steps >= budget) {
      run.finished = false
      return
    }
    run.steps += columns.count
    need.set(job.need.subarray(0, pieces))
    for (let b = 0; b < bars.length; b++) {
      need[pieces + b] = at(least, b)
      need[pieces + bars.length + b] = -at(most, b)
    }
    const here = linearBound(columns, need)
    if (isHopeless(here.value)) return
    counted.cost = Infinity
    roundToWhole(columns, need, here, new Float64Array(columns.count), counted)
    if (counted.cost < best.cost) offer(counted.times, pieces + bars.length)
    if (isHopeless(here.value)) return
    const counts = countsOf(job, bars, here, columns)
    const b = leastWhole(counts)
    if (b >= 0) {
      const n = wholeDown(at(counts, b))
      const below = (): void => look({ least, most: withValue(most, b, n) })
      const above = (): void => look({ least: withValue(least, b, n + 1), most })
      if (at(counts, b) - n > 0.5) {
        above()
        below()
      } else {
        below()
        above()
      }
      return
    }
    const whole = counts.map(wholeNear)
    const packed = packs(whole)
    if (packed === true) return
    if (packed === undefined) run.finished = false
    for (let k = 0; k < bars.length; k++) {
      const n = at(whole, k)
      if (at(least, k) === n && at(most, k) === n) continue
      const below = withValue(most, k, n - 1)
      const above = withValue(least, k, n + 1)
      if (n > at(least, k)) look({ least, most: below })
      if (n < at(most, k)) look({ least: above, most })
      look({ least: withValue(least, k, n), most: withValue(most, k, n) })
      return
    }
  }
  look({
    least: new Float64Array(bars.length),
    most: Float64Array.from(bars, (b) => b.available ?? total),
  })
  const proven = run.finished || isHopeless(known)
  return { bound: proven ? best.cost : known, proven, nodes: run.steps }
}

const withValue = (vector: Vector, i: number, value: number): Vector => {
  const changed = vector.slice()
  changed[i] = value
  return changed
}

/** How many of each bar a linear plan takes. */
function countsOf(job: BarColumns, bars: readonly Bar[], bound: LinearBound, columns: Columns): Vector {
  const counts = new Float64Array(bars.length)
  for (let i = 0; i < columns.rows; i++) {
    const filling = job.fillings[at(bound.basis, i) - columns.pieceRows]
    if (filling === undefined) continue
    const b = bars.indexOf(filling.bar)
    counts[b] = at(counts, b) + at(bound.amounts, i)
  }
  return counts
}

/** The count furthest from a whole number; −1 when all are whole. */
function leastWhole(counts: Vector): number {
  let found = -1
  let most = 1e-6
  for (let b = 0; b < counts.length; b++) {
    const off = at(counts, b) - wholeNear(at(counts, b))
    const part = off < 0 ? -off : off
    if (part > most) {
      most = part
      found = b
    }
  }
  return found
}

/** The same columns with two more rows a bar: at least so many of it, and at most so many. */
function withCountRows(job: BarColumns, bars: readonly Bar[]): Columns {
  const pieces = job.columns.pieceRows
  let forbidding = 0
  for (let i = 0; i < pieces; i++) forbidding = Math.max(forbidding, at(job.columns.cost, i))
  const leftOut = [...job.columns.cost.subarray(0, pieces), ...bars.map(() => forbidding * 4)]
  const list = new ColumnList(pieces + bars.length, pieces + 2 * bars.length, leftOut)
  for (const { bar, piece } of job.fillings) {
    const b = bars.indexOf(bar)
    list.add(piece, bar.cost, [pieces + b, 1], [pieces + bars.length + b, -1])
  }
  return list.columns()
}

/** Bars that cost their length and can run out, and pieces that cost too much to leave out. */
function packingColumns(job: BarColumns, bars: readonly Bar[], leftOut: number): Columns {
  const pieces = job.columns.pieceRows
  const list = new ColumnList(
    pieces,
    pieces + bars.length,
    Array.from({ length: pieces }, () => leftOut),
  )
  for (const { bar, piece } of job.fillings) list.add(piece, bar.room, [pieces + bars.indexOf(bar), -1])
  return list.columns()
}
