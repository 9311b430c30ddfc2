import type { Layout, PlacedUnit } from '../../layout/contract.ts'
import { rectangle, type Drawing, type Ink, type Point, type Shape, type Side } from './drawing.ts'

/** How far a course has been laid: units before `laid` are down, the one at `laid` is next. Null where nobody is counting. */
export interface Laying {
  readonly laid: number
}

const onPlan = ({ xM, yM, dxM, dyM }: Pick<PlacedUnit, 'xM' | 'yM' | 'dxM' | 'dyM'>) =>
  rectangle(xM, yM, xM + dxM, yM + dyM)

/** One cell of a whole unit, as it lies: cells run along the unit's own length, centred on its width. */
function cellRing(unit: PlacedUnit, cell: { fromM: number; lengthM: number; widthM: number }): readonly Point[] {
  const flat = unit.turn === 0
  const acrossM = (flat ? unit.dyM : unit.dxM) / 2 - cell.widthM / 2
  const x0M = unit.xM + (flat ? cell.fromM : acrossM)
  const y0M = unit.yM + (flat ? acrossM : cell.fromM)
  return rectangle(x0M, y0M, x0M + (flat ? cell.lengthM : cell.widthM), y0M + (flat ? cell.widthM : cell.lengthM))
}

const inkOf = (unit: PlacedUnit, index: number, laying: Laying | null): Ink => {
  if (laying !== null && index < laying.laid) return 'unit-laid'
  if (laying !== null && index === laying.laid) return 'unit-next'
  return unit.cutLengthM === null ? 'unit' : 'unit-cut'
}

/**
 * One course from above, front at the bottom: whole units show their cells, cut ones their length and no cells;
 * the course that comes on top of it lies over it as hidden lines, so that the lap can be seen.
 */
export function courseView(
  layout: Layout,
  cells: readonly { readonly fromM: number; readonly lengthM: number; readonly widthM: number }[],
  courseIndex: number,
  laying: Laying | null = null,
): Drawing {
  const course = layout.courses.find(({ index }) => index === courseIndex)
  const next = layout.courses.find(({ index }) => index === courseIndex + 1)
  const units = course === undefined ? [] : layout.units.slice(course.firstUnit, course.endUnit)
  const above = next === undefined ? [] : layout.units.slice(next.firstUnit, next.endUnit)
  const shapes: Shape[] = []
  const marginM = 0.06 * layout.lengthM
  for (const [index, unit] of units.entries()) {
    const ink = inkOf(unit, index, laying)
    shapes.push({ kind: 'area', ink, rings: [onPlan(unit)], tag: `unit-${unit.id}` })
    if (unit.cutLengthM === null && ink !== 'unit-laid' && cells.length > 0)
      shapes.push({ kind: 'area', ink: 'cell', rings: cells.map((cell) => cellRing(unit, cell)) })
  }
  if (above.length > 0) shapes.push({ kind: 'area', ink: 'unit-ghost', rings: above.map(onPlan) })
  for (const lintel of course === undefined ? [] : layout.lintels) {
    if (course === undefined || lintel.zM >= course.zTopM || lintel.zM + lintel.dzM <= course.zBottomM) continue
    shapes.push({ kind: 'area', ink: 'lintel', rings: [onPlan(lintel)] }, lengthText(lintel, lintel.dxM, false))
  }
  for (const [index, unit] of units.entries()) {
    const isLaid = laying !== null && index < laying.laid
    const ownM = unit.cutLengthM ?? Math.max(unit.dxM, unit.dyM)
    shapes.push(lengthText(unit, ownM, isLaid), ...orderText(layout, unit, index + 1))
  }
  for (const opening of layout.openings) {
    const open = opening.boxes.some(
      (box) => course !== undefined && box.zM < course.zTopM - 1e-6 && box.zM + box.dzM > course.zBottomM + 1e-6,
    )
    if (!open) continue
    shapes.push({
      kind: 'dimension',
      axis: 'x',
      fromM: opening.xM,
      toM: opening.xM + opening.widthM,
      place: { side: 'bottom', lane: 0 },
      value: { lengthM: opening.widthM },
    })
  }
  return {
    box: { x0M: -marginM, y0M: -marginM, x1M: layout.lengthM + marginM, y1M: layout.depthM + marginM },
    shapes,
    label: { key: 'drawing.course-label', args: { course: courseIndex, count: units.length } },
  }
}

/** A unit's own length inside it, along it. */
function lengthText(
  box: Pick<PlacedUnit, 'xM' | 'yM' | 'dxM' | 'dyM'>,
  lengthM: number,
  isLaid: boolean,
): Extract<Shape, { kind: 'text' }> {
  const turned = box.dyM > box.dxM
  return {
    kind: 'text',
    at: [box.xM + box.dxM / 2, box.yM + box.dyM / 2],
    text: { lengthM },
    turned,
    size: 'tiny',
    roomM: turned ? box.dyM : box.dxM,
    ...(isLaid && { on: 'soot' as const }),
  }
}

/** Its number in the order of laying, outside the wall that it shows on; the inner leaf of a thick wall goes without. */
function orderText({ lengthM, depthM }: Layout, unit: PlacedUnit, number: number): readonly Shape[] {
  const { xM, yM, dxM, dyM } = unit
  const text = (at: Point, beside: Side): Shape => ({
    kind: 'text',
    at,
    text: number,
    order: true,
    beside,
    ...(beside === 'top' || beside === 'bottom' ? { roomM: dxM + 0.01 } : { highM: dyM }),
  })
  const isSide = unit.wall !== 'front' && unit.wall !== 'back'
  if (isSide && xM < 1e-6) return [text([0, yM + dyM / 2], 'left')]
  if (isSide && xM + dxM > lengthM - 1e-6) return [text([lengthM, yM + dyM / 2], 'right')]
  if (yM < 1e-6) return [text([xM + dxM / 2, 0], 'bottom')]
  if (yM + dyM > depthM - 1e-6) return [text([xM + dxM / 2, depthM], 'top')]
  if (isSide && unit.wall.startsWith('divider')) return [text([xM + dxM, yM + dyM / 2], 'right')]
  return []
}
