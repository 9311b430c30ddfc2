import type { CutPlace } from './layout-choices.ts'
import type { CourseShape, Lane, Perpend, Run } from './course-shape.ts'
import { lanesMeet } from './course-shape.ts'
import { SLACK_UM } from './micrometres.ts'
import { shortLapWeight } from './cut-placing.ts'
import type { Fillers, WallRules } from './remembered-fills.ts'
import type { Fill } from './run-filling.ts'

/** One course of one wall with its pieces. Courses laid alike are the same object. */
export interface LaidShape {
  readonly shape: CourseShape
  /** For each track, for each run. */
  readonly fills: readonly (readonly Fill[])[]
  readonly perpends: readonly Perpend[]
  /** Pieces too short and joints out of range. */
  readonly ownBreaches: number
  readonly cuts: number
}

/** Index of the first of the sorted perpends at or beyond a place. */
function firstFrom(perpends: readonly Perpend[], low: number): number {
  let before = 0
  let after = perpends.length
  while (before < after) {
    const middle = (before + after) >> 1
    if ((perpends[middle]?.at ?? Infinity) < low) before = middle + 1
    else after = middle
  }
  return before
}

function near(perpends: readonly Perpend[], lane: Lane, low: number, high: number, into: number[], base: number): void {
  for (let i = firstFrom(perpends, low); i < perpends.length; i++) {
    const perpend = perpends[i]
    if (perpend === undefined || perpend.at > high) break
    if (lanesMeet(perpend.lane, lane)) into.push(perpend.at - base)
  }
}

/** Perpends of neighbouring courses near a run, sorted, from its start. */
export function perpendsNear(
  shape: CourseShape,
  { lane, lie }: Pick<CourseShape['tracks'][number], 'lane' | 'lie'>,
  { from, to }: Run,
  neighbours: readonly (readonly Perpend[])[],
  rules: WallRules,
): number[] {
  const { aim } = rules[lie]
  const avoid: number[] = []
  for (const perpendsBeside of neighbours) near(perpendsBeside, lane, from - aim, to + aim, avoid, from)
  for (const at of shape.keepClear) if (at > from - aim && at < to + aim) avoid.push(at - from)
  const sorted = neighbours.length === 1 && shape.keepClear.length === 0
  return sorted ? avoid : avoid.sort((a, b) => a - b)
}

/** A course of these fills, one for each run of each track. */
export function laidWith(shape: CourseShape, fills: readonly (readonly Fill[])[], rules: WallRules): LaidShape {
  const perpends: Perpend[] = [...shape.extra]
  let ownBreaches = 0
  let cuts = 0
  shape.tracks.forEach(({ lane, lie, runs }, track) => {
    const rule = rules[lie]
    runs.forEach(({ from }, index) => {
      const fill = fills[track]?.[index]
      if (fill === undefined) return
      cuts += fill.cuts
      fill.jointAt.forEach((at, joint) => {
        const width = fill.jointWidth[joint] ?? 0
        perpends.push({ at: from + at, width, lane })
        if (width < rule.jointMin - SLACK_UM || width > rule.jointMax + SLACK_UM) ownBreaches++
      })
      for (const length of fill.lengths) if (length < rule.shortest) ownBreaches++
    })
  })
  for (const at of shape.keepClear)
    if (perpends.some((perpend) => Math.abs(perpend.at - at) < rules.along.lap - SLACK_UM)) ownBreaches++
  // Runs of one track come in order; only several tracks, or joints of a wall that comes through, mix.
  if (shape.tracks.length > 1 || shape.extra.length > 0) perpends.sort((a, b) => a.at - b.at)
  return { shape, fills, perpends, ownBreaches, cuts }
}

const NONE: ReadonlyMap<number, Fill> = new Map()

/**
 * Lays one course so that its perpends keep clear of those of its neighbours, laid or foreseen. Runs of its last row, by
 * number, may be filled already.
 */
export function layShape(
  shape: CourseShape,
  neighbours: readonly (readonly Perpend[])[],
  rules: WallRules,
  fill: Fillers,
  place: CutPlace,
  filled = NONE,
): LaidShape {
  const last = shape.tracks.length - 1
  const fills = shape.tracks.map((track, index) =>
    track.runs.map((run, at) => {
      const known = index === last ? filled.get(at) : undefined
      if (known !== undefined) return known
      const avoid = perpendsNear(shape, track, run, neighbours, rules)
      return fill(track.lie, run.to - run.from, run.startJoint, run.endJoint, avoid, place)
    }),
  )
  return laidWith(shape, fills, rules)
}

