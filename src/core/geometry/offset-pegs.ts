import { counted, derive, type Derived } from '../basics/derived.ts'
import type { KilnGeometry } from './kiln.ts'

/** Room between trench edge and pegs or boards, m: the soil heap and the digger stand there. */
export const CLEAR_OF_DIG_M = 1

/** A peg outside the dig that keeps the line of an outside face: two of them hold one string. */
export interface OffsetPeg {
  /** Corner it serves and the line it keeps: `A-front` stands left of A on the front line. */
  readonly id: string
  readonly corner: 'A' | 'B' | 'C' | 'D'
  readonly line: 'front' | 'right' | 'back' | 'left'
  readonly xM: number
  readonly yM: number
}

/** The eight pegs, two for each outside face, clear of the dig, m from corner A. */
export function offsetPegs({ outside, footing }: Pick<KilnGeometry, 'outside' | 'footing'>): OffsetPeg[] {
  const out = footing.projection.value + CLEAR_OF_DIG_M
  const { x1M: L, y1M: D } = outside
  const peg = (corner: OffsetPeg['corner'], line: OffsetPeg['line'], xM: number, yM: number): OffsetPeg => ({
    id: `${corner}-${line}`,
    corner,
    line,
    xM,
    yM,
  })
  return [
    peg('A', 'front', -out, 0),
    peg('B', 'front', L + out, 0),
    peg('B', 'right', L, -out),
    peg('C', 'right', L, D + out),
    peg('C', 'back', L + out, D),
    peg('D', 'back', -out, D),
    peg('D', 'left', 0, D + out),
    peg('A', 'left', 0, -out),
  ]
}

/** Nails along one profile board, from the outside face of its wall: trench edge, outside face, inside face, other trench edge. */
export interface BoardMark {
  readonly kind: 'trench-outside' | 'outside' | 'inside' | 'trench-inside'
  /** From the outside face, positive toward the middle of the kiln. */
  readonly at: Derived<'m'>
}

/** The same four marks serve every board. A pad has no inner trench edge. */
export function boardMarks({ wall: t, footing }: Pick<KilnGeometry, 'wall' | 'footing'>): BoardMark[] {
  const p = footing.projection
  const marks: BoardMark[] = [
    { kind: 'trench-outside', at: derive('board-trench-outside', 'm', '−p', { p }, (v) => -v.p) },
    { kind: 'outside', at: counted('board-outside', 'm', 0) },
    { kind: 'inside', at: derive('board-inside', 'm', 't', { t }, (v) => v.t) },
  ]
  if (footing.kind === 'strip')
    marks.push({ kind: 'trench-inside', at: derive('board-trench-inside', 'm', 't + p', { t, p }, (v) => v.t + v.p) })
  return marks
}
