import { bad, good, type Result } from '../basics/result.ts'
import {
  adjustPegs,
  asksForParallelogram,
  fixesShape,
  type AdjustedPegs,
  type Peg,
  type TapeReading,
} from './tape-network.ts'
import { planLength } from './tape-plan.ts'
import { tapeQuarrel, type SuspiciousTape } from './tape-suspicion.ts'

/** Why a set of tapes cannot be worked with; nothing typed is lost. */
export type TapeProblem =
  | { readonly kind: 'unknown-peg'; readonly peg: string }
  | { readonly kind: 'not-a-length'; readonly from: string; readonly to: string }
  | { readonly kind: 'twice'; readonly from: string; readonly to: string }
  /** The reading is far from what the plan has: perhaps another unit, another peg. */
  | {
      readonly kind: 'far-from-plan'
      readonly from: string
      readonly to: string
      readonly readM: number
      readonly planM: number
    }
  /** One side of a triangle is longer than the other two together. */
  | {
      readonly kind: 'triangle'
      readonly pegs: readonly [string, string, string]
      readonly longest: readonly [string, string]
      readonly overM: number
    }
  /** The shape can still flex: one of these tapes fixes it. */
  | { readonly kind: 'not-enough'; readonly oneOf: readonly (readonly [string, string])[] }
  | { readonly kind: 'no-shape' }

/** How far the peg must go, square to the kiln: both parts as lengths with a direction, null where it stands right to half a millimetre. */
export interface PegMove {
  readonly peg: string
  readonly along: { readonly toward: 'left' | 'right'; readonly byM: number } | null
  readonly across: { readonly toward: 'front' | 'back'; readonly byM: number } | null
}

export interface CheckedTape extends TapeReading {
  readonly planM: number
  readonly adjustedM: number
  readonly correctionM: number
  readonly toleranceM: number
}

export interface TapeAdjustment {
  readonly pegs: readonly Peg[]
  readonly tapes: readonly CheckedTape[]
  readonly moves: readonly PegMove[]
  /** Inside angle at each corner less a right angle, degrees: positive is too wide. */
  readonly corners: readonly { readonly peg: string; readonly offSquareDeg: number }[]
  /** Lean of the whole from the two diagonals, degrees: positive leans to the right. */
  readonly outOfSquareDeg: number
  readonly redundancy: number
  /** Opposite sides were taken as equal because only one of each was taped. */
  readonly parallelogram: boolean
  /** The tapes contradict each other by more than careful reading allows: measure again before moving a peg. */
  readonly disagree: boolean
  readonly suspicious: SuspiciousTape | null
  readonly accepted: boolean
}

/** Readings of a careful mason with a steel tape, m: common practice. */
const READING_M = 0.003

/** 6 mm in 3 m, a commonly quoted working limit; never finer than the tape can be read. */
const tapeTolerance = (planM: number): number => Math.max(READING_M, planM / 500)

/** Angle out of square of a four-sided figure with mean sides a, b and diagonals p, q, degrees: asin((p² − q²) / (4·a·b)). */
export const outOfSquareDeg = (aM: number, bM: number, pM: number, qM: number): number =>
  (Math.asin((pM ** 2 - qM ** 2) / (4 * aM * bM)) * 180) / Math.PI

/**
 * Where the pegs stand by the lengths taped between them, how far the tapes agree, and how to move each peg. Peg A stays and B stays on the
 * string of the front, so that nobody moves what is right. Four lengths will do (front, side, both diagonals); six check each other.
 */
export function adjustTapes(
  plan: readonly Peg[],
  readings: readonly TapeReading[],
): Result<TapeAdjustment, TapeProblem> {
  const wrong = wrongReadings(plan, readings)
  if (wrong.length > 0) return bad(...wrong)
  const impossible = impossibleTriangles(plan, readings)
  if (impossible.length > 0) return bad(...impossible)
  const pegs = plan.filter(({ id }) => 'ABCD'.includes(id) || readings.some(({ from, to }) => from === id || to === id))
  if (!fixesShape(pegs, readings)) return bad({ kind: 'not-enough', oneOf: fixingTapes(pegs, readings) })
  const parallelogram = asksForParallelogram(readings)
  const adjusted = adjustPegs(pegs, readings, parallelogram)
  if (adjusted === null) return bad({ kind: 'no-shape' })
  return good(adjustment(pegs, readings, adjusted, parallelogram))
}

function adjustment(
  plan: readonly Peg[],
  readings: readonly TapeReading[],
  adjusted: AdjustedPegs,
  parallelogram: boolean,
): TapeAdjustment {
  const { pegs, redundancy } = adjusted
  const length = (from: string, to: string) => planLength(pegs, from, to)
  const tapes = readings.map((reading, index): CheckedTape => {
    const planM = planLength(plan, reading.from, reading.to)
    const correctionM = adjusted.corrections[index] ?? 0
    return {
      ...reading,
      planM,
      correctionM,
      adjustedM: reading.lengthM + correctionM,
      toleranceM: tapeTolerance(planM),
    }
  })
  const { disagree, tape: suspicious } = tapeQuarrel(plan, readings, adjusted, parallelogram, READING_M)
  const everyPair = plan.flatMap((one, index) => plan.slice(index + 1).map((other) => [one.id, other.id] as const))
  const inPlace = everyPair.every(([from, to]) => {
    const planM = planLength(plan, from, to)
    return Math.abs(length(from, to) - planM) <= tapeTolerance(planM)
  })
  const a = (length('A', 'B') + length('C', 'D')) / 2
  const b = (length('B', 'C') + length('D', 'A')) / 2
  return {
    pegs,
    tapes,
    moves: plan.map((want, index) => moveOf(want, pegs[index] ?? want)),
    corners: cornersOff(pegs),
    outOfSquareDeg: outOfSquareDeg(a, b, length('A', 'C'), length('B', 'D')),
    redundancy,
    parallelogram,
    disagree,
    suspicious,
    accepted: inPlace && !disagree,
  }
}

