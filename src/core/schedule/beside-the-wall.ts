import { wholeDown } from '../basics/count.ts'
import type { LaidCourse, Layout } from '../layout/contract.ts'
import { piecesOf, type Pieces } from '../layout/pieces-to-lay.ts'
import type { Plan } from '../plan/schema.ts'
import { LABOUR_DATA } from './labour-data.ts'
import type { Schedule } from './schedule.ts'
import { liesOf, stepOfCourse } from './site-work.ts'

/** What to carry to the wall for a day's laying. */
export interface BesideTheWall {
  readonly courses: readonly LaidCourse[]
  readonly pieces: Pieces
}

/** Courses that the masons lay in a day at the pace of the schedule, at least one; clay rises by no more than a lift. */
function coursesPerDay(plan: Plan, layout: Pick<Layout, 'courses'>, { steps }: Pick<Schedule, 'steps'>): number {
  const hours = steps.reduce(
    (sum, { kind, hours: own }) => (kind === 'walls' || kind === 'walls-below' ? sum + (own.mason?.value ?? 0) : sum),
    0,
  )
  const dayHours = plan.build.hoursPerDay * Math.max(1, plan.build.masons)
  const byHours = hours === 0 ? layout.courses.length : wholeDown((dayHours * layout.courses.length) / hours)
  const [first, second] = layout.courses
  const gaugeM = first === undefined || second === undefined ? 0 : second.zTopM - first.zTopM
  const isClay = plan.walls.unit.family === 'clay-brick' || plan.mixes.mortar.cement === 0
  const byLift = isClay && gaugeM > 0 ? wholeDown(LABOUR_DATA.waits.clayLiftM / gaugeM) : Infinity
  return Math.max(1, Math.min(byHours, byLift))
}

/** Whole units and cut pieces for today, from the first unit that does not lie yet. The walls stop at the head until the heads are on. */
export function besideTheWall(plan: Plan, layout: Layout, schedule: Pick<Schedule, 'steps'>): BesideTheWall {
  const { steps } = schedule
  const lies = (course: LaidCourse) => liesOf(course, steps, plan)
  const open = layout.courses.filter((course) => lies(course) < course.endUnit - course.firstUnit)
  const [first] = open
  const step = first && stepOfCourse(steps, first)
  const courses = open
    .filter((course) => stepOfCourse(steps, course) === step)
    .slice(0, coursesPerDay(plan, layout, schedule))
  const parts = courses.map((course) => ({ course, fromUnit: lies(course) }))
  return { courses, pieces: piecesOf(layout, parts, plan.walls.unit, plan.walls.cutLossM) }
}
