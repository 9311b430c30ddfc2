import type { Run } from './course-shape.ts'
import { cutCostOf, type PieceRule } from './cut-placing.ts'

/** One way of filling a run: so many pieces, all joints of one width, perpends moved back by some of the shifts. */
export interface RunWay {
  readonly pieces: number
  readonly joint: number
  /** How far a perpend may be moved back by the cuts before it, ascending from none to all. */
  readonly shifts: readonly number[]
  /** What the cut between two of the shifts costs, row by row; Infinity for one that cannot be made. */
  readonly cutCosts: Float64Array
}

/** Residual shortenings are cut to the millimetre: what is left goes into the joints. */
const MARK_UM = 1000
/** Short runs can afford a fine grid of shifts, long ones find their place without. */
const gridFor = (pieces: number): number => (pieces <= 2 ? 5000 : pieces <= 4 ? 10_000 : pieces <= 6 ? 25_000 : 50_000)

/**
 * Shifts to try. Where a course of headers lies on one of stretchers, both must shift by the same amount at one place, cut
 * once or in two equal parts, beside whole closers: so shares of what is left beside any number of closers, from either end.
 */
function shiftsOf(rule: PieceRule, shortened: number, pieces: number): number[] {
  const found = new Set([0, shortened])
  const add = (shift: number): void => {
    const whole = Math.trunc(shift)
    if (whole <= 0 || whole >= shortened) return
    found.add(whole)
    found.add(shortened - whole)
  }
  for (const good of rule.goodCuts) add(good)
  const { closer } = rule
  const most = rule.length - rule.shortest
  for (let beside = 0; beside < shortened; beside += closer)
    for (let before = 0; before < shortened; before += closer) {
      add(before)
      if ((shortened - beside) / 2 <= most) add(before + (shortened - beside) / 2)
    }
  const step = gridFor(pieces)
  for (let shift = step; shift < shortened; shift += step) add(shift)
  return [...found].sort((a, b) => a - b)
}

function cutCostsOf(rule: PieceRule, shifts: readonly number[]): Float64Array {
  const count = shifts.length
  const costs = new Float64Array(count * count).fill(Infinity)
  for (let from = 0; from < count; from++) {
    costs[from * count + from] = 0
    for (let to = from + 1; to < count; to++)
      costs[from * count + to] = cutCostOf((shifts[to] ?? 0) - (shifts[from] ?? 0), rule)
  }
  return costs
}

/** The ways of filling a run with its fewest pieces or the few more that the rule spares: whole where the joints allow it, else cut at the usual joint. */
export function runWays(rule: PieceRule, { from, to, startJoint, endJoint }: Run, fewest: number): RunWay[] {
  const run = to - from
  const ends = (startJoint ? 1 : 0) + (endJoint ? 1 : 0)
  const ways: RunWay[] = []
  const add = (pieces: number, shortened: number): void => {
    const joints = pieces - 1 + ends
    const left = run - pieces * rule.length + shortened
    const joint = joints === 0 ? 0 : left / joints
    if (joints === 0 ? left !== 0 : joint < rule.jointMin || joint > rule.jointMax) return
    const shifts = shortened === 0 ? [0] : shiftsOf(rule, shortened, pieces)
    ways.push({ pieces, joint, shifts, cutCosts: cutCostsOf(rule, shifts) })
  }
  for (let pieces = fewest; pieces <= fewest + rule.spare; pieces++) {
    const joints = pieces - 1 + ends
    const usual = pieces * rule.length + joints * rule.jointUsual - run
    if (pieces === fewest) add(pieces, 0)
    const marked = joints === 0 ? usual : Math.trunc(usual / MARK_UM + 0.5) * MARK_UM
    if (marked >= rule.trim) add(pieces, marked)
    else if (marked > 0) add(pieces, rule.trim)
  }
  return ways
}
