import { useMemo } from 'react'
import type { Finding } from '../../core/basics/finding.ts'
import { frontView } from '../../core/documents/drawings/front-view.ts'
import { planView } from '../../core/documents/drawings/plan-view.ts'
import type { WorkedOut } from '../../core/work-out.ts'
import { DrawingFrame } from '../parts/DrawingFrame.tsx'
import { DrawingSheet } from './DrawingSheet.tsx'
import { useWriting } from './use-writing.ts'

export type View = 'plan' | 'front'

/** One view of the kiln in its frame; findings carry the numbers of the list beside it. */
export function KilnDrawing({
  view,
  worked,
  findings,
}: {
  readonly view: View
  readonly worked: WorkedOut
  readonly findings: readonly Finding[]
}) {
  const { writing, spoken, unit } = useWriting()
  const drawing = useMemo(
    () => (view === 'plan' ? planView(worked, findings) : frontView(worked, worked.layout, findings)),
    [view, worked, findings],
  )
  return (
    <DrawingFrame {...(unit !== undefined && { unit })}>
      <DrawingSheet drawing={drawing} writing={writing} spoken={spoken} />
    </DrawingFrame>
  )
}
