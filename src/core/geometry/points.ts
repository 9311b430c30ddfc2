import type { Footing } from './footing.ts'
import type { Outline } from './outline.ts'
import type { Rect } from './shape.ts'
import type { Opening } from './walls.ts'

/** Front left, front right, back right, back left, as one walks round the kiln. */
export type Corner = 'A' | 'B' | 'C' | 'D'

/** A place on the ground to find with a tape, in plan coordinates. */
export interface GroundPoint {
  /** Unique: `A`, `trench-A`, `chamber-2-C`, `opening-1-A`. */
  readonly id: string
  readonly kind: 'outside' | 'trench' | 'island' | 'chamber' | 'opening'
  /** Counted from the left, from 1; null for the kiln as a whole. */
  readonly chamber: number | null
  readonly corner: Corner
  readonly xM: number
  readonly yM: number
}

const cornersOf = (box: Rect, kind: GroundPoint['kind'], chamber: number | null): GroundPoint[] => {
  const prefix = chamber === null ? (kind === 'outside' ? '' : `${kind}-`) : `${kind}-${String(chamber)}-`
  const at = (corner: Corner, xM: number, yM: number): GroundPoint => ({
    id: prefix + corner,
    kind,
    chamber,
    corner,
    xM,
    yM,
  })
  return [at('A', box.x0M, box.y0M), at('B', box.x1M, box.y0M), at('C', box.x1M, box.y1M), at('D', box.x0M, box.y1M)]
}

/** Corners of everything that is marked on the ground: outside, trench, the islands it leaves, chambers, openings. */
export const groundPoints = (outline: Outline, footing: Footing, openings: readonly Opening[]): GroundPoint[] => [
  ...cornersOf(outline.outside, 'outside', null),
  ...cornersOf(footing.shape.outline, 'trench', null),
  ...footing.shape.holes.flatMap((hole, index) => cornersOf(hole, 'island', index + 1)),
  ...outline.chambers.flatMap((chamber, index) => cornersOf(chamber, 'chamber', index + 1)),
  ...openings.flatMap((opening) => cornersOf(opening, 'opening', opening.chamber)),
]
