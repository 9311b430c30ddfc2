import { wholeDown } from '../basics/count.ts'
import { at, type Vector } from './vector.ts'

/**
 * Every way to fill a length with pieces so that no further piece fits: counts by piece, longest piece first.
 * A way with room to spare is never needed, because a full one covers it at the same cost.
 *
 * `size` falls and counts in ticks, kerf included; `most` limits each count. Gives up with `undefined` beyond `limit`
 * ways, because then the list is too long to search whole.
 */
export function fullPatterns(capacity: number, size: Vector, most: Vector, limit: number): Vector[] | undefined {
  const found: Vector[] = []
  const pattern = new Float64Array(size.length)
  const last = size.length - 1

  const isFull = (room: number): boolean => {
    for (let i = last; i >= 0; i--) {
      if (at(size, i) > room) return true
      if (at(pattern, i) < at(most, i)) return false
    }
    return true
  }
  const fill = (i: number, room: number): boolean => {
    const fits = wholeDown(room / at(size, i))
    const top = fits < at(most, i) ? fits : at(most, i)
    if (i === last) {
      pattern[i] = top
      if (isFull(room - top * at(size, i))) {
        if (found.length === limit) return false
        found.push(pattern.slice())
      }
      return true
    }
    for (let n = top; n >= 0; n--) {
      pattern[i] = n
      if (!fill(i + 1, room - n * at(size, i))) return false
    }
    return true
  }
  if (size.length === 0) return []
  return fill(0, capacity) ? found : undefined
}
