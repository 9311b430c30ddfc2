import type { LaidCourse, Layout } from '../layout/contract.ts'
import { laidUnits } from '../layout/pieces-to-lay.ts'
import type { Plan } from '../plan/schema.ts'
import type { Need } from '../quantities/need.ts'
import type { Step } from './schedule.ts'
import type { TaskKind } from './tasks.ts'

/** Courses lie in whole micrometres, so that their tops come a few of them off the levels they were planned for. */
const SAME_LEVEL_M = 1e-4

/** The courses that a step lays: those that come up to its levels; for the walls below ground those under the ground. */
export function coursesOf(
  { kind, fromM, toM }: Pick<Step, 'kind' | 'fromM' | 'toM'>,
  { courses }: Pick<Layout, 'courses'>,
): readonly LaidCourse[] {
  if (kind === 'walls-below') return courses.filter(({ zTopM }) => zTopM <= SAME_LEVEL_M)
  if (kind !== 'walls' || fromM === undefined || toM === undefined) return []
  return courses.filter(({ zTopM }) => zTopM > fromM + SAME_LEVEL_M && zTopM <= toM + SAME_LEVEL_M)
}

/** The step that lays a course. */
export const stepOfCourse = (
  steps: readonly Step[],
  layout: Pick<Layout, 'courses'>,
  course: LaidCourse,
): Step | undefined => steps.find((step) => coursesOf(step, layout).includes(course))

/** Units of a course that lie: as ticked unit by unit, or all where the step that lays it is ticked. */
export function liesOf(
  course: LaidCourse,
  steps: readonly Step[],
  layout: Pick<Layout, 'courses'>,
  built: Plan['built'],
): number {
  const isDone = stepOfCourse(steps, layout, course)?.done ?? null
  return isDone === null ? laidUnits(course, built) : course.endUnit - course.firstUnit
}

/** What a kind of step takes from the list. */
export function isFor(kind: TaskKind, { section, use }: Pick<Need, 'section' | 'use'>): boolean {
  switch (kind) {
    case 'footing':
      return use === 'footing' || use === 'hardcore'
    case 'cast-lintels':
      return use === 'lintels'
    case 'walls-below':
      return use === 'walls' || use === 'joints' || use === 'damp-course'
    case 'walls':
      return use === 'walls' || use === 'joints'
    case 'heads':
      return use === 'steel'
    case 'fill':
      return use === 'fill'
    case 'faces':
      return use === 'lining' || use === 'render'
    case 'trays':
      return section === 'trays'
    case 'set-out':
    case 'dig':
    case 'lintel-wait':
    case 'footing-wait':
    case 'backfill':
    case 'lift-wait':
    case 'slabs':
    case 'curing':
    case 'first-fires':
      return false
    default:
      return kind satisfies never
  }
}
