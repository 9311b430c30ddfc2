import type { LayoutFinding, WallId } from './contract.ts'
import { lanesMeet } from './course-shape.ts'
import type { Frame } from './frame.ts'
import { lintelEndAt, type LaidShape } from './laid-wall.ts'
import type { WallRules } from './remembered-fills.ts'
import { SLACK_UM, toMetres } from './micrometres.ts'
import { placedX, type WallPlace } from './stamping.ts'

/** What one look along a wall finds wrong, before courses are gathered. */
interface Breach {
  readonly kind: 'lap-short' | 'piece-short' | 'joint-out-of-range' | 'lintel-end'
  readonly at: number
  readonly value: number
}

/** Joint widths seen in the whole layout. */
export interface JointsSeen {
  readonly smallest: number
  readonly largest: number
  readonly count: number
}

function shortLaps(below: LaidShape, above: LaidShape, lap: number): Breach[] {
  const breaches: Breach[] = []
  for (const perpend of above.perpends) {
    let least = Infinity
    for (const other of below.perpends) {
      const distance = Math.abs(other.at - perpend.at)
      if (distance >= least || !lanesMeet(perpend.lane, other.lane)) continue
      const end = distance < lap ? lintelEndAt(below.shape, other, above.shape, perpend) : undefined
      if (end === undefined) least = distance
      else breaches.push({ kind: 'lintel-end', at: perpend.at, value: distance })
    }
    if (least < lap - SLACK_UM) breaches.push({ kind: 'lap-short', at: perpend.at, value: least })
  }
  return breaches
}

function ownBreaches(laid: LaidShape, rules: WallRules): Breach[] {
  const breaches: Breach[] = []
  laid.shape.tracks.forEach(({ lie, runs }, track) => {
    const rule = rules[lie]
    runs.forEach(({ from }, index) => {
      const fill = laid.fills[track]?.[index]
      if (fill === undefined) return
      fill.lengths.forEach((length, i) => {
        if (length < rule.shortest)
          breaches.push({ kind: 'piece-short', at: from + (fill.starts[i] ?? 0) + length / 2, value: length })
      })
      fill.jointWidth.forEach((width, i) => {
        if (width < rule.jointMin - SLACK_UM || width > rule.jointMax + SLACK_UM)
          breaches.push({ kind: 'joint-out-of-range', at: from + (fill.jointAt[i] ?? 0), value: width })
      })
    })
  })
  // Over a corbelled head a unit must bridge the gap, or the course lies on air.
  for (const at of laid.shape.keepClear) {
    const least = laid.perpends.reduce((near, perpend) => Math.min(near, Math.abs(perpend.at - at)), Infinity)
    if (least < rules.along.lap - SLACK_UM) breaches.push({ kind: 'lap-short', at, value: least })
  }
  return breaches
}

/** Measures the laid walls and says where a lap, a piece or a joint breaks its rule, one finding per place. */
export function measuredFindings(frame: Frame, places: readonly WallPlace[], rules: WallRules): LayoutFinding[] {
  const findings: LayoutFinding[] = []
  const own = new Map<LaidShape, readonly Breach[]>()
  const pairs = new Map<LaidShape, Map<LaidShape, readonly Breach[]>>()
  for (const place of places) {
    const here = new Map<string, { breach: Breach; courses: number[] }>()
    const note = (breach: Breach, course: number): void => {
      const key = `${breach.kind}${Math.trunc(breach.at / 1000)}`
      const before = here.get(key)
      if (before === undefined) here.set(key, { breach, courses: [course] })
      else {
        if (before.courses.at(-1) !== course) before.courses.push(course)
        if (breach.value < before.breach.value) before.breach = breach
      }
    }
    place.laid.forEach((laid, index) => {
      let breaches = own.get(laid)
      if (breaches === undefined) own.set(laid, (breaches = ownBreaches(laid, rules)))
      for (const breach of breaches) note(breach, place.firstCourse + index)
      const below = place.laid[index - 1]
      if (below === undefined) return
      const known = pairs.get(below) ?? new Map<LaidShape, readonly Breach[]>()
      const short = known.get(laid) ?? shortLaps(below, laid, rules.along.lap)
      pairs.set(below, known.set(laid, short))
      for (const breach of short) note(breach, place.firstCourse + index)
    })
    for (const { breach, courses } of here.values()) findings.push(findingOf(frame, place, breach, courses, rules))
  }
  return findings
}

function findingOf(
  frame: Frame,
  place: WallPlace,
  breach: Breach,
  courses: readonly number[],
  rules: WallRules,
): LayoutFinding {
  const middle = toMetres(place.low + frame.thickness / 2)
  const at = toMetres(breach.at)
  const spot: { wall: WallId; courses: readonly number[]; xM: number; yM: number } = place.alongX
    ? { wall: place.wall, courses, xM: toMetres(placedX(place, breach.at, 0)), yM: middle }
    : { wall: place.wall, courses, xM: toMetres(placedX(place, place.low + frame.thickness / 2, 0)), yM: at }
  const value = toMetres(breach.value)
  switch (breach.kind) {
    case 'lap-short':
      return { kind: 'lap-short', ...spot, lapM: value, neededM: toMetres(rules.along.lap) }
    case 'lintel-end':
      return { kind: 'lintel-end', ...spot, deepCourses: courses.length + 1 }
    case 'piece-short':
      return { kind: 'piece-short', ...spot, lengthM: value, neededM: toMetres(rules.along.shortest) }
    case 'joint-out-of-range': {
      const { jointMin, jointMax } = rules.along
      return { kind: 'joint-out-of-range', ...spot, widthM: value, minM: toMetres(jointMin), maxM: toMetres(jointMax) }
    }
  }
}

/** Narrowest and widest upright joint of the laid walls, micrometres, and how many there are. */
export function jointsSeen(places: readonly WallPlace[]): JointsSeen {
  let smallest = Infinity
  let largest = 0
  let count = 0
  const seen = new Map<LaidShape, { smallest: number; largest: number }>()
  for (const { laid } of places)
    for (const course of laid) {
      count += course.perpends.length
      let range = seen.get(course)
      if (range === undefined) {
        range = { smallest: Infinity, largest: 0 }
        for (const { width } of course.perpends) {
          range.smallest = Math.min(range.smallest, width)
          range.largest = Math.max(range.largest, width)
        }
        seen.set(course, range)
      }
      smallest = Math.min(smallest, range.smallest)
      largest = Math.max(largest, range.largest)
    }
  return { smallest, largest, count }
}
