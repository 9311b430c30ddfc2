import { wholeDown } from '../basics/count.ts'
import { FIT_TICKS } from './ticks.ts'
import { ColumnList, type Columns, takeColumn } from './columns.ts'
import { fullPatterns } from './full-patterns.ts'
import { filledUp, richestFilling, startingFillings } from './generated-patterns.ts'
import { linearBound } from './linear-bound.ts'
import { at, vectorOf, type Vector } from './vector.ts'

/** A stock as the search sees it: room and price in whole numbers. */
export interface Bar {
  readonly stock: number
  /** Length plus one kerf, in ticks: with pieces also taken with a kerf each, n pieces need n − 1 cuts between them. */
  readonly room: number
  readonly cost: number
  /** How many exist; undefined for what the market always has. */
  readonly available: number | undefined
  /** A bar that holds no more than this is never the cheapest for the pieces: another holds them for less. */
  readonly pointlessUpTo: number
  /** Row of a limited stock in the covering. */
  readonly row: number | undefined
}

/** One way to fill a bar, `times` over: counts by piece length. */
export interface Filling {
  readonly bar: Bar
  readonly piece: Vector
  readonly times: number
}

/** The stocks worth looking at, cheapest first: a shorter one that costs as much as a longer is left out. */
export function usefulBars(
  stocks: readonly { stock: number; room: number; cost: number; available: number | undefined }[],
  smallest: number,
  pieceRows: number,
): Bar[] {
  const open = stocks.filter((s) => s.available === undefined && s.room + FIT_TICKS >= smallest)
  open.sort((a, b) => a.cost - b.cost || b.room - a.room || a.stock - b.stock)
  const bars: Bar[] = []
  let reach = 0
  for (const s of open) {
    if (s.room <= reach) continue
    bars.push({ ...s, pointlessUpTo: reach, row: undefined })
    reach = s.room
  }
  const limited = stocks.filter((s) => s.available !== undefined && s.available > 0 && s.room + FIT_TICKS >= smallest)
  limited.sort(
    (a, b) => a.cost - b.cost || b.room - a.room || (b.available ?? 0) - (a.available ?? 0) || a.stock - b.stock,
  )
  let row = pieceRows
  for (const s of limited) {
    const cheaper = bars.filter((b) => b.row === undefined && b.cost <= s.cost).map((b) => b.room)
    const pointlessUpTo = Math.max(0, ...cheaper)
    if (pointlessUpTo < s.room) bars.push({ ...s, pointlessUpTo, row: row++ })
  }
  return bars
}

/** Length taken by a filling, a kerf a piece, in ticks. */
export function sizeOf(piece: Vector, size: Vector): number {
  let sum = 0
  for (let i = 0; i < size.length; i++) sum += at(piece, i) * at(size, i)
  return sum
}

export interface BarColumns {
  readonly columns: Columns
  readonly need: Vector
  readonly size: Vector
  /** Filling of each column after the "left out" ones. */
  readonly fillings: readonly { readonly bar: Bar; readonly piece: Vector }[]
  /** Whether these are all columns a cheapest plan can need; if not, only `linear` bounds the cost. */
  readonly complete: boolean
  readonly linear?: number
}

/** Full patterns beyond which the list is not written out but grown as the linear plan asks for them. */
const MOST_PATTERNS = 8_000

/** All columns that a cheapest plan can need: the full patterns of each bar that no cheaper bar holds. */
export function barColumns(bars: readonly Bar[], size: Vector, count: Vector): BarColumns {
  const fillings: { bar: Bar; piece: Vector }[] = []
  for (const bar of bars) {
    const patterns = fullPatterns(bar.room + FIT_TICKS, size, count, MOST_PATTERNS - fillings.length)
    if (patterns === undefined) return grownColumns(bars, size, count)
    for (const piece of patterns) {
      if (sizeOf(piece, size) > bar.pointlessUpTo + FIT_TICKS) fillings.push({ bar, piece })
    }
  }
  return { ...asColumns(bars, fillings, size, count), complete: true }
}

