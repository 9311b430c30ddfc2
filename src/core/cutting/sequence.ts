import { type Filling } from './bars.ts'
import { at } from './vector.ts'

/** Fillings in cutting order, each with its piece lengths in cutting order, and the saw-stop settings that takes. */
export interface Sequence {
  readonly steps: readonly { readonly filling: Filling; readonly order: readonly number[] }[]
  readonly setUps: number
}

/**
 * Sets an order that keeps the saw stop where it is as often as a next-best choice can: all bars of a pattern are cut
 * together, one length after the other, and the next pattern begins with the length the last one ended on if it has it.
 */
export function inSequence(fillings: readonly Filling[]): Sequence {
  const waiting = [...fillings].sort(longestFirst)
  const steps: { filling: Filling; order: number[] }[] = []
  let setUps = 0
  let entry: number | undefined
  while (waiting.length > 0) {
    const found = entry === undefined ? 0 : waiting.findIndex((f) => at(f.piece, entry as number) > 0)
    const [filling] = waiting.splice(found < 0 ? 0 : found, 1)
    if (filling === undefined) break
    const lengths = lengthsOf(filling)
    const first: number | undefined = found < 0 ? undefined : entry
    const inner = lengths.filter((i) => i !== first)
    const exit = inner.length === 0 ? first : inner.find((i) => waiting.some((f) => at(f.piece, i) > 0))
    const order = [
      ...(first === undefined ? [] : [first]),
      ...inner.filter((i) => i !== exit),
      ...(exit === undefined || exit === first ? [] : [exit]),
    ]
    steps.push({ filling, order })
    setUps += order.length - (first === undefined ? 0 : 1)
    entry = exit
  }
  return { steps, setUps }
}

/** Piece lengths in a filling, longest first. */
function lengthsOf(filling: Filling): number[] {
  const found: number[] = []
  for (let i = 0; i < filling.piece.length; i++) if (at(filling.piece, i) > 0) found.push(i)
  return found
}

/** Fillings by their longest pieces, then by stock. */
function longestFirst(a: Filling, b: Filling): number {
  for (let i = 0; i < a.piece.length; i++) {
    const difference = at(b.piece, i) - at(a.piece, i)
    if (difference !== 0) return difference
  }
  return b.bar.room - a.bar.room || a.bar.cost - b.bar.cost || a.bar.stock - b.bar.stock
}
