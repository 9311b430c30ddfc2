import type { LaidCourse, Layout } from '../layout/contract.ts'
import { laidUnits } from '../layout/pieces-to-lay.ts'
import type { Plan } from '../plan/schema.ts'
import type { Need } from '../quantities/need.ts'
import type { Step } from './schedule.ts'
import type { TaskKind } from './tasks.ts'

/** Levels closer than this are one level to a mason: courses lie in whole micrometres, their tops come a few of them off the levels planned for. */
const SAME_LEVEL_M = 5e-4

type WallStep = Pick<Step, 'id' | 'kind' | 'toM'>

/** The step that lays a course: the first that rises to its top. The lowest step takes what hangs below it, the highest what stands out above. */
export function stepOfCourse<S extends WallStep>(
  steps: readonly S[],
  course: Pick<LaidCourse, 'zTopM'>,
): S | undefined {
  const walls = steps.filter(({ kind }) => kind === 'walls-below' || kind === 'walls')
  return walls.find(({ toM }) => course.zTopM <= (toM ?? 0) + SAME_LEVEL_M) ?? walls.at(-1)
}

/** The courses that a step lays: every course of the walls is in one step. */
export const coursesOf = (
  step: WallStep,
  steps: readonly WallStep[],
  { courses }: Pick<Layout, 'courses'>,
): readonly LaidCourse[] =>
  step.kind === 'walls' || step.kind === 'walls-below'
    ? courses.filter((course) => stepOfCourse(steps, course)?.id === step.id)
    : []

/** Units of a course that lie: as ticked unit by unit, or all where the step that lays it is ticked. */
export function liesOf(
  course: LaidCourse,
  steps: readonly WallStep[],
  { build, built }: Pick<Plan, 'build' | 'built'>,
): number {
  const step = stepOfCourse(steps, course)
  const isDone = step !== undefined && build.ticks[step.id] !== undefined
  return isDone ? course.endUnit - course.firstUnit : laidUnits(course, built)
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
