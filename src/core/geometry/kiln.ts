import { counted, derive, typed, type Derived } from '../basics/derived.ts'
import type { Plan } from '../plan/schema.ts'
import { earthworksOf, type Earthworks } from './earthworks.ts'
import { footingOf, groundOf, type Footing } from './footing.ts'
import { stepAt } from './footing-steps.ts'
import type { GroundPlane } from './ground-plane.ts'
import { outlineOf, tapeRuns, type Outline, type TapeRun } from './outline.ts'
import { groundPoints, type GroundPoint } from './points.ts'
import { openingsOf, wallSolids, type KilnLevels, type Opening, type WallSolid } from './walls.ts'

/** Where everything of the kiln is: worked out from the plan and from the levels that the coursing reaches. */
export interface KilnGeometry extends Outline {
  readonly levels: KilnLevels
  readonly ground: GroundPlane
  readonly walls: readonly WallSolid[]
  readonly openings: readonly Opening[]
  readonly wallBelow: Derived<'m'>
  readonly wallAbove: Derived<'m'>
  /** All masonry from footing to top, m³, the openings not taken out. */
  readonly wallVolumeGross: Derived<'m3'>
  readonly openingVolume: Derived<'m3'>
  readonly footing: Footing
  readonly earthworks: Earthworks
  readonly points: readonly GroundPoint[]
  readonly tapeRuns: readonly TapeRun[]
}

/** The kiln set out: outline, walls, openings, footing and dig, m. */
export function kilnGeometry(plan: Plan, levels: KilnLevels): KilnGeometry {
  const outline = outlineOf(plan)
  const footing = footingOf(plan, outline, levels)
  const openings = openingsOf(outline, plan, levels)
  const wallBelow = counted('wall-below', 'm', levels.belowM)
  const wallAbove = counted('wall-above', 'm', levels.aboveM)
  const head = counted('opening-head', 'm', levels.headM)
  const w = typed('opening-width', 'm', plan.openings.widthM, 'openings.widthM')
  const { wallPlanArea: S, chamberCount: n, wall: t } = outline
  return {
    ...outline,
    levels,
    ground: groundOf(plan),
    walls: wallSolids(outline, levels),
    openings,
    wallBelow,
    wallAbove,
    wallVolumeGross: derive(
      'wall-volume-gross',
      'm3',
      'S·(b + h)',
      { S, b: wallBelow, h: wallAbove },
      (v) => v.S * (v.b + v.h),
    ),
    openingVolume: derive('opening-volume', 'm3', 'n·w·h·t', { n, w, h: head, t }, (v) => v.n * v.w * v.h * v.t),
    footing,
    earthworks: earthworksOf(plan, outline, footing, levels.belowM),
    points: groundPoints(outline, footing, openings),
    tapeRuns: tapeRuns(outline, plan),
  }
}

/** Courses under the level case at a place on the plan, 0 or negative: the layout's extra courses where the ground is low. */
export const extraCoursesAt =
  (geometry: Pick<KilnGeometry, 'footing'>) =>
  (xM: number, yM: number): number =>
    stepAt(geometry.footing.steps, xM, yM)
