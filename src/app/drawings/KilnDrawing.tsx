import { useMemo } from 'react'
import type { Finding } from '../../core/basics/finding.ts'
import { frontView } from '../../core/documents/drawings/front-view.ts'
import { planView } from '../../core/documents/drawings/plan-view.ts'
import { sectionView } from '../../core/documents/drawings/section-view.ts'
import type { Drawing } from '../../core/documents/drawings/drawing.ts'
import type { WorkedOut } from '../../core/work-out.ts'
import { DrawingFrame } from '../parts/DrawingFrame.tsx'
import { DrawingSheet } from './DrawingSheet.tsx'
import { OpenDrawing } from './OpenDrawing.tsx'
import { useWriting } from './use-writing.ts'

export type View = 'plan' | 'front' | 'section'

/** One view of the kiln in its frame; findings carry the numbers of the list beside it. */
export function KilnDrawing({
  view,
  worked,
  findings,
  onOpen,
}: {
  readonly view: View
  readonly worked: WorkedOut
  readonly findings: readonly Finding[]
  /** Hears a tap that wants the drawing over the whole screen. */
  readonly onOpen?: () => void
}) {
  const { writing, spoken, unit } = useWriting()
  const drawing = useMemo(() => drawingOf(view, worked, findings), [view, worked, findings])
  return (
    <DrawingFrame {...(unit !== undefined && { unit })}>
      <DrawingSheet drawing={drawing} writing={writing} spoken={spoken} />
      {onOpen && <OpenDrawing view={view} onOpen={onOpen} />}
    </DrawingFrame>
  )
}

function drawingOf(view: View, worked: WorkedOut, findings: readonly Finding[]): Drawing {
  switch (view) {
    case 'plan':
      return planView(worked, findings)
    case 'front':
      return frontView(worked, worked.layout, findings)
    case 'section':
      return sectionView(worked, worked.layout)
    default:
      return view satisfies never
  }
}
