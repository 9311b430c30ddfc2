import type { Finding } from '../../basics/finding.ts'
import type { Layout, PlacedUnit } from '../../layout/contract.ts'
import { groundInView, groundLine, lowestCourse } from './ground-in-view.ts'
import { rectangle, type Drawing, type Shape } from './drawing.ts'
import { flagShapes, type DrawnKiln } from './plan-view.ts'

const front = ({ xM, zM, dxM, dzM }: Pick<PlacedUnit, 'xM' | 'zM' | 'dxM' | 'dzM'>) =>
  rectangle(xM, zM, xM + dxM, zM + dzM)

/** Beyond so many chambers a phone shows trays too thin for a line each: every second one stands for two. */
const FEW_CHAMBERS = 4

/** A stack of trays from the front: handles end on, a line between trays, the cover on top. */
function trayStackFront({ plan, geometry, tray }: DrawnKiln): Shape[] {
  const { aboveM } = geometry.levels
  const railM = tray.rail.depth.value
  const halfM = tray.side.value / 2
  const topM = aboveM + plan.trays.perChamber * railM
  const every = geometry.chambers.length > FEW_CHAMBERS ? 2 : 1
  const middles = geometry.chambers.map((chamber) => (chamber.x0M + chamber.x1M) / 2)
  return [
    {
      kind: 'area',
      ink: 'wood-face',
      rings: middles.flatMap((middleM) => [
        rectangle(middleM - halfM, aboveM, middleM + halfM, topM),
        rectangle(middleM - halfM - 0.01, topM, middleM + halfM + 0.01, topM + 0.02),
      ]),
    },
    {
      kind: 'lines',
      ink: 'thin',
      lines: middles.flatMap((middleM) =>
        Array.from({ length: plan.trays.perChamber - 1 }, (_, k) => k + 1)
          .filter((k) => k % every === 0)
          .map((k) => [[middleM - halfM, aboveM + k * railM] as const, [middleM + halfM, aboveM + k * railM] as const]),
      ),
    },
  ]
}

/** Front elevation: every unit that shows, openings, lintels, levels from the ground at the front left peg; below ground as hidden lines. */
export function frontView(kiln: DrawnKiln, layout: Layout, flags: readonly Finding[]): Drawing {
  const { geometry, plan, tray } = kiln
  const { outside, openings, levels, outsideLength } = geometry
  const { lengthM } = layout
  const earth = groundInView(geometry, 'front', { ...layout, widthM: lengthM, wallXM: 0 })
  const lowestM = lowestCourse(geometry, layout)
  const shapes: Shape[] = [...trayStackFront(kiln), ...earth.shapes]
  const inFront = layout.units.filter((unit) => unit.yM < 1e-6)
  const isBelow = (unit: PlacedUnit) => earth.isHidden(unit, unit.xM, unit.xM + unit.dxM)
  const below = inFront.filter(isBelow)
  const above = inFront.filter((unit) => !isBelow(unit))
  shapes.push(
    { kind: 'area', ink: 'unit-ghost', rings: below.map(front) },
    { kind: 'area', ink: 'unit', rings: above.map(front) },
  )
  for (const lintel of layout.lintels)
    if (lintel.kind !== 'steel') shapes.push({ kind: 'area', ink: 'lintel', rings: [front(lintel)] })
  for (const opening of layout.openings) {
    for (const box of opening.boxes)
      shapes.push({
        kind: 'area',
        ink: 'hollow',
        rings: [rectangle(box.xM, Math.max(0, box.zM), box.xM + box.dxM, box.zM + box.dzM)],
      })
    const middleM = opening.xM + opening.widthM / 2
    shapes.push({ kind: 'fire', at: [middleM, 0.02], heightM: 0.5 * opening.undersideM })
  }
  shapes.push(groundLine(earth))
  for (const opening of openings)
    shapes.push({
      kind: 'dimension',
      axis: 'x',
      fromM: opening.x0M,
      toM: opening.x1M,
      place: { side: 'bottom', lane: 0 },
      value: { lengthM: opening.x1M - opening.x0M },
    })
  shapes.push(
    {
      kind: 'dimension',
      axis: 'x',
      fromM: outside.x0M,
      toM: outside.x1M,
      place: { side: 'bottom', lane: 1 },
      value: { lengthM: outsideLength.value },
      working: outsideLength,
    },
    { kind: 'level', yM: levels.aboveM, valueM: levels.aboveM },
    { kind: 'level', yM: levels.headM, valueM: levels.headM },
    { kind: 'level', yM: 0, valueM: 0 },
    { kind: 'level', yM: lowestM, valueM: lowestM },
    ...flagShapes(flags, ({ xM, zM }) => [xM, zM]),
  )
  return {
    box: { x0M: earth.x0M, x1M: earth.x1M, y0M: earth.lowestM, y1M: levels.aboveM + tray.stackHeight.value + 0.03 },
    shapes,
    label: {
      key: 'drawing.front-label',
      args: {
        length: { lengthM: outsideLength.value },
        height: { lengthM: levels.aboveM },
        count: openings.length,
        width: { lengthM: plan.openings.widthM },
        head: { lengthM: levels.headM },
      },
    },
  }
}
