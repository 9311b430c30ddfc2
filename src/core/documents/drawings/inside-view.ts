import type { Finding } from '../../basics/finding.ts'
import type { Layout, PlacedUnit } from '../../layout/contract.ts'
import { frontRing, levelRing, oblique, rightRing } from './axes.ts'
import type { Drawing, Ink, Point, Shape } from './drawing.ts'
import { liftedTrays } from './inside-trays.ts'
import { flagShapes, type DrawnKiln } from './plan-view.ts'

type Ring = readonly Point[]
type Solid = Pick<PlacedUnit, 'xM' | 'yM' | 'zM' | 'dxM' | 'dyM' | 'dzM'>

/** An upright plane of the walls that can be seen: which units lie in it, and their part of it as a ring. */
type Plane = (solid: Solid) => Ring | null

const UNDER_M = 0.002
/** Half of what lies between two units: drawn so, neighbours share one line. */
const HALF_JOINT_M = 0.005

const facingFront =
  (yM: number, x0M: number, x1M: number): Plane =>
  ({ xM, yM: fromM, zM, dxM, dyM, dzM }) => {
    if (fromM > yM + UNDER_M || fromM + dyM < yM + UNDER_M) return null
    const low = Math.max(x0M, xM - HALF_JOINT_M)
    const high = Math.min(x1M, xM + dxM + HALF_JOINT_M)
    return high - low < UNDER_M ? null : frontRing(low, high, yM, zM - HALF_JOINT_M, zM + dzM + HALF_JOINT_M)
  }

const facingRight =
  (xM: number, y0M: number, y1M: number): Plane =>
  ({ xM: fromM, yM, zM, dxM, dyM, dzM }) => {
    if (fromM > xM - UNDER_M || fromM + dxM < xM - UNDER_M) return null
    const low = Math.max(y0M, yM - HALF_JOINT_M)
    const high = Math.min(y1M, yM + dyM + HALF_JOINT_M)
    return high - low < UNDER_M ? null : rightRing(xM, low, high, zM - HALF_JOINT_M, zM + dzM + HALF_JOINT_M)
  }

/**
 * See-through view from the front right that builds up course by course. Far faces stand behind, then hearth and fire, then the near faces as
 * a veil, then the tops of the last course: nothing in it ever covers what is nearer. Each course is one path a face, made once.
 */
export function insideView(kiln: DrawnKiln, layout: Layout, flags: readonly Finding[]): Drawing {
  const { geometry, tray } = kiln
  const { outside, chambers, footing, levels } = geometry
  const lowestM = Math.min(-levels.belowM, ...layout.courses.map(({ zBottomM }) => zBottomM))
  const sillM = layout.openings[0]?.sillM ?? 0
  const lastCourse = layout.courses.at(-1)?.index ?? 1
  const hearthCourse = layout.courses.find(({ zTopM }) => zTopM > sillM + UNDER_M)?.index ?? 1
  const { x0M, x1M, y0M, y1M } = footing.shape.outline
  const bottomM = lowestM - footing.thickness.value
  const shapes: Shape[] = [
    { kind: 'area', ink: 'shade', rings: [levelRing(x0M - 0.06, y0M - 0.06, x1M + 0.06, y1M + 0.06, bottomM)] },
    { kind: 'area', ink: 'face-shaded', rings: [rightRing(x1M, y0M, y1M, bottomM, lowestM)] },
    { kind: 'area', ink: 'face', rings: [frontRing(x0M, x1M, y0M, bottomM, lowestM)] },
    {
      kind: 'area',
      ink: 'top',
      rings: [
        levelRing(x0M, y0M, x1M, y1M, lowestM),
        ...footing.shape.holes.map((hole) => levelRing(hole.x0M, hole.y0M, hole.x1M, hole.y1M, lowestM)),
      ],
    },
  ]
  for (const chamber of chambers) {
    shapes.push(
      ...courseFaces(layout, facingRight(chamber.x0M, chamber.y0M, chamber.y1M), 'inner-shaded', hearthCourse),
      ...courseFaces(layout, facingFront(chamber.y1M, chamber.x0M, chamber.x1M), 'inner', hearthCourse),
      {
        kind: 'area',
        ink: 'hearth',
        rings: [levelRing(chamber.x0M, chamber.y0M, chamber.x1M, chamber.y1M, sillM)],
        shown: { fromCourse: hearthCourse },
      },
      {
        kind: 'fire',
        at: oblique((chamber.x0M + chamber.x1M) / 2, (chamber.y0M + chamber.y1M) / 2 - 0.06, sillM),
        heightM: 0.24 * (chamber.x1M - chamber.x0M),
        shown: { fromCourse: lastCourse },
      },
    )
  }
  const front = facingFront(outside.y0M, outside.x0M, outside.x1M)
  const right = facingRight(outside.x1M, outside.y0M, outside.y1M)
  shapes.push(...courseFaces(layout, right, 'veil-shaded'), ...courseFaces(layout, front, 'veil'))
  for (const lintel of layout.lintels) {
    const ring = lintel.kind === 'steel' ? null : front(lintel)
    const course = layout.courses.find(({ zTopM }) => zTopM > lintel.zM + UNDER_M)
    if (ring !== null && course !== undefined)
      shapes.push({ kind: 'area', ink: 'lintel-veil', rings: [ring], shown: { fromCourse: course.index } })
  }
  for (const opening of layout.openings) {
    const fromM = Math.max(0, sillM)
    shapes.push({
      kind: 'area',
      ink: 'outline',
      rings: [frontRing(opening.xM, opening.xM + opening.widthM, 0, fromM, opening.undersideM)],
      shown: { fromCourse: lastCourse },
    })
  }
  shapes.push({
    kind: 'line',
    ink: 'ground',
    points: [
      oblique(outside.x0M - 0.08, outside.y0M, 0),
      oblique(outside.x1M, outside.y0M, 0),
      oblique(outside.x1M, outside.y1M + 0.08, 0),
    ],
  })
  for (const course of layout.courses) {
    const rings = layout.units
      .slice(course.firstUnit, course.endUnit)
      .map(({ xM, yM, dxM, dyM }) =>
        levelRing(xM - HALF_JOINT_M, yM - HALF_JOINT_M, xM + dxM + HALF_JOINT_M, yM + dyM + HALF_JOINT_M, course.zTopM),
      )
    for (const lintel of layout.lintels)
      if (lintel.kind !== 'steel' && lintel.zM < course.zTopM && lintel.zM + lintel.dzM > course.zBottomM + UNDER_M)
        rings.push(levelRing(lintel.xM, lintel.yM, lintel.xM + lintel.dxM, lintel.yM + lintel.dyM, course.zTopM))
    shapes.push({ kind: 'area', ink: 'top', rings, shown: { fromCourse: course.index, toCourse: course.index } })
  }
  const trays = liftedTrays(kiln, lastCourse)
  shapes.push(...trays.shapes)
  shapes.push(...flagShapes(flags, ({ xM, yM, zM }) => oblique(xM, yM, zM)))
  const corners = [
    oblique(x0M - 0.06, y0M, bottomM),
    oblique(x1M + 0.06, y0M - 0.06, bottomM),
    oblique(x1M + 0.06, y1M + 0.06, bottomM),
    ...trays.corners,
  ]
  return {
    box: {
      x0M: Math.min(...corners.map(([xM]) => xM)),
      x1M: Math.max(...corners.map(([xM]) => xM)),
      y0M: Math.min(...corners.map(([, yM]) => yM)),
      y1M: Math.max(...corners.map(([, yM]) => yM)),
    },
    shapes,
    label: {
      key: 'drawing.inside-label',
      args: {
        length: { lengthM: geometry.outsideLength.value },
        depth: { lengthM: geometry.outsideDepth.value },
        height: { lengthM: levels.aboveM },
        count: chambers.length,
        trays: tray.side.value > 0 ? kiln.plan.trays.perChamber : 0,
      },
    },
  }
}

