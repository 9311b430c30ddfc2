import type { Finding } from '../../basics/finding.ts'
import type { Layout, PlacedUnit, WallId } from '../../layout/contract.ts'
import { courseView } from './course-view.ts'
import type { Drawing, Point } from './drawing.ts'
import { elevationView, faceOf, unitOnFace } from './elevation-view.ts'
import { frontView } from './front-view.ts'
import { insideView, outlineInside, unitInside } from './inside-view.ts'
import { planView, type DrawnKiln } from './plan-view.ts'
import { sectionView } from './section-view.ts'
import { trayCornerView, traySeatView, trayView } from './tray-view.ts'
import { wallLayersView } from './wall-layers-view.ts'

/** Every drawing of one kiln that a reader can turn to. */
export type ViewKey =
  | 'plan'
  | 'front'
  | 'section'
  | 'inside'
  | 'back'
  | 'left'
  | 'right'
  | `divider-${number}`
  | `course-${number}`
  | 'tray'
  | 'tray-seat'
  | 'tray-corner'
  | 'wall-layers'

export type LaidKiln = DrawnKiln & { readonly layout: Layout }

/** In the order in which one leafs through them. */
export const viewsOf = ({ layout, geometry }: LaidKiln): readonly ViewKey[] => [
  'plan',
  'front',
  'section',
  'inside',
  'back',
  'left',
  'right',
  ...geometry.chambers.slice(1).map((_, index): ViewKey => `divider-${index + 1}`),
  ...layout.courses.map(({ index }): ViewKey => `course-${index}`),
  'tray',
  'tray-seat',
  'tray-corner',
  'wall-layers',
]

const courseOf = (view: ViewKey): number | null => (view.startsWith('course-') ? Number(view.slice(7)) : null)

const isWall = (view: ViewKey): view is Extract<WallId, ViewKey> =>
  view === 'front' || view === 'back' || view === 'left' || view === 'right' || view.startsWith('divider-')

export function viewOf(view: ViewKey, kiln: LaidKiln, flags: readonly Finding[]): Drawing {
  const course = courseOf(view)
  if (course !== null) return courseView(kiln.layout, kiln.plan.walls.unit.cells, course)
  switch (view) {
    case 'plan':
      return planView(kiln, flags)
    case 'front':
      return frontView(kiln, kiln.layout, flags)
    case 'section':
      return sectionView(kiln, kiln.layout)
    case 'inside':
      return insideView(kiln, kiln.layout, flags)
    case 'tray':
      return trayView(kiln)
    case 'tray-seat':
      return traySeatView(kiln)
    case 'tray-corner':
      return trayCornerView(kiln)
    case 'wall-layers':
      return wallLayersView(kiln)
    case 'back':
    case 'left':
    case 'right':
      return elevationView(kiln, kiln.layout, view)
    default:
      return elevationView(kiln, kiln.layout, view as Extract<ViewKey, `divider-${number}`>)
  }
}

/** The unit at a place of a drawing and the rings that outline it there; null where there is none, or none can be told. */
export function unitAt(
  view: ViewKey,
  { layout }: LaidKiln,
  [xM, yM]: Point,
  upToCourse: number,
): { readonly unit: PlacedUnit; readonly rings: readonly (readonly Point[])[] } | null {
  if (view === 'inside') {
    const unit = unitInside(layout, [xM, yM], upToCourse)
    return unit === null ? null : { unit, rings: outlineInside(unit) }
  }
  const course = layout.courses.find(({ index }) => index === courseOf(view))
  if (course !== undefined) {
    const unit = layout.units
      .slice(course.firstUnit, course.endUnit)
      .find((one) => within(xM, one.xM, one.dxM) && within(yM, one.yM, one.dyM))
    if (unit === undefined) return null
    const x1M = unit.xM + unit.dxM
    const y1M = unit.yM + unit.dyM
    const ring: readonly Point[] = [
      [unit.xM, unit.yM],
      [x1M, unit.yM],
      [x1M, y1M],
      [unit.xM, y1M],
    ]
    return { unit, rings: [ring] }
  }
  if (!isWall(view)) return null
  const face = faceOf(layout, view)
  const unit = layout.units.find((one) => {
    const { fromM, toM } = face.alongM(one)
    return face.shows(one) && within(xM, fromM, toM - fromM) && within(yM, one.zM, one.dzM)
  })
  return unit === undefined ? null : { unit, rings: [unitOnFace(face, unit)] }
}

const within = (atM: number, fromM: number, lengthM: number) => atM >= fromM && atM <= fromM + lengthM