/** Rounds of growing; what a further one might save then comes off the bound. */
const MOST_ROUNDS = 60

/**
 * The columns a linear plan asks for, one bar and round at a time, until no filling would better it. If that is cut short,
 * worths made small enough for every filling still bound the cost (A. A. Farley, A note on bounding a class of linear
 * programming problems, Operations Research 38, 1990).
 */
function grownColumns(bars: readonly Bar[], size: Vector, count: Vector): BarColumns {
  const fillings = startingFillings(bars, size, count, FIT_TICKS)
  let exact = true
  for (let round = 1; ; round++) {
    const grown = asColumns(bars, fillings, size, count)
    const { worth, value } = linearBound(grown.columns, grown.need)
    const before = fillings.length
    let share = 1
    for (const bar of bars) {
      const price = bar.cost + (bar.row === undefined ? 0 : at(worth, bar.row))
      const richest = richestFilling(bar.room + FIT_TICKS, size, count, worth)
      if (!richest.exact) exact = false
      if (richest.worth <= price + 1e-7 + 1e-9 * price) continue
      share = Math.min(share, bar.cost / (richest.worth - price + bar.cost))
      const piece = filledUp(richest.piece, bar.room + FIT_TICKS, size, count)
      fillings.push({ bar, piece })
    }
    if (fillings.length > before && round < MOST_ROUNDS) continue
    const linear = Math.max(exact ? share * value : 0, leastByLength(bars, size, count))
    const rest = restOfWholePart(grown, count)
    if (rest !== undefined) fillings.push(...grownColumns(bars, size, rest).fillings)
    return { ...asColumns(bars, fillings, size, count), complete: false, linear }
  }
}

/** What the whole part of the linear plan leaves to cut; undefined if it takes nothing off. */
function restOfWholePart(grown: Pick<BarColumns, 'columns' | 'need'>, count: Vector): Vector | undefined {
  const { columns, need } = grown
  const { basis, amounts } = linearBound(columns, need)
  const rest = need.slice()
  for (let i = 0; i < columns.rows; i++) {
    if (at(basis, i) >= 0) takeColumn(columns, at(basis, i), wholeDown(at(amounts, i)), rest)
  }
  const pieces = count.map((_, i) => Math.max(0, at(rest, i)))
  const isLess = pieces.some((v, i) => v < at(count, i))
  return isLess && pieces.some((v) => v > 0) ? pieces : undefined
}

/** The cost of the bare length of the pieces in the bar that is cheapest by length: a bound without any search. */
function leastByLength(bars: readonly Bar[], size: Vector, count: Vector): number {
  const rate = Math.min(...bars.map((b) => b.cost / b.room))
  return sizeOf(count, size) * rate
}

/** A covering problem of these fillings. Leaving a piece out costs more than any plan that cuts it. */
export function asColumns(
  bars: readonly Bar[],
  fillings: readonly { readonly bar: Bar; readonly piece: Vector }[],
  size: Vector,
  count: Vector,
): Omit<BarColumns, 'complete' | 'linear'> {
  const n = size.length
  const dearest = Math.max(...bars.map((b) => b.cost)) || 1
  const inMarket = new Float64Array(n)
  let mostPieces = 0
  for (const { bar, piece } of fillings) {
    for (let i = 0; i < n; i++) if (bar.row === undefined && at(piece, i) > 0) inMarket[i] = 1
    mostPieces = Math.max(
      mostPieces,
      piece.reduce((sum, v) => sum + v, 0),
    )
  }
  const leftOut = Array.from(inMarket, (yes) => dearest * (yes === 1 ? 2 : 4 * (mostPieces + 1)))
  const limited = bars.filter((b) => b.row !== undefined)
  const list = new ColumnList(n, n + limited.length, leftOut)
  for (const { bar, piece } of fillings) {
    list.add(piece, bar.cost, ...(bar.row === undefined ? [] : [[bar.row, -1] as const]))
  }
  const need = vectorOf([...count, ...limited.map((b) => -(b.available ?? 0))])
  return { columns: list.columns(), need, size, fillings }
}
