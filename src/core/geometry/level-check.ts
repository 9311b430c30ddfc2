import { bad, good, type Result } from '../basics/result.ts'
import { leastSquares } from './least-squares.ts'
import type { Peg } from './tape-network.ts'

/** Distance read from the water in the tube, or from the line of a spirit level, down to the footing at a peg, m. */
export interface LevelReading {
  readonly peg: string
  readonly downM: number
}

export type LevelProblem =
  | { readonly kind: 'missing'; readonly pegs: readonly string[] }
  | { readonly kind: 'not-a-reading'; readonly peg: string }
  | { readonly kind: 'twice'; readonly peg: string }
  /** The first peg was read again at the end and differs: the tube leaked or the line moved. */
  | { readonly kind: 'moved'; readonly peg: string; readonly byM: number }
  /** A fall that no footing has: perhaps another unit. */
  | { readonly kind: 'too-far-apart'; readonly spreadM: number }

export interface CheckedLevel {
  readonly peg: string
  /** Under the highest corner. */
  readonly lowByM: number
  /** Bed joint under the first course that brings it level. */
  readonly jointM: number
  /** What must be made up under the joint first, with concrete or a split unit: 0 where the joint alone can. */
  readonly raiseM: number
}

export interface LevelCheck {
  readonly corners: readonly CheckedLevel[]
  /** Fall of the footing as a plane, m per m: positive rises to the right, to the back. */
  readonly riseAcross: number
  readonly riseBack: number
  /** How far the corners are off any plane, m. */
  readonly twistM: number
  readonly spreadM: number
  readonly toRaise: readonly string[]
  /** The bed joint takes up all of it. */
  readonly accepted: boolean
}

/** Reading error of a water tube, m: common practice. */
const READING_M = 0.003
/** A spread beyond this is a slip of the tape or another unit, m. */
const MOST_SPREAD_M = 0.5

interface JointRange {
  readonly minM: number
  readonly usualM: number
  readonly maxM: number
}

/**
 * Levels at the corners of a poured footing: how far each is low and which first bed joints bring the first course level. The joints keep as near
 * their usual thickness as the range lets them; what is left over is raised.
 */
export function levelCheck(
  plan: readonly Peg[],
  readings: readonly LevelReading[],
  joint: JointRange,
  first?: LevelReading,
): Result<LevelCheck, LevelProblem> {
  const problems = wrongLevels(plan, readings, first)
  if (problems.length > 0) return bad(...problems)
  const highest = Math.min(...readings.map(({ downM }) => downM))
  const lowBy = readings.map(({ downM }) => downM - highest)
  const spreadM = Math.max(...lowBy)
  if (spreadM > MOST_SPREAD_M) return bad({ kind: 'too-far-apart', spreadM })
  const mean = lowBy.reduce((sum, low) => sum + low, 0) / lowBy.length
  const base = Math.max(joint.minM, Math.min(joint.usualM - mean, joint.maxM - spreadM))
  const corners = readings.map(({ peg }, index): CheckedLevel => {
    const lowByM = lowBy[index] ?? 0
    const raiseM = Math.max(0, base + lowByM - joint.maxM)
    return { peg, lowByM, jointM: base + lowByM - raiseM, raiseM: raiseM < 1e-9 ? 0 : raiseM }
  })
  const toRaise = corners.filter(({ raiseM }) => raiseM > 0).map(({ peg }) => peg)
  return good({ corners, ...planeThrough(plan, readings), spreadM, toRaise, accepted: toRaise.length === 0 })
}

function wrongLevels(plan: readonly Peg[], readings: readonly LevelReading[], first?: LevelReading): LevelProblem[] {
  const problems: LevelProblem[] = readings.flatMap(({ peg, downM }, index): LevelProblem[] => {
    if (!Number.isFinite(downM) || !plan.some(({ id }) => id === peg)) return [{ kind: 'not-a-reading', peg }]
    return readings.slice(0, index).some((one) => one.peg === peg) ? [{ kind: 'twice', peg }] : []
  })
  const missing = ['A', 'B', 'C', 'D'].filter((corner) => !readings.some(({ peg }) => peg === corner))
  if (missing.length > 0) problems.push({ kind: 'missing', pegs: missing })
  const again = first === undefined ? undefined : readings.find(({ peg }) => peg === first.peg)
  if (first !== undefined && again !== undefined && Math.abs(first.downM - again.downM) > READING_M)
    problems.push({ kind: 'moved', peg: first.peg, byM: Math.abs(first.downM - again.downM) })
  return problems
}

/** The plane that fits the corners best, and how far off it they are. */
function planeThrough(
  plan: readonly Peg[],
  readings: readonly LevelReading[],
): Pick<LevelCheck, 'riseAcross' | 'riseBack' | 'twistM'> {
  const places = readings.map(({ peg, downM }) => {
    const { xM, yM } = plan.find(({ id }) => id === peg) ?? { xM: 0, yM: 0 }
    return { row: [1, xM, yM], heightM: -downM }
  })
  const fit = leastSquares([0, 0, 0], (unknowns) => ({
    slopes: places.map(({ row }) => row),
    misfit: places.map(
      ({ row, heightM }) => row.reduce((sum, value, i) => sum + value * (unknowns[i] ?? 0), 0) - heightM,
    ),
  }))
  const [, riseAcross, riseBack] = fit?.unknowns ?? []
  return {
    riseAcross: riseAcross ?? 0,
    riseBack: riseBack ?? 0,
    twistM: Math.max(0, ...(fit?.misfit ?? []).map(Math.abs)),
  }
}
