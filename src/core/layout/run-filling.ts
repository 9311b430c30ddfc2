import type { CutPlace } from './contract.ts'
import { SLACK_UM } from './micrometres.ts'

/** What the pieces of one run may be; lengths in micrometres. */
export interface PieceRule {
  /** Along the wall: the unit's length, or its width where units lie across the wall. */
  readonly length: number
  readonly shortest: number
  /** Cuts fall on multiples of this where the joints allow it. */
  readonly grid: number
  /** Least that a cut can take off. */
  readonly trim: number
  readonly lap: number
  /** Lap worth aiming for: half a unit and its joint. */
  readonly aim: number
  readonly jointMin: number
  readonly jointUsual: number
  readonly jointMax: number
}

/** One row of pieces between two fixed things; positions from the start of the run, in micrometres. */
export interface Fill {
  readonly starts: readonly number[]
  readonly lengths: readonly number[]
  readonly jointAt: readonly number[]
  readonly jointWidth: readonly number[]
  readonly cuts: number
  /** Breaches × 100 + cuts + a little for short laps: only for comparing fills of the same run. */
  readonly cost: number
}

const BREACH = 100
const OFF_GRID = 0.02
const MOST_STEPS = 512
const MOST_PIECES = 256

const costNow = new Float64Array(MOST_STEPS)
const costNext = new Float64Array(MOST_STEPS)
const queue = new Int32Array(MOST_STEPS)
const cameFrom = new Int16Array(MOST_STEPS * (MOST_PIECES + 1))

/** A short lap counts once for being short and up to four times more the nearer it comes to a straight joint. */
export const shortLapWeight = (distance: number, lap: number): number => {
  const missing = (lap - distance) / lap
  return 1 + 4 * missing * missing
}

const lapCost = (distance: number, rule: PieceRule): number => {
  if (distance >= rule.aim) return 0
  if (distance >= rule.lap - SLACK_UM) return (1e-3 * (rule.aim - distance)) / rule.aim
  return BREACH * shortLapWeight(distance, rule.lap)
}

const cutAllowed = (place: CutPlace, piece: number, pieces: number): boolean => {
  switch (place) {
    case 'any':
      return true
    case 'first':
      return piece === 1
    case 'last':
      return piece === pieces
    case 'middle':
      return piece === (pieces + 1) >> 1
    case 'ends':
      return piece === 1 || piece === pieces
  }
}

interface Trial {
  readonly pieces: number
  /** Total shortened: pieces × length less what the run takes. */
  readonly shortened: number
  readonly cost: number
  readonly lengths: readonly number[]
}

/**
 * Cuts of `pieces` pieces that shorten them by `shortened` in all, with the fewest cuts whose perpends keep clear of the
 * neighbouring course. One state per shift on the cut grid, one stage per piece; a cut moves to a greater shift.
 */
function shortestCuts(
  rule: PieceRule,
  run: number,
  startJoint: boolean,
  joints: number,
  pieces: number,
  shortened: number,
  avoid: readonly number[],
  place: CutPlace,
): Trial | null {
  const onGrid = Math.trunc(shortened / rule.grid)
  const last = onGrid * rule.grid === shortened ? onGrid : onGrid + 1
  if (last + 1 > MOST_STEPS || pieces > MOST_PIECES) return null
  const joint = joints === 0 ? 0 : (run - pieces * rule.length + shortened) / joints
  const most = rule.length - rule.shortest
  costNow.fill(Infinity, 0, last + 1)
  costNow[0] = 0
  for (let piece = 1; piece <= pieces; piece++) {
    const isEnd = piece === pieces
    const mayCut = cutAllowed(place, piece, pieces)
    const at = ((startJoint ? 1 : 0) + piece - 0.5) * joint + piece * rule.length
    let head = 0
    let tail = 0
    let fed = 0
    let beyond = avoid.length
    for (let step = 0; step <= last; step++) {
      const shift = step <= onGrid ? step * rule.grid : shortened
      let best = costNow[step] ?? Infinity
      let from = step
      if (mayCut) {
        // Monotone queue over the earlier shifts that one cut can leave behind.
        while (fed <= onGrid && fed < step && fed * rule.grid <= shift - rule.trim) {
          const cost = costNow[fed] ?? Infinity
          while (tail > head && (costNow[queue[tail - 1] ?? 0] ?? Infinity) > cost) tail--
          queue[tail++] = fed++
        }
        while (tail > head && (queue[head] ?? 0) * rule.grid < shift - most) head++
        if (tail > head) {
          const back = queue[head] ?? 0
          const cost = (costNow[back] ?? Infinity) + 1
          if (cost < best) {
            best = cost
            from = back
          }
        }
      }
      if (best < Infinity && !isEnd) {
        // The perpend moves down as the shift grows, and the nearest of the neighbour's perpends with it.
        const perpend = at - shift
        while (beyond > 0 && (avoid[beyond - 1] ?? 0) >= perpend) beyond--
        const distance = Math.min((avoid[beyond] ?? Infinity) - perpend, perpend - (avoid[beyond - 1] ?? -Infinity))
        if (distance < rule.aim) best += lapCost(distance, rule)
      }
      costNext[step] = best
      cameFrom[piece * MOST_STEPS + step] = from
    }
    for (let step = 0; step <= last; step++) costNow[step] = costNext[step] ?? Infinity
  }
  const cost = costNow[last] ?? Infinity
  if (cost === Infinity) return null
  const lengths: number[] = []
  let step = last
  for (let piece = pieces; piece >= 1; piece--) {
    const back = cameFrom[piece * MOST_STEPS + step] ?? step
    const shift = step <= onGrid ? step * rule.grid : shortened
    const before = back <= onGrid ? back * rule.grid : shortened
    lengths.push(rule.length - (shift - before))
    step = back
  }
  return { pieces, shortened, cost, lengths: lengths.reverse() }
}

