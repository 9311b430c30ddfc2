import { lotsFor } from '../basics/count.ts'
import type { Finding } from '../basics/finding.ts'
import type { CuttingPlan } from '../cutting/length-job.ts'
import type { Plan } from '../plan/schema.ts'
import { cheapestCut } from './cheapest-cut.ts'
import { pieceTooLong } from './cut-findings.ts'
import { lengthsOnce, type CuttingEffort } from './cut-memory.ts'
import { cutLines, type ItemTotal, type PurchaseLine } from './line.ts'
import type { Terms } from './offers.ts'
import { ownedOf } from './owned.ts'

/** Boards and bars: least cost over the lengths on offer and those at hand, with the pattern of cuts. */
export function lengthLines(
  plan: Plan,
  total: ItemTotal,
  terms: readonly Terms[],
  effort?: CuttingEffort,
): { lines: PurchaseLine[]; plan: CuttingPlan; findings: Finding[] } {
  const owned = ownedOf(plan, total.item)
  const pieces = total.needs.flatMap((one) => one.pieces ?? [])
  const { cut, lots } = cheapestCut(terms, (places) =>
    lengthsOnce(
      {
        pieces,
        stock: [
          ...owned.map(({ key, lengthM, available }) => ({ key, lengthM, available, priceMinor: null })),
          ...terms.flatMap(({ lotSize, priceMinor }, place) =>
            places.includes(place) ? [{ key: String(place), lengthM: lotSize, priceMinor }] : [],
          ),
        ],
        kerfM: plan.trays.kerfM,
        keepM: plan.trays.keepM,
      },
      effort,
    ),
  )
  const [only] = terms
  const unit = only === undefined ? 0 : cut.measure === 'length' ? only.lotSize : (only.priceMinor ?? 0)
  const isSimple = terms.length === 1 && owned.length === 0 && unit > 0 && only?.transportMinor === 0
  const ownedM = owned.reduce(
    (sum, { key, lengthM }) => sum + lengthM * (cut.stock.find((one) => one.key === key)?.count ?? 0),
    0,
  )
  // What mends the longest piece mends those that are too long beside it.
  const [tooLong] = cut.problems
    .flatMap((problem) => (problem.kind === 'piece-too-long' ? [problem] : []))
    .toSorted((a, b) => b.lengthM - a.lengthM)
  return {
    lines: cutLines(
      total,
      terms.map((one, place) => ({ terms: one, lots: lots[place] ?? 0 })),
      { owned: ownedM, leastLots: isSimple ? lotsFor(cut.lowerBound, unit) : null },
    ),
    plan: cut,
    findings: tooLong === undefined ? [] : [pieceTooLong(plan, total.item, tooLong.lengthM, tooLong.longestM)],
  }
}
