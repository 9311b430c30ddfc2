import { useMemo, useState } from 'react'
import type { Finding } from '../../core/basics/finding.ts'
import { insideView } from '../../core/documents/drawings/inside-view.ts'
import type { WorkedOut } from '../../core/work-out.ts'
import { DrawingFrame } from '../parts/DrawingFrame.tsx'
import { CourseSlider } from './CourseSlider.tsx'
import { DrawingSheet } from './DrawingSheet.tsx'
import { OpenDrawing } from './OpenDrawing.tsx'
import { useWriting } from './use-writing.ts'

/** See-through view that builds up course by course. */
export function InsideDrawing({
  worked,
  findings,
  onOpen,
}: {
  readonly worked: WorkedOut
  readonly findings: readonly Finding[]
  readonly onOpen?: () => void
}) {
  const { writing, spoken } = useWriting()
  const drawing = useMemo(() => insideView(worked, worked.layout, findings), [worked, findings])
  const lastCourse = worked.layout.courses.at(-1)?.index ?? 1
  const [chosen, setChosen] = useState<number | null>(null)
  const course = Math.min(chosen ?? lastCourse, lastCourse)
  return (
    <div className="inside-drawing">
      <DrawingFrame>
        <DrawingSheet drawing={drawing} writing={writing} spoken={spoken} upToCourse={course} />
        {onOpen && <OpenDrawing view="inside" onOpen={onOpen} />}
      </DrawingFrame>
      <CourseSlider layout={worked.layout} course={course} onChange={setChosen} />
    </div>
  )
}
