import { ColumnList } from './columns.ts'
import { fullPatterns } from './full-patterns.ts'
import { type SheetItem, waysToLie } from './guillotine-table.ts'
import { linearBound } from './linear-bound.ts'
import { at, vectorOf } from './vector.ts'

/**
 * A length of roll that no layout of the pieces can do without, guillotine or not.
 *
 * Any line across the roll crosses pieces whose widths add up to no more than the roll's, so a layout is a share of length
 * for each choice of widths that fit side by side. A linear program picks the shares and which way each piece lies:
 * the contiguous bound of strip packing, with turning (S. Martello, M. Monaci and D. Vigo, An exact approach to the
 * strip-packing problem, INFORMS Journal on Computing 15, 2003).
 */
export function leastRollLength(width: number, items: readonly SheetItem[]): number {
  const ways = waysToLie(items).filter((way) => way.width <= width)
  const widths = [...new Set(ways.map((way) => way.width))].sort((a, b) => b - a)
  const n = items.length
  const longest = Math.max(...ways.map((way) => way.length))
  const list = new ColumnList(
    n,
    n + widths.length,
    items.map(() => 4 * longest),
  )
  const nothing = new Float64Array(n)
  for (const way of ways) {
    const one = nothing.slice()
    one[way.item] = 1
    list.add(one, 0, [n + widths.indexOf(way.width), -way.length])
  }
  const size = vectorOf(widths)
  const acrossTheRoll = fullPatterns(width, size, new Float64Array(widths.length).fill(Infinity), MOST_CHOICES)
  if (acrossTheRoll === undefined)
    return items.reduce((sum, i) => sum + (i.length * i.width * (i.most ?? 0)) / width, 0)
  for (const across of acrossTheRoll) {
    list.add(nothing, 1, ...[...across].flatMap((v, w) => (v > 0 ? [[n + w, v] as const] : [])))
  }
  const need = vectorOf([...items.map((i) => i.most ?? 0), ...widths.map(() => 0)])
  const { value, worth } = linearBound(list.columns(), need)
  return at(worth, 0) >= 0 ? value : 0
}

const MOST_CHOICES = 20_000
