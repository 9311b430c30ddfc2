import { areaOf, centroidOf, type Rect, type Shape } from './shape.ts'

/** The ground as a tilted plane through the front left peg: z = across · x + back · y, both in m per m, level at the peg. */
export interface GroundPlane {
  readonly across: number
  readonly back: number
}

/** Height of the ground at a place, m from the level of the front left peg. */
export const groundAt = ({ across, back }: GroundPlane, xM: number, yM: number): number => across * xM + back * yM

const cornersOf = ({ x0M, x1M, y0M, y1M }: Rect) =>
  [
    [x0M, y0M],
    [x1M, y0M],
    [x1M, y1M],
    [x0M, y1M],
  ] as const

/** Lowest ground over a rectangle: at one of its corners, since the plane is flat. */
export const lowestGround = (plane: GroundPlane, over: Rect): number =>
  Math.min(...cornersOf(over).map(([xM, yM]) => groundAt(plane, xM, yM)))

/** The highest ground over a rectangle, m: a plane is highest at a corner. */
export const highestGround = (plane: GroundPlane, over: Rect): number =>
  Math.max(...cornersOf(over).map(([xM, yM]) => groundAt(plane, xM, yM)))

/** Mean ground over a shape: the ground at its centre of area. */
export function meanGround(plane: GroundPlane, shape: Shape): number {
  const { xM, yM } = centroidOf(shape)
  return groundAt(plane, xM, yM)
}

/** Volume between the ground and a level that lies below it everywhere, m³; exact for a plane. */
export const volumeDownTo = (plane: GroundPlane, shape: Shape, levelM: number): number =>
  areaOf(shape) * (meanGround(plane, shape) - levelM)

/** Volume of the ground that stands above a level, over a rectangle that the level may cut: the part above is a polygon, summed in triangles. */
export function volumeAbove(plane: GroundPlane, over: Rect, levelM: number): number {
  const above: { x: number; y: number; h: number }[] = []
  const corners = cornersOf(over).map(([x, y]) => ({ x, y, h: groundAt(plane, x, y) - levelM }))
  let before = corners.at(-1)
  for (const corner of corners) {
    if (before !== undefined && before.h > 0 !== corner.h > 0) {
      const part = before.h / (before.h - corner.h)
      above.push({ x: before.x + part * (corner.x - before.x), y: before.y + part * (corner.y - before.y), h: 0 })
    }
    if (corner.h > 0) above.push(corner)
    before = corner
  }
  const [first, ...rest] = above
  if (first === undefined) return 0
  let volume = 0
  for (const [index, b] of rest.entries()) {
    const c = rest[index + 1]
    if (c === undefined) break
    const area = Math.abs((b.x - first.x) * (c.y - first.y) - (c.x - first.x) * (b.y - first.y)) / 2
    volume += (area * (first.h + b.h + c.h)) / 3
  }
  return volume
}

/** Volume missing up to a level where the ground lies below it. */
export const volumeBelow = (plane: GroundPlane, over: Rect, levelM: number): number =>
  volumeAbove({ across: -plane.across, back: -plane.back }, over, -levelM)

/** Steepest rise in any direction, m per m. */
export const steepness = ({ across, back }: GroundPlane): number => Math.hypot(across, back)
