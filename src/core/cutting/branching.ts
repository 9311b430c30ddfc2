import { wholeNear } from '../basics/count.ts'
import { type BestCover, roundToWhole } from './best-cover.ts'
import { type Columns, takeColumn } from './columns.ts'
import { linearBound, type LinearBound } from './linear-bound.ts'
import { searchOnLosses } from './remainder-search.ts'
import { type Searched } from './searched.ts'
import { at, type Vector } from './vector.ts'

/** A linear bound costs as many steps of the remainder search as there are columns, and no fewer than this. */
const STEPS_A_BOUND = 40
/** Steps of the remainder search at the root and at each node below it. */
const ROOT_STEPS = 10_000
const NODE_STEPS = 2_000

/**
 * Branch and bound on how often one column is taken. Each node is first searched on what its linear plan loses, which
 * mostly settles it; if not, it is split: the amount nearest the linear plan first, then further up and down until the
 * linear bound meets the best plan. That bound is convex in the amount, so each side ends at its first failure.
 */
export function branchAndBound(
  columns: Columns,
  need: Vector,
  root: LinearBound,
  best: BestCover,
  step: number,
  budget: number,
): Searched {
  const barred = new Float64Array(columns.count)
  const taken = new Float64Array(columns.count)
  const stepsABound = Math.max(STEPS_A_BOUND, columns.count)
  const run = { steps: 0, finished: true }
  let rootBound = root.value

  const isHopeless = (bound: number): boolean => best.isMetBy(bound, step)

  /** Looks below a node; true when its linear bound already meets the best plan. */
  const look = (left: Vector, paid: number, known?: LinearBound): boolean => {
    if (run.steps >= budget) {
      run.finished = false
      return true
    }
    run.steps += stepsABound
    const here = known ?? linearBound(columns, left, barred)
    if (isHopeless(paid + here.value)) return true
    if (known === undefined) roundToWhole(columns, left, here, taken, best, barred)
    if (isHopeless(paid + here.value)) return true
    const searched = searchOnLosses(
      { columns, need: left, bound: here, best, taken, paid, barred, step },
      known === undefined ? NODE_STEPS : ROOT_STEPS,
    )
    if (searched !== undefined) {
      run.steps += searched.nodes
      if (known !== undefined) rootBound = searched.bound
      if (searched.proven || isHopeless(searched.bound)) return false
    }
    const row = splitRow(columns, here)
    if (row < 0) return false
    const p = at(here.basis, row)
    const amount = at(here.amounts, row)
    const near = wholeNear(amount)
    barred[p] = 1
    const within = (times: number): boolean => {
      const rest = left.slice()
      takeColumn(columns, p, times, rest)
      for (let i = columns.pieceRows; i < columns.rows; i++) if (at(rest, i) > 0) return false
      taken[p] = times
      const failed = look(rest, paid + times * at(columns.cost, p))
      taken[p] = 0
      return !failed
    }
    let up = near
    let down = near - 1
    let goesUp = within(up) || near < amount
    let goesDown = down >= 0
    while (run.finished && !isHopeless(rootBound) && (goesUp || goesDown)) {
      if (goesDown) {
        goesDown = within(down) && down > 0
        down--
      }
      if (goesUp) {
        up++
        goesUp = within(up)
      }
    }
    barred[p] = 0
    return false
  }

  look(need, 0, root)
  const proven = run.finished || isHopeless(rootBound)
  return { bound: proven ? best.cost : rootBound, proven, nodes: run.steps }
}

/** The basis row of the column whose amount is least whole; −1 when all are whole. */
function splitRow(columns: Columns, bound: LinearBound): number {
  let row = -1
  let most = 1e-6
  for (let i = 0; i < columns.rows; i++) {
    if (at(bound.basis, i) < columns.pieceRows) continue
    const amount = at(bound.amounts, i)
    const off = amount - wholeNear(amount)
    const part = off < 0 ? -off : off
    if (part > most) {
      most = part
      row = i
    }
  }
  return row
}
