import { useMemo } from 'react'
import { courseView } from '../../core/documents/drawings/course-view.ts'
import type { WorkedOut } from '../../core/work-out.ts'
import { DrawingFrame } from '../parts/DrawingFrame.tsx'
import { DrawingSheet } from './DrawingSheet.tsx'
import { useWriting } from './use-writing.ts'

/** One course in plan; `laid` counts the units that are down, or is null where nobody is counting. */
export function CourseDrawing({
  worked,
  course,
  laid,
  onUnit,
}: {
  readonly worked: WorkedOut
  readonly course: number
  readonly laid: number | null
  readonly onUnit?: (tag: string) => void
}) {
  const { writing, spoken, unit } = useWriting()
  const drawing = useMemo(
    () => courseView(worked.layout, worked.plan.walls.unit.cells, course, laid === null ? null : { laid }),
    [worked, course, laid],
  )
  return (
    <DrawingFrame {...(unit !== undefined && { unit })}>
      <DrawingSheet drawing={drawing} writing={writing} spoken={spoken} {...(onUnit && { onTag: onUnit })} />
    </DrawingFrame>
  )
}
