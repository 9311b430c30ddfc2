import { useState } from 'react'
import type { LaidCourse } from '../../../core/layout/contract.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { CourseDrawing } from '../../drawings/CourseDrawing.tsx'
import { Slider } from '../../parts/Slider.tsx'
import { useWords } from '../../words/use-words.tsx'

/** Courses of a step, one at a time, in plan, with what lies in each. */
export function CourseViewer({
  courses,
  worked,
}: {
  readonly courses: readonly LaidCourse[]
  readonly worked: WorkedOut
}) {
  const words = useWords()
  const { say, length } = words
  const [at, setAt] = useState(0)
  const course = courses[Math.min(at, courses.length - 1)]
  if (course === undefined) return null
  const units = worked.layout.units.slice(course.firstUnit, course.endUnit)
  const text = say('build.course', { course: course.index, level: length(course.zTopM) })
  return (
    <div className="stack">
      <p aria-live="polite">
        <b>{text}</b>
        <br />
        {say('build.course-units', {
          whole: units.filter(({ kind }) => kind === 'whole' || kind === 'header').length,
          cut: units.filter(({ kind }) => kind !== 'whole' && kind !== 'header').length,
        })}
      </p>
      <CourseDrawing worked={worked} course={course.index} laid={null} />
      {courses.length > 1 && (
        <Slider
          name={say('build.course-slider')}
          value={courses.indexOf(course)}
          min={0}
          max={courses.length - 1}
          text={text}
          less={say('build.course-below')}
          more={say('build.course-above')}
          onChange={setAt}
        />
      )}
    </div>
  )
}
