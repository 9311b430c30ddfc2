import { asColumns, type Bar, type BarColumns } from './bars.ts'
import { fullPatterns } from './full-patterns.ts'
import { type CutTree, guillotineTable, type GuillotineTable, type SheetItem, waysToLie } from './guillotine-table.ts'
import { withinCounts } from './guillotine-limited.ts'
import { linearBound } from './linear-bound.ts'
import { at, vectorOf, type Vector } from './vector.ts'

export interface SectionFilling {
  readonly bar: Bar
  readonly piece: Vector
  readonly tree: CutTree
}

const MOST_ROUNDS = 40
const MOST_ROWS = 3_000
/** Sections this many times the longest piece are long enough for two columns of different pieces to come out even. */
const LONG_SECTIONS = [6, 4, 2, 1]

/** Ways to cut up sections of the roll: every single row, and longer sections as the linear plan asks for them. */
export function sectionColumns(
  width: number,
  longest: number,
  items: readonly SheetItem[],
  area: Vector,
): Omit<BarColumns, 'fillings'> & { readonly fillings: readonly SectionFilling[] } {
  const count = vectorOf(items.map((i) => i.most ?? 0))
  const fillings = singleRows(width, longest, items)
  const bars = new Map<number, Bar>()
  for (const f of fillings) bars.set(f.bar.cost, f.bar)
  // Pieces of one size that lie one way: no section holds more of them than its rows do.
  const rounds = waysToLie(items).length === 1 ? 0 : MOST_ROUNDS
  for (let round = 0; round < rounds; round++) {
    const { columns, need } = asColumns([...bars.values()], fillings, area, count)
    const linear = linearBound(columns, need)
    const table = longTable(
      width,
      longest,
      items.map((item, i) => ({ ...item, value: at(linear.worth, i) })),
    )
    if (table === undefined) break
    const found = bestSection(table, items, linear.worth)
    if (found === undefined) break
    bars.set(found.bar.cost, found.bar)
    fillings.push(found)
  }
  return { ...asColumns([...bars.values()], fillings, area, count), fillings, complete: false }
}

const sectionOf = (length: number): Bar => ({
  stock: 0,
  room: length,
  cost: length,
  available: undefined,
  pointlessUpTo: 0,
  row: undefined,
})

/** Rows of pieces side by side; the longest sets the length. */
function singleRows(width: number, longest: number, items: readonly SheetItem[]): SectionFilling[] {
  const ways = waysToLie(items)
    .filter((way) => way.width <= width && way.length <= longest)
    .sort((a, b) => b.width - a.width || b.length - a.length)
  const most = vectorOf(ways.map((way) => items[way.item]?.most ?? 0))
  const rows =
    fullPatterns(width, vectorOf(ways.map((way) => way.width)), most, MOST_ROWS) ??
    ways.map((_, k) => one(k, ways.length))
  return rows.map((row) => {
    let length = 0
    let tree: CutTree = { kind: 'nothing' }
    const counts = new Float64Array(items.length)
    ways.forEach((way, k) => {
      for (let copy = 0; copy < at(row, k) && at(counts, way.item) < (items[way.item]?.most ?? 0); copy++) {
        counts[way.item] = at(counts, way.item) + 1
        length = Math.max(length, way.length)
        const item: CutTree = { kind: 'item', item: way.item, turned: way.turned }
        tree = tree.kind === 'nothing' ? item : { kind: 'split', across: 'width', first: tree, second: item }
      }
    })
    return { bar: sectionOf(length), piece: counts, tree }
  })
}

function one(k: number, n: number): Vector {
  const row = new Float64Array(n)
  row[k] = 1
  return row
}

function longTable(width: number, longest: number, items: readonly SheetItem[]): GuillotineTable | undefined {
  const side = Math.max(...items.map((i) => Math.max(i.length, i.width)))
  for (const times of LONG_SECTIONS) {
    const table = guillotineTable(Math.min(longest, times * side), width, items)
    if (table !== undefined) return table
  }
  return undefined
}

/** The section that saves most of its length against the worth of what it holds; undefined if none saves any. */
function bestSection(table: GuillotineTable, items: readonly SheetItem[], worth: Vector): SectionFilling | undefined {
  const across = table.widths.length - 1
  let best: SectionFilling | undefined
  let most = 0
  for (let i = 1; i < table.lengths.length; i++) {
    const length = at(table.lengths, i)
    if (table.most(i, across) - length <= most + 1e-6 * length) continue
    const counts = new Float64Array(items.length)
    const tree = withinCounts(table.tree(i, across), items, counts)
    let gain = -length
    for (let k = 0; k < items.length; k++) gain += at(counts, k) * at(worth, k)
    if (gain <= most + 1e-6 * length) continue
    most = gain
    best = { bar: sectionOf(length), piece: counts, tree }
  }
  return best
}
