import { lotsFor } from '../basics/count.ts'

/** One way of cutting a bought unit and how many units are cut so; lengths in micrometres, longest first. */
export interface Pairing {
  readonly patterns: readonly { readonly pieces: readonly number[]; readonly units: number }[]
  readonly units: number
  /** No pairing can need fewer: the pieces and their cuts end to end. */
  readonly bound: number
}

/** The pieces, each no longer than the first, that fill a length best; each costs its length and one cut. */
function bestBeside(room: number, sizes: readonly number[], left: ReadonlyMap<number, number>, loss: number): number[] {
  let best: number[] = []
  let bestRoom = room
  const chosen: number[] = []
  const walk = (from: number, free: number): void => {
    if (free < bestRoom) {
      best = [...chosen]
      bestRoom = free
    }
    for (let i = from; i < sizes.length; i++) {
      const size = sizes[i] ?? 0
      const used = chosen.filter((c) => c === size).length
      if (size + loss > free || used >= (left.get(size) ?? 0)) continue
      chosen.push(size)
      walk(i, free - size - loss)
      chosen.pop()
    }
  }
  walk(0, room)
  return best
}

/**
 * Cuts pieces from whole units so that offcuts are used: a unit of length ℓ holds pieces as long as
 * Σ (piece + loss) ≤ ℓ + loss. The longest piece is taken first and the rest of its unit filled as fully as it can be.
 */
export function pairCuts(pieces: ReadonlyMap<number, number>, unit: number, loss: number): Pairing {
  const left = new Map(pieces)
  const sizes = [...pieces.keys()].sort((a, b) => b - a)
  const patterns: { pieces: readonly number[]; units: number }[] = []
  let units = 0
  let length = 0
  for (const [size, count] of pieces) length += count * (size + loss)
  for (const size of sizes) {
    while ((left.get(size) ?? 0) > 0) {
      left.set(size, (left.get(size) ?? 0) - 1)
      const beside = bestBeside(unit - size, sizes, left, loss)
      const pattern = [size, ...beside]
      let times = Infinity
      for (const one of new Set(pattern)) {
        const each = pattern.filter((p) => p === one).length
        const have = (left.get(one) ?? 0) + (one === size ? 1 : 0)
        times = Math.min(times, Math.trunc(have / each))
      }
      for (const one of pattern) left.set(one, (left.get(one) ?? 0) - times)
      left.set(size, (left.get(size) ?? 0) + 1)
      units += times
      patterns.push({ pieces: pattern, units: times })
    }
  }
  return { patterns, units, bound: lotsFor(length, unit + loss) }
}
