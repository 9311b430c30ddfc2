import { useMemo } from 'react'
import { boardView, rollViews } from '../../core/documents/drawings/cutting-view.ts'
import { sheetView } from '../../core/documents/drawings/sheet-view.ts'
import type { CutPattern } from '../../core/cutting/length-job.ts'
import type { CutSheet } from '../../core/cutting/sheet-job.ts'
import { FramedDrawing } from './FramedDrawing.tsx'

/** One way to cut a board or bar, with its marks in running measure. */
export function BoardDrawing({ pattern }: { readonly pattern: CutPattern }) {
  return <FramedDrawing drawing={useMemo(() => boardView(pattern), [pattern])} />
}

/** One way to cut a sheet or a roll from edge to edge. */
export function SheetDrawing({ sheet }: { readonly sheet: CutSheet }) {
  return <FramedDrawing drawing={useMemo(() => sheetView(sheet), [sheet])} />
}

/** A roll laid out in running measure; a long one over several drawings. */
export function RollDrawing({ pattern }: { readonly pattern: CutPattern }) {
  const drawings = useMemo(() => rollViews(pattern), [pattern])
  return drawings.map((drawing, index) => <FramedDrawing key={index} drawing={drawing} />)
}
