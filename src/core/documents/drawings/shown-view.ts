import type { Layout } from '../../layout/contract.ts'
import { rectangle, type Drawing, type Ink, type Point, type Shape } from './drawing.ts'
import type { DrawnKiln } from './plan-view.ts'
import { sectionView } from './section-view.ts'

const FIGURES: ReadonlySet<Shape['kind']> = new Set(['dimension', 'running', 'text', 'level', 'flag', 'words', 'wind'])

/** A drawing without what is written on it, to show a thing and not its size. */
export const withoutFigures = (drawing: Drawing): Drawing => ({
  ...drawing,
  shapes: drawing.shapes.filter(({ kind }) => !FIGURES.has(kind)),
})

/** Rings of everything drawn in one ink, to be outlined where that is what is meant. */
export const ringsOf = ({ shapes }: Drawing, ink: Ink): readonly (readonly Point[])[] =>
  shapes.flatMap((shape) => (shape.kind === 'area' && shape.ink === ink ? shape.rings : []))

/** The way of the air: in at the opening, up past the fire, through the trays and out over them. */
export function airView(kiln: DrawnKiln, layout: Layout): Drawing {
  const { clearSide, wall, outsideDepth, levels } = kiln.geometry
  const section = withoutFigures(sectionView(kiln, layout))
  const backM = outsideDepth.value / 2
  const topM = levels.aboveM + kiln.tray.stackHeight.value
  const riseM = 0.3
  const arrow = (from: Point, to: Point): Shape => ({ kind: 'arrow', from, to, ember: true })
  const asideM = 0.3 * clearSide.value
  return {
    box: { ...section.box, x0M: -0.5, y1M: topM + riseM },
    shapes: [
      ...section.shapes.filter(({ kind }) => kind !== 'arrow'),
      arrow([-0.45, 0.5 * levels.headM], [wall.value + 0.05, 0.3 * levels.headM]),
      ...[-asideM, asideM].map((offM) => arrow([backM + offM, 0.55 * levels.aboveM], [backM + offM, levels.aboveM])),
      ...[-asideM, 0, asideM].map((offM) => arrow([backM + offM, topM + 0.04], [backM + offM, topM + riseM])),
    ],
    label: { key: 'help.air.label', args: {} },
  }
}

/** Trays change places: the lowest goes to the top, and every other comes down by one. */
export function turningView({ plan, geometry, tray }: DrawnKiln): Drawing {
  const halfM = tray.side.value / 2
  const highM = 1.6 * tray.rail.depth.value
  const gapM = 0.4 * highM
  const count = Math.min(4, plan.trays.perChamber)
  const wallM = geometry.wall.value
  const deepM = 3 * highM
  const innerM = geometry.clearSide.value / 2
  const outM = innerM + wallM
  const bottomOf = (index: number) => index * (highM + gapM)
  const topM = bottomOf(count)
  const asideM = halfM + 0.16
  const at = (index: number) => bottomOf(index) + highM / 2
  return {
    box: { x0M: -outM - 0.05, x1M: Math.max(outM, asideM) + 0.06, y0M: -deepM, y1M: topM },
    shapes: [
      {
        kind: 'area',
        ink: 'masonry',
        rings: [rectangle(-outM, -deepM, -innerM, 0), rectangle(innerM, -deepM, outM, 0)],
      },
      { kind: 'fire', at: [0, -deepM], heightM: 0.8 * deepM },
      ...Array.from({ length: count }, (_, index): Shape => {
        const ring = rectangle(-halfM, bottomOf(index), halfM, bottomOf(index) + highM)
        return { kind: 'area', ink: index === 0 ? 'unit-laid' : 'wood-face', rings: [ring] }
      }),
      {
        kind: 'line',
        ink: 'edge',
        points: [
          [halfM, at(0)],
          [asideM, at(0)],
          [asideM, at(count - 1)],
        ],
      },
      { kind: 'arrow', from: [asideM, at(count - 1)], to: [halfM + 0.02, at(count - 1)], ember: true },
      ...Array.from({ length: count - 1 }, (_, index): Shape => {
        return { kind: 'arrow', from: [-halfM / 2, at(index + 1)], to: [-halfM / 2, at(index) + 0.02] }
      }),
    ],
    label: { key: 'help.turn.label', args: {} },
  }
}
