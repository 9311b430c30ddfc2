import { type Bar } from './bars.ts'
import { leastCostCover } from './cover.ts'
import { cutUp } from './cut-up.ts'
import { withinCounts } from './guillotine-limited.ts'
import { type CutTree, type SheetItem } from './guillotine-table.ts'
import { checkedSheets, inSquareMillimetres, itemsOf, type PieceSize } from './sheet-checks.ts'
import { type CutSheet, type SheetJob, type SheetMethod, type SheetPlan, type SheetProblem } from './sheet-job.ts'
import { type SheetBar, sheetColumns } from './sheet-patterns.ts'
import { FIT_TICKS, toMetres } from './ticks.ts'
import { wholeDown } from '../basics/count.ts'
import { at, vectorOf, type Vector } from './vector.ts'

const DEFAULT_BUDGET = 100_000

/**
 * Cuts rectangles from sheets at the least cost, by straight cuts from edge to edge, with a bound that no such plan beats.
 * A sheet and its pieces each count with one kerf more, as for bars: n pieces across need n − 1 cuts between them.
 */
export function cutSheets(job: SheetJob): SheetPlan {
  const { sizes, sheets, kerf, measure, problems: found } = checkedSheets(job)
  const problems: SheetProblem[] = [...found]
  const items = itemsOf(sizes, kerf)
  const area = vectorOf(items.map((i) => inSquareMillimetres(i.length, i.width)))
  let row = items.length
  const bars = sheets.map((s): SheetBar => {
    const length = s.length + kerf + FIT_TICKS
    const width = s.width + kerf + FIT_TICKS
    const limited = s.available === undefined ? undefined : row++
    const base: Bar = {
      stock: s.sheet,
      room: inSquareMillimetres(length, width),
      cost: s.cost,
      available: s.available,
      pointlessUpTo: 0,
      row: limited,
    }
    return { ...base, length, width }
  })
  if (items.length === 0) return planOf(job, [], [], { cost: 0, bound: 0, method: 'nothing-to-cut' }, measure, problems)

  const covering = sheetColumns(bars, items, area)
  const cover = leastCostCover(covering, bars, job.budgetNodes ?? DEFAULT_BUDGET, [
    weighted(area, covering.columns.rows),
  ])
  let cost = cover.cost
  let bound = cover.bound
  sizes.forEach((s, i) => {
    const missing = at(cover.times, i)
    if (missing === 0) return
    problems.push({ kind: 'stock-runs-out', piece: s.copies[s.copies.length - 1]?.piece ?? 0, missing })
    cost -= missing * at(covering.columns.cost, i)
    bound -= missing * at(covering.columns.cost, i)
  })
  const chosen = covering.fillings.flatMap((f, k) => {
    const times = at(cover.times, items.length + k)
    return times > 0 ? [{ ...f, times }] : []
  })
  const label = dealer(sizes)
  const plan = withoutSpare(chosen, items)
  const cut = plan.map(({ bar, tree, times }): CutSheet => {
    const sheet = job.sheets[bar.stock]
    const length = bar.length - kerf - FIT_TICKS
    const width = bar.width - kerf - FIT_TICKS
    return {
      key: sheet?.key ?? '',
      lengthM: toMetres(length),
      widthM: toMetres(width),
      times,
      ...cutUp(tree, items, length, width, kerf, (item) => label(item, times)),
    }
  })
  return planOf(job, cut, plan, { cost, bound: Math.max(0, bound), method: cover.proof }, measure, problems)
}

const weighted = (area: Vector, rows: number): Vector => {
  const weight = new Float64Array(rows)
  area.forEach((a, i) => (weight[i] = a / at(area, 0)))
  return weight
}

/** Hands out the labels of each size in order, as many as there are sheets cut alike. */
export function dealer(
  sizes: readonly PieceSize[],
): (item: number, times: number) => { readonly piece: number; readonly labels: readonly string[] } {
  const dealt = sizes.map(() => 0)
  return (item, times) => {
    const from = dealt[item] ?? 0
    dealt[item] = from + times
    const copies = sizes[item]?.copies.slice(from, from + times) ?? []
    return { piece: copies[0]?.piece ?? 0, labels: copies.map((c) => c.label) }
  }
}

/** The ways chosen with no piece beyond the number wanted: whole copies first, then the last ones with less cut out. */
export function withoutSpare<
  F extends { readonly bar: Bar; readonly piece: Vector; readonly tree: CutTree; readonly times: number },
>(chosen: readonly F[], items: readonly SheetItem[]): F[] {
  const left = vectorOf(items.map((i) => i.most ?? 0))
  const plan = new Map<string, F>()
  const put = (f: F): void => {
    const key = JSON.stringify([f.bar.stock, f.bar.cost, f.tree])
    const known = plan.get(key)
    plan.set(key, known === undefined ? f : { ...f, times: known.times + f.times })
  }
  for (const f of chosen) {
    let whole = f.times
    for (let i = 0; i < left.length; i++) {
      if (at(f.piece, i) > 0) whole = Math.min(whole, wholeDown(at(left, i) / at(f.piece, i)))
    }
    for (let i = 0; i < left.length; i++) left[i] = at(left, i) - whole * at(f.piece, i)
    if (whole > 0) put({ ...f, times: whole })
    for (let k = whole; k < f.times; k++) {
      const piece = new Float64Array(left.length)
      const tree = withinCounts(
        f.tree,
        items.map((_, i) => ({ most: at(left, i) })),
        piece,
      )
      if (!piece.some((n) => n > 0)) continue
      for (let i = 0; i < left.length; i++) left[i] = at(left, i) - at(piece, i)
      put({ ...f, piece, tree, times: 1 })
    }
  }
  return [...plan.values()]
}

function planOf(
  job: SheetJob,
  sheets: readonly CutSheet[],
  taken: readonly { readonly bar: SheetBar; readonly times: number }[],
  proven: { readonly cost: number; readonly bound: number; readonly method: SheetMethod },
  measure: 'money' | 'area',
  problems: readonly SheetProblem[],
): SheetPlan {
  const total = (of: (s: CutSheet) => number): number => sheets.reduce((sum, s) => sum + s.times * of(s), 0)
  const areaOf = (parts: readonly { readonly lengthM: number; readonly widthM: number }[]): number =>
    parts.reduce((sum, p) => sum + p.lengthM * p.widthM, 0)
  const scale = (x: number): number => (measure === 'money' ? x : x / 1e6)
  return {
    sheets,
    stock: job.sheets.map(({ key, priceMinor, available }, k) => {
      const count = taken.reduce((sum, t) => sum + (t.bar.stock === k ? t.times : 0), 0)
      const price = priceMinor ?? (available !== undefined || count === 0 ? 0 : null)
      return { key, count, costMinor: price === null ? null : price * count }
    }),
    boughtM2: total((s) => s.lengthM * s.widthM),
    piecesM2: total((s) => areaOf(s.pieces)),
    kerfM2: total((s) => s.kerfM2),
    offcutsM2: total((s) => areaOf(s.offcuts)),
    measure,
    cost: scale(proven.cost),
    lowerBound: scale(proven.bound),
    gap: proven.cost === 0 ? 0 : (proven.cost - proven.bound) / proven.cost,
    method: proven.method,
    problems,
  }
}
