import type { Drawing } from '../../../core/documents/drawings/drawing.ts'
import { DrawingSheet } from '../../drawings/DrawingSheet.tsx'
import { useWriting } from '../../drawings/use-writing.ts'

/** A drawing as it goes on paper: no frame, nothing to tap. */
export function PaperDrawing({ drawing, widthU = 320 }: { readonly drawing: Drawing; readonly widthU?: number }) {
  const { writing } = useWriting()
  return <DrawingSheet drawing={drawing} writing={writing} widthU={widthU} />
}
