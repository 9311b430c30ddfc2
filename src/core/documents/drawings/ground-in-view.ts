import { groundAt } from '../../geometry/ground-plane.ts'
import type { KilnGeometry } from '../../geometry/kiln.ts'
import type { Rect } from '../../geometry/shape.ts'
import type { Layout, PlacedUnit, WallId } from '../../layout/contract.ts'
import { rectangle, type Point, type Shape } from './drawing.ts'

type Ground = Pick<KilnGeometry, 'footing' | 'ground'>

/** Earth that is seen beyond the footing on either side of a face, m. */
const PAST_M = 0.05

/** Ground and footing as one sees them standing before a face: the true line of the ground, each bed of the footing at its own level. */
export interface GroundInView {
  /** Height of the ground at a distance from the left end of the face, at its foot. */
  readonly groundM: (alongM: number) => number
  readonly x0M: number
  readonly x1M: number
  /** Under all concrete and all ground. */
  readonly lowestM: number
  readonly shapes: readonly Shape[]
  /** True where no part of a unit shows over the ground. */
  readonly isHidden: (unit: Pick<PlacedUnit, 'zM' | 'dzM'>, fromM: number, toM: number) => boolean
}

/** From the left end of a face to the place on the plan, both in metres. */
function placeOn(wall: WallId, lengthM: number, depthM: number, wallXM: number): (alongM: number) => Point {
  if (wall === 'front') return (alongM) => [alongM, 0]
  if (wall === 'back') return (alongM) => [lengthM - alongM, depthM]
  if (wall === 'left') return (alongM) => [0, depthM - alongM]
  return (alongM) => [wallXM, alongM]
}

const touches = ({ x0M, x1M, y0M, y1M }: Rect, isAcross: boolean, edgeM: number): boolean =>
  (isAcross ? [x0M, x1M] : [y0M, y1M]).some((endM) => Math.abs(endM - edgeM) < 1e-6)

/** Ground and footing before one wall, m. */
export function groundInView(
  { footing, ground }: Ground,
  wall: WallId,
  size: { readonly lengthM: number; readonly depthM: number; readonly widthM: number; readonly wallXM: number },
): GroundInView {
  const place = placeOn(wall, size.lengthM, size.depthM, size.wallXM)
  const groundM = (alongM: number) => groundAt(ground, ...place(alongM))
  const isAcross = wall === 'front' || wall === 'back'
  const isTurned = wall === 'back' || wall === 'left'
  const onFace = (fromM: number, toM: number) =>
    isTurned ? ([size.widthM - toM, size.widthM - fromM] as const) : ([fromM, toM] as const)
  const thicknessM = footing.thickness.value
  const isStepped = footing.steps.axis === (isAcross ? 'x' : 'y')
  const beds = footing.beds.map(({ shape: { outline }, topM }) => {
    const [fromM, toM] = isAcross ? [outline.x0M, outline.x1M] : [outline.y0M, outline.y1M]
    // Where the next bed lies lower, this one's concrete runs on over it.
    const lower = (edgeM: number) =>
      isStepped && footing.beds.some((other) => other.topM < topM && touches(other.shape.outline, isAcross, edgeM))
    const overM = footing.steps.overlapM
    const [leftM, rightM] = onFace(lower(fromM) ? fromM - overM : fromM, lower(toM) ? toM + overM : toM)
    return { fromM: leftM, toM: rightM, topM }
  })
  const x0M = Math.min(...beds.map(({ fromM }) => fromM)) - PAST_M
  const x1M = Math.max(...beds.map(({ toM }) => toM)) + PAST_M
  return {
    groundM,
    x0M,
    x1M,
    lowestM: Math.min(...beds.map(({ topM }) => topM - thicknessM), groundM(x0M), groundM(x1M)),
    shapes: [
      {
        kind: 'area',
        ink: 'concrete-hidden',
        rings: beds.map(({ fromM, toM, topM }) => rectangle(fromM, topM - thicknessM, toM, topM)),
      },
    ],
    isHidden: ({ zM, dzM }, fromM, toM) => zM + dzM <= Math.min(groundM(fromM), groundM(toM)) + 1e-6,
  }
}

/** Where the lowest course anywhere stands on its footing, m: under the level case where the ground asks for more courses. */
export const lowestCourse = ({ levels }: Pick<KilnGeometry, 'levels'>, { courses }: Pick<Layout, 'courses'>): number =>
  Math.min(-levels.belowM, ...courses.map(({ zBottomM }) => zBottomM))

/** The line of the ground along the foot of a face. */
export const groundLine = ({ groundM, x0M, x1M }: GroundInView): Shape => ({
  kind: 'line',
  ink: 'ground',
  points: [
    [x0M, groundM(x0M)],
    [x1M, groundM(x1M)],
  ],
})
