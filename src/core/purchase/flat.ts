import { SAME_LENGTH_M, lotsFor, wholeModulesIn, wholeUp } from '../basics/count.ts'

/** How a square piece comes out of a roll or sheet of one width. */
export interface FlatFit {
  /** Pieces side by side; 0 where the piece is wider and must be joined from strips. */
  readonly across: number
  /** Parts that make up one piece: 1, or the strips of a joined one. */
  readonly strips: number
}

/** Lap of one strip of mesh over the next where a piece is wider than the roll, m: common practice. */
const STRIP_LAP_M = 0.05

/** Strips of a roll that make a square of a side: strips lap, and the last one may be cut narrower. */
export function fitInRoll(sideM: number, widthM: number): FlatFit {
  const across = wholeModulesIn(widthM, sideM)
  if (across > 0 || widthM <= STRIP_LAP_M) return { across, strips: 1 }
  return { across: 0, strips: lotsFor(sideM - STRIP_LAP_M - SAME_LENGTH_M, widthM - STRIP_LAP_M) }
}

/** Running metres of a roll for a number of squares: whole rows across, each as long as the side. */
export const rollRunM = (count: number, sideM: number, fit: FlatFit): number =>
  (fit.across > 0 ? wholeUp(count / fit.across) : count * fit.strips) * sideM

/**
 * Squares out of one sheet in straight rows and columns, with a saw cut between neighbours: the most that cuts from edge to edge give.
 * Where not even one comes out, `parts` says into how many equal parts each square is divided, and `perSheet` counts parts.
 */
export function fitInSheet(
  sideM: number,
  lengthM: number,
  widthM: number,
  kerfM: number,
): { perSheet: number; parts: number } {
  const grid = (alongM: number, acrossM: number) =>
    wholeModulesIn(lengthM + kerfM, alongM + kerfM) * wholeModulesIn(widthM + kerfM, acrossM + kerfM)
  const whole = grid(sideM, sideM)
  if (whole > 0) return { perSheet: whole, parts: 1 }
  const along = lotsFor(sideM - SAME_LENGTH_M, lengthM)
  const across = lotsFor(sideM - SAME_LENGTH_M, widthM)
  const perSheet = Math.max(grid(sideM / along, sideM / across), grid(sideM / across, sideM / along), 1)
  return { perSheet, parts: along * across }
}
