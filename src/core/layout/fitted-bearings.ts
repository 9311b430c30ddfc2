import { jambAt, type Frame } from './frame.ts'
import type { Bearing, HeadPlan } from './heads.ts'
import type { LaidWall } from './workshop.ts'

const MOST_LONGER = { thick: 110_000, single: 240_000 }
const TRIED = 2

/**
 * Bearings at which the ends of the lintels fall on upright joints of the course two below: the lintel then takes the place of
 * whole pieces of the bond and laps as they would. The shortest first, no shorter than asked; towards the ends of the row, and
 * towards the dividing walls.
 */
export function fittedBearings(
  frame: Frame,
  { firstCourse, lastCourse }: HeadPlan,
  { laid }: Pick<LaidWall, 'laid'>,
  asked: Bearing,
): { readonly outers: readonly number[]; readonly inners: readonly number[] } {
  const alike = laid[firstCourse - 3]
  if (firstCourse > lastCourse || alike === undefined) return { outers: [], inners: [] }
  const most = frame.bond === 'english' ? MOST_LONGER.thick : MOST_LONGER.single
  const outers = new Set<number>()
  const inners = new Set<number>()
  for (let k = 0; k < frame.chambers; k++) {
    const jamb = jambAt(frame, k)
    const far = jamb + frame.opening
    for (const { at, width, lane } of alike.perpends) {
      if (lane === 'inner') continue
      const half = Math.trunc(width / 2)
      const left = jamb - at - half
      const right = at - half - far
      if (left > 0) (k === 0 ? outers : inners).add(left)
      if (right > 0) (k === frame.chambers - 1 ? outers : inners).add(right)
    }
  }
  const shortest = (found: ReadonlySet<number>, least: number): number[] =>
    [...found]
      .filter((bearing) => bearing >= least && bearing <= least + most)
      .sort((a, b) => a - b)
      .slice(0, TRIED)
  return { outers: shortest(outers, asked.outer), inners: shortest(inners, asked.inner) }
}
