import { cited, counted, derive, typed, type Derived } from '../basics/derived.ts'
import { lotsFor, wholeModulesIn, wholeUp } from '../basics/count.ts'
import type { Finding } from '../basics/finding.ts'
import type { RollPlan } from '../cutting/roll-job.ts'
import type { SheetPlan } from '../cutting/sheet-job.ts'
import type { Plan } from '../plan/schema.ts'
import type { Piece } from '../quantities/need.ts'
import { itemOf } from '../quantities/items.ts'
import type { CuttingEffort } from './cut-memory.ts'
import { coverJoined, rollTooShort, widthMissing } from './cut-findings.ts'
import { cutLines, lineFor, type ItemTotal, type PurchaseLine } from './line.ts'
import type { Terms } from './offers.ts'
import { ownedOf } from './owned.ts'
import { acrossRoll, cheapestRolls, type RollPick } from './roll-choice.ts'
import { cheapestSheets, coverParts } from './sheet-choice.ts'

/** How rolls or sheets of one item are cut up. */
export type FlatPlan =
  | { readonly kind: 'roll'; readonly rolls: readonly { readonly widthM: number; readonly plan: RollPlan }[] }
  | { readonly kind: 'sheets'; readonly plan: SheetPlan }

export interface FlatCut {
  readonly lines: readonly PurchaseLine[]
  readonly plan: FlatPlan | null
  readonly findings: readonly Finding[]
}

/** Squares of mesh from rolls, or of covers from sheets: cut from the offers that cost least, or without prices take the least stuff. */
export function flatLines(plan: Plan, total: ItemTotal, offers: readonly Terms[], effort?: CuttingEffort): FlatCut {
  const piece = squaresOf(total)
  if (piece === undefined) return { lines: [], plan: null, findings: [] }
  const wide = offers.filter(({ widthM }) => widthM > 0)
  if (wide.length === 0) return { lines: [], plan: null, findings: [widthMissing(total.item, offers)] }
  return itemOf(total.item).cut === 'sheets'
    ? fromSheets(plan, total, piece, wide, effort)
    : fromRolls(plan, total, piece, wide, effort)
}

/** All squares of an item: those of one tray are as large as those of any other. */
function squaresOf({ needs }: ItemTotal): Piece | undefined {
  const [first, ...others] = needs.flatMap((one) => one.pieces ?? [])
  return first && { ...first, count: others.reduce((sum, { count }) => sum + count, first.count) }
}

function fromSheets(
  plan: Plan,
  total: ItemTotal,
  piece: Piece,
  terms: readonly Terms[],
  effort?: CuttingEffort,
): FlatCut {
  const owned = ownedOf(plan, total.item).filter(({ widthM }) => widthM > 0)
  const parts = coverParts(piece.lengthM, terms, owned)
  const { cut, lots } = cheapestSheets(piece, parts, terms, owned, plan.trays.kerfM, effort)
  const [only] = terms
  const unit = only === undefined ? 0 : cut.measure === 'area' ? only.lotSize * only.widthM : (only.priceMinor ?? 0)
  const isSimple = terms.length === 1 && owned.length === 0 && unit > 0 && only?.transportMinor === 0
  const facts = {
    owned: owned.reduce((sum, one) => {
      const { count = 0 } = cut.stock.find(({ key }) => key === one.key) ?? {}
      return sum + count * one.lengthM * one.widthM
    }, 0),
    leastLots: isSimple ? lotsFor(cut.lowerBound, unit) : null,
  }
  const lines = cutLines(
    total,
    terms.map((one, place) => ({ terms: one, lots: lots[place] ?? 0 })),
    facts,
    (one) => boughtArea(total, one),
  )
  const count = parts.along * parts.across
  const findings = count > 1 ? [coverJoined(plan, piece.lengthM, count)] : []
  return { lines, plan: { kind: 'sheets', plan: cut }, findings }
}