/**
 * The lintel end that two perpends are both the joint of, one in each course: a lintel deeper than a course ends in one joint
 * as tall as itself, and no bond can change that.
 */
export function lintelEndAt(a: CourseShape, at: Perpend, b: CourseShape, other: Perpend): number | undefined {
  if (a.lintelEnds.length === 0 || b.lintelEnds.length === 0) return undefined
  const isBeside = (end: number, { at: place, width }: Perpend): boolean => Math.abs(place - end) <= width
  return a.lintelEnds.find((end) => b.lintelEnds.includes(end) && isBeside(end, at) && isBeside(end, other))
}

/** How the laps between two courses stand: the weight of the short ones, and the smallest. */
export function lapsBetween(
  a: LaidShape,
  b: LaidShape,
  lap: number,
): { readonly short: number; readonly smallest: number } {
  let short = 0
  let smallest = Infinity
  let first = 0
  for (const perpend of a.perpends) {
    while (first < b.perpends.length && (b.perpends[first]?.at ?? 0) < perpend.at - 2 * lap) first++
    for (let i = first; i < b.perpends.length; i++) {
      const other = b.perpends[i]
      if (other === undefined || other.at > perpend.at + 2 * lap) break
      if (!lanesMeet(perpend.lane, other.lane)) continue
      const distance = Math.abs(other.at - perpend.at)
      if (distance < lap - SLACK_UM && lintelEndAt(a.shape, perpend, b.shape, other) !== undefined) continue
      if (distance < smallest) smallest = distance
      if (distance < lap - SLACK_UM) short += shortLapWeight(distance, lap)
    }
  }
  return { short, smallest }
}

/**
 * Lays a wall from one course outwards. Each course is laid against the one already there, with an eye on the perpends the
 * next cannot avoid; a course that meets the same neighbours as the one two courses back is laid like it.
 */
export function layWall(
  shapes: readonly CourseShape[],
  start: number,
  place: CutPlace,
  rules: WallRules,
  fill: Fillers,
): readonly LaidShape[] {
  const laid: LaidShape[] = []
  const first = shapes[start]
  if (first === undefined) return []
  const foreseen = [shapes[start - 1]?.known ?? [], shapes[start + 1]?.known ?? []]
  laid[start] = layShape(first, foreseen, rules, fill, place)
  for (const way of [1, -1]) {
    for (let course = start + way; course >= 0 && course < shapes.length; course += way) {
      const shape = shapes[course]
      const beside = laid[course - way]
      if (shape === undefined || beside === undefined) continue
      const next = shapes[course + way]
      const twin = laid[course - 2 * way]
      laid[course] =
        twin?.shape === shape && (next === undefined || next === beside.shape)
          ? twin
          : layShape(shape, [beside.perpends, next?.known ?? []], rules, fill, 'any')
    }
  }
  return laid
}

/** The courses each laid course stands beside, courses laid alike taken together. */
export function besides(laid: readonly LaidShape[]): Map<LaidShape, Set<LaidShape>> {
  const beside = new Map<LaidShape, Set<LaidShape>>()
  laid.forEach((course, index) => {
    const set = beside.get(course) ?? new Set<LaidShape>()
    for (const other of [laid[index - 1], laid[index + 1]]) if (other !== undefined) set.add(other)
    beside.set(course, set)
  })
  return beside
}

/**
 * Lays each course again between the neighbours it now has, and keeps what is better: the first laying could only
 * foresee the perpends that no choice changes. Only those with something to mend, where no others are asked for.
 */
export function relaid(
  before: readonly LaidShape[],
  rules: WallRules,
  fill: Fillers,
  which: 'all' | 'broken',
  isBetter: (tried: readonly LaidShape[]) => boolean,
): readonly LaidShape[] {
  let laid = before
  for (const course of new Set(before)) {
    const beside = besides(laid).get(course)
    if (beside === undefined) continue
    const isBroken = (other: LaidShape): boolean => lapsBetween(course, other, rules.along.lap).short > 0
    if (which === 'broken' && course.ownBreaches === 0 && ![...beside].some(isBroken)) continue
    const neighbours = [...beside].map(({ perpends }) => perpends)
    const again = layShape(course.shape, neighbours, rules, fill, 'any')
    const tried = laid.map((one) => (one === course ? again : one))
    if (isBetter(tried)) laid = tried
  }
  return laid
}
