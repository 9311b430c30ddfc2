import type { Point } from './drawing.ts'

/** A place of the kiln on an oblique picture of it, seen from in front, above and a little to the right. Lengths in it are not to be measured. */
export const oblique = (xM: number, yM: number, zM: number): Point => [
  0.93 * xM + 0.46 * yM,
  -0.13 * xM + 0.4 * yM + 0.92 * zM,
]

/** A ring in a level plane. */
export const levelRing = (x0M: number, y0M: number, x1M: number, y1M: number, zM: number): readonly Point[] => [
  oblique(x0M, y0M, zM),
  oblique(x1M, y0M, zM),
  oblique(x1M, y1M, zM),
  oblique(x0M, y1M, zM),
]

/** A ring in an upright plane that faces the front. */
export const frontRing = (x0M: number, x1M: number, yM: number, z0M: number, z1M: number): readonly Point[] => [
  oblique(x0M, yM, z0M),
  oblique(x1M, yM, z0M),
  oblique(x1M, yM, z1M),
  oblique(x0M, yM, z1M),
]

/** A ring in an upright plane that faces the right. */
export const rightRing = (xM: number, y0M: number, y1M: number, z0M: number, z1M: number): readonly Point[] => [
  oblique(xM, y0M, z0M),
  oblique(xM, y1M, z0M),
  oblique(xM, y1M, z1M),
  oblique(xM, y0M, z1M),
]
