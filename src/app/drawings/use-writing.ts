import { useMemo } from 'react'
import { feetAndInches } from '../words/length.ts'
import { showNumber } from '../words/locale.ts'
import type { Words } from '../words/words.ts'
import { useWords } from '../words/use-words.tsx'
import type { Writing } from './writing.ts'

type LengthUnit = Words['show']['length']

/** Half millimetres stand in sizes of bricks; finer parts are nobody's business on a site. */
const isHalf = (mm: number): boolean =>
  Math.abs(mm - Math.round(mm)) > 0.49 && Math.abs(2 * mm - Math.round(2 * mm)) < 1e-3

/** Figures on drawings stand bare and ungrouped, all in the one unit of the corner. */
export function bareFigure(lengthM: number, unit: LengthUnit): string {
  switch (unit) {
    case 'mm':
      return isHalf(lengthM * 1000)
        ? `${String(Math.trunc(lengthM * 1000))}${showNumber(0.5, 1).slice(1)}`
        : String(Math.round(lengthM * 1000))
    case 'cm':
      return showNumber(lengthM * 100, 1)
    case 'm':
      return showNumber(lengthM, 3, 2)
    case 'ft-in':
      return feetAndInches(lengthM, true)
    default:
      return unit satisfies never
  }
}

/** An argument that is itself the name of a message. */
const WORD = /^wind\.[A-Z]+$/

/** How a reader's figures and words are written on drawings; `taped` lengths stand in metres wherever the reader's units are metric. */
function writingFor(words: Words, taped = false): Writing {
  const unit = taped && words.show.length !== 'ft-in' ? 'm' : words.show.length
  return {
    figure: (lengthM) => (taped && unit === 'm' ? showNumber(lengthM, 3, 3) : bareFigure(lengthM, unit)),
    alone: words.length,
    say: (key, args) =>
      words.named(
        key,
        Object.fromEntries(
          Object.entries(args ?? {}).map(([name, value]) => [
            name,
            typeof value === 'string' && WORD.test(value) ? words.named(value) : value,
          ]),
        ),
      ),
  }
}

export function useWriting(taped = false): {
  readonly writing: Writing
  readonly spoken: Writing
  /** The unit that stands once in the corner; none in feet and inches, where each figure has its own. */
  readonly unit: string | undefined
} {
  const words = useWords()
  return useMemo(() => {
    const writing = writingFor(words, taped)
    const { length } = words.show
    return {
      writing,
      spoken: { ...writing, figure: words.length },
      unit: length === 'ft-in' ? undefined : taped ? 'm' : length,
    }
  }, [words, taped])
}
