import { type Filling } from './bars.ts'
import { type CoverProof } from './cover.ts'
import { keepableTicks, type TidyPlan } from './few-patterns.ts'
import { type CheckedLengths } from './length-checks.ts'
import {
  type CutPattern,
  type CuttingPlan,
  type CuttingProblem,
  type LengthJob,
  type LengthStock,
} from './length-job.ts'
import { toMetres } from './ticks.ts'
import { at } from './vector.ts'

interface Proven {
  readonly cost: number
  readonly bound: number
  readonly proof: CoverProof | 'nothing-to-cut'
}

interface CutBar {
  readonly pattern: CutPattern
  readonly pieceTicks: number
  readonly kerfTicks: number
  readonly offcutTicks: number
}

/** The search's plan in metres, with marks, labels, offcuts and totals. */
export function planOf(
  job: LengthJob,
  checked: CheckedLengths,
  tidy: TidyPlan,
  proven: Proven,
  problems: readonly CuttingProblem[],
): CuttingPlan {
  const keep = keepableTicks(job.keepM)
  const dealt = checked.lengths.map(() => 0)
  const cut = tidy.sequence.steps.map(({ filling, order }) => cutBar(job, checked, filling, order, keep, dealt))
  const total = (of: (c: CutBar) => number): number => cut.reduce((sum, c) => sum + c.pattern.times * of(c), 0)
  const pieces = total((c) => c.pieceTicks)
  const kerf = total((c) => c.kerfTicks)
  const kept = total((c) => (c.pattern.kept ? c.offcutTicks : 0))
  const waste = total((c) => (c.pattern.kept ? 0 : c.offcutTicks))

  const taken = job.stock.map(() => 0)
  for (const { filling } of tidy.sequence.steps)
    taken[filling.bar.stock] = (taken[filling.bar.stock] ?? 0) + filling.times
  const offcuts = new Map<number, number>()
  for (const c of cut)
    if (c.pattern.kept) offcuts.set(c.offcutTicks, (offcuts.get(c.offcutTicks) ?? 0) + c.pattern.times)

  const scale = (whole: number): number => (checked.measure === 'money' ? whole : toMetres(whole))
  return {
    patterns: cut.map((c) => c.pattern),
    stock: job.stock.map((s, k) => ({ key: s.key, count: taken[k] ?? 0, costMinor: costOf(s, taken[k] ?? 0) })),
    offcuts: [...offcuts].sort(([a], [b]) => b - a).map(([ticks, count]) => ({ lengthM: toMetres(ticks), count })),
    boughtM: job.stock.reduce((sum, s, k) => sum + s.lengthM * (taken[k] ?? 0), 0),
    piecesM: toMetres(pieces),
    kerfM: toMetres(kerf),
    keptM: toMetres(kept),
    wasteM: toMetres(waste),
    measure: checked.measure,
    cost: scale(proven.cost),
    lowerBound: scale(proven.bound),
    gap: proven.cost === 0 ? 0 : (proven.cost - proven.bound) / proven.cost,
    method: proven.proof,
    setUps: tidy.sequence.setUps,
    fewestPatterns: tidy.fewest,
    problems,
  }
}

/** Cost of so many of a stock, minor units; an owned one without a price is free; null where a price is missing. */
function costOf(stock: LengthStock, count: number): number | null {
  if (stock.priceMinor !== null) return stock.priceMinor * count
  return stock.available !== undefined || count === 0 ? 0 : null
}

/** Lays the pieces of one pattern along its bar and deals out their labels, bar by bar. */
function cutBar(
  job: LengthJob,
  checked: CheckedLengths,
  filling: Filling,
  order: readonly number[],
  keep: number,
  dealt: number[],
): CutBar {
  const { kerf, lengths } = checked
  const length = filling.bar.room - kerf
  const pieces: { lengthM: number; labels: readonly string[] }[] = []
  const marks: number[] = []
  let end = 0
  let pieceTicks = 0
  let kerfTicks = 0
  for (const i of order) {
    const piece = lengths[i]
    if (piece === undefined) continue
    for (let k = 0; k < at(filling.piece, i); k++) {
      const from = dealt[i] ?? 0
      dealt[i] = from + filling.times
      pieces.push({ lengthM: piece.lengthM, labels: piece.labels.slice(from, from + filling.times) })
      end += piece.ticks
      pieceTicks += piece.ticks
      const cutTicks = Math.min(kerf, Math.max(0, length - end))
      if (end < length) marks.push(toMetres(end))
      kerfTicks += cutTicks
      end += cutTicks
    }
  }
  const offcutTicks = Math.max(0, length - end)
  const stock = job.stock[filling.bar.stock]
  return {
    pattern: {
      stockKey: stock?.key ?? '',
      stockLengthM: toMetres(length),
      times: filling.times,
      pieces,
      marksM: marks,
      offcutM: toMetres(offcutTicks),
      kept: offcutTicks >= keep,
      kerfM: toMetres(kerfTicks),
    },
    pieceTicks,
    kerfTicks,
    offcutTicks,
  }
}
