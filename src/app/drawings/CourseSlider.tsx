import type { Layout } from '../../core/layout/contract.ts'
import { Slider } from '../parts/Slider.tsx'
import { useWords } from '../words/use-words.tsx'

/** Builds a drawing up and down, course by course. */
export function CourseSlider({
  layout,
  course,
  onChange,
}: {
  readonly layout: Layout
  readonly course: number
  readonly onChange: (course: number) => void
}) {
  const { named, length } = useWords()
  const { courses } = layout
  const first = courses[0]?.index ?? 1
  const last = courses.at(-1)?.index ?? 1
  const topM = courses.find(({ index }) => index === course)?.zTopM ?? 0
  const text = named('drawing.course-of', {
    course,
    count: last,
    top: `${topM < -5e-4 ? '−' : '+'}${length(Math.abs(topM))}`,
  })
  return (
    <div>
      <p className="course-text">{text}</p>
      {last > first && (
        <Slider
          name={named('drawing.course-slider')}
          value={course}
          min={first}
          max={last}
          text={text}
          less={named('drawing.course-less')}
          more={named('drawing.course-more')}
          onChange={onChange}
        />
      )}
    </div>
  )
}
