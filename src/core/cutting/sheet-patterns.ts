import { asColumns, type Bar, type BarColumns } from './bars.ts'
import { allFullSheets } from './guillotine-all.ts'
import { richestSheet } from './guillotine-limited.ts'
import { type CutTree, type SheetItem } from './guillotine-table.ts'
import { linearBound, lossOf } from './linear-bound.ts'
import { takeColumn } from './columns.ts'
import { wholeDown } from '../basics/count.ts'
import { at, vectorOf, type Vector } from './vector.ts'

/** A sheet to cut from; sizes in ticks with a kerf added to both sides, as for the items. */
export interface SheetBar extends Bar {
  readonly length: number
  readonly width: number
}

export interface SheetFilling {
  readonly bar: SheetBar
  readonly piece: Vector
  readonly tree: CutTree
}

/** Pairs of blocks tried for one sheet, and for the list of all full sheets. */
const PAIRS = 4_000
const PAIRS_FOR_ALL = 60_000
const MOST_FULL_SHEETS = 4_000
const MOST_ROUNDS = 25

/**
 * Ways to cut up the sheets, grown as the linear plan asks for them, and the bound of that plan: no way of guillotine
 * cutting is worth more than the worths allow, so they bound the cost (Gilmore and Gomory, as for bars; shortened for
 * ways not found, as Farley).
 */
export function sheetColumns(
  bars: readonly SheetBar[],
  items: readonly SheetItem[],
  area: Vector,
): Omit<BarColumns, 'fillings'> & { readonly fillings: readonly SheetFilling[] } {
  const count = vectorOf(items.map((i) => i.most ?? 0))
  const whole = completeColumns(bars, items, area, count)
  if (whole !== undefined) return whole
  const fillings: SheetFilling[] = []
  const add = (bar: SheetBar, valued: readonly SheetItem[]): number => {
    const found = richestSheet(bar.length, bar.width, valued, PAIRS)
    if (found === undefined) return Infinity
    if (found.counts.some((n) => n > 0)) fillings.push({ bar, piece: vectorOf(found.counts), tree: found.tree })
    return found.bound
  }
  for (const bar of bars) {
    for (let i = 0; i < items.length; i++)
      add(
        bar,
        items.map((item, k) => ({ ...item, value: 1, most: k === i ? (item.most ?? 0) : 0 })),
      )
  }
  oneAfterAnother(bars, items, area, count, add, fillings)

  let bound = 0
  for (let round = 1; round <= MOST_ROUNDS; round++) {
    const { columns, need } = asColumns(bars, fillings, area, count)
    const linear = linearBound(columns, need)
    if (round === 1) {
      const rest = need.slice()
      for (let i = 0; i < columns.rows; i++) {
        const id = at(linear.basis, i)
        if (id >= 0) takeColumn(columns, id, wholeDown(at(linear.amounts, i)), rest)
      }
      oneAfterAnother(
        bars,
        items,
        area,
        count.map((_, i) => Math.max(0, at(rest, i))),
        add,
        fillings,
      )
    }
    let share = 1
    let better = false
    for (const bar of bars) {
      const before = fillings.length
      const most = add(
        bar,
        items.map((item, i) => ({ ...item, value: at(linear.worth, i) })),
      )
      const limit = bar.row === undefined ? 0 : at(linear.worth, bar.row)
      if (most > bar.cost + limit) share = Math.min(share, bar.cost / (most - limit))
      const added = fillings[before]
      if (added === undefined) continue
      const one = asColumns(bars, [added], area, count)
      if (lossOf(one.columns, items.length, linear.worth) < -1e-7 * (1 + bar.cost)) better = true
      else fillings.pop()
    }
    bound = Math.max(bound, linear.value * share)
    if (!better) break
  }
  return { ...asColumns(bars, fillings, area, count), fillings, complete: false, linear: bound }
}

/** Fills sheet after sheet with the most area of what is left, from the sheet that costs least for it. */
function oneAfterAnother(
  bars: readonly SheetBar[],
  items: readonly SheetItem[],
  area: Vector,
  count: Vector,
  add: (bar: SheetBar, valued: readonly SheetItem[]) => number,
  fillings: SheetFilling[],
): void {
  const left = count.slice()
  const stock = bars.map((b) => b.available ?? Infinity)
  while (left.some((n) => n > 0)) {
    const before = fillings.length
    const valued = items.map((item, i) => ({ ...item, value: at(area, i), most: at(left, i) }))
    bars.forEach((bar, b) => {
      if ((stock[b] ?? 0) > 0) add(bar, valued)
    })
    let pick: SheetFilling | undefined
    let least = Infinity
    for (const f of fillings.slice(before)) {
      const held = f.piece.reduce((sum, n, i) => sum + n * at(area, i), 0)
      const rate = (f.bar.cost + 1e-9 * f.bar.room) / held
      if (rate < least) {
        least = rate
        pick = f
      }
    }
    if (pick === undefined) return
    let times = Infinity
    for (let i = 0; i < left.length; i++) {
      const n = at(pick.piece, i)
      if (n > 0) times = Math.min(times, wholeDown(at(left, i) / n))
    }
    const b = bars.indexOf(pick.bar)
    times = Math.min(times, stock[b] ?? 0)
    stock[b] = (stock[b] ?? 0) - times
    for (let i = 0; i < left.length; i++) left[i] = at(left, i) - times * at(pick.piece, i)
  }
}

/** All full sheets of every kind, if they are few enough to list: then the cheapest plan is among them. */
function completeColumns(
  bars: readonly SheetBar[],
  items: readonly SheetItem[],
  area: Vector,
  count: Vector,
): ReturnType<typeof sheetColumns> | undefined {
  const wanted = items.map((item) => ({ ...item, most: item.most ?? 0 }))
  const fillings: SheetFilling[] = []
  for (const bar of bars) {
    const blocks = allFullSheets(bar.length, bar.width, wanted, PAIRS_FOR_ALL)
    if (blocks === undefined) return undefined
    for (const { counts, tree } of blocks) fillings.push({ bar, piece: counts, tree })
    if (fillings.length > MOST_FULL_SHEETS) return undefined
  }
  return { ...asColumns(bars, fillings, area, count), fillings, complete: true }
}
