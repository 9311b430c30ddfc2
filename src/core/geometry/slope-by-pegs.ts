import { bad, good, type Result } from '../basics/result.ts'
import type { Plan } from '../plan/schema.ts'
import type { GroundPlane } from './ground-plane.ts'

/** Heights read down from one level line to the ground at three pegs, m, and how far the pegs stand apart. null: not read, taken as level that way. */
export interface SlopeReadings {
  readonly downAtFrontLeftM: number
  readonly right: { readonly downM: number; readonly apartM: number } | null
  readonly back: { readonly downM: number; readonly apartM: number } | null
}

export type SlopeProblem =
  | { readonly kind: 'not-a-length'; readonly peg: 'front-left' | 'right' | 'back' }
  | { readonly kind: 'nothing-read' }
  /** Steeper than one in four: cut a terrace first. */
  | { readonly kind: 'terrace-first'; readonly slope: number }

const STEEPEST = 0.25

/** The readings that a plan keeps, as far as they go; null where nothing has been read at all. A half-read peg is one without a length. */
export function slopeReadings({ heights }: Plan['ground']): SlopeReadings | null {
  const { frontLeftM, rightM, rightApartM, backM, backApartM } = heights
  const peg = (downM: number | null, apartM: number | null) =>
    downM === null && apartM === null ? null : { downM: downM ?? Number.NaN, apartM: apartM ?? Number.NaN }
  const right = peg(rightM, rightApartM)
  const back = peg(backM, backApartM)
  return frontLeftM === null && right === null && back === null
    ? null
    : { downAtFrontLeftM: frontLeftM ?? Number.NaN, right, back }
}

/** Rise of the ground to the right and to the back, m per m: ground further under the line is lower. */
export function slopeByPegs({ downAtFrontLeftM, right, back }: SlopeReadings): Result<GroundPlane, SlopeProblem> {
  const problems: SlopeProblem[] = []
  if (!Number.isFinite(downAtFrontLeftM)) problems.push({ kind: 'not-a-length', peg: 'front-left' })
  for (const [peg, read] of [['right', right] as const, ['back', back] as const])
    if (read !== null && !(Number.isFinite(read.downM) && read.apartM > 0)) problems.push({ kind: 'not-a-length', peg })
  if (right === null && back === null) problems.push({ kind: 'nothing-read' })
  if (problems.length > 0) return bad(...problems)
  const rise = (read: SlopeReadings['right']) => (read === null ? 0 : (downAtFrontLeftM - read.downM) / read.apartM)
  const plane = { across: rise(right), back: rise(back) }
  const steepest = Math.max(Math.abs(plane.across), Math.abs(plane.back))
  if (steepest > STEEPEST + 1e-9) return bad({ kind: 'terrace-first', slope: steepest })
  const within = (slope: number) => Math.max(-STEEPEST, Math.min(STEEPEST, slope))
  return good({ across: within(plane.across), back: within(plane.back) })
}
