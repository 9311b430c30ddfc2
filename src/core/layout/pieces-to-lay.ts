import type { Plan } from '../plan/schema.ts'
import { courseKey } from './as-built.ts'
import type { CutCount, LaidCourse, Layout, WallUnit } from './contract.ts'
import { toMetres, toMicro } from './micrometres.ts'
import { pairCuts } from './pairing.ts'

/** What lies beside the wall for some courses: whole units, pieces by length, and how many units to fetch for both. */
export interface Pieces {
  readonly whole: number
  readonly halves: number
  readonly cuts: readonly CutCount[]
  readonly pieces: number
  /** Whole units and those to cut, offcuts used. */
  readonly toFetch: number
}

/** Units of a course that lie, as the mason ticked them; never more than it has. */
export const laidUnits = (course: LaidCourse, { laid }: Pick<Plan['built'], 'laid'>): number =>
  Math.min(course.endUnit - course.firstUnit, laid[courseKey(course.index)]?.units ?? 0)

/** The pieces of these courses, from the unit each is to be begun at. */
export function piecesOf(
  { units }: Pick<Layout, 'units'>,
  parts: readonly { readonly course: LaidCourse; readonly fromUnit?: number }[],
  unit: Pick<WallUnit, 'lengthM' | 'widthM'>,
  cutLossM: number,
): Pieces {
  let whole = 0
  let halves = 0
  const across = new Map<number, number>()
  const along = new Map<number, number>()
  for (const { course, fromUnit = 0 } of parts)
    for (let id = course.firstUnit + fromUnit; id < course.endUnit; id++) {
      const placed = units[id]
      if (placed === undefined) continue
      if (placed.cutLengthM === null) {
        whole++
        continue
      }
      if (placed.kind === 'half') halves++
      const way = placed.kind === 'closer' ? along : across
      const length = toMicro(placed.cutLengthM)
      way.set(length, (way.get(length) ?? 0) + 1)
    }
  const loss = toMicro(cutLossM)
  const ways = [
    { way: 'across' as const, lengths: across, from: toMicro(unit.lengthM) },
    { way: 'along' as const, lengths: along, from: toMicro(unit.widthM) },
  ]
  const cuts = ways.flatMap(({ way, lengths }) =>
    [...lengths]
      .toSorted(([one], [other]) => other - one)
      .map(([length, count]): CutCount => ({ lengthM: toMetres(length), count, way })),
  )
  return {
    whole,
    halves,
    cuts,
    pieces: whole + cuts.reduce((sum, { count }) => sum + count, 0),
    toFetch: whole + ways.reduce((sum, { lengths, from }) => sum + pairCuts(lengths, from, loss).units, 0),
  }
}
