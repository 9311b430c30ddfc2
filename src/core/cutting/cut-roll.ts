import { lotsFor, modulesToCover } from '../basics/count.ts'
import { leastCostCover } from './cover.ts'
import { cutLengths } from './cut-lengths.ts'
import { dealer, withoutSpare } from './cut-sheets.ts'
import { cutUp, extent } from './cut-up.ts'
import { leastRollLength } from './roll-bound.ts'
import { type CutPattern } from './length-job.ts'
import { type JoinedPiece, type RollJob, type RollPlan, type RollProblem, type RollSection } from './roll-job.ts'
import { sectionColumns } from './roll-sections.ts'
import { inSquareMillimetres, isCount, isSize, itemsOf, type PieceProblem, pieceSizes } from './sheet-checks.ts'
import { type SheetPiece } from './sheet-job.ts'
import { FIT_TICKS, toMetres, toTicks } from './ticks.ts'
import { at, vectorOf } from './vector.ts'

const DEFAULT_BUDGET = 100_000

/**
 * Cuts rectangles from a roll with the least length: cuts right across the roll give sections, each cut up by straight cuts
 * from edge to edge. Sold by length, the sections follow one another; sold by the roll, no section straddles two rolls. A
 * piece is whole unless it is wider than the roll both ways; then it is made of lapping strips, if a lap is given.
 */
export function cutRoll(job: RollJob): RollPlan {
  const problems: RollProblem[] = []
  const { roll } = job
  const lotM = roll.sold.by === 'roll' ? roll.sold.lengthM : roll.sold.stepM
  if (!isSize(roll.widthM) || !isSize(lotM)) return nothingFrom(job, [{ kind: 'roll-not-a-size' }])
  if (roll.priceMinor !== null && !isCount(roll.priceMinor)) problems.push({ kind: 'price-not-whole' })
  const kerfIsGood = Number.isFinite(job.kerfM) && job.kerfM >= 0
  if (!kerfIsGood) problems.push({ kind: 'kerf-not-a-size' })
  const lapIsGood = job.lapM === undefined || (Number.isFinite(job.lapM) && job.lapM >= 0 && job.lapM < roll.widthM)
  if (!lapIsGood) problems.push({ kind: 'lap-not-a-size' })
  const kerf = kerfIsGood ? toTicks(job.kerfM) : 0
  const rollWidth = toTicks(roll.widthM)
  const rollLength = roll.sold.by === 'roll' ? toTicks(roll.sold.lengthM) : Infinity

  const { pieces, from, joined } = inStrips(job, lapIsGood ? job.lapM : undefined, problems)
  const fits = (length: number, width: number, turns: boolean): boolean =>
    (width <= rollWidth + FIT_TICKS && length <= rollLength + FIT_TICKS) ||
    (turns && length <= rollWidth + FIT_TICKS && width <= rollLength + FIT_TICKS)
  const pieceProblems: PieceProblem[] = []
  const sizes = pieceSizes(pieces, fits, pieceProblems)
  problems.push(...pieceProblems.map((p) => ({ ...p, piece: from[p.piece] ?? p.piece })))
  if (sizes.length === 0) return nothingFrom(job, problems)

  const items = itemsOf(sizes, kerf)
  const area = vectorOf(items.map((i) => inSquareMillimetres(i.length, i.width)))
  const acrossRoll = rollWidth + kerf + FIT_TICKS
  const covering = sectionColumns(acrossRoll, rollLength + kerf + FIT_TICKS, items, area)
  const weight = new Float64Array(covering.columns.rows)
  area.forEach((a, i) => (weight[i] = a / at(area, 0)))
  const cover = leastCostCover(covering, [], job.budgetNodes ?? DEFAULT_BUDGET, [weight])
  const chosen = covering.fillings.flatMap((f, k) => {
    const times = at(cover.times, items.length + k)
    return times > 0 ? [{ ...f, times }] : []
  })
  const label = dealer(sizes)
  const sections = withoutSpare(chosen, items)
    .map((f) => ({ ...f, length: extent(f.tree, items, 'length') - kerf }))
    .sort((a, b) => b.length - a.length)
    .map(({ length, tree, times }): RollSection => {
      const cut = cutUp(tree, items, length, rollWidth, kerf, (item) => label(item, times))
      return {
        ...cut,
        pieces: cut.pieces.map((p) => ({ ...p, piece: from[p.piece] ?? p.piece })),
        lengthM: toMetres(length),
        times,
      }
    })

  const used = sections.reduce((sum, s) => sum + s.times * (toTicks(s.lengthM) + kerf), -kerf)
  const least = Math.min(used, leastRollLength(acrossRoll, items) - kerf)
  const leastLots = Math.max(1, modulesToCover(toMetres(least), lotM))
  const cutKerfM = kerfIsGood ? job.kerfM : 0
  const lotsByLength = Math.max(1, modulesToCover(toMetres(used), lotM))
  const strips = inOrder(sections, roll.sold.by === 'roll' ? lotM : lotsByLength * lotM, cutKerfM)
  const lots = roll.sold.by === 'length' ? lotsByLength : strips.reduce((sum, s) => sum + s.times, 0)
  const boughtM = lots * lotM
  const piecesM2 = sizes.reduce((sum, s) => sum + s.copies.length * toMetres(s.length) * toMetres(s.width), 0)
  return {
    sections,
    rolls: strips,
    joined,
    usedM: toMetres(used),
    boughtM,
    lots,
    costMinor: roll.priceMinor === null ? null : roll.priceMinor * lots,
    piecesM2,
    wasteShare: (boughtM * roll.widthM) / piecesM2 - 1,
    leastUsedM: toMetres(least),
    leastBoughtM: leastLots * lotM,
    gap: (lots - leastLots) / lots,
    method: lots === leastLots ? 'linear-bound' : 'not-proven',
    problems,
  }
}

