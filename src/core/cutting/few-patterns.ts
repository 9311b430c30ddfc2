import { wholeDown, wholeUp } from '../basics/count.ts'
import { type Bar, type Filling, sizeOf } from './bars.ts'
import { inSequence, type Sequence } from './sequence.ts'
import { FIT_TICKS, toTicks } from './ticks.ts'
import { at, greatestCommonDivisor, type Vector } from './vector.ts'

/** What a plan is judged by once its cost is settled: different patterns, then set-ups, then its longest kept offcut. */
export interface Tidiness {
  readonly patterns: number
  readonly setUps: number
  readonly longestKept: number
}

export interface TidyPlan {
  readonly sequence: Sequence
  readonly tidiness: Tidiness
  /** True when no plan of the same cost has fewer different patterns. */
  readonly fewest: boolean
}

/** What the search for few patterns works on. */
export interface TidyJob {
  readonly bars: readonly Bar[]
  readonly size: Vector
  /** Pieces asked for, by length, longest first. */
  readonly count: Vector
  /** What one piece is worth in the linear plan, then what one of each limited bar is. */
  readonly worth: Vector
  /** Cost of the plan, which no other may exceed. */
  readonly cost: number
  /** Cost of the plan less the linear bound: the losses that all fillings may share. */
  readonly slack: number
  readonly kerf: number
  readonly keep: number
}

/** Judges a plan in its best order. */
export function tidied(fillings: readonly Filling[], job: TidyJob): { sequence: Sequence; tidiness: Tidiness } {
  const sequence = inSequence(fillings)
  let longestKept = 0
  for (const f of fillings) {
    const left = f.bar.room - job.kerf - sizeOf(f.piece, job.size)
    if (left >= job.keep - FIT_TICKS && left > longestKept) longestKept = left
  }
  return { sequence, tidiness: { patterns: fillings.length, setUps: sequence.setUps, longestKept } }
}

/** Fewer patterns first, then fewer set-ups of the stop, then the longer offcut kept. */
export const isTidier = (a: Tidiness, b: Tidiness): boolean =>
  a.patterns !== b.patterns
    ? a.patterns < b.patterns
    : a.setUps !== b.setUps
      ? a.setUps < b.setUps
      : a.longestKept > b.longestKept

/**
 * Looks for a plan of the same cost with fewer different patterns, one more allowed each round until one is found: the
 * longest length still wanted is in some pattern, taken as often as it goes and then less; the last pattern must be an
 * even share of the rest. What the fillings lose against the linear bound can never exceed the slack.
 */
export function fewPatterns(first: readonly Filling[], job: TidyJob, budget: number): TidyPlan {
  let best = tidied(first, job)
  const { size, count } = job
  const n = size.length
  const slack = job.slack + 1e-7 + 1e-10 * job.slack
  const candidates = candidateFillings(job, slack, budget)
  if (candidates === undefined) return { ...best, fewest: first.length <= 1 }
  const left = count.slice()
  const stockLeft = job.bars.map((b) => b.available ?? Infinity)
  const chosen: Filling[] = []
  let steps = 0

  /** Ends with one pattern of all that is left, shared evenly over bars, at no more than the cost. */
  const close = (): void => {
    let paid = 0
    for (const f of chosen) paid += f.times * f.bar.cost
    const whole = sizeOf(left, size)
    let share = 0
    for (const [b, bar] of job.bars.entries()) {
      const fewest = wholeUp(whole / (bar.room + FIT_TICKS))
      if (paid + fewest * bar.cost > job.cost) continue
      if (share === 0) for (let i = 0; i < n; i++) share = greatestCommonDivisor(share, at(left, i))
      for (let times = fewest; times <= share; times++) {
        if (share % times !== 0 || times > (stockLeft[b] as number) || whole / times > bar.room + FIT_TICKS) continue
        if (paid + times * bar.cost > job.cost) break
        const piece = left.map((v) => v / times)
        const plan = tidied([...chosen, { bar, piece, times }], job)
        if (isTidier(plan.tidiness, best.tidiness)) best = plan
        break
      }
    }
  }
  const choose = (rounds: number, from: number, loss: number): void => {
    if (steps >= budget) return
    let longest = 0
    while (longest < n && at(left, longest) === 0) longest++
    if (longest === n) return
    if (rounds === 1) {
      steps++
      close()
      return
    }
    const list = candidates[longest] as Candidate[]
    for (let c = from; c < list.length; c++) {
      const candidate = list[c] as Candidate
      const piece = candidate.piece
      let most = stockLeft[candidate.bar] as number
      for (let i = longest; i < n; i++) {
        const wanted = at(piece, i)
        if (wanted > 0) most = Math.min(most, wholeDown(at(left, i) / wanted))
      }
      for (let times = most; times >= 1; times--) {
        const lost = loss + times * candidate.loss
        if (lost > slack) continue
        if (++steps >= budget) return
        for (let i = longest; i < n; i++) left[i] = at(left, i) - times * at(piece, i)
        stockLeft[candidate.bar] = (stockLeft[candidate.bar] as number) - times
        chosen.push({ bar: job.bars[candidate.bar] as Bar, piece, times })
        choose(rounds - 1, at(left, longest) > 0 ? c + 1 : 0, lost)
        chosen.pop()
        stockLeft[candidate.bar] = (stockLeft[candidate.bar] as number) + times
        for (let i = longest; i < n; i++) left[i] = at(left, i) + times * at(piece, i)
      }
    }
  }
  let rounds = 1
  for (; rounds <= best.tidiness.patterns && steps < budget; rounds++) choose(rounds, 0, 0)
  return { ...best, fewest: steps < budget || rounds > best.tidiness.patterns }
}

interface Candidate {
  readonly bar: number
  readonly piece: Vector
  readonly loss: number
  readonly pieces: number
}

/** Every filling, full or not, that loses no more than the slack, under the longest length it holds. */
function candidateFillings(job: TidyJob, slack: number, limit: number): Candidate[][] | undefined {
  const { size, count, worth } = job
  const n = size.length
  const lists: Candidate[][] = Array.from({ length: n }, () => [])
  const richest = new Float64Array(n + 1)
  for (let i = n - 1; i >= 0; i--) richest[i] = Math.max(at(richest, i + 1), at(worth, i) / at(size, i))
  const piece = new Float64Array(n)
  let found = 0
  for (const [b, bar] of job.bars.entries()) {
    const price = bar.cost + (bar.row === undefined ? 0 : at(worth, bar.row))
    const fill = (i: number, room: number, loss: number): void => {
      if (found > limit || loss - room * at(richest, i) > slack) return
      if (i === n) {
        if (bar.room - room <= bar.pointlessUpTo) return
        const longest = piece.findIndex((v) => v > 0)
        if (longest < 0) return
        found++
        lists[longest]?.push({ bar: b, piece: piece.slice(), loss, pieces: piece.reduce((sum, v) => sum + v, 0) })
        return
      }
      const most = Math.min(at(count, i), wholeDown(room / at(size, i)))
      for (let k = most; k >= 0; k--) {
        piece[i] = k
        fill(i + 1, room - k * at(size, i), loss - k * at(worth, i))
      }
    }
    fill(0, bar.room + FIT_TICKS, price)
  }
  if (found > limit) return undefined
  for (const list of lists) list.sort((x, y) => x.loss - y.loss || y.pieces - x.pieces)
  return lists
}

/** Least keepable offcut in ticks; nothing at all is not an offcut. */
export const keepableTicks = (keepM: number): number => Math.max(1, toTicks(keepM))
