import { type CuttingProblem, type LengthJob } from './length-job.ts'
import { FIT_TICKS, toMetres, toTicks } from './ticks.ts'

/** Pieces of one length, with the label of each. */
export interface PieceLength {
  readonly ticks: number
  readonly lengthM: number
  readonly labels: readonly string[]
}

export interface CheckedStock {
  /** Place in the job's list. */
  readonly stock: number
  readonly room: number
  readonly cost: number
  readonly available: number | undefined
}

export interface CheckedLengths {
  /** Longest first, each length once. */
  readonly lengths: readonly PieceLength[]
  readonly stocks: readonly CheckedStock[]
  readonly kerf: number
  readonly measure: 'money' | 'length'
  readonly problems: readonly CuttingProblem[]
}

const isSize = (x: number): boolean => Number.isFinite(x) && x > 0 && toTicks(x) > 0
const isCount = (x: number): boolean => Number.isSafeInteger(x) && x >= 0

/** Longest list and dearest bar that are still exact in the searches. */
const MOST_PIECES = 1e5
const DEAREST = 1e12

/** The sound part of a job in whole numbers, and a problem for each unsound part of it. */
export function checkedLengths(job: LengthJob): CheckedLengths {
  const problems: CuttingProblem[] = []
  const kerfIsGood = Number.isFinite(job.kerfM) && job.kerfM >= 0
  if (!kerfIsGood) problems.push({ kind: 'kerf-not-a-size' })
  if (!(Number.isFinite(job.keepM) && job.keepM >= 0)) problems.push({ kind: 'keep-not-a-size' })
  const kerf = kerfIsGood ? toTicks(job.kerfM) : 0

  const sound = job.stock.flatMap((s, stock) => {
    if (!isSize(s.lengthM) || (s.available !== undefined && !isCount(s.available))) {
      problems.push({ kind: 'stock-not-a-size', stock })
      return []
    }
    if (s.priceMinor !== null && !(isCount(s.priceMinor) && s.priceMinor <= DEAREST)) {
      problems.push({ kind: 'price-not-whole', stock })
      return []
    }
    return [{ ...s, stock, ticks: toTicks(s.lengthM) }]
  })
  const isOwned = (s: (typeof sound)[number]): boolean => s.available !== undefined && (s.priceMinor ?? 0) === 0
  const unpriced = sound.filter((s) => s.priceMinor === null && !isOwned(s))
  unpriced.forEach(({ stock }) => problems.push({ kind: 'price-missing', stock }))
  // What costs nothing all the same has to be fetched: then the least of it counts.
  const isFree = sound.some((s) => !isOwned(s)) && sound.every((s) => (s.priceMinor ?? 0) === 0)
  const measure = isFree || unpriced.length > 0 ? 'length' : 'money'
  const stocks = sound.map((s) => ({
    stock: s.stock,
    room: s.ticks + kerf,
    cost: isOwned(s) ? 0 : measure === 'money' ? (s.priceMinor ?? 0) : s.ticks,
    available: s.available,
  }))

  const longest = Math.max(0, ...sound.map((s) => (s.available === 0 ? 0 : s.ticks)))
  const byTicks = new Map<number, { lengthM: number; labels: string[] }>()
  job.pieces.forEach((p, piece) => {
    if (!isSize(p.lengthM)) problems.push({ kind: 'piece-not-a-size', piece })
    else if (!isCount(p.count) || p.count > MOST_PIECES) problems.push({ kind: 'count-not-whole', piece })
    else if (longest > 0 && toTicks(p.lengthM) > longest + FIT_TICKS) {
      problems.push({ kind: 'piece-too-long', piece, lengthM: p.lengthM, longestM: toMetres(longest) })
    } else if (longest > 0 && p.count > 0) {
      const ticks = toTicks(p.lengthM)
      const known = byTicks.get(ticks) ?? { lengthM: toMetres(ticks), labels: [] }
      for (let k = 0; k < p.count; k++) known.labels.push(p.label ?? '')
      byTicks.set(ticks, known)
    }
  })
  if (longest === 0 && job.pieces.length > 0) problems.push({ kind: 'no-stock' })
  const lengths = [...byTicks]
    .sort(([a], [b]) => b - a)
    .map(([ticks, { lengthM, labels }]) => ({ ticks, lengthM, labels: labels.sort() }))
  return { lengths, stocks, kerf, measure, problems }
}