function fromRolls(
  plan: Plan,
  total: ItemTotal,
  piece: Piece,
  terms: readonly Terms[],
  effort?: CuttingEffort,
): FlatCut {
  const picks = cheapestRolls(piece, terms, effort)
  if (picks.length === 0) {
    const longestM = Math.max(...terms.map(({ lotSize }) => lotSize))
    return { lines: [], plan: null, findings: [rollTooShort(plan, total.item, piece.lengthM, longestM)] }
  }
  return {
    lines: picks.map((pick) => rollLine(total, piece, pick)),
    plan: { kind: 'roll', rolls: picks.map(({ terms: { widthM }, plan }) => ({ widthM, plan })) },
    findings: [],
  }
}

/** One offer's line: the running length that its squares take, and whole lots of it. */
function rollLine(total: ItemTotal, piece: Piece, pick: RollPick): PurchaseLine {
  const args = { item: `item.${total.item}` }
  const { terms, squares } = pick
  const N = counted('buy.squares', 'piece', squares, args)
  const s = counted('buy.square-side', 'm', piece.lengthM, args)
  const run = runOf(pick, N, s, args)
  const g = total.gross
  const covers =
    squares === piece.count
      ? g
      : derive(
          'buy.covers-squares',
          g.unit,
          'g · n / N',
          { g, n: N, N: counted('buy.squares-all', 'piece', piece.count, args) },
          (of) => (of.g * of.n) / of.N,
          { args },
        )
  const line = lineFor(
    total,
    terms,
    () => covers,
    (size) => rollLots(pick, N, s, run, size, args),
    boughtArea(total, terms),
  )
  return { ...line, run }
}

type Args = Readonly<Record<string, string>>

const runOf = ({ terms, plan }: RollPick, N: Derived<'piece'>, s: Derived<'m'>, args: Args): Derived<'m'> => {
  const across = wholeModulesIn(terms.widthM, s.value)
  if (across === 0) return counted('buy.run-strips', 'm', plan.usedM, args)
  const k = counted('buy.across', '1', across, args)
  return derive('buy.run', 'm', 'ceil(N / k) · s', { N, k, s }, (of) => wholeUp(of.N / of.k) * of.s, { args })
}

function rollLots(
  pick: RollPick,
  N: Derived<'piece'>,
  s: Derived<'m'>,
  run: Derived<'m'>,
  size: Derived,
  args: Args,
): Derived<'piece'> {
  const { terms, lots } = pick
  const across = acrossRoll({ lengthM: s.value }, terms)
  if (terms.lotName !== 'roll')
    return atLeast(
      derive('buy.lots', 'piece', 'ceil(R / s)', { R: run, s: size }, (of) => lotsFor(of.R, of.s), { args }),
      terms,
      args,
    )
  if (across === 0) return counted('buy.lots-cut', 'piece', lots, args)
  const k = counted('buy.across', '1', across, args)
  const rows = derive('buy.rows', 'piece', 'ceil(N / k)', { N, k }, (of) => wholeUp(of.N / of.k), { args })
  const each = counted('buy.rows-per-roll', '1', wholeModulesIn(terms.lotSize, s.value), args)
  const rolls = derive('buy.rolls', 'piece', 'ceil(r / k)', { r: rows, k: each }, (of) => wholeUp(of.r / of.k), {
    args,
  })
  return atLeast(rolls, terms, args)
}

const boughtArea = (total: ItemTotal, terms: Terms) => {
  const args = { item: `item.${total.item}` }
  const b =
    terms.id === null
      ? cited('buy.width', 'm', terms.widthM, 'common-practice', args)
      : typed('buy.width', 'm', terms.widthM, `offers.${terms.id}.widthM`, args)
  return (n: Derived<'piece'>, s: Derived<'m'>): Derived<'m2'> =>
    derive('buy.bought-area', 'm2', 'n · s · b', { n, s, b }, (of) => of.n * of.s * of.b, { args })
}

const atLeast = (lots: Derived<'piece'>, terms: Terms, args: Args): Derived<'piece'> =>
  terms.leastLots > lots.value && terms.id !== null
    ? derive(
        'buy.least-or-need',
        'piece',
        'max(n, q)',
        { n: lots, q: typed('buy.least', 'piece', terms.leastLots, `offers.${terms.id}.leastLots`, args) },
        (of) => Math.max(of.n, of.q),
        { args },
      )
    : lots