const HALF_MM = 0.0005

function moveOf(want: Peg, stands: Peg): PegMove {
  const right = want.xM - stands.xM
  const back = want.yM - stands.yM
  return {
    peg: want.id,
    along: Math.abs(right) < HALF_MM ? null : { toward: right > 0 ? 'right' : 'left', byM: Math.abs(right) },
    across: Math.abs(back) < HALF_MM ? null : { toward: back > 0 ? 'back' : 'front', byM: Math.abs(back) },
  }
}

function cornersOff(pegs: readonly Peg[]): TapeAdjustment['corners'] {
  const ring = ['A', 'B', 'C', 'D'].map((id) => pegs.find((peg) => peg.id === id)).filter((peg) => peg !== undefined)
  return ring.map((peg, index) => {
    const next = ring[(index + 1) % ring.length] ?? peg
    const before = ring[(index + ring.length - 1) % ring.length] ?? peg
    const to = (other: Peg) => [other.xM - peg.xM, other.yM - peg.yM] as const
    const [ux, uy] = to(next)
    const [vx, vy] = to(before)
    return { peg: peg.id, offSquareDeg: (Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy) * 180) / Math.PI - 90 }
  })
}

function wrongReadings(plan: readonly Peg[], readings: readonly TapeReading[]): TapeProblem[] {
  return readings.flatMap((reading, index): TapeProblem[] => {
    const { from, to, lengthM } = reading
    const stranger = [from, to].find((id) => !plan.some((peg) => peg.id === id))
    if (stranger !== undefined) return [{ kind: 'unknown-peg', peg: stranger }]
    if (from === to || !Number.isFinite(lengthM) || lengthM <= 0) return [{ kind: 'not-a-length', from, to }]
    if (readings.slice(0, index).some((one) => pairKey(one.from, one.to) === pairKey(from, to)))
      return [{ kind: 'twice', from, to }]
    const planM = planLength(plan, from, to)
    const far = Math.abs(lengthM - planM) > 0.25 * planM + 0.05
    return far ? [{ kind: 'far-from-plan', from, to, readM: lengthM, planM }] : []
  })
}

const pairKey = (one: string, other: string): string => (one < other ? `${one} ${other}` : `${other} ${one}`)

/**
 * Triangles of taped lengths that no three pegs can have, beyond what reading explains. Pegs that stand in a row by the plan are left to the
 * adjustment, which can tell the wrong one of their tapes.
 */
function impossibleTriangles(plan: readonly Peg[], readings: readonly TapeReading[]): TapeProblem[] {
  const lengths = new Map(readings.map(({ from, to, lengthM }) => [pairKey(from, to), lengthM]))
  const ids = [...new Set(readings.flatMap(({ from, to }) => [from, to]))]
  const problems: TapeProblem[] = []
  for (const [i, a] of ids.entries())
    for (const [j, b] of ids.entries())
      for (const c of ids.slice(j + 1)) {
        if (j <= i) continue
        const sides = [[a, b] as const, [b, c] as const, [a, c] as const].map((ends) => ({
          ends,
          m: lengths.get(pairKey(...ends)),
        }))
        const [first, second, longest] = sides.toSorted((one, other) => (one.m ?? NaN) - (other.m ?? NaN))
        if (first?.m === undefined || second?.m === undefined || longest?.m === undefined) continue
        const overM = longest.m - first.m - second.m
        if (overM > 3 * READING_M && !inARow(plan, [a, b, c]))
          problems.push({ kind: 'triangle', pegs: [a, b, c], longest: longest.ends, overM })
      }
  return problems
}

function inARow(plan: readonly Peg[], [a, b, c]: readonly [string, string, string]): boolean {
  const sides = [planLength(plan, a, b), planLength(plan, b, c), planLength(plan, a, c)]
  const longest = Math.max(...sides)
  return sides.reduce((sum, side) => sum + side, 0) - 2 * longest < 0.01 * longest
}

/** Tapes not yet taken, any one of which would fix the shape; those that help where no single one does. */
function fixingTapes(pegs: readonly Peg[], readings: readonly TapeReading[]): (readonly [string, string])[] {
  const taken = new Set(readings.map(({ from, to }) => pairKey(from, to)))
  const open = pegs.flatMap((one, index) =>
    pegs
      .slice(index + 1)
      .flatMap((other) => (taken.has(pairKey(one.id, other.id)) ? [] : [[one.id, other.id] as const])),
  )
  const fixing = open.filter(([from, to]) =>
    fixesShape(pegs, [...readings, { from, to, lengthM: planLength(pegs, from, to) }]),
  )
  return fixing.length > 0 ? fixing : open
}
