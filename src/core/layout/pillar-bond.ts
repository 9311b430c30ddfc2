import { modulesToCover, wholeModulesIn } from '../basics/count.ts'
import type { LayoutFinding, Remedy } from './contract.ts'
import { junctionAt, type Frame } from './frame.ts'
import type { Levels } from './levels.ts'
import { toMetres } from './micrometres.ts'
import type { WallRules } from './remembered-fills.ts'

/** Widths of a pillar between two openings that a single leaf bonds, micrometres; a gap between two ranges bonds in no way. */
interface BondedWidths {
  readonly least: number
  /** One piece spans the pillar in the courses in which the front runs through: up to here. */
  readonly onePiece: number
  /** From here on its courses may have a perpend of their own beside those of the dividing wall. */
  readonly several: number
}

/**
 * A pillar of width P, every other course parted by the dividing wall of thickness t that comes through its middle.
 *
 *   parted course    two pieces of (P − t) ÷ 2 − j, each at least s, so P ≥ t + 2 (s + j)
 *   whole course     one piece, so P ≤ ℓ;
 *                    or a perpend in the middle, a lap v from those at (t + j) ÷ 2, so v ≤ (t + j) ÷ 2;
 *                    or one outside them, a lap and a piece s from the jamb, so P ≥ t + 2 (s + v + j)
 */
function bondedWidths({ thickness, unitLength }: Frame, { along }: WallRules): BondedWidths {
  const { shortest, lap, jointUsual, jointMin } = along
  const least = thickness + 2 * (shortest + jointMin)
  const inMiddle = lap <= (thickness + jointUsual) / 2
  return { least, onePiece: unitLength, several: inMiddle ? least : thickness + 2 * (shortest + lap + jointUsual) }
}

/** Sizes are offered on this grid. */
const OFFER_STEP_M = 0.005

/** The bonded widths nearest to a pillar that bonds in none: the widest below it, if any, and the narrowest above it. */
function nearestWidths(pillar: number, { least, onePiece, several }: BondedWidths): readonly [number | null, number] {
  if (onePiece < least) return [null, several]
  return pillar < least ? [null, least] : [onePiece, several]
}

/** The nearest opening width and clear side at which a pillar is as wide as it must be. */
function remediesFor(frame: Frame, pillar: number, [below, above]: readonly [number | null, number]): Remedy[] {
  const isLess = below !== null && pillar - below < above - pillar
  const more = toMetres((isLess ? below : above) - pillar)
  const widestM = toMetres(frame.opening) - more
  const sideM = toMetres(frame.clear) + more
  // Rounded so that a pillar to be narrowed never stays too wide, nor one to be widened too narrow.
  const up = (lengthM: number): number => modulesToCover(lengthM, OFFER_STEP_M) * OFFER_STEP_M
  const down = (lengthM: number): number => wholeModulesIn(lengthM, OFFER_STEP_M) * OFFER_STEP_M
  const widthM = isLess ? up(widestM) : down(widestM)
  const clearSideM = isLess ? down(sideM) : up(sideM)
  return [
    ...(widthM > 0 && widthM < toMetres(frame.clear) ? [{ kind: 'opening-width' as const, widthM }] : []),
    ...(clearSideM > toMetres(frame.opening) ? [{ kind: 'clear-side' as const, clearSideM }] : []),
  ]
}

/** A finding for each pillar between two openings where no arrangement of its courses laps, with the sizes that mend it. */
export function pillarFindings(
  frame: Frame,
  levels: Levels,
  rules: WallRules,
  measured: readonly LayoutFinding[],
): LayoutFinding[] {
  const { chambers, clear, thickness, opening, bond } = frame
  if (chambers < 2 || bond !== 'stretcher' || levels.head - levels.sill < 2) return []
  const pillar = clear + thickness - opening
  const widths = bondedWidths(frame, rules)
  if (pillar >= widths.least && (pillar <= widths.onePiece || pillar >= widths.several)) return []
  const middles = Array.from({ length: chambers - 1 }, (_, k) => toMetres(junctionAt(frame, k + 1) + thickness / 2))
  const isThere = (one: LayoutFinding): boolean =>
    (one.kind === 'lap-short' || one.kind === 'piece-short') &&
    one.wall === 'front' &&
    middles.some((middle) => Math.abs(one.xM - middle) < toMetres(pillar) / 2)
  const seen = measured.find(isThere)
  if (seen === undefined || !('courses' in seen)) return []
  const nearest = nearestWidths(pillar, widths)
  const remedies = remediesFor(frame, pillar, nearest)
  return middles.map((xM) => ({
    kind: 'pillar-unbonded',
    wall: 'front',
    courses: seen.courses,
    xM,
    yM: toMetres(thickness / 2),
    pillarM: toMetres(pillar),
    mostM: nearest[0] === null ? null : toMetres(nearest[0]),
    leastM: toMetres(nearest[1]),
    remedies,
  }))
}
