import type { CourseShape } from './course-shape.ts'
import { lapsBetween, type LaidShape } from './laid-wall.ts'
import type { Fillers, WallRules } from './remembered-fills.ts'

/** What one wall costs, so that two ways of laying it can be compared. */
export interface WallScore {
  readonly breaches: number
  readonly whole: number
  /** Cut pieces by length, in micrometres, by the way they are cut. */
  readonly across: ReadonlyMap<number, number>
  readonly along: ReadonlyMap<number, number>
  readonly cuts: number
  readonly smallestLap: number
  /** Units as far as one wall can tell: cut pieces count by how many of them one unit gives. */
  readonly units: number
}

const unitsFor = (piece: number, whole: number, loss: number): number =>
  0.5 / Math.max(1, Math.trunc((whole + loss) / (piece + loss))) + (0.5 * (piece + loss)) / (whole + loss)

/**
 * Counts of one laid wall: breaches of the rules, whole units, cut pieces by length, least lap (micrometres), units
 * used.
 */
export function wallScore(laid: readonly LaidShape[], rules: WallRules, loss: number): WallScore {
  const times = new Map<LaidShape, number>()
  for (const course of laid) times.set(course, (times.get(course) ?? 0) + 1)
  const across = new Map<number, number>()
  const along = new Map<number, number>()
  let breaches = 0
  let whole = 0
  let cuts = 0
  let units = 0
  for (const [course, count] of times) {
    breaches += course.ownBreaches * count
    cuts += course.cuts * count
    course.fills.forEach((row, index) => {
      const lie = course.shape.tracks[index]?.lie ?? 'along'
      const full = rules[lie].length
      const pieces = lie === 'along' ? across : along
      for (const { lengths } of row)
        for (const length of lengths) {
          if (length === full) {
            whole += count
            units += count
          } else {
            pieces.set(length, (pieces.get(length) ?? 0) + count)
            units += count * unitsFor(length, full, loss)
          }
        }
    })
  }
  let smallestLap = Infinity
  const seen = new Map<LaidShape, Map<LaidShape, { readonly short: number; readonly smallest: number }>>()
  for (let i = 1; i < laid.length; i++) {
    const below = laid[i - 1]
    const above = laid[i]
    if (below === undefined || above === undefined) continue
    const known = seen.get(below) ?? new Map<LaidShape, { readonly short: number; readonly smallest: number }>()
    const laps = known.get(above) ?? lapsBetween(below, above, rules.along.lap)
    seen.set(below, known.set(above, laps))
    breaches += laps.short
    if (laps.smallest < smallestLap) smallestLap = laps.smallest
  }
  return { breaches, whole, across, along, cuts, smallestLap, units }
}

/** Smaller is better: breaches, then units or cuts as sought, then the other, then different cuts, then laps. */
export function scoreOrder(a: WallScore, b: WallScore, sought: 'units' | 'cuts'): number {
  if (a.breaches !== b.breaches) return a.breaches - b.breaches
  if (sought === 'cuts' && a.cuts !== b.cuts) return a.cuts - b.cuts
  const units = a.units - b.units
  if (units > 1e-6 || units < -1e-6) return units
  if (a.cuts !== b.cuts) return a.cuts - b.cuts
  const kinds = a.across.size + a.along.size - b.across.size - b.along.size
  return kinds === 0 ? b.smallestLap - a.smallestLap : kinds
}

/** Fewest cuts any laying of these courses can have: each run on its own, laps ignored. */
export function fewestCuts(shapes: readonly CourseShape[], fill: Fillers): number {
  const known = new Map<CourseShape, number>()
  let cuts = 0
  for (const shape of shapes) {
    let own = known.get(shape)
    if (own === undefined) {
      own = 0
      for (const { lie, runs } of shape.tracks)
        for (const { from, to, startJoint, endJoint } of runs)
          own += fill(lie, to - from, startJoint, endJoint, [], 'any').cuts
      known.set(shape, own)
    }
    cuts += own
  }
  return cuts
}
