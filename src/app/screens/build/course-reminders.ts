import type { LaidCourse } from '../../../core/layout/contract.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import type { Words } from '../../words/words.ts'

/** What to mind in a course: openings that stay open, the level of the hearth, heads to set, fill. */
export function courseReminders(
  course: LaidCourse,
  worked: WorkedOut,
  { say, named, length }: Words,
): readonly string[] {
  const { coursing, plan, layout, geometry } = worked
  const { sillCourses, headCourses, count } = coursing.choice.plan
  const { head, widthM, bearingM } = plan.openings
  const { index } = course
  const headName = named(`head.${head}`).toLocaleLowerCase()
  const told: string[] = []
  if (index < 1) told.push(say('build.mind.extra'))
  if (index === sillCourses) told.push(say('build.mind.sill'))
  if (index > sillCourses && index <= headCourses)
    told.push(say('build.mind.opening', { count: plan.chambers.count, width: length(widthM) }))
  if (index === headCourses)
    told.push(
      head === 'lintel' || head === 'steel'
        ? say('build.mind.bearing', { head: headName, bearing: length(bearingM) })
        : say('build.mind.head', { head: headName }),
    )
  if (layout.lintels.some(({ zM, dzM }) => zM < course.zTopM - 1e-6 && zM + dzM > course.zBottomM + 1e-6))
    told.push(say('build.mind.lintel-in'))
  if (geometry.levels.belowM > 0 && index === sillCourses && plan.ground.dampCourse)
    told.push(say('build.mind.damp-course'))
  if (index === count) told.push(say('build.mind.top'))
  return told
}
