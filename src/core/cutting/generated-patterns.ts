import { wholeDown } from '../basics/count.ts'
import { type Bar } from './bars.ts'
import { at, type Vector } from './vector.ts'

/** Steps of one search for the filling of most worth; beyond them the best so far is taken. */
const MOST_STEPS = 200_000

/** The filling of most worth in a room, no piece more often than asked for. */
export interface Richest {
  readonly piece: Vector
  readonly worth: number
  /** False if the search was cut short. */
  readonly exact: boolean
}

/** Bounded knapsack by depth-first search, pieces of most worth for their length first. */
export function richestFilling(room: number, size: Vector, most: Vector, worth: Vector): Richest {
  const order = Array.from(size, (_, i) => i).sort(
    (a, b) => at(worth, b) / at(size, b) - at(worth, a) / at(size, a) || a - b,
  )
  const density = order.map((i) => at(worth, i) / at(size, i))
  const piece = new Float64Array(size.length)
  let best = piece.slice()
  let bestWorth = 0
  let steps = 0
  const fill = (k: number, left: number, gained: number): void => {
    if (gained > bestWorth + 1e-12) {
      bestWorth = gained
      best = piece.slice()
    }
    const i = order[k]
    if (i === undefined || gained + left * (density[k] as number) <= bestWorth + 1e-12 || steps > MOST_STEPS) return
    const top = Math.min(at(most, i), wholeDown(left / at(size, i)))
    for (let n = top; n >= 0; n--) {
      steps++
      piece[i] = n
      fill(k + 1, left - n * at(size, i), gained + n * at(worth, i))
    }
    piece[i] = 0
  }
  fill(0, room, 0)
  return { piece: best, worth: bestWorth, exact: steps <= MOST_STEPS }
}

/** A filling with whatever else still fits, longest first. */
export function filledUp(piece: Vector, room: number, size: Vector, most: Vector): Vector {
  const full = piece.slice()
  let left = room
  for (let i = 0; i < size.length; i++) left -= at(full, i) * at(size, i)
  for (let i = 0; i < size.length; i++) {
    const more = Math.min(at(most, i) - at(full, i), wholeDown(left / at(size, i)))
    if (more <= 0) continue
    full[i] = at(full, i) + more
    left -= more * at(size, i)
  }
  return full
}

/** First fillings to start a linear plan from: each bar filled longest first, beginning with each length in turn. */
export function startingFillings(
  bars: readonly Bar[],
  size: Vector,
  most: Vector,
  slack: number,
): { bar: Bar; piece: Vector }[] {
  return bars.flatMap((bar) =>
    Array.from(size, (s, i) => {
      const room = bar.room + slack
      const piece = new Float64Array(size.length)
      piece[i] = Math.min(at(most, i), wholeDown(room / s))
      return { bar, piece: filledUp(piece, room, size, most) }
    }).filter(({ piece }) => piece.some((n) => n > 0)),
  )
}
