import { useMemo } from 'react'
import { showLength } from '../words/length.ts'
import { showNumber } from '../words/locale.ts'
import type { Words } from '../words/words.ts'
import { useWords } from '../words/use-words.tsx'
import type { Writing } from './writing.ts'

/** The unit that stands once in the corner of a drawing; none in feet and inches, where each figure has its own. */
export const drawingUnit = ({ show }: Words): string | undefined => (show.length === 'ft-in' ? undefined : show.length)

/** Half millimetres stand in sizes of bricks; finer parts are nobody's business on a site. */
const isHalf = (mm: number): boolean =>
  Math.abs(mm - Math.round(mm)) > 0.49 && Math.abs(2 * mm - Math.round(2 * mm)) < 1e-3

/** Figures on drawings stand bare and ungrouped, all in the one unit of the corner. */
function figure(lengthM: number, { show }: Words): string {
  switch (show.length) {
    case 'mm':
      return isHalf(lengthM * 1000) ? showNumber(lengthM * 1000, 1) : String(Math.round(lengthM * 1000))
    case 'cm':
      return showNumber(lengthM * 100, 1)
    case 'm':
      return showNumber(lengthM, 3, 2)
    case 'ft-in':
      return showLength(lengthM, show).figure
    default:
      return show.length satisfies never
  }
}

export function useWriting(): {
  readonly writing: Writing
  readonly spoken: Writing
  readonly unit: string | undefined
} {
  const words = useWords()
  return useMemo(() => {
    const writing = { figure: (lengthM: number) => figure(lengthM, words), say: words.named }
    return { writing, spoken: { ...writing, figure: words.length }, unit: drawingUnit(words) }
  }, [words])
}
