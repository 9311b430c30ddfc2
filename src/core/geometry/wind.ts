import { wholeDown } from '../basics/count.ts'
import { derive, typed, type Derived } from '../basics/derived.ts'
import type { Plan } from '../plan/schema.ts'

/** Points of the compass, clockwise from north, 22.5° apart. */
export const COMPASS_POINTS = [
  'N',
  'NNE',
  'NE',
  'ENE',
  'E',
  'ESE',
  'SE',
  'SSE',
  'S',
  'SSW',
  'SW',
  'WSW',
  'W',
  'WNW',
  'NW',
  'NNW',
] as const
export type CompassPoint = (typeof COMPASS_POINTS)[number]

/** Degrees brought into 0 to 360. */
export const asBearing = (deg: number): number => ((deg % 360) + 360) % 360

/** Nearest point of sixteen: index floor(deg / 22.5 + 0.5) mod 16, so 11.25° is already NNE. */
export const compassPoint = (deg: number): CompassPoint =>
  COMPASS_POINTS[wholeDown(asBearing(deg) / 22.5 + 0.5) % 16] ?? 'N'

/** Degrees clockwise from north of one of the sixteen points of the compass. */
export const bearingOfPoint = (point: CompassPoint): number => COMPASS_POINTS.indexOf(point) * 22.5

/** Angle between two bearings, 0 to 180°. */
export const angleBetween = (oneDeg: number, otherDeg: number): number => {
  const apart = asBearing(oneDeg - otherDeg)
  return Math.min(apart, 360 - apart)
}

/** How a wind meets the front: it blows into the openings, from a side, or from behind. */
export type WindOnFront = 'into' | 'slanting' | 'from-side' | 'from-behind'

/** A wind is named for where it comes from, so a front that looks to it meets it. Bounds half-way between the eight main points. */
function windOnFront(frontDeg: number, windDeg: number): WindOnFront {
  const apart = angleBetween(frontDeg, windDeg)
  if (apart <= 22.5) return 'into'
  if (apart <= 67.5) return 'slanting'
  return apart <= 112.5 ? 'from-side' : 'from-behind'
}

/** Where the front looks and what each wind does there. */
export interface Facing {
  /** True bearing that the front looks to; null where neither a wind nor an own bearing is known. */
  readonly front: Derived<'deg'> | null
  /** The same as a compass needle shows it. */
  readonly frontMagnetic: Derived<'deg'> | null
  readonly rule: Plan['place']['facing']
  /** The wind that the rule went by. */
  readonly by: 'day' | 'night' | null
  readonly day: WindOnFront | null
  readonly night: WindOnFront | null
  /** The choice left open: the other way round. */
  readonly otherDeg: number | null
}

/**
 * Into the wind, so that the fire draws (common practice), or lee side, which spares the operator smoke (from memory: some handbooks).
 * Firing is mostly by day, so the day wind decides where both are known.
 */
export function facingOf({ place }: Plan): Facing {
  const front = frontOf(place)
  const wind = (deg: number | null) => (front === null || deg === null ? null : windOnFront(front.value, deg))
  return {
    front,
    frontMagnetic: front === null ? null : magneticOf(front, place.declinationDeg),
    rule: place.facing,
    by:
      place.facing === 'own' ? null : place.windDayDeg !== null ? 'day' : place.windNightDeg !== null ? 'night' : null,
    day: wind(place.windDayDeg),
    night: wind(place.windNightDeg),
    otherDeg: front === null ? null : asBearing(front.value + 180),
  }
}

function frontOf(place: Plan['place']): Derived<'deg'> | null {
  if (place.facing === 'own')
    return place.frontDeg === null ? null : typed('front-bearing', 'deg', place.frontDeg, 'place.frontDeg')
  const w =
    place.windDayDeg !== null
      ? typed('wind-day', 'deg', place.windDayDeg, 'place.windDayDeg')
      : place.windNightDeg !== null
        ? typed('wind-night', 'deg', place.windNightDeg, 'place.windNightDeg')
        : null
  if (w === null) return null
  return place.facing === 'into-wind'
    ? derive('front-into-wind', 'deg', 'w', { w }, (v) => v.w, { source: 'common-practice' })
    : derive('front-lee', 'deg', 'w + 180 − 360·floor((w + 180) / 360)', { w }, (v) => asBearing(v.w + 180), {
        source: 'memory',
      })
}

/** True bearing to compass reading: less the declination, east positive. */
export function magneticOf(T: Derived<'deg'>, declinationDeg: number): Derived<'deg'> {
  const d = typed('declination', 'deg', declinationDeg, 'place.declinationDeg')
  return derive('front-magnetic', 'deg', 'T − d − 360·floor((T − d) / 360)', { T, d }, (v) => asBearing(v.T - v.d))
}

/** True bearing of a line on the plan, from the direction it runs in plan coordinates and the bearing that the front looks to. */
export const bearingOfLine = (frontDeg: number, dxM: number, dyM: number): number =>
  asBearing(frontDeg + 180 + (Math.atan2(dxM, dyM) * 180) / Math.PI)

/** Direction of true north on the plan: the front looks to −y, so north is where a bearing of 0 runs. */
export const northOf = (frontDeg: number): { readonly xM: number; readonly yM: number } => {
  const turn = (frontDeg * Math.PI) / 180
  return { xM: Math.sin(turn), yM: -Math.cos(turn) }
}

/** East and north of a place on the plan from peg A: the back is where the front does not look, the right is a quarter turn on from it. */
export function eastNorth(
  frontDeg: number,
  xM: number,
  yM: number,
): { readonly eastM: number; readonly northM: number } {
  const back = ((frontDeg + 180) * Math.PI) / 180
  return {
    eastM: yM * Math.sin(back) + xM * Math.cos(back),
    northM: yM * Math.cos(back) - xM * Math.sin(back),
  }
}
