import type { Layout } from '../../layout/contract.ts'
import { lowestCourse } from './ground-in-view.ts'
import { rectangle, type Drawing, type Shape } from './drawing.ts'
import type { DrawnKiln } from './plan-view.ts'
import { sectionGround } from './section-ground.ts'

/**
 * Section from front to back through the middle of the first chamber's opening: what is sawn through is cut ink, courses as joints,
 * the hearth, the fill, the footing under both walls, the tray stack with its setback from the fire face. Front is at the left.
 */
export function sectionView(kiln: DrawnKiln, layout: Layout): Drawing {
  const { geometry, plan, tray } = kiln
  const { outsideDepth, wall, clearSide, levels } = geometry
  const depthM = outsideDepth.value
  const wallM = wall.value
  const projectionM = plan.ground.projectionM
  const { aboveM } = levels
  const opening = layout.openings[0]
  const throughM = opening === undefined ? 0 : opening.xM + opening.widthM / 2
  const earth = sectionGround(geometry, throughM)
  const lowestM = lowestCourse(geometry, layout)
  const shapes: Shape[] = [...earth.shapes]
  shapes.push({ kind: 'area', ink: 'hearth', rings: [rectangle(wallM, -0.08, depthM - wallM, 0)] })

  // The saw shows whole courses: a perpend that happens to lie on its line would look like a gap.
  for (const course of layout.courses) {
    const { index, zBottomM, zTopM } = course
    const isOpen = opening?.boxes.some((box) => box.zM < zTopM - 1e-6 && box.zM + box.dzM > zBottomM + 1e-6) ?? false
    const isHead = layout.lintels.some(
      (lintel) => lintel.kind !== 'steel' && lintel.zM < zTopM - 1e-6 && lintel.zM + lintel.dzM > zBottomM + 1e-6,
    )
    const rings = earth.stands(index, 'back') ? [rectangle(depthM - wallM, zBottomM, depthM, zTopM)] : []
    if (!isOpen && !isHead && earth.stands(index, 'front')) rings.push(rectangle(0, zBottomM, wallM, zTopM))
    shapes.push({ kind: 'area', ink: 'masonry', rings })
    const cell = plan.walls.unit.cells[0]
    if (cell === undefined || plan.walls.leaf !== 'single') continue
    const inM = (wallM - cell.widthM) / 2
    shapes.push({
      kind: 'area',
      ink: plan.walls.fill === 'none' ? 'wood-face' : 'fill',
      rings: rings.map(([low, , high]) =>
        rectangle((low?.[0] ?? 0) + inM, low?.[1] ?? 0, (low?.[0] ?? 0) + inM + cell.widthM, high?.[1] ?? 0),
      ),
    })
  }
  if (opening !== undefined)
    shapes.push({
      kind: 'lines',
      ink: 'edge',
      lines: [0, wallM].map((yM) => [
        [yM, Math.max(0, opening.sillM)],
        [yM, opening.undersideM],
      ]),
    })
  for (const lintel of layout.lintels) {
    if (lintel.xM > throughM || lintel.xM + lintel.dxM < throughM || lintel.kind === 'steel') continue
    shapes.push({
      kind: 'area',
      ink: 'lintel',
      rings: [rectangle(lintel.yM, lintel.zM, lintel.yM + lintel.dyM, lintel.zM + lintel.dzM)],
    })
  }
  shapes.push(...trayStackSide(kiln, depthM / 2))
  shapes.push(
    { kind: 'fire', at: [depthM / 2, 0.02], heightM: 0.42 * (opening?.undersideM ?? aboveM / 2) },
    ...earth.line,
    {
      kind: 'arrow',
      from: [-0.3, 0.5 * (opening?.undersideM ?? 0.3)],
      to: [-0.06, 0.5 * (opening?.undersideM ?? 0.3)],
    },
    {
      kind: 'dimension',
      axis: 'x',
      fromM: wallM,
      toM: depthM - wallM,
      place: { side: 'bottom', lane: 0 },
      value: { lengthM: clearSide.value },
      working: clearSide,
    },
    {
      kind: 'dimension',
      axis: 'x',
      fromM: 0,
      toM: depthM,
      place: { side: 'bottom', lane: 1 },
      value: { lengthM: depthM },
      working: outsideDepth,
    },
    {
      kind: 'dimension',
      axis: 'y',
      fromM: aboveM,
      toM: aboveM + tray.stackHeight.value,
      place: { side: 'left', lane: 0 },
      value: { lengthM: tray.stackHeight.value },
      working: tray.stackHeight,
    },
    {
      kind: 'dimension',
      axis: 'y',
      fromM: 0,
      toM: levels.headM,
      place: { atM: wallM + 0.13 },
      value: { lengthM: levels.headM },
    },
    { kind: 'level', yM: aboveM, valueM: aboveM },
    { kind: 'level', yM: levels.headM, valueM: levels.headM },
    { kind: 'level', yM: 0, valueM: 0 },
    { kind: 'level', yM: lowestM, valueM: lowestM },
  )
  return {
    box: {
      x0M: -projectionM - 0.18,
      x1M: depthM + projectionM + 0.18,
      y0M: earth.lowestM,
      y1M: aboveM + tray.stackHeight.value + 0.03,
    },
    shapes,
    label: {
      key: 'drawing.section-label',
      args: { depth: { lengthM: depthM }, height: { lengthM: aboveM }, side: { lengthM: clearSide.value } },
    },
  }
}

/** The stack from the side: cross rails sawn through front and back, mesh under each tray, handles run past the walls, fish between. */
function trayStackSide({ plan, geometry, tray }: DrawnKiln, middleM: number): Shape[] {
  const shapes: Shape[] = []
  const halfM = tray.side.value / 2
  const railM = tray.rail.thickness.value
  const highM = tray.rail.depth.value
  const endM = halfM + plan.trays.handleM
  for (let index = 0; index < plan.trays.perChamber; index++) {
    const z0M = geometry.levels.aboveM + index * highM
    const z1M = z0M + highM
    shapes.push(
      {
        kind: 'area',
        ink: 'wood-face',
        rings: [rectangle(middleM - endM, z0M + 0.2 * highM, middleM + endM, z1M - 0.1 * highM)],
      },
      {
        kind: 'area',
        ink: 'wood',
        rings: [
          rectangle(middleM - halfM, z0M, middleM - halfM + railM, z1M),
          rectangle(middleM + halfM - railM, z0M, middleM + halfM, z1M),
        ],
      },
    )
  }
  const topM = geometry.levels.aboveM + plan.trays.perChamber * highM
  shapes.push({
    kind: 'area',
    ink: 'wood-face',
    rings: [rectangle(middleM - halfM, topM, middleM + halfM, topM + 0.02)],
  })
  return shapes
}
