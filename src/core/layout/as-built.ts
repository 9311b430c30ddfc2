import { SAME_LENGTH_M } from '../basics/count.ts'
import type { Plan } from '../plan/schema.ts'
import type { CoursePlan, JointRange } from './contract.ts'

/** One course as it stands or is now to be laid. */
export interface RisenCourse {
  readonly index: number
  readonly plannedTopM: number
  readonly topM: number
  /** Bed under its units. */
  readonly bedM: number
  /** `measured` on the wall; `between` two measured ones, its share of them; `ahead` still to lay, or laid and not measured. */
  readonly known: 'measured' | 'between' | 'ahead'
}

/** The courses as measured so far, and the rest planned again from there. */
export interface AsBuilt {
  readonly courses: readonly RisenCourse[]
  /** The last course with a measured level; 0 where none is. */
  readonly measuredTo: number
  /** Reached less planned, m. */
  readonly offHeadM: number
  readonly offTopM: number
  /** Where the top is missed: another number of courses from the last measured one up, at one joint within the range; null where none does. */
  readonly other: { readonly courses: number; readonly bedM: number } | null
}

/** The name under which a course is kept in the plan. */
export const courseKey = (index: number): string => `c${String(index)}`

/**
 * Measured courses stand where they stand. From the last of them up, one joint leads to the head of the openings and one from there to the
 * top, each kept within its range: so the head is met if any joint can meet it, and the top is met if any joints at all can.
 *
 *   joint = (level to reach − level reached) ÷ courses − unit height
 */
export function asBuilt(plan: CoursePlan, joint: JointRange, risen: Plan['built']['risen']): AsBuilt {
  const { unitHeightM, bedM, firstBedM, count, belowM, headCourses } = plan
  const planned = (index: number) => -belowM + (index > 0 ? firstBedM - bedM : 0) + index * (unitHeightM + bedM)
  const measured = Array.from({ length: count }, (_, i) => i + 1).filter((index) => risen[courseKey(index)])
  const measuredTo = measured.at(-1) ?? 0
  const tops: number[] = [-belowM]
  const shareOut = (from: number, to: number, topM: number) => {
    const startM = tops[from] ?? -belowM
    for (let index = from + 1; index <= to; index++)
      tops[index] = startM + ((topM - startM) * (index - from)) / (to - from)
  }
  let below = 0
  for (const index of measured) {
    shareOut(below, index, risen[courseKey(index)]?.topM ?? planned(index))
    below = index
  }
  if (measuredTo === 0) for (let index = 1; index <= count; index++) tops[index] = planned(index)
  else {
    let at = measuredTo
    for (const goal of [headCourses, count]) {
      if (goal <= at || goal > count) continue
      const startM = tops[at] ?? 0
      const bed = (planned(goal) - startM) / (goal - at) - unitHeightM
      shareOut(at, goal, startM + (goal - at) * (unitHeightM + within(bed, joint)))
      at = goal
    }
  }
  const offAt = (index: number) => (tops[index] ?? 0) - planned(index)
  const offTopM = offAt(count)
  return {
    courses: Array.from({ length: count }, (_, i): RisenCourse => {
      const index = i + 1
      const topM = tops[index] ?? 0
      return {
        index,
        plannedTopM: planned(index),
        topM,
        bedM: topM - (tops[i] ?? 0) - unitHeightM,
        known: risen[courseKey(index)] ? 'measured' : index < measuredTo ? 'between' : 'ahead',
      }
    }),
    measuredTo,
    offHeadM: headCourses > count ? 0 : offAt(headCourses),
    offTopM,
    other: Math.abs(offTopM) < MISSED_M ? null : otherCount(plan, joint, measuredTo, tops[measuredTo] ?? 0),
  }
}

/** A level missed by less is met: as fine as a level is read. */
export const MISSED_M = 0.002

const within = (bedM: number, { minM, maxM }: JointRange): number =>
  bedM < minM - SAME_LENGTH_M ? minM : bedM > maxM + SAME_LENGTH_M ? maxM : bedM

function otherCount(
  { unitHeightM, count, aboveM }: CoursePlan,
  { minM, maxM }: JointRange,
  from: number,
  fromM: number,
): AsBuilt['other'] {
  const left = count - from
  for (const courses of [left + 1, left - 1]) {
    if (courses < 1) continue
    const bedM = (aboveM - fromM) / courses - unitHeightM
    if (bedM >= minM - SAME_LENGTH_M && bedM <= maxM + SAME_LENGTH_M) return { courses, bedM }
  }
  return null
}
