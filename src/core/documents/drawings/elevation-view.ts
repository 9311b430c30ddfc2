import type { Layout, PlacedUnit, WallId } from '../../layout/contract.ts'
import { groundInView, groundLine, lowestCourse } from './ground-in-view.ts'
import { rectangle, type Drawing, type Point, type Shape } from './drawing.ts'
import type { DrawnKiln } from './plan-view.ts'

/** A face of a wall as one stands before it: the back from behind, the right and the dividing walls from the right, the left from the left. */
export interface Face {
  readonly wall: WallId
  readonly widthM: number
  /** From the left end of the face, as seen. */
  readonly alongM: (box: { readonly xM: number; readonly yM: number; readonly dxM: number; readonly dyM: number }) => {
    readonly fromM: number
    readonly toM: number
  }
  readonly shows: (unit: {
    readonly xM: number
    readonly yM: number
    readonly dxM: number
    readonly dyM: number
  }) => boolean
}

/** Depth under a face at which its units are found, m: deeper than any rounding, thinner than any unit. */
const UNDER_M = 0.002

/** A wall seen from its outside, a dividing wall from the right, m. */
export function faceOf({ lengthM, depthM, walls }: Layout, wall: WallId): Face {
  const atX =
    (xM: number): Face['shows'] =>
    (unit) =>
      unit.xM < xM && unit.xM + unit.dxM > xM
  const atY =
    (yM: number): Face['shows'] =>
    (unit) =>
      unit.yM < yM && unit.yM + unit.dyM > yM
  const rightward = { alongM: (box: Parameters<Face['alongM']>[0]) => ({ fromM: box.yM, toM: box.yM + box.dyM }) }
  switch (wall) {
    case 'front':
      return {
        wall,
        widthM: lengthM,
        alongM: (box) => ({ fromM: box.xM, toM: box.xM + box.dxM }),
        shows: atY(UNDER_M),
      }
    case 'back':
      return {
        wall,
        widthM: lengthM,
        alongM: (box) => ({ fromM: lengthM - box.xM - box.dxM, toM: lengthM - box.xM }),
        shows: atY(depthM - UNDER_M),
      }
    case 'left':
      return {
        wall,
        widthM: depthM,
        alongM: (box) => ({ fromM: depthM - box.yM - box.dyM, toM: depthM - box.yM }),
        shows: atX(UNDER_M),
      }
    case 'right':
      return { wall, widthM: depthM, ...rightward, shows: atX(lengthM - UNDER_M) }
    default: {
      const solid = walls.find((one) => one.wall === wall)
      return {
        wall,
        widthM: depthM,
        ...rightward,
        shows: atX(solid === undefined ? -1 : solid.xM + solid.dxM - UNDER_M),
      }
    }
  }
}

/** The outline of a unit on a face, m. */
export const unitOnFace = (face: Face, unit: PlacedUnit): readonly Point[] => {
  const { fromM, toM } = face.alongM(unit)
  return rectangle(fromM, unit.zM, toM, unit.zM + unit.dzM)
}

/** Side, back or dividing wall, every unit that shows: courses numbered from the footing, what lies under ground as hidden lines. */
export function elevationView({ geometry }: DrawnKiln, layout: Layout, wall: WallId): Drawing {
  const face = faceOf(layout, wall)
  const { levels } = geometry
  const lowestM = lowestCourse(geometry, layout)
  const wallXM = layout.walls.find((one) => one.wall === wall)?.xM ?? 0
  const earth = groundInView(geometry, wall, { ...layout, widthM: face.widthM, wallXM })
  const shown = layout.units.filter(face.shows)
  const above = shown.filter((unit) => {
    const { fromM, toM } = face.alongM(unit)
    return !earth.isHidden(unit, fromM, toM)
  })
  const ring = (unit: PlacedUnit) => unitOnFace(face, unit)
  const shapes: Shape[] = [
    ...earth.shapes,
    { kind: 'area', ink: 'unit-ghost', rings: shown.filter((unit) => !above.includes(unit)).map(ring) },
    { kind: 'area', ink: 'unit', rings: above.filter(({ cutLengthM }) => cutLengthM === null).map(ring) },
    { kind: 'area', ink: 'unit-cut', rings: above.filter(({ cutLengthM }) => cutLengthM !== null).map(ring) },
  ]
  for (const lintel of layout.lintels) {
    if (lintel.kind === 'steel' || !face.shows(lintel)) continue
    const { fromM, toM } = face.alongM(lintel)
    shapes.push({ kind: 'area', ink: 'lintel', rings: [rectangle(fromM, lintel.zM, toM, lintel.zM + lintel.dzM)] })
  }
  shapes.push(groundLine(earth))
  for (const { index, zBottomM, zTopM } of layout.courses)
    shapes.push({
      kind: 'text',
      at: [0, (zBottomM + zTopM) / 2],
      text: index,
      order: true,
      beside: 'left',
      highM: zTopM - zBottomM,
    })
  for (const unit of above) {
    const { fromM, toM } = face.alongM(unit)
    shapes.push({
      kind: 'text',
      at: [(fromM + toM) / 2, unit.zM + unit.dzM / 2],
      text: { lengthM: toM - fromM },
      size: 'tiny',
      roomM: toM - fromM,
      highM: unit.dzM,
    })
  }
  shapes.push(
    {
      kind: 'dimension',
      axis: 'x',
      fromM: 0,
      toM: face.widthM,
      place: { side: 'bottom', lane: 0 },
      value: { lengthM: face.widthM },
    },
    { kind: 'level', yM: levels.aboveM, valueM: levels.aboveM },
    { kind: 'level', yM: 0, valueM: 0 },
    { kind: 'level', yM: lowestM, valueM: lowestM },
  )
  return {
    box: {
      x0M: earth.x0M,
      x1M: earth.x1M,
      y0M: earth.lowestM,
      y1M: Math.max(levels.aboveM, earth.groundM(earth.x0M), earth.groundM(earth.x1M)) + 0.03,
    },
    shapes,
    label: {
      key: 'drawing.elevation-label',
      args: { length: { lengthM: face.widthM }, height: { lengthM: levels.aboveM }, courses: layout.courses.length },
    },
  }
}
