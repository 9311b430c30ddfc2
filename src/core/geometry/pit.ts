import { grown, rectArea, type Shape } from './shape.ts'

/**
 * Volume of a pit whose four sides lean out evenly, m³, by the prismoidal rule, which is exact for it:
 *
 *   V = d / 6 · (bottom + 4 · middle + top)
 *
 * The mean of bottom and top alone (the end-area rule) gives too much.
 */
export function pitVolume(
  bottomLengthM: number,
  bottomWidthM: number,
  topLengthM: number,
  topWidthM: number,
  depthM: number,
): number {
  const middle = ((bottomLengthM + topLengthM) / 2) * ((bottomWidthM + topWidthM) / 2)
  return (depthM / 6) * (bottomLengthM * bottomWidthM + 4 * middle + topLengthM * topWidthM)
}

/** Volume of a trench whose sides lean back one in one, as sand that will not stand is dug: the pit, less the islands that the slopes leave. */
export function batteredDig({ outline, holes }: Shape, depthM: number): number {
  const sides = (box: typeof outline) => [box.x1M - box.x0M, box.y1M - box.y0M] as const
  const [length, width] = sides(outline)
  const [topLength, topWidth] = sides(grown(outline, depthM))
  const pit = pitVolume(length, width, topLength, topWidth, depthM)
  return holes.reduce((volume, hole) => {
    const [holeLength, holeWidth] = sides(hole)
    const reach = Math.min(holeLength, holeWidth) / 2
    // Where the slopes of both sides meet under the ground, the island ends there.
    const height = Math.min(depthM, reach)
    const top = grown(hole, -height)
    return (
      volume - (rectArea(hole) > 0 ? pitVolume(holeLength, holeWidth, top.x1M - top.x0M, top.y1M - top.y0M, height) : 0)
    )
  }, pit)
}