/** Spreads what the pieces leave evenly over the joints, to the micrometre. */
function placed(
  run: number,
  startJoint: boolean,
  endJoint: boolean,
  lengths: readonly number[],
  cuts: number,
  cost: number,
): Fill {
  const joints = lengths.length - 1 + (startJoint ? 1 : 0) + (endJoint ? 1 : 0)
  let left = run
  for (const length of lengths) left -= length
  const starts: number[] = []
  const jointAt: number[] = []
  const jointWidth: number[] = []
  let position = 0
  let used = 0
  const lay = (): void => {
    used++
    const upTo = Math.trunc((used * left) / joints)
    const width = upTo - Math.trunc(((used - 1) * left) / joints)
    jointAt.push(position + width / 2)
    jointWidth.push(width)
    position += width
  }
  if (startJoint) lay()
  lengths.forEach((length, index) => {
    starts.push(position)
    position += length
    if (index < lengths.length - 1 || endJoint) lay()
  })
  return { starts, lengths, jointAt, jointWidth, cuts, cost }
}

/** A run too small for any lawful piece: one wide joint, or one short piece. The measuring afterwards says what is wrong. */
function squeezed(rule: PieceRule, run: number, startJoint: boolean, endJoint: boolean): Fill {
  const joints = (startJoint ? 1 : 0) + (endJoint ? 1 : 0)
  if (joints === 2 && run <= rule.jointMax + SLACK_UM) {
    const cost = run >= rule.jointMin - SLACK_UM ? 0 : 3 * BREACH
    return { starts: [], lengths: [], jointAt: [run / 2], jointWidth: [run], cuts: 0, cost }
  }
  const length = Math.min(rule.length, run - joints * rule.jointMin)
  if (joints > 0 && length < 10_000)
    return { starts: [], lengths: [], jointAt: [run / 2], jointWidth: [run], cuts: 0, cost: 3 * BREACH }
  return placed(run, startJoint, endJoint, [Math.max(length, 1)], 1, 3 * BREACH)
}

/** Total shortenings worth trying for a number of pieces: none, on the cut grid near the usual joint, the usual joint itself. */
function shortenings(rule: PieceRule, run: number, joints: number, pieces: number, wide: boolean): number[] {
  const whole = pieces * rule.length - run
  const least = whole + joints * rule.jointMin
  const most = whole + joints * rule.jointMax
  const usual = whole + joints * rule.jointUsual
  const found: number[] = []
  const add = (value: number): void => {
    const fits = value >= least - SLACK_UM && value <= most + SLACK_UM
    if (fits && (value === 0 || value >= rule.trim) && !found.includes(value)) found.push(value)
  }
  add(0)
  const grid = Math.trunc(usual / rule.grid) * rule.grid
  add(grid)
  add(grid + rule.grid)
  if (usual >= rule.trim) add(usual)
  if (found.length === 0 || wide) {
    const first = Math.max(rule.trim, least)
    const step = Math.max(rule.grid, Math.trunc((most - first) / (3 * rule.grid)) * rule.grid)
    for (let value = Math.trunc(first / rule.grid) * rule.grid; value <= most; value += step) add(value)
    add(Math.trunc(most / rule.grid) * rule.grid)
    add(first)
  }
  return found
}

/**
 * Fills one run with whole and cut pieces: fewest breaches, then fewest cuts, then greatest laps over the perpends of the
 * neighbouring course given in `avoid` (sorted, from the start of the run).
 */
export function fillRun(
  rule: PieceRule,
  run: number,
  startJoint: boolean,
  endJoint: boolean,
  avoid: readonly number[],
  place: CutPlace,
): Fill {
  const ends = (startJoint ? 1 : 0) + (endJoint ? 1 : 0)
  const fewest = Math.max(
    1,
    Math.trunc((run + (1 - ends) * rule.jointMax - 1 - SLACK_UM) / (rule.length + rule.jointMax)) + 1,
  )
  let best: Trial | null = null
  let bestCost = Infinity
  for (let pieces = fewest; pieces <= fewest + 1 && bestCost >= BREACH; pieces++) {
    const joints = pieces - 1 + ends
    for (let wide = 0; wide < 2 && bestCost >= BREACH; wide++) {
      for (const shortened of shortenings(rule, run, joints, pieces, wide === 1)) {
        const trial = shortestCuts(rule, run, startJoint, joints, pieces, shortened, avoid, place)
        if (trial === null) continue
        const cost = trial.cost + (shortened % rule.grid === 0 ? 0 : OFF_GRID)
        if (cost < bestCost) {
          best = trial
          bestCost = cost
        }
        if (bestCost < 1 + OFF_GRID) break
      }
    }
  }
  if (best === null)
    return place === 'any'
      ? squeezed(rule, run, startJoint, endJoint)
      : fillRun(rule, run, startJoint, endJoint, avoid, 'any')
  const cuts = best.lengths.reduce((sum, length) => sum + (length < rule.length ? 1 : 0), 0)
  return placed(run, startJoint, endJoint, best.lengths, cuts, bestCost)
}
