import { outerWall } from '../../heat/wall-section.ts'
import { rectangle, type Drawing, type Ink, type Shape } from './drawing.ts'
import type { DrawnKiln } from './plan-view.ts'

/** A piece of the outer wall from the fire, at the left, to the open air: every layer of lining, shell, filling and render with its thickness. */
export function wallLayersView({ plan }: DrawnKiln): Drawing {
  const isHollow = plan.walls.unit.cells.length > 0
  const { layers } = outerWall(plan, isHollow ? plan.walls.fill : 'solid')
  const totalM = layers.reduce((sum, { thicknessM }) => sum + thicknessM, 0)
  const highM = 0.62 * totalM
  const lined = plan.walls.liningM > 0
  const rendered = plan.walls.renderM > 0
  const shapes: Shape[] = []
  let atM = 0
  for (const [index, { thicknessM }] of layers.entries()) {
    const isLining = lined && index === 0
    const isRender = rendered && index === layers.length - 1
    const isCell = isHollow && index === (lined ? 2 : 1) && layers.length > 2
    const ink: Ink =
      isLining || isRender ? 'hearth' : isCell ? (plan.walls.fill === 'none' ? 'face' : 'fill') : 'masonry'
    shapes.push(
      { kind: 'area', ink, rings: [rectangle(atM, 0, atM + thicknessM, highM)] },
      {
        kind: 'dimension',
        axis: 'x',
        fromM: atM,
        toM: atM + thicknessM,
        place: { side: 'bottom', lane: 0, edgeM: 0 },
        value: { lengthM: thicknessM },
      },
    )
    atM += thicknessM
  }
  shapes.push(
    {
      kind: 'dimension',
      axis: 'x',
      fromM: 0,
      toM: totalM,
      place: { side: 'bottom', lane: 1 },
      value: { lengthM: totalM },
    },
    { kind: 'fire', at: [-0.22 * totalM, 0.1 * highM], heightM: 0.5 * highM },
    { kind: 'arrow', from: [totalM + 0.06 * totalM, highM / 2], to: [totalM + 0.3 * totalM, highM / 2] },
  )
  return {
    box: { x0M: -0.4 * totalM, x1M: 1.4 * totalM, y0M: 0, y1M: highM },
    shapes,
    label: { key: 'drawing.layers-label', args: { thickness: { lengthM: totalM }, count: layers.length } },
  }
}
