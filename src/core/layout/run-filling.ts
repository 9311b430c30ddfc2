import type { CutPlace } from './layout-choices.ts'
import { BREACH, oneCut, severalCuts, type PieceRule, type Trial } from './cut-placing.ts'
import { SLACK_UM } from './micrometres.ts'

/** One row of pieces between two fixed things; positions from the start of the run, in micrometres. */
export interface Fill {
  readonly starts: readonly number[]
  readonly lengths: readonly number[]
  readonly jointAt: readonly number[]
  readonly jointWidth: readonly number[]
  readonly cuts: number
  /** Only for comparing fills of the same run. */
  readonly cost: number
}

const OFF_GRID = 0.02

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

const costOf = (trial: Trial | null): number => trial?.cost ?? Infinity

interface Attempt {
  readonly cutting: typeof oneCut
  readonly more: number
  readonly joints: 'usual' | 'few' | 'wide'
  readonly close: boolean
  /** Content with what was found before if that costs less. */
  readonly enough: number | 'two-cuts'
}

/** In turn: a single cut; several; and if laps are still short, just clear of the perpends, at other joints, with a piece more. */
const ATTEMPTS: readonly Attempt[] = [
  { cutting: oneCut, more: 0, joints: 'usual', close: false, enough: 0 },
  { cutting: severalCuts, more: 0, joints: 'few', close: false, enough: 'two-cuts' },
  { cutting: severalCuts, more: 0, joints: 'few', close: true, enough: BREACH },
  { cutting: severalCuts, more: 0, joints: 'wide', close: true, enough: BREACH },
  { cutting: severalCuts, more: 1, joints: 'few', close: true, enough: BREACH },
]

/** Total shortenings worth trying for a number of pieces: none, on the cut grid near the usual joint, the usual joint itself. */
function shortenings(
  rule: PieceRule,
  run: number,
  joints: number,
  pieces: number,
  choice: Attempt['joints'],
): number[] {
  const whole = pieces * rule.length - run
  const least = whole + joints * rule.jointMin
  const most = whole + joints * rule.jointMax
  const usual = whole + joints * rule.jointUsual
  const found: number[] = []
  const add = (value: number): void => {
    const slack = joints > 0 ? SLACK_UM : 0
    const fits = value >= least - slack && value <= most + slack
    if (fits && (value === 0 || value >= rule.trim) && !found.includes(value)) found.push(value)
  }
  add(0)
  const grid = Math.trunc(usual / rule.grid) * rule.grid
  if (choice === 'few') {
    add(usual - grid > rule.grid / 2 ? grid + rule.grid : grid)
    if (usual >= rule.trim) add(usual)
    if (found.length === 0) add(Math.trunc(most / rule.grid) * rule.grid)
    return found
  }
  add(grid)
  add(grid + rule.grid)
  for (const cut of rule.goodCuts) add(cut)
  if (usual >= rule.trim) add(usual)
  if (choice === 'wide') {
    const first = Math.max(rule.trim, least)
    const step = Math.max(rule.grid, Math.trunc((most - first) / (3 * rule.grid)) * rule.grid)
    for (let value = Math.trunc(first / rule.grid) * rule.grid; value <= most; value += step) add(value)
    add(Math.trunc(most / rule.grid) * rule.grid)
    add(first)
  }
  return found
}

/** Fewest pieces that reach from end to end at the widest joint. */
export const fewestPieces = (rule: PieceRule, run: number, ends: number): number =>
  Math.max(1, Math.trunc((run + (1 - ends) * rule.jointMax - 1 - SLACK_UM) / (rule.length + rule.jointMax)) + 1)

/**
 * Fills one run with whole and cut pieces: fewest breaches, then fewest units and cuts, then greatest laps over the
 * perpends of the neighbouring course given in `avoid` (sorted, from the start of the run).
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
  const fewest = fewestPieces(rule, run, ends)
  let best = null as Trial | null
  for (const { cutting, more, joints: choice, close, enough } of ATTEMPTS) {
    const pieces = fewest + more
    if (costOf(best) < (enough === 'two-cuts' ? 2 * rule.cutWorth : enough)) continue
    const joints = pieces - 1 + ends
    for (const shortened of shortenings(rule, run, joints, pieces, choice)) {
      const joint = joints === 0 ? 0 : (run - pieces * rule.length + shortened) / joints
      const offset = (startJoint ? joint : 0) - joint / 2
      const penalty = shortened % rule.grid === 0 ? 0 : OFF_GRID
      const share = { rule, avoid, place, pieces, shortened, joint, close, offset }
      const trial: Trial | null = cutting(share, costOf(best) - penalty)
      if (trial !== null) best = { cost: trial.cost + penalty, lengths: trial.lengths }
    }
  }
  if (best === null)
    return place === 'any'
      ? squeezed(rule, run, startJoint, endJoint)
      : fillRun(rule, run, startJoint, endJoint, avoid, 'any')
  const cuts = best.lengths.reduce((sum, length) => sum + (length < rule.length ? 1 : 0), 0)
  return placed(run, startJoint, endJoint, best.lengths, cuts, best.cost)
}

/** Fills with these pieces, if the joints they leave are in range. */
export function fillWith(
  rule: PieceRule,
  run: number,
  startJoint: boolean,
  endJoint: boolean,
  lengths: readonly number[],
): Fill | null {
  const joints = lengths.length - 1 + (startJoint ? 1 : 0) + (endJoint ? 1 : 0)
  const left = lengths.reduce((rest, length) => rest - length, run)
  const slack = joints * SLACK_UM
  if (joints === 0 ? left !== 0 : left < joints * rule.jointMin - slack || left > joints * rule.jointMax + slack)
    return null
  const cuts = lengths.reduce((sum, length) => sum + (length < rule.length ? 1 : 0), 0)
  return placed(run, startJoint, endJoint, lengths, cuts, 0)
}

/** Other sound fills of a run, made to use pieces of a length that offcuts wait for, or one piece more. */
export function otherFills(
  rule: PieceRule,
  run: number,
  startJoint: boolean,
  endJoint: boolean,
  avoid: readonly number[],
  wanted: readonly number[],
): Fill[] {
  const ends = (startJoint ? 1 : 0) + (endJoint ? 1 : 0)
  const fewest = fewestPieces(rule, run, ends)
  const found = new Map<string, Fill>()
  for (const piece of wanted) {
    const eager = { ...rule, wanted: piece, goodCuts: [rule.length - piece, ...rule.goodCuts] }
    for (const pieces of [fewest, fewest + 1]) {
      const joints = pieces - 1 + ends
      for (const shortened of shortenings(eager, run, joints, pieces, 'usual')) {
        const joint = joints === 0 ? 0 : (run - pieces * rule.length + shortened) / joints
        const offset = (startJoint ? joint : 0) - joint / 2
        const share = { rule: eager, avoid, place: 'any' as const, pieces, shortened, joint, close: false, offset }
        const trial = severalCuts(share, BREACH)
        if (trial === null || found.has(trial.lengths.join())) continue
        const fill = fillWith(rule, run, startJoint, endJoint, trial.lengths)
        if (fill !== null) found.set(trial.lengths.join(), fill)
      }
    }
  }
  return [...found.values()]
}