/** Fewest rolls, or the one length bought, that hold the sections, none of which may straddle two; with the marks of each. */
function inOrder(sections: readonly RollSection[], rollM: number, kerfM: number): readonly CutPattern[] {
  const { patterns } = cutLengths({
    pieces: sections.map((s) => ({ lengthM: s.lengthM, count: s.times })),
    stock: [{ key: 'roll', lengthM: rollM, priceMinor: 1 }],
    kerfM,
    keepM: 0,
    tidyNodes: 0,
  })
  return patterns
}

/** The pieces, those wider than the roll both ways as strips of it, and where each came from in the job's list. */
function inStrips(
  job: RollJob,
  lapM: number | undefined,
  problems: RollProblem[],
): {
  readonly pieces: readonly SheetPiece[]
  readonly from: readonly number[]
  readonly joined: readonly JoinedPiece[]
} {
  const { widthM, sold } = job.roll
  const pieces: SheetPiece[] = []
  const from: number[] = []
  const joined: JoinedPiece[] = []
  const put = (piece: SheetPiece, index: number): void => {
    pieces.push(piece)
    from.push(index)
  }
  job.pieces.forEach((p, index) => {
    const width = (p.turns ?? true) ? Math.min(p.lengthM, p.widthM) : p.widthM
    if (!(width > widthM + toMetres(FIT_TICKS)) || !isSize(p.lengthM) || !isSize(p.widthM)) {
      put(p, index)
      return
    }
    const lap = lapM ?? 0
    const both =
      (p.turns ?? true)
        ? [joining(p.lengthM, p.widthM, widthM, lap), joining(p.widthM, p.lengthM, widthM, lap)]
        : [joining(p.lengthM, p.widthM, widthM, lap)]
    const longest = sold.by === 'roll' ? sold.lengthM : Infinity
    const [best] = both
      .filter((j) => j.stripLengthM <= longest + toMetres(FIT_TICKS))
      .sort((a, b) => a.roll - b.roll || a.strips - b.strips)
    if (best === undefined) {
      problems.push({ kind: 'piece-too-large', piece: index, lengthM: p.lengthM, widthM: p.widthM })
      return
    }
    if (lapM === undefined) {
      problems.push({ kind: 'needs-joining', piece: index, strips: best.strips })
      return
    }
    const { strips, stripLengthM, lastStripWidthM } = best
    joined.push({ piece: index, count: p.count, strips, stripLengthM, lastStripWidthM, lapM })
    const label = p.label === undefined ? {} : { label: p.label }
    put({ lengthM: stripLengthM, widthM, count: p.count * (strips - 1), turns: false, ...label }, index)
    put({ lengthM: stripLengthM, widthM: lastStripWidthM, count: p.count, turns: p.turns ?? true, ...label }, index)
  })
  return { pieces, from, joined }
}

/** Strips of one length side by side over a width: all of the roll's width but the last. */
function joining(stripLengthM: number, overM: number, rollM: number, lapM: number) {
  const strips = 1 + lotsFor(overM - rollM, rollM - lapM)
  const lastStripWidthM = overM - (strips - 1) * (rollM - lapM)
  return { strips, stripLengthM, lastStripWidthM, roll: stripLengthM * strips }
}

const nothingFrom = (job: RollJob, problems: readonly RollProblem[]): RollPlan => ({
  sections: [],
  rolls: [],
  joined: [],
  usedM: 0,
  boughtM: 0,
  lots: 0,
  costMinor: job.roll.priceMinor === null ? null : 0,
  piecesM2: 0,
  wasteShare: 0,
  leastUsedM: 0,
  leastBoughtM: 0,
  gap: 0,
  method: 'nothing-to-cut',
  problems,
})
