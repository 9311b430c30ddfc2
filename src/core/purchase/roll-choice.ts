import { lotsFor, wholeModulesIn, wholeUp } from '../basics/count.ts'
import type { RollPlan } from '../cutting/roll-job.ts'
import type { Piece } from '../quantities/need.ts'
import { rollOnce, type CuttingEffort } from './cut-memory.ts'
import { mixCost } from './lot-mix.ts'
import { isPriced, type PricedTerms, type Terms } from './offers.ts'

/** Lap of one strip of mesh over the next where a square is wider than the roll, m: common practice. */
const STRIP_LAP_M = 0.05

/** Squares taken from one offer of a roll, with the plan of cuts. */
export interface RollPick {
  readonly terms: Terms
  readonly squares: number
  readonly lots: number
  readonly plan: RollPlan
}

/** Squares side by side on a roll: 0 where one is wider than the roll and is made of strips that lap. */
export const acrossRoll = ({ lengthM }: Pick<Piece, 'lengthM'>, { widthM }: Terms): number =>
  wholeModulesIn(widthM, lengthM)

/**
 * Fewest lots of one offer that hold a number of squares, least order counted in; null where none does.
 *
 * Lines across the roll one side apart each meet no more squares than lie side by side, and every square meets one: so
 * whole rows are the least length there is, and only squares in strips have to be laid out to know.
 */
function lotsOf(piece: Piece, terms: Terms, squares: number, effort?: CuttingEffort): number | null {
  if (squares === 0) return 0
  const across = acrossRoll(piece, terms)
  const inOneRoll = terms.lotName === 'roll' ? wholeModulesIn(terms.lotSize, piece.lengthM) : Number.POSITIVE_INFINITY
  if (inOneRoll === 0) return null
  const rows = across > 0 ? wholeUp(squares / across) : 0
  const lots =
    across === 0
      ? planOf(piece, terms, squares, effort).lots
      : terms.lotName === 'roll'
        ? wholeUp(rows / inOneRoll)
        : lotsFor(rows * piece.lengthM, terms.lotSize)
  return lots === 0 ? null : Math.max(lots, terms.leastLots)
}

function planOf(piece: Piece, { lotName, lotSize, widthM }: Terms, squares: number, effort?: CuttingEffort): RollPlan {
  const { lengthM, label } = piece
  return rollOnce(
    {
      pieces: [{ lengthM, widthM: lengthM, count: squares, label }],
      roll: {
        key: 'roll',
        widthM,
        sold: lotName === 'roll' ? { by: 'roll', lengthM: lotSize } : { by: 'length', stepM: lotSize },
        priceMinor: null,
      },
      kerfM: 0,
      lapM: STRIP_LAP_M,
    },
    effort,
  )
}

/**
 * Squares of mesh from the rolls that cost least, over all ways to share them among the offers, carriage and least orders counted in: for each
 * offer and each number of squares the cost is known, and the offers are joined one by one. Squares of strips are cut from one offer alone.
 */
export function cheapestRolls(piece: Piece, terms: readonly Terms[], effort?: CuttingEffort): RollPick[] {
  const shared =
    terms.length > 1 && terms.every(isPriced) ? sharedOut(piece, terms.filter(isPriced), effort) : [piece.count]
  return terms.flatMap((one, place): RollPick[] => {
    const squares = shared?.[place] ?? 0
    const lots = lotsOf(piece, one, squares, effort)
    return squares === 0 || lots === null
      ? []
      : [{ terms: one, squares, lots, plan: planOf(piece, one, squares, effort) }]
  })
}

/** Squares to take of each offer, or undefined where none of them makes one. */
function sharedOut(piece: Piece, terms: readonly PricedTerms[], effort?: CuttingEffort): readonly number[] | undefined {
  const all = piece.count
  let least: readonly number[] = Array.from({ length: all + 1 }, (_, n) => (n === 0 ? 0 : Number.POSITIVE_INFINITY))
  const takenBy: (readonly number[])[] = []
  for (const one of terms) {
    const isShared = acrossRoll(piece, one) > 0
    const own = least.map((_, n) => {
      const lots = isShared || n === 0 || n === all ? lotsOf(piece, one, n, effort) : null
      return lots === null ? Number.POSITIVE_INFINITY : mixCost(lots, one)
    })
    const taken: number[] = []
    const before = least
    least = before.map((_, n) => {
      let best = before[n] ?? Number.POSITIVE_INFINITY
      taken[n] = 0
      for (let k = n; k > 0; k--) {
        const cost = (own[k] ?? Number.POSITIVE_INFINITY) + (before[n - k] ?? Number.POSITIVE_INFINITY)
        if (cost >= best) continue
        best = cost
        taken[n] = k
      }
      return best
    })
    takenBy.push(taken)
  }
  if (least[all] === Number.POSITIVE_INFINITY) return undefined
  let left = all
  return takenBy
    .toReversed()
    .map((taken) => {
      const count = taken[left] ?? 0
      left -= count
      return count
    })
    .toReversed()
}
