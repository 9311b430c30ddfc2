import type { CutPattern } from '../../cutting/length-job.ts'
import { rectangle, type Drawing, type Shape } from './drawing.ts'

/** A board is drawn this many times wider than it is, or nobody could write on it. */
const BOARD_SHARE = 0.075
/** Pieces of one strip of a roll on one drawing: more would leave no room for the marks. */
const MOST_ON_STRIP = 6

/** One way to cut a board: its pieces with their lengths, what is left over, and where to mark in one pull of the tape from the hooked end. */
export function boardView(pattern: CutPattern): Drawing {
  const { stockLengthM, times, pieces, marksM, offcutM } = pattern
  return {
    ...strip(pattern, { from: 0, to: pieces.length }, [
      { kind: 'running', side: 'bottom', lane: 0, marksM: [0, ...marksM, stockLengthM] },
      title('drawing.boards', times, stockLengthM, stockLengthM / 2),
    ]),
    label: {
      key: 'drawing.board-label',
      args: {
        times,
        length: { lengthM: stockLengthM },
        pieces: pieces.length,
        offcut: { lengthM: offcutM },
      },
    },
  }
}

/** A roll laid out: its sections in the order in which they are cut, marked from the roll's own end; a long roll goes over several drawings. */
export function rollViews(pattern: CutPattern): readonly Drawing[] {
  const { stockLengthM, times, pieces, marksM, offcutM } = pattern
  const starts = pieces.flatMap((_, index) => (index % MOST_ON_STRIP === 0 ? [index] : []))
  return starts.map((from) => {
    const to = Math.min(from + MOST_ON_STRIP, pieces.length)
    const isLast = to === pieces.length
    const fromM = from === 0 ? 0 : (marksM[from - 1] ?? 0)
    const toM = isLast ? stockLengthM : (marksM[to - 1] ?? stockLengthM)
    const marks = [fromM, ...marksM.slice(from, isLast ? undefined : to - 1), toM]
    return {
      ...strip(pattern, { from, to }, [
        { kind: 'running', side: 'bottom', lane: 0, marksM: [...new Set(marks)] },
        title('drawing.rolls', times, stockLengthM, (fromM + toM) / 2),
      ]),
      label: {
        key: 'drawing.roll-label',
        args: {
          times,
          length: { lengthM: stockLengthM },
          pieces: to - from,
          from: { lengthM: fromM },
          offcut: { lengthM: isLast ? offcutM : 0 },
        },
      },
    }
  })
}

const title = (key: string, times: number, lengthM: number, atM: number): Shape => ({
  kind: 'words',
  at: [atM, 0],
  key,
  args: { times, length: { lengthM, alone: true } },
  lane: { side: 'top', lane: 0 },
})

/** Some pieces of a strip, one after the other where they lie, and after the last one what is left over. */
function strip(
  { stockLengthM, pieces, marksM, offcutM, kerfM }: CutPattern,
  { from, to }: { readonly from: number; readonly to: number },
  more: readonly Shape[],
): Omit<Drawing, 'label'> {
  const sawM = marksM.length > 0 ? kerfM / marksM.length : 0
  const ends = pieces.map(({ lengthM }, index) => {
    const before = pieces.slice(0, index).reduce((sum, piece) => sum + piece.lengthM + sawM, 0)
    return { x0M: before, lengthM }
  })
  const shown = ends.slice(from, to)
  const x0M = shown[0]?.x0M ?? 0
  const isLast = to === pieces.length
  const x1M = isLast ? stockLengthM : (ends[to]?.x0M ?? stockLengthM)
  const highM = BOARD_SHARE * (x1M - x0M)
  const shapes: Shape[] = shown.flatMap(({ x0M: atM, lengthM }): Shape[] => [
    { kind: 'area', ink: 'unit', rings: [rectangle(atM, 0, atM + lengthM, highM)] },
    { kind: 'text', at: [atM + lengthM / 2, highM / 2], text: { lengthM }, roomM: lengthM },
  ])
  if (isLast && offcutM > 0)
    shapes.push(
      { kind: 'area', ink: 'offcut', rings: [rectangle(stockLengthM - offcutM, 0, stockLengthM, highM)] },
      { kind: 'text', at: [stockLengthM - offcutM / 2, highM / 2], text: { lengthM: offcutM }, roomM: offcutM },
    )
  return { box: { x0M, x1M, y0M: 0, y1M: highM }, shapes: [...shapes, ...more] }
}