/** One path a course of what shows in a plane; what lies under the hearth is seen only until the hearth is made. */
function courseFaces(layout: Layout, plane: Plane, ink: Ink, hearthCourse?: number): Shape[] {
  return layout.courses.flatMap((course): Shape[] => {
    const rings = layout.units
      .slice(course.firstUnit, course.endUnit)
      .map(plane)
      .filter((ring) => ring !== null)
    if (rings.length === 0) return []
    const isUnder = hearthCourse !== undefined && course.index < hearthCourse
    const shown = { fromCourse: course.index, ...(isUnder && { toCourse: hearthCourse - 1 }) }
    return [{ kind: 'area', ink, rings, shown }]
  })
}

/** The unit of the last course that a tap on its top meets, or on a near face of a course below. */
export function unitInside(layout: Layout, at: Point, upToCourse: number): PlacedUnit | null {
  const top = layout.courses.find(({ index }) => index === upToCourse)
  const inTop = layout.units
    .slice(top?.firstUnit, top?.endUnit)
    .find(({ xM, yM, dxM, dyM }) => top !== undefined && holds(levelRing(xM, yM, xM + dxM, yM + dyM, top.zTopM), at))
  if (inTop !== undefined) return inTop
  const planes = [facingFront(0, 0, layout.lengthM), facingRight(layout.lengthM, 0, layout.depthM)]
  for (const plane of planes)
    for (const unit of layout.units) {
      if (unit.course > upToCourse) continue
      const ring = plane(unit)
      if (ring !== null && holds(ring, at)) return unit
    }
  return null
}

/** Rings of a unit's seen faces, to outline it. */
export const outlineInside = ({ xM, yM, zM, dxM, dyM, dzM }: PlacedUnit): readonly Ring[] => [
  levelRing(xM, yM, xM + dxM, yM + dyM, zM + dzM),
  frontRing(xM, xM + dxM, yM, zM, zM + dzM),
  rightRing(xM + dxM, yM, yM + dyM, zM, zM + dzM),
]

/** Whether a convex ring holds a place. */
function holds(ring: Ring, [xM, yM]: Point): boolean {
  let sign = 0
  for (const [index, from] of ring.entries()) {
    const to = ring[(index + 1) % ring.length] ?? from
    const side = Math.sign((to[0] - from[0]) * (yM - from[1]) - (to[1] - from[1]) * (xM - from[0]))
    if (side !== 0 && sign !== 0 && side !== sign) return false
    if (side !== 0) sign = side
  }
  return true
}
