import { SAME_LENGTH_M } from '../basics/count.ts'

/** A rectangle in plan, square to the kiln: x along the front, y to the back. */
export interface Rect {
  readonly x0M: number
  readonly x1M: number
  readonly y0M: number
  readonly y1M: number
}

/** A rectangle with rectangular holes that lie inside it and apart from each other: a trench round its islands, a wall ring round its chambers. */
export interface Shape {
  readonly outline: Rect
  readonly holes: readonly Rect[]
}

/** A rectangle by its sides, m. */
export const rect = (x0M: number, x1M: number, y0M: number, y1M: number): Rect => ({ x0M, x1M, y0M, y1M })

/** Its area, m². */
export const rectArea = ({ x0M, x1M, y0M, y1M }: Rect): number => (x1M - x0M) * (y1M - y0M)

/** Every side moved out by a distance; in, where it is negative. */
export const grown = ({ x0M, x1M, y0M, y1M }: Rect, byM: number): Rect =>
  rect(x0M - byM, x1M + byM, y0M - byM, y1M + byM)

/** What two rectangles share, or null where they only touch or miss. */
function shared(one: Rect, other: Rect): Rect | null {
  const both = rect(
    Math.max(one.x0M, other.x0M),
    Math.min(one.x1M, other.x1M),
    Math.max(one.y0M, other.y0M),
    Math.min(one.y1M, other.y1M),
  )
  return both.x1M - both.x0M > SAME_LENGTH_M && both.y1M - both.y0M > SAME_LENGTH_M ? both : null
}

/** The part of a shape inside a rectangle, or null. */
export function clipped(shape: Shape, to: Rect): Shape | null {
  const outline = shared(shape.outline, to)
  if (outline === null) return null
  return { outline, holes: shape.holes.map((hole) => shared(hole, to)).filter((hole) => hole !== null) }
}

/** Area in m², holes taken out. */
export const areaOf = ({ outline, holes }: Shape): number =>
  holes.reduce((area, hole) => area - rectArea(hole), rectArea(outline))

/** Centre of area: a linear height over the shape has its mean here, exactly. */
export function centroidOf({ outline, holes }: Shape): { readonly xM: number; readonly yM: number } {
  let area = 0
  let mx = 0
  let my = 0
  for (const [index, part] of [outline, ...holes].entries()) {
    const signed = index === 0 ? rectArea(part) : -rectArea(part)
    area += signed
    mx += (signed * (part.x0M + part.x1M)) / 2
    my += (signed * (part.y0M + part.y1M)) / 2
  }
  if (area > 0) return { xM: mx / area, yM: my / area }
  return { xM: (outline.x0M + outline.x1M) / 2, yM: (outline.y0M + outline.y1M) / 2 }
}
