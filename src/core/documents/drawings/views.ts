import type { Finding } from '../../basics/finding.ts'
import type { CutPattern } from '../../cutting/length-job.ts'
import type { CutSheet } from '../../cutting/sheet-job.ts'
import { settingOut } from '../../geometry/setting-out.ts'
import type { Site } from '../../geometry/site.ts'
import type { Layout, PlacedUnit, WallId } from '../../layout/contract.ts'
import type { Purchase } from '../../purchase/purchase.ts'
import { courseView } from './course-view.ts'
import { boardView, rollViews } from './cutting-view.ts'
import type { Drawing, Point } from './drawing.ts'
import { elevationView, faceOf, unitOnFace } from './elevation-view.ts'
import { frontView } from './front-view.ts'
import { insideView, outlineInside, unitInside } from './inside-view.ts'
import { planView, type DrawnKiln } from './plan-view.ts'
import { sectionsOf, sheetView } from './sheet-view.ts'
import { sectionView } from './section-view.ts'
import { settingOutView } from './setting-out-view.ts'
import { tapeView } from './tape-view.ts'
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
  | `board-${number}`
  | `roll-${number}`
  | `sheet-${number}`
  | `setout-${number}`
  | 'tapes'

export type LaidKiln = DrawnKiln & { readonly layout: Layout; readonly purchase: Purchase; readonly site: Site }

/** In the order in which one leafs through them. */
export const viewsOf = (kiln: LaidKiln): readonly ViewKey[] => [
  'plan',
  'front',
  'section',
  'inside',
  'back',
  'left',
  'right',
  ...kiln.geometry.chambers.slice(1).map((_, index): ViewKey => `divider-${index + 1}`),
  ...kiln.layout.courses.map(({ index }): ViewKey => `course-${index}`),
  'tray',
  'tray-seat',
  'tray-corner',
  ...boardsOf(kiln).map((_, index): ViewKey => `board-${index + 1}`),
  ...rollsOf(kiln).map((_, index): ViewKey => `roll-${index + 1}`),
  ...sheetsOf(kiln).map((_, index): ViewKey => `sheet-${index + 1}`),
  'wall-layers',
  ...settingOutOf(kiln).steps.map((_, index): ViewKey => `setout-${index + 1}`),
  'tapes',
]

const settingOutOf = ({ geometry, site, plan }: LaidKiln) =>
  settingOut(geometry, site.facing, plan.place.declinationDeg)

const boardsOf = ({ purchase }: LaidKiln): readonly CutPattern[] =>
  [...purchase.cutting.values()].flatMap(({ patterns }) => patterns)

/** Every roll laid out with its marks. */
const rollsOf = ({ purchase }: LaidKiln): readonly Drawing[] =>
  [...purchase.flat.values()].flatMap((flat) =>
    flat.kind === 'roll' ? flat.rolls.flatMap(({ plan }) => plan.rolls.flatMap(rollViews)) : [],
  )

/** Sheets, and sections of a roll that are cut further than across it. */
const sheetsOf = ({ purchase }: LaidKiln): readonly CutSheet[] =>
  [...purchase.flat.values()].flatMap((flat) =>
    flat.kind === 'sheets' ? flat.plan.sheets : flat.rolls.flatMap(sectionsOf),
  )

/** The number behind a view's name, or null where it is of another kind. */
const numberIn = (view: ViewKey, kind: 'course' | 'board' | 'roll' | 'sheet' | 'setout'): number | null =>
  view.startsWith(`${kind}-`) ? Number(view.slice(kind.length + 1)) : null

const courseOf = (view: ViewKey): number | null => numberIn(view, 'course')

const isWall = (view: ViewKey): view is Extract<WallId, ViewKey> =>
  view === 'front' || view === 'back' || view === 'left' || view === 'right' || view.startsWith('divider-')

/** The drawing of a view, flags included. */
export function viewOf(view: ViewKey, kiln: LaidKiln, flags: readonly Finding[]): Drawing {
  return numberedView(view, kiln) ?? namedView(view, kiln, flags)
}

function numberedView(view: ViewKey, kiln: LaidKiln): Drawing | null {
  const course = courseOf(view)
  if (course !== null) return courseView(kiln.layout, kiln.plan.walls.unit.cells, course)
  const board = boardsOf(kiln)[(numberIn(view, 'board') ?? 0) - 1]
  if (board !== undefined) return boardView(board)
  const roll = rollsOf(kiln)[(numberIn(view, 'roll') ?? 0) - 1]
  if (roll !== undefined) return roll
  const sheetNumber = numberIn(view, 'sheet')
  const sheet = sheetNumber === null ? undefined : sheetsOf(kiln)[sheetNumber - 1]
  if (sheet !== undefined) return sheetView(sheet)
  const step = settingOutOf(kiln).steps[(numberIn(view, 'setout') ?? 0) - 1]
  if (step !== undefined) return settingOutView(step)
  return isWall(view) && view !== 'front' ? elevationView(kiln, kiln.layout, view) : null
}

function namedView(view: ViewKey, kiln: LaidKiln, flags: readonly Finding[]): Drawing {
  switch (view) {
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
    case 'tapes': {
      const { pegs, tapes } = settingOutOf(kiln)
      return tapeView(pegs, tapes, null)
    }
    case 'plan':
    case 'back':
    case 'left':
    case 'right':
    default:
      // A numbered drawing that the kiln no longer has falls back to the plan.
      return planView(kiln, flags)
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
