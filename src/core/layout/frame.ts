import type { CourseShape, Obstacle, Perpend, Track } from './course-shape.ts'
import { courseShape, partedRuns, runsBetween } from './course-shape.ts'
import type { LayoutRequest } from './contract.ts'
import type { CutPlace, LayoutChoices } from './layout-choices.ts'
import { toMicro } from './micrometres.ts'

/** The plan in micrometres: what every shape of every course is made from. */
export interface Frame {
  readonly chambers: number
  readonly clear: number
  readonly thickness: number
  readonly length: number
  readonly depth: number
  readonly unitLength: number
  readonly unitWidth: number
  readonly bond: LayoutRequest['bond']
  readonly jointUsual: number
  readonly opening: number
}

const lengthOf = (chambers: number, clear: number, thickness: number): number =>
  chambers * (clear + thickness) + thickness

/** The same plan with another number of chambers. */
export const withChambers = (frame: Frame, chambers: number): Frame => ({
  ...frame,
  chambers,
  length: lengthOf(chambers, frame.clear, frame.thickness),
})

/** The request in whole micrometres: outline, walls, openings and what one bond asks of them. */
export function frameOf(request: LayoutRequest, bond: LayoutRequest['bond']): Frame {
  const unitLength = toMicro(request.unit.lengthM)
  const unitWidth = toMicro(request.unit.widthM)
  const thickness = bond === 'stretcher' ? unitWidth : unitLength
  const clear = toMicro(request.clearSideM)
  return {
    chambers: request.chambers,
    clear,
    thickness,
    length: lengthOf(request.chambers, clear, thickness),
    depth: clear + 2 * thickness,
    unitLength,
    unitWidth,
    bond,
    jointUsual: toMicro(request.perpend.usualM),
    opening: toMicro(request.opening.widthM),
  }
}

/** Left edge of the junction with cross wall k: 0 is the left wall, `chambers` the right wall. */
export const junctionAt = (frame: Frame, k: number): number => k * (frame.clear + frame.thickness)

/** Left jamb of chamber k (from 0). */
export const jambAt = (frame: Frame, k: number): number =>
  junctionAt(frame, k) + frame.thickness + (frame.clear - frame.opening) / 2

/** Index into `owns` of a junction. */
export const junctionKind = (end: 'front' | 'back', k: number, chambers: number): number =>
  (end === 'front' ? 0 : 3) + (k === 0 ? 0 : k === chambers ? 2 : 1)

type Owns = LayoutChoices['owns']

/**
 * One course of the front or back wall. At a junction the wall runs through in courses of the parity in `owns`; in the
 * others the cross wall comes through. English bond: those are the stretcher courses, and corners interlock by half bricks.
 */
export function longShape(
  frame: Frame,
  end: 'front' | 'back',
  parity: 0 | 1,
  owns: Owns,
  forced: (k: number) => boolean,
  inWay: readonly Obstacle[],
  keepClear: readonly number[],
  bays: CutPlace,
): CourseShape {
  const { chambers, thickness, unitWidth, length } = frame
  const through = (k: number): boolean => forced(k) || owns[junctionKind(end, k, chambers)] === parity
  const perpends = bayPerpends(frame, bays, through)
  const runsOf = (obstacles: readonly Obstacle[]) =>
    partedRuns(runsBetween(0, length, obstacles), perpends, frame.jointUsual)
  const extra: Perpend[] = []
  const lintelEnds = inWay.flatMap(({ from, to, edge }) => (edge === 'lintel' ? [from, to] : []))
  if (frame.bond === 'english' && owns[end === 'front' ? 0 : 3] === parity) {
    const inner: Obstacle[] = []
    if (!forced(0)) inner.push({ from: 0, to: thickness, edge: 'joint' })
    if (!forced(chambers)) inner.push({ from: length - thickness, to: length, edge: 'joint' })
    const tracks: Track[] = [
      { lane: 'outer', lie: 'along', runs: runsOf(inWay) },
      { lane: 'inner', lie: 'along', runs: runsOf([...inner, ...inWay]) },
    ]
    return courseShape(tracks, extra, keepClear, frame.jointUsual, lintelEnds)
  }
  const obstacles: Obstacle[] = [...inWay]
  for (let k = 0; k <= chambers; k++) {
    if (through(k)) continue
    const from = junctionAt(frame, k)
    const corner = frame.bond === 'english' && (k === 0 || k === chambers)
    const width = corner ? unitWidth : thickness
    const start = corner && k === chambers ? length - unitWidth : from
    obstacles.push({ from: start, to: start + width, edge: 'joint' })
    if (frame.bond === 'english' && !corner)
      extra.push({ at: from + thickness / 2, width: thickness - 2 * unitWidth, lane: 'full' })
  }
  const lie = frame.bond === 'stretcher' ? 'along' : 'across'
  const tracks: Track[] = [{ lane: 'full', lie, runs: runsOf(obstacles) }]
  return courseShape(tracks, extra, keepClear, frame.jointUsual, lintelEnds)
}

