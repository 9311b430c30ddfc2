import type { WallSolid } from './contract.ts'
import { junctionAt, type Frame } from './frame.ts'
import type { Levels } from './levels.ts'
import { toMetres } from './micrometres.ts'

/** The walls as boxes that do not overlap: front and back over the whole length, the others between them. */
export function wallSolids(frame: Frame, levels: Levels): WallSolid[] {
  const { thickness, length, depth, clear, chambers } = frame
  const zM = toMetres(levels.top(0))
  const dzM = toMetres(levels.top(levels.count) - levels.top(0))
  const box = (wall: WallSolid['wall'], x: number, y: number, dx: number, dy: number): WallSolid => ({
    wall,
    xM: toMetres(x),
    yM: toMetres(y),
    zM,
    dxM: toMetres(dx),
    dyM: toMetres(dy),
    dzM,
  })
  const cross = Array.from({ length: chambers + 1 }, (_, k) =>
    box(
      k === 0 ? 'left' : k === chambers ? 'right' : `divider-${k}`,
      junctionAt(frame, k),
      thickness,
      thickness,
      clear,
    ),
  )
  return [box('front', 0, 0, length, thickness), box('back', 0, depth - thickness, length, thickness), ...cross]
}
