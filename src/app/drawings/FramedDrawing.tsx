import type { Drawing } from '../../core/documents/drawings/drawing.ts'
import { DrawingFrame } from '../parts/DrawingFrame.tsx'
import { DrawingSheet } from './DrawingSheet.tsx'
import { useWriting } from './use-writing.ts'

/** Any drawing in its frame, in the reader's units; `taped` lengths in metres. */
export function FramedDrawing({
  drawing,
  taped = false,
  mostHighU,
}: {
  readonly drawing: Drawing
  readonly taped?: boolean
  readonly mostHighU?: number
}) {
  const { writing, spoken, unit } = useWriting(taped)
  return (
    <DrawingFrame {...(unit !== undefined && { unit })}>
      <DrawingSheet
        drawing={drawing}
        writing={writing}
        spoken={spoken}
        {...(mostHighU !== undefined && { mostHighU })}
      />
    </DrawingFrame>
  )
}
