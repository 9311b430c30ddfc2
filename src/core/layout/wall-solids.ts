import type { WallSolid } from './contract.ts'
import { junctionAt, type Frame } from './frame.ts'
import type { Levels } from './levels.ts'
import { toMetres } from './micrometres.ts'
import { crossName } from './stamping.ts'
import type { ExtraCourse } from './stepped-ground.ts'

/** The walls as boxes that do not overlap: front and back over the whole length, the others between them; extra courses under them. */
export function wallSolids(
  frame: Frame,
  levels: Levels,
  extras: readonly ExtraCourse[],
  mirrored: boolean,
): WallSolid[] {
  const { thickness, length, depth, clear, chambers } = frame
  const solids: WallSolid[] = []
  const box = (
    wall: WallSolid['wall'],
    x: number,
    y: number,
    dx: number,
    dy: number,
    low: number,
    high: number,
  ): void => {
    solids.push({
      wall,
      xM: toMetres(mirrored ? length - x - dx : x),
      yM: toMetres(y),
      zM: toMetres(low),
      dxM: toMetres(dx),
      dyM: toMetres(dy),
      dzM: toMetres(high - low),
    })
  }
  const low = levels.top(0)
  const high = levels.top(levels.count)
  box('front', 0, 0, length, thickness, low, high)
  box('back', 0, depth - thickness, length, thickness, low, high)
  for (let k = 0; k <= chambers; k++)
    box(crossName(chambers, k, mirrored), junctionAt(frame, k), thickness, thickness, clear, low, high)
  for (const { course, spans } of extras) {
    const top = levels.top(course)
    const bottom = levels.top(course - 1)
    for (const { from, to } of spans.front) box('front', from, 0, to - from, thickness, bottom, top)
    for (const { from, to } of spans.back) box('back', from, depth - thickness, to - from, thickness, bottom, top)
    spans.cross.forEach((parts, k) => {
      for (const { from, to } of parts)
        box(crossName(chambers, k, mirrored), junctionAt(frame, k), from, thickness, to - from, bottom, top)
    })
  }
  return solids
}