/** Perpends that make every bay of a through course alike: beside the unit over each junction, or over its middle. */
function bayPerpends(frame: Frame, bays: CutPlace, through: (k: number) => boolean): number[] {
  if (bays !== 'bays' && bays !== 'half-bays') return []
  const piece = frame.bond === 'stretcher' ? frame.unitLength : frame.unitWidth
  const half = Math.trunc((piece + frame.jointUsual) / 4) * 2
  const other = frame.bond === 'english' ? half : 0
  const beside = bays === 'bays' ? -half : other
  const perpends: number[] = []
  for (let k = 1; k < frame.chambers; k++)
    if (through(k)) perpends.push(junctionAt(frame, k) + frame.thickness / 2 + beside)
  return perpends
}

/** Who runs through the junctions at the ends of a cross wall, where that is not left to the scheme. */
export interface EndOwners {
  /** `lintel`: a lintel lies over the whole end of this wall. */
  readonly front?: 'long' | 'cross' | 'lintel' | undefined
  readonly back?: 'long' | 'cross' | undefined
}

/** One course of cross wall k, from front to back. */
export function crossShape(
  frame: Frame,
  k: number,
  parity: 0 | 1,
  owns: Owns,
  owners: EndOwners,
  inWay: readonly Obstacle[] = [],
): CourseShape {
  const { chambers, thickness, unitWidth, depth } = frame
  const isLong = (end: 'front' | 'back'): boolean =>
    (owners[end] ?? (owns[junctionKind(end, k, chambers)] === parity ? 'long' : 'cross')) !== 'cross'
  const frontThrough = isLong('front')
  const backThrough = isLong('back')
  const lintelEnds = owners.front === 'lintel' ? [thickness] : []
  const front: Obstacle = { from: 0, to: thickness, edge: 'joint' }
  const back: Obstacle = { from: depth - thickness, to: depth, edge: 'joint' }
  const runsOf = (...obstacles: readonly Obstacle[]) => runsBetween(0, depth, [...obstacles, ...inWay])
  if (frame.bond !== 'english') {
    const obstacles = [...(frontThrough ? [front] : []), ...(backThrough ? [back] : [])]
    const lie = frame.bond === 'stretcher' ? 'along' : 'across'
    return courseShape([{ lane: 'full', lie, runs: runsOf(...obstacles) }], [], [], frame.jointUsual, lintelEnds)
  }
  const corner = k === 0 || k === chambers
  if (owns[junctionKind('back', k, chambers)] === parity) {
    // The long walls lie in stretchers: this wall lies in headers, inside their outer row at corners, behind them at a T.
    const reach = corner ? unitWidth : thickness
    const runs = runsOf(
      { ...front, to: owners.front === 'long' || owners.front === 'lintel' ? thickness : reach },
      { ...back, from: depth - (owners.back === 'long' ? thickness : reach) },
    )
    return courseShape([{ lane: 'full', lie: 'across', runs }], [], [], frame.jointUsual, lintelEnds)
  }
  const both = [...(frontThrough ? [front] : []), ...(backThrough ? [back] : [])]
  const inner = corner ? [...(frontThrough ? [] : [front]), ...(backThrough ? [] : [back])] : []
  const tracks: Track[] = [
    { lane: 'outer', lie: 'along', runs: runsOf(...both) },
    { lane: 'inner', lie: 'along', runs: runsOf(...both, ...inner) },
  ]
  return courseShape(tracks, [], [], frame.jointUsual, lintelEnds)
}
