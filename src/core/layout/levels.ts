import type { CoursePlan } from './contract.ts'
import { toMicro } from './micrometres.ts'

/** Levels of the courses in micrometres above the ground. */
export interface Levels {
  readonly count: number
  readonly unitHeight: number
  readonly bed: number
  readonly sill: number
  readonly head: number
  /** Top of the units of a course; 0 is the footing, 1 the first course. Negative courses hang below course 1. */
  readonly top: (course: number) => number
  /** Bottom of the units of a course, above their bed. */
  readonly bottom: (course: number) => number
}

/** Levels of every course from the plan of courses. */
export function levelsOf(plan: CoursePlan): Levels {
  const unitHeight = toMicro(plan.unitHeightM)
  const bed = toMicro(plan.bedM)
  const footing = -toMicro(plan.belowM)
  const firstExtra = toMicro(plan.firstBedM) - bed
  const top = (course: number): number => footing + (course > 0 ? firstExtra : 0) + course * (unitHeight + bed)
  return {
    count: plan.count,
    unitHeight,
    bed,
    sill: plan.sillCourses,
    head: plan.headCourses,
    top,
    bottom: (course) => top(course) - unitHeight,
  }
}
