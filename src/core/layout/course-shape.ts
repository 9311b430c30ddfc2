/** Across the wall: its full thickness, or the outer or inner row of a course of stretchers in a one-brick wall. */
export type Lane = 'full' | 'outer' | 'inner'

/** Something that interrupts a row. A jamb leaves a free edge; a crossing wall is met with a joint, and so is a lintel. */
export interface Obstacle {
  readonly from: number
  readonly to: number
  readonly edge: 'joint' | 'free' | 'lintel'
}

export interface Run {
  readonly from: number
  readonly to: number
  readonly startJoint: boolean
  readonly endJoint: boolean
}

export interface Track {
  readonly lane: Lane
  /** Units lie along the wall or across it. */
  readonly lie: 'along' | 'across'
  readonly runs: readonly Run[]
}

/** A perpend: where it lies along the wall, in which lane, how wide. */
export interface Perpend {
  readonly at: number
  readonly width: number
  readonly lane: Lane
}

/** What has to be filled in one course of one wall. Shapes are shared: equal courses are the same object. */
export interface CourseShape {
  readonly tracks: readonly Track[]
  /** Perpends known before any piece is laid: run ends at the usual joint, joints inside a wall that comes through. */
  readonly known: readonly Perpend[]
  /** The part of `known` that belongs to no run. */
  readonly extra: readonly Perpend[]
  /** Places no perpend should come near, such as the gap a bridging unit closes. */
  readonly keepClear: readonly number[]
  /** Ends of the lintels in this course: a lintel as deep as two courses has an end joint as tall as itself. */
  readonly lintelEnds: readonly number[]
}

/** Whether two lanes share any of the thickness of the wall. */
export const lanesMeet = (a: Lane, b: Lane): boolean => a === b || a === 'full' || b === 'full'

/** What obstacles leave of a wall from `low` to `high`. Obstacles may overlap; a joint goes before a free edge. */
export function runsBetween(low: number, high: number, obstacles: readonly Obstacle[]): Run[] {
  const sorted = [...obstacles].sort((a, b) => a.from - b.from || b.to - a.to)
  const runs: Run[] = []
  let from = low
  let startJoint = false
  for (const obstacle of sorted) {
    if (obstacle.to <= from && obstacle.from < from) continue
    if (obstacle.from > from)
      runs.push({
        from,
        to: Math.min(obstacle.from, high),
        startJoint,
        endJoint: obstacle.from < high && obstacle.edge !== 'free',
      })
    if (obstacle.to >= from) {
      from = obstacle.to
      startJoint = obstacle.edge !== 'free'
    }
  }
  if (from < high) runs.push({ from, to: high, startJoint, endJoint: false })
  return runs
}

/** Parts runs where a perpend is wanted: the joint goes to the run before it. */
export function partedRuns(runs: readonly Run[], perpends: readonly number[], joint: number): Run[] {
  return runs.flatMap((run) => {
    const parts: Run[] = []
    let from = run.from
    let { startJoint } = run
    for (const at of perpends) {
      const end = at + joint / 2
      if (end <= from + joint || end >= run.to - joint) continue
      parts.push({ from, to: end, startJoint, endJoint: true })
      from = end
      startJoint = false
    }
    return [...parts, { from, to: run.to, startJoint, endJoint: run.endJoint }]
  })
}

/** A course with the perpends that its runs make before any piece is laid; micrometres. */
export function courseShape(
  tracks: readonly Track[],
  extra: readonly Perpend[],
  keepClear: readonly number[],
  usualJoint: number,
  lintelEnds: readonly number[] = [],
): CourseShape {
  const known: Perpend[] = [...extra]
  for (const { lane, runs } of tracks) {
    for (const run of runs) {
      if (run.startJoint) known.push({ at: run.from + usualJoint / 2, width: usualJoint, lane })
      if (run.endJoint) known.push({ at: run.to - usualJoint / 2, width: usualJoint, lane })
    }
  }
  return { tracks, known: known.sort((a, b) => a.at - b.at), extra, keepClear, lintelEnds }
}
