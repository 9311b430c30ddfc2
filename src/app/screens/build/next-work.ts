import { courseKey } from '../../../core/layout/as-built.ts'
import type { LaidCourse } from '../../../core/layout/contract.ts'
import type { Step } from '../../../core/schedule/schedule.ts'
import { coursesOf, liesOf, stepOfCourse } from '../../../core/schedule/site-work.ts'
import type { WorkedOut } from '../../../core/work-out.ts'

/** The first step that is not ticked: the work in hand. Null when all is built. */
export const stepInHand = ({ schedule }: Pick<WorkedOut, 'schedule'>): Step | null =>
  schedule.steps.find(({ done, wait }) => done === null && wait === undefined) ?? null

/** The lowest course that is not all laid; null when all are. */
export const courseToLay = ({ layout, schedule, plan }: WorkedOut): LaidCourse | null =>
  layout.courses.find((course) => liesOf(course, schedule.steps, plan) < course.endUnit - course.firstUnit) ?? null

interface Tick {
  readonly day: string
  readonly who: string
}

/** Fields to write when so many units of a course lie: with its last unit a step's last course ticks the step, and a unit taken back unticks it. */
export function laidFields(
  { layout, schedule, plan }: Pick<WorkedOut, 'layout' | 'schedule' | 'plan'>,
  course: LaidCourse,
  units: number,
  tick: Tick,
): Readonly<Record<string, unknown>> {
  const { steps } = schedule
  const step = stepOfCourse(steps, course)
  const all = course.endUnit - course.firstUnit
  const fields: Record<string, unknown> = {
    [`built.laid.${courseKey(course.index)}`]: units <= 0 ? undefined : { units: Math.min(all, units), ...tick },
  }
  if (step === undefined) return fields
  const others = coursesOf(step, steps, layout).filter((one) => one !== course)
  const done = plan.build.ticks[step.id]
  if (units >= all && others.every((one) => liesOf(one, steps, plan) === one.endUnit - one.firstUnit)) {
    if (done === undefined) fields[`build.ticks.${step.id}`] = tick
  } else if (done !== undefined) {
    fields[`build.ticks.${step.id}`] = undefined
    // The step said that its other courses lie; now they say so themselves.
    for (const one of others)
      fields[`built.laid.${courseKey(one.index)}`] = { units: one.endUnit - one.firstUnit, ...done }
  }
  return fields
}
