import { lotsFor, SAME_LENGTH_M, wholeNear } from '../basics/count.ts'
import type { Finding } from '../basics/finding.ts'
import { extraCoursesAt, type KilnGeometry } from '../geometry/kiln.ts'
import type { KilnLevels } from '../geometry/walls.ts'
import type { Plan } from '../plan/schema.ts'
import type { CoursePlan, Head, LayoutRequest } from './contract.ts'
import { measuredFindings } from './measured-units.ts'
import { courseChoices, gaugeRod, type CourseChoice, type CourseWish } from './coursing.ts'

/** How the wall is coursed, the other ways it could be, and what the user should know of it. */
export interface Coursing {
  readonly choice: CourseChoice
  readonly choices: readonly CourseChoice[]
  readonly findings: readonly Finding[]
}

/** A lintel is at least this deep, m: 100 to 150 mm for openings of 350 to 600 mm, by judgement. */
const LINTEL_DEPTH_M = 0.1
/** Rise of an arched head over its span: between a twelfth and a sixth is usual. */
const ARCH_RISE_OF_SPAN = 1 / 6

const wishOf = ({ walls, openings }: Plan): CourseWish => ({
  unitHeightM: walls.unit.heightM,
  bed: walls.joint,
  wanted: { belowM: walls.belowM, aboveM: walls.aboveM, headM: openings.heightM },
  levelling: 0,
})

/** The coursing that the plan holds, else the best one. Where no coursing meets the wishes at all, whole courses nearest to them. */
export function coursingOf(plan: Plan): Coursing {
  const wish = wishOf(plan)
  const choices = courseChoices(wish)
  const kept = plan.walls.coursing
  const held =
    kept === null
      ? undefined
      : choices.find(
          ({ plan: one }) =>
            one.count === kept.below + kept.above &&
            one.sillCourses === kept.below &&
            Math.abs(one.bedM - kept.jointM) < SAME_LENGTH_M,
        )
  const choice = held ?? choices[0]
  const findings: Finding[] = []
  const tell = (level: Finding['level'], kind: string, args: Finding['args'], remedies: Finding['remedies'] = []) =>
    findings.push({ level, kind, args, card: 'walls', remedies })
  if (choice === undefined) {
    tell('problem', 'coursing.none', {
      above: { value: wish.wanted.aboveM, unit: 'm' },
      head: { value: wish.wanted.headM, unit: 'm' },
    })
    const nearest = nearestCoursing(wish)
    return { choice: nearest, choices: [nearest], findings }
  }
  if (kept !== null && held === undefined)
    tell('caution', 'coursing.gone', {}, [{ kind: 'coursing.best', args: {}, set: { 'walls.coursing': null } }])
  for (const level of ['below', 'above', 'head'] as const) {
    const moved = choice.moved[level]
    if (Math.abs(moved) >= NOTICED_M)
      tell('caution', `coursing.${level}-${moved > 0 ? 'more' : 'less'}`, {
        wanted: { value: wish.wanted[`${level}M`], unit: 'm' },
        reached: { value: choice.reached[`${level}M`], unit: 'm' },
        moved: { value: Math.abs(moved), unit: 'm' },
      })
  }
  findings.push(...measuredFindings(plan))
  return { choice, choices, findings }
}

/** A level that moves by less than a trowel can follow is not worth a word. */
const NOTICED_M = 0.01

/** Whole courses at the usual joint nearest to the wishes, the head at least a course under the top. */
function nearestCoursing({ unitHeightM, bed, wanted }: CourseWish): CourseChoice {
  const bedM = bed.usualM
  const gaugeM = unitHeightM + bedM
  const below = wholeNear(wanted.belowM / gaugeM)
  const above = Math.max(2, wholeNear(wanted.aboveM / gaugeM))
  const head = Math.min(above - 1, Math.max(1, wholeNear(wanted.headM / gaugeM)))
  const count = below + above
  const belowM = below * gaugeM
  const aboveM = above * gaugeM
  const headM = head * gaugeM
  const moved = { below: belowM - wanted.belowM, above: aboveM - wanted.aboveM, head: headM - wanted.headM }
  const plan: CoursePlan = {
    unitHeightM,
    bedM,
    firstBedM: bedM,
    count,
    belowM,
    aboveM,
    sillCourses: below,
    headCourses: below + head,
  }
  return {
    plan,
    gaugeM,
    reached: { belowM, aboveM, headM },
    moved,
    moves: 'above',
    rod: gaugeRod(count * gaugeM, count),
  }
}

/** What the courses reach, for the geometry; the head counts to the underside of what lies over the opening. */
export const levelsFrom = ({ choice }: Coursing): KilnLevels => ({
  belowM: choice.reached.belowM,
  aboveM: choice.reached.aboveM,
  headM: choice.reached.headM,
  gaugeM: choice.gaugeM,
})

/** The plain numbers that the layout works from. */
export function layoutRequest(plan: Plan, coursing: Coursing, geometry: Pick<KilnGeometry, 'footing'>): LayoutRequest {
  const { chambers, walls, openings } = plan
  const courses = coursing.choice.plan
  const { laying } = walls
  return {
    chambers: chambers.count,
    clearSideM: chambers.clearSideM,
    unit: walls.unit,
    leaf: walls.leaf,
    bond: walls.bond,
    perpend: walls.joint,
    courses,
    opening: { widthM: openings.widthM, head: headOf(plan, courses) },
    cutLossM: walls.cutLossM,
    ...(laying !== null && laying.walls === wallsMark(plan, courses) && { turned: laying }),
    ...(geometry.footing.steps.zones.some(({ step }) => step < 0) && { lowestCourseAt: extraCoursesAt(geometry) }),
  }
}

/** What the walls hang on, in one line: a laying found for other walls is not theirs. */
export const wallsMark = ({ chambers, walls, openings, ground }: Plan, courses: CoursePlan): string =>
  [
    chambers.count,
    chambers.clearSideM,
    walls.unit.lengthM,
    walls.unit.widthM,
    walls.unit.heightM,
    walls.leaf,
    walls.bond,
    walls.joint.minM,
    walls.joint.usualM,
    walls.joint.maxM,
    walls.cutLossM,
    courses.count,
    courses.sillCourses,
    courses.headCourses,
    courses.bedM,
    openings.widthM,
    openings.head,
    openings.bearingM,
    ground.slopeAcross,
    ground.slopeBack,
    ground.formation,
  ].join(' ')

function headOf({ openings }: Plan, { unitHeightM, bedM }: CoursePlan): Head {
  const { head, bearingM, widthM } = openings
  switch (head) {
    case 'lintel':
      return { kind: 'lintel', bearingM, courses: Math.max(1, lotsFor(LINTEL_DEPTH_M + bedM, unitHeightM + bedM)) }
    case 'steel':
      return { kind: 'steel', bearingM }
    case 'corbel':
      return { kind: 'corbel' }
    case 'arch':
      return { kind: 'arch', riseM: widthM * ARCH_RISE_OF_SPAN }
    default:
      return head satisfies never
  }
}
