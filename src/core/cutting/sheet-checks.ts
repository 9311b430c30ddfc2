import { type SheetItem } from './guillotine-table.ts'
import { type SheetJob, type SheetPiece, type SheetProblem } from './sheet-job.ts'
import { FIT_TICKS, toTicks } from './ticks.ts'

/** Pieces of one size, in ticks, with a place in the job's list and a label for each. */
export interface PieceSize {
  readonly length: number
  readonly width: number
  readonly turns: boolean
  readonly copies: readonly { readonly piece: number; readonly label: string }[]
}

export interface CheckedSheet {
  readonly sheet: number
  readonly length: number
  readonly width: number
  readonly cost: number
  readonly available: number | undefined
}

export interface CheckedSheets {
  readonly sizes: readonly PieceSize[]
  readonly sheets: readonly CheckedSheet[]
  readonly kerf: number
  readonly measure: 'money' | 'area'
  readonly problems: readonly SheetProblem[]
}

/** A length in metres that is at least one tick. */
export const isSize = (x: number): boolean => Number.isFinite(x) && x > 0 && toTicks(x) > 0
/** A whole number, none included. */
export const isCount = (x: number): boolean => Number.isSafeInteger(x) && x >= 0
const MOST_PIECES = 1e5

/** Ticks are fine for lengths but too fine for sums of areas: these are whole mm². */
export const inSquareMillimetres = (length: number, width: number): number => (length / 1e4) * (width / 1e4)

/** What can be wrong with a piece by itself. */
export type PieceProblem = Extract<
  SheetProblem,
  { readonly kind: 'piece-not-a-size' | 'count-not-whole' | 'piece-too-large' }
>

/** The sound pieces, largest first, each size once; whether a size fits is for `fits` to say. */
export function pieceSizes(
  pieces: readonly SheetPiece[],
  fits: (length: number, width: number, turns: boolean) => boolean,
  problems: PieceProblem[],
): PieceSize[] {
  const bySize = new Map<
    string,
    { length: number; width: number; turns: boolean; copies: { piece: number; label: string }[] }
  >()
  pieces.forEach((p, piece) => {
    const turns = p.turns ?? true
    if (!isSize(p.lengthM) || !isSize(p.widthM)) {
      problems.push({ kind: 'piece-not-a-size', piece })
      return
    }
    if (!isCount(p.count) || p.count > MOST_PIECES) {
      problems.push({ kind: 'count-not-whole', piece })
      return
    }
    const length = toTicks(p.lengthM)
    const width = toTicks(p.widthM)
    if (!fits(length, width, turns)) {
      problems.push({ kind: 'piece-too-large', piece, lengthM: p.lengthM, widthM: p.widthM })
      return
    }
    if (p.count === 0) return
    const key = `${length}:${width}:${turns}`
    const known = bySize.get(key) ?? { length, width, turns, copies: [] }
    for (let k = 0; k < p.count; k++) known.copies.push({ piece, label: p.label ?? '' })
    bySize.set(key, known)
  })
  return [...bySize.values()].sort(
    (a, b) => b.length * b.width - a.length * a.width || b.length - a.length || Number(a.turns) - Number(b.turns),
  )
}

/** The sizes as they are laid on a sheet or a roll, in ticks: each with one saw cut more, worth nothing yet, no more than are wanted. */
export const itemsOf = (sizes: readonly PieceSize[], kerf: number): SheetItem[] =>
  sizes.map((s) => ({
    length: s.length + kerf,
    width: s.width + kerf,
    value: 0,
    most: s.copies.length,
    turns: s.turns,
  }))

/** The sound part of a job in whole numbers, and a problem for each unsound part of it. */
export function checkedSheets(job: SheetJob): CheckedSheets {
  const problems: SheetProblem[] = []
  const kerfIsGood = Number.isFinite(job.kerfM) && job.kerfM >= 0
  if (!kerfIsGood) problems.push({ kind: 'kerf-not-a-size' })
  const sound = job.sheets.flatMap((s, sheet) => {
    if (!isSize(s.lengthM) || !isSize(s.widthM) || (s.available !== undefined && !isCount(s.available))) {
      problems.push({ kind: 'sheet-not-a-size', sheet })
      return []
    }
    if (s.priceMinor !== null && !isCount(s.priceMinor)) {
      problems.push({ kind: 'price-not-whole', sheet })
      return []
    }
    return s.available === 0 ? [] : [{ ...s, sheet, length: toTicks(s.lengthM), width: toTicks(s.widthM) }]
  })
  const isOwned = (s: (typeof sound)[number]): boolean => s.available !== undefined && (s.priceMinor ?? 0) === 0
  const unpriced = sound.filter((s) => s.priceMinor === null && !isOwned(s))
  unpriced.forEach(({ sheet }) => problems.push({ kind: 'price-missing', sheet }))
  // What costs nothing all the same has to be fetched: then the least of it counts.
  const isFree = sound.some((s) => !isOwned(s)) && sound.every((s) => (s.priceMinor ?? 0) === 0)
  const measure = isFree || unpriced.length > 0 ? 'area' : 'money'
  if (sound.length === 0 && job.pieces.length > 0) problems.push({ kind: 'no-stock' })

  const fits = (length: number, width: number, turns: boolean): boolean =>
    sound.some(
      (s) =>
        (length <= s.length + FIT_TICKS && width <= s.width + FIT_TICKS) ||
        (turns && width <= s.length + FIT_TICKS && length <= s.width + FIT_TICKS),
    )
  const pieceProblems: PieceProblem[] = []
  const sizes = sound.length === 0 ? [] : pieceSizes(job.pieces, fits, pieceProblems)
  problems.push(...pieceProblems)
  const sheets = sound.map((s) => ({
    sheet: s.sheet,
    length: s.length,
    width: s.width,
    cost: isOwned(s) ? 0 : measure === 'money' ? (s.priceMinor ?? 0) : inSquareMillimetres(s.length, s.width),
    available: s.available,
  }))
  return { sizes, sheets, kerf: kerfIsGood ? toTicks(job.kerfM) : 0, measure, problems }
}
