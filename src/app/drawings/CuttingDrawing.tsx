import { useMemo } from 'react'
import { boardView } from '../../core/documents/drawings/cutting-view.ts'
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
