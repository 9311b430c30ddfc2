import { BestCover, buildUp, roundToWhole } from './best-cover.ts'
import { type Bar, type BarColumns, sizeOf } from './bars.ts'
import { leastCostWithRoom } from './cost-with-room.ts'
import { branchAndBound } from './branching.ts'
import { branchOnCounts } from './count-branching.ts'
import { searchOnLosses } from './remainder-search.ts'
import { linearBound, type LinearBound, wholeBound } from './linear-bound.ts'
import { costStep } from './remainder-classes.ts'
import { type Vector } from './vector.ts'

/** How the least cost was shown to be least. */
export type CoverProof = 'linear-bound' | 'remainder-search' | 'branching' | 'not-proven'

export interface Cover {
  readonly times: Vector
  readonly cost: number
  /** No whole plan costs less; equal to `cost` when proven. */
  readonly bound: number
  readonly proof: CoverProof
  readonly nodes: number
  readonly linear: LinearBound
}

/** Steps of the first exact search; most lists need far fewer. */
const LOSS_STEPS = 8_000

/**
 * The cheapest whole covering, with its proof: first the linear bound and rounding, then the exact search on losses, then
 * branch and bound. The budget counts search steps, never time, so every device gives the same plan.
 * Without `bars`, columns are branched on instead. `weights` are guesses at what a piece is worth, to start plans from.
 */
export function leastCostCover(
  job: BarColumns,
  bars: readonly Bar[],
  budget: number,
  weights: readonly Vector[],
): Cover {
  const { columns, need } = job
  const step = costStep(columns)
  const linear = linearBound(columns, need)
  const best = new BestCover(columns)
  roundToWhole(columns, need, linear, new Float64Array(columns.count), best)
  const room = sizeOf(need.subarray(0, job.size.length), job.size)
  const roundUp = (bound: number): number => leastCostWithRoom(bound, step, bars, room, best.cost)
  const done = (reached: number, method: CoverProof, nodes: number): Cover => {
    const surely = reached >= best.cost && job.complete ? reached : roundUp(job.complete ? reached : (job.linear ?? 0))
    const bound = Math.min(surely, best.cost)
    const proof = bound < best.cost ? 'not-proven' : method === 'not-proven' || !job.complete ? 'linear-bound' : method
    return { times: best.times, cost: best.cost, bound, proof, nodes, linear }
  }
  if (wholeBound(linear.value, step) < best.cost) buildUp(columns, need, weights, best)
  if (wholeBound(linear.value, step) >= best.cost) return done(best.cost, 'linear-bound', 0)
  const none = new Float64Array(columns.count)
  const byLoss = searchOnLosses({ columns, need, bound: linear, best, taken: none, paid: 0, step }, LOSS_STEPS)
  const steps = byLoss?.nodes ?? 0
  if (byLoss?.proven === true) return done(best.cost, steps === 0 ? 'linear-bound' : 'remainder-search', steps)
  const known = byLoss?.bound ?? linear.value
  const byCount =
    bars.length > 0
      ? branchOnCounts(job, bars, best, weights, step, known, job.complete ? budget : budget / 4)
      : branchAndBound(columns, need, linear, best, step, budget / 4)
  const all = steps + byCount.nodes
  return byCount.proven ? done(best.cost, 'branching', all) : done(byCount.bound, 'not-proven', all)
}
