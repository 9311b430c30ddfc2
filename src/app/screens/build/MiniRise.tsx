import type { LaidCourse } from '../../../core/layout/contract.ts'

/** The wall from the side as it grows: courses that lie are solid, the one on the screen ember, the ground a line. */
export function MiniRise({
  courses,
  at,
  lies,
}: {
  readonly courses: readonly LaidCourse[]
  readonly at: LaidCourse
  readonly lies: (course: LaidCourse) => number
}) {
  const lowest = courses[0]?.zBottomM ?? 0
  const top = courses.at(-1)?.zTopM ?? 1
  const y = (zM: number) => 4 + (48 * (top - zM)) / (top - lowest)
  return (
    <svg className="mini-rise" viewBox="0 0 84 56" aria-hidden="true" focusable="false">
      {courses.map((course) => {
        const all = course.endUnit - course.firstUnit
        const share = all === 0 ? 0 : lies(course) / all
        const high = Math.max(1, y(course.zBottomM) - y(course.zTopM) - 1)
        return (
          <g key={course.index}>
            {share > 0 && <rect className="lies" x="8" y={y(course.zTopM)} width={68 * share} height={high} />}
            <rect className={course === at ? 'here' : 'edge'} x="8" y={y(course.zTopM)} width="68" height={high} />
          </g>
        )
      })}
      <path className="ground" d={`M0 ${String(y(0))}H84`} />
    </svg>
  )
}
