import { useMemo } from 'react'
import { ringsOf, withoutFigures } from '../../../core/documents/drawings/shown-view.ts'
import type { Drawing, Ink } from '../../../core/documents/drawings/drawing.ts'
import { DrawingSheet } from '../../drawings/DrawingSheet.tsx'
import { useWriting } from '../../drawings/use-writing.ts'

/** A drawing to look at and not to measure: no figures, and what is meant outlined. */
export function ShownDrawing({
  drawing,
  ink,
  nth,
}: {
  readonly drawing: Drawing
  readonly ink?: Ink | undefined
  /** Of all that is drawn in the ink this one alone, counted from the end where it is less than nothing. */
  readonly nth?: number | undefined
}) {
  const { spoken } = useWriting()
  const bare = useMemo(() => withoutFigures(drawing), [drawing])
  const rings = ink === undefined ? [] : ringsOf(bare, ink)
  return (
    <DrawingSheet
      drawing={bare}
      writing={spoken}
      mostHighU={190}
      {...(ink !== undefined && { chosen: nth === undefined ? rings : rings.slice(nth).slice(0, 1) })}
    />
  )
}
