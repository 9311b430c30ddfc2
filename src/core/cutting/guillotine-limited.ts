import {
  guillotineTable,
  type CutTree,
  type GuillotineTable,
  type Lying,
  placeOf,
  type SheetItem,
  waysToLie,
} from './guillotine-table.ts'
import { LeastFirst } from './heap.ts'
import { at, type Vector } from './vector.ts'

/** The most valuable way found to cut one sheet, and how sure that is. */
export interface RichestSheet {
  readonly value: number
  /** No way is worth more; equal to `value` when proven. */
  readonly bound: number
  readonly tree: CutTree
  /** Copies of each item. */
  readonly counts: readonly number[]
}

/** A block of items put together, and how. */
export interface Block {
  readonly length: number
  readonly width: number
  readonly value: number
  readonly counts: Vector
  readonly tree: CutTree
}

/**
 * The most value that guillotine cuts of any number of stages get from one sheet, no item more often than it is wanted.
 *
 * Blocks are put side by side or one above the other, the most promising first; a block promises its own value and the
 * most the rest of the sheet could add if no item ran out (K. V. Viswanathan and A. Bagchi, Best-first search methods for
 * constrained two-dimensional cutting stock problems, Operations Research 41, 1993). `budget` counts pairs tried.
 */
export function richestSheet(
  length: number,
  width: number,
  items: readonly SheetItem[],
  budget: number,
): RichestSheet | undefined {
  const wanted = items.map((item) => ({ ...item, most: item.most ?? Infinity }))
  const usable = wanted.map((item) => (item.most > 0 ? item : { ...item, length: Infinity, width: Infinity }))
  const table = guillotineTable(length, width, usable)
  if (table === undefined) return undefined
  const rest = worthOfTheRest(length, width, table)
  const n = items.length

  const free = table.tree(table.lengths.length - 1, table.widths.length - 1)
  const counts = new Float64Array(n)
  const clipped = withinCounts(free, wanted, counts)
  let best: Block = { length, width, value: valueOf(counts, items), counts, tree: clipped }
  const upper = table.most(table.lengths.length - 1, table.widths.length - 1)
  if (best.value >= upper) return asResult(best, upper)

  const open: Block[] = []
  const queue = new LeastFirst()
  const known = new Map<string, Block[]>()
  const offer = (block: Block): void => {
    const promise = block.value + rest(block.length, block.width)
    if (block.value > best.value) best = block
    if (promise <= best.value + 1e-9) return
    const key = block.counts.join(',')
    const same = known.get(key)
    if (same === undefined) known.set(key, [block])
    else {
      if (same.some((b) => b.length <= block.length && b.width <= block.width)) return
      same.push(block)
    }
    queue.push(-promise, open.length)
    open.push(block)
  }
  for (const way of waysToLie(usable)) if (way.length <= length && way.width <= width) offer(singleBlock(way, n))

  const closed: Block[] = []
  let pairs = 0
  while (queue.length > 0) {
    const promise = -queue.least
    if (promise <= best.value + 1e-9) break
    if (pairs > budget) return asResult(best, promise)
    const block = open[queue.pop()] as Block
    closed.push(block)
    for (const other of closed) {
      pairs++
      const both = sumWithin(block.counts, other.counts, wanted)
      if (both === undefined) continue
      const value = block.value + other.value
      if (block.length + other.length <= length) {
        offer({
          length: block.length + other.length,
          width: Math.max(block.width, other.width),
          value,
          counts: both,
          tree: { kind: 'split', across: 'length', first: block.tree, second: other.tree },
        })
      }
      if (block.width + other.width <= width) {
        offer({
          length: Math.max(block.length, other.length),
          width: block.width + other.width,
          value,
          counts: both,
          tree: { kind: 'split', across: 'width', first: block.tree, second: other.tree },
        })
      }
    }
  }
  return asResult(best, best.value)
}

const asResult = (block: Block, bound: number): RichestSheet => ({
  value: block.value,
  bound: Math.max(bound, block.value),
  tree: block.tree,
  counts: [...block.counts],
})

/** A block of one piece, lying one way, among n kinds of piece. */
export function singleBlock(way: Lying, n: number): Block {
  const counts = new Float64Array(n)
  counts[way.item] = 1
  const tree: CutTree = { kind: 'item', item: way.item, turned: way.turned }
  return { length: way.length, width: way.width, value: way.value, counts, tree }
}

/** How many of each kind two blocks hold together; nothing where that is more than is wanted of some kind. */
export function sumWithin(a: Vector, b: Vector, items: readonly { readonly most: number }[]): Vector | undefined {
  for (let i = 0; i < a.length; i++) if (at(a, i) + at(b, i) > (items[i]?.most ?? 0)) return undefined
  return a.map((v, i) => v + at(b, i))
}

const valueOf = (counts: Vector, items: readonly SheetItem[]): number =>
  items.reduce((sum, item, i) => sum + at(counts, i) * item.value, 0)

/** The same cuts with every copy beyond the number wanted left uncut; counts those that stay. */
export function withinCounts(tree: CutTree, items: readonly { readonly most?: number }[], counts: Vector): CutTree {
  if (tree.kind === 'nothing') return tree
  if (tree.kind === 'item') {
    if (at(counts, tree.item) >= (items[tree.item]?.most ?? Infinity)) return { kind: 'nothing' }
    counts[tree.item] = at(counts, tree.item) + 1
    return tree
  }
  const first = withinCounts(tree.first, items, counts)
  const second = withinCounts(tree.second, items, counts)
  return { ...tree, first, second }
}

/** The most that can be added around a block of each size in a corner of the sheet, if no item runs out. */
function worthOfTheRest(length: number, width: number, table: GuillotineTable): (x: number, y: number) => number {
  const { lengths, widths, most } = table
  const across = widths.length
  const rest = new Float64Array(lengths.length * across)
  for (let i = lengths.length - 1; i >= 0; i--) {
    for (let j = across - 1; j >= 0; j--) {
      const x = at(lengths, i)
      const y = at(widths, j)
      let best = 0
      for (let p = 1; p < lengths.length && x + at(lengths, p) <= length; p++) {
        const sum = most(p, j) + at(rest, placeOf(lengths, x + at(lengths, p)) * across + j)
        if (sum > best) best = sum
      }
      for (let p = 1; p < across && y + at(widths, p) <= width; p++) {
        const sum = most(i, p) + at(rest, i * across + placeOf(widths, y + at(widths, p)))
        if (sum > best) best = sum
      }
      rest[i * across + j] = best
    }
  }
  return (x, y) => at(rest, placeOf(lengths, x) * across + placeOf(widths, y))
}
