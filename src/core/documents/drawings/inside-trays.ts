import { frontRing, levelRing, oblique, rightRing } from './axes.ts'
import type { Point, Shape } from './drawing.ts'
import type { DrawnKiln } from './plan-view.ts'

/** Wires drawn each way across a tray. */
const WIRES = 7
/** The first chamber's tray hangs so far over the wall, m, that one sees inside. */
const LIFT_M = 0.22

/** Trays on the finished walls: one lifted over the first chamber with its drop lines, three on each of the others. */
export function liftedTrays(
  { plan, geometry, tray }: DrawnKiln,
  lastCourse: number,
): { readonly shapes: readonly Shape[]; readonly corners: readonly Point[] } {
  const shapes: Shape[] = []
  const corners: Point[] = []
  const shown = { fromCourse: lastCourse }
  const { aboveM } = geometry.levels
  const halfM = tray.side.value / 2
  const highM = tray.rail.depth.value
  const railM = tray.rail.thickness.value
  for (const [index, chamber] of geometry.chambers.entries()) {
    const xM = (chamber.x0M + chamber.x1M) / 2
    const yM = (chamber.y0M + chamber.y1M) / 2
    const [x0M, x1M, y0M, y1M] = [xM - halfM, xM + halfM, yM - halfM, yM + halfM]
    const levels =
      index === 0
        ? [aboveM + LIFT_M]
        : Array.from({ length: Math.min(3, plan.trays.perChamber) }, (_, k) => aboveM + k * highM)
    if (index === 0)
      for (const [dropXM, dropYM] of [
        [x0M, y0M],
        [x1M, y0M],
        [x1M, y1M],
      ] as const)
        shapes.push({
          kind: 'area',
          ink: 'hidden',
          rings: [[oblique(dropXM, dropYM, aboveM), oblique(dropXM, dropYM, aboveM + LIFT_M)]],
          shown,
        })
    for (const z0M of levels) {
      const z1M = z0M + highM
      const ends = [y0M - plan.trays.handleM, y1M + plan.trays.handleM] as const
      const isTop = z0M === levels.at(-1)
      const grip = [z0M + 0.25 * highM, z0M + 0.85 * highM] as const
      shapes.push(
        { kind: 'area', ink: 'face', rings: [rightRing(x0M + railM, ends[0], ends[1], ...grip)], shown },
        { kind: 'area', ink: 'face', rings: [frontRing(x0M, x1M, y1M - railM, z0M, z1M)], shown },
      )
      if (isTop) {
        shapes.push({ kind: 'area', ink: 'top', rings: [levelRing(x0M, y0M, x1M, y1M, z1M)], shown })
        const wires = Array.from({ length: WIRES }, (_, k) => ((k + 1) * 2 * halfM) / (WIRES + 1))
        shapes.push({
          kind: 'area',
          ink: 'mesh',
          rings: wires.flatMap((atM) => [
            [oblique(x0M + atM, y0M, z1M), oblique(x0M + atM, y1M, z1M)],
            [oblique(x0M, y0M + atM, z1M), oblique(x1M, y0M + atM, z1M)],
          ]),
          shown,
        })
      }
      shapes.push(
        { kind: 'area', ink: 'face', rings: [rightRing(x1M, ends[0], ends[1], ...grip)], shown },
        { kind: 'area', ink: 'face', rings: [frontRing(x0M, x1M, y0M, z0M, z1M)], shown },
        { kind: 'area', ink: 'face-shaded', rings: [rightRing(x1M, y0M, y1M, z0M, z1M)], shown },
      )
      corners.push(oblique(x0M, y0M, z1M), oblique(x0M, ends[1], z1M), oblique(x1M, ends[1], z1M))
    }
  }
  return { shapes, corners }
}
