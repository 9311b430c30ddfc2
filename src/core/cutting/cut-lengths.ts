import { barColumns, type Filling, usefulBars } from './bars.ts'
import { leastCostCover } from './cover.ts'
import { fewPatterns, keepableTicks, tidied, type TidyJob, type TidyPlan } from './few-patterns.ts'
import { type CuttingPlan, type CuttingProblem, type LengthJob } from './length-job.ts'
import { checkedLengths, type PieceLength } from './length-checks.ts'
import { planOf } from './length-plan.ts'
import { mergeAlike, withoutSurplus } from './trim.ts'
import { at, type Vector, vectorOf } from './vector.ts'

const DEFAULT_BUDGET = 400_000
const DEFAULT_TIDY = 2_000

/**
 * Cuts a list of pieces from bars at the least cost, with its proof.
 *
 * With a saw cut k, n pieces of length l fit a bar L when n · (l + k) ≤ L + k: there is a cut between two pieces, none
 * after the last one if it ends with the bar. Equal cost goes to fewer different patterns, then fewer changes of the saw
 * stop, then the longest single offcut worth keeping. The order of the input changes nothing but the order of `stock`.
 */
export function cutLengths(job: LengthJob): CuttingPlan {
  const checked = checkedLengths(job)
  const problems: CuttingProblem[] = [...checked.problems]
  const { lengths, stocks, kerf } = checked
  const size = vectorOf(lengths.map((l) => l.ticks + kerf))
  const count = vectorOf(lengths.map((l) => l.labels.length))
  const n = lengths.length
  const none: TidyPlan = {
    sequence: { steps: [], setUps: 0 },
    tidiness: { patterns: 0, setUps: 0, longestKept: 0 },
    fewest: true,
  }
  if (n === 0) return planOf(job, checked, none, { cost: 0, bound: 0, proof: 'nothing-to-cut' }, problems)

  const bars = usefulBars(stocks, at(size, n - 1), n)
  const covering = barColumns(bars, size, count)
  const { columns, fillings } = covering
  const cover = leastCostCover(covering, bars, job.budgetNodes ?? DEFAULT_BUDGET, byLength(size, columns.rows))

  const missing = vectorOf(lengths.map((_, i) => at(cover.times, i)))
  let missingCost = 0
  for (let i = 0; i < n; i++) missingCost += at(missing, i) * at(columns.cost, i)
  const cost = cover.cost - missingCost
  const bound = cover.bound - missingCost

  const surplus = new Float64Array(n)
  const chosen: Filling[] = []
  for (let i = 0; i < n; i++) surplus[i] = at(missing, i) - at(count, i)
  fillings.forEach(({ bar, piece }, k) => {
    const times = at(cover.times, n + k)
    if (times === 0) return
    chosen.push({ bar, piece, times })
    for (let i = 0; i < n; i++) surplus[i] = at(surplus, i) + times * at(piece, i)
  })
  const isWhole = missing.every((v) => v === 0)
  const tidyJob: TidyJob = {
    bars,
    size,
    count,
    worth: cover.linear.worth,
    cost,
    slack: cover.cost - cover.linear.value,
    kerf,
    keep: keepableTicks(job.keepM),
  }
  const trimmed = withoutSurplus(mergeAlike(chosen), surplus, tidyJob)
  const tidyNodes = job.tidyNodes ?? DEFAULT_TIDY
  const tidy =
    isWhole && tidyNodes > 0
      ? fewPatterns(trimmed, tidyJob, tidyNodes)
      : { ...tidied(trimmed, tidyJob), fewest: trimmed.length <= 1 }

  const left: PieceLength[] = lengths.map((l, i) => {
    const short = at(missing, i)
    if (short > 0) problems.push({ kind: 'stock-runs-out', lengthM: l.lengthM, missing: short })
    return short > 0 ? { ...l, labels: l.labels.slice(0, l.labels.length - short) } : l
  })
  return planOf(
    job,
    { ...checked, lengths: left },
    tidy,
    { cost, bound: Math.max(bound, 0), proof: cover.proof },
    problems,
  )
}

/** Pieces weighed by their length, and with more and more weight on the long ones, which are hard to place late. */
function byLength(size: Vector, rows: number): Vector[] {
  return [0, 1, 2].map((power) => {
    const weight = new Float64Array(rows)
    for (let i = 0; i < size.length; i++) weight[i] = (at(size, i) / at(size, 0)) ** (1 + power)
    return weight
  })
}
