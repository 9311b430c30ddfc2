import { memo, useMemo } from 'react'
import { courseView } from '../../../core/documents/drawings/course-view.ts'
import type { Layout } from '../../../core/layout/contract.ts'
import type { Plan } from '../../../core/plan/schema.ts'
import { FramedDrawing } from '../../drawings/FramedDrawing.tsx'

/** So that figures and drawing stand over the buttons together on a small phone. */
const MOST_HIGH_U = 240

/** A course in plan with what lies of it. Drawn when its figures have changed already: a thumb waits for no drawing. */
export const CoursePicture = memo(function CoursePicture({
  layout,
  cells,
  course,
  laid,
}: {
  readonly layout: Layout
  readonly cells: Plan['walls']['unit']['cells']
  readonly course: number
  readonly laid: number
}) {
  const drawing = useMemo(() => courseView(layout, cells, course, { laid }), [layout, cells, course, laid])
  return <FramedDrawing drawing={drawing} mostHighU={MOST_HIGH_U} />
})
