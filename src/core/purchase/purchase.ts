import type { Finding } from '../basics/finding.ts'
import { cutLengths } from '../cutting/cut-lengths.ts'
import type { CuttingPlan, LengthJob } from '../cutting/length-job.ts'
import type { Plan } from '../plan/schema.ts'
import { ITEM_KEYS, itemOf, type ItemKey } from '../quantities/items.ts'
import type { Need } from '../quantities/need.ts'
import { flatLines } from './flat-lines.ts'
import { cutLines, itemTotal, mixLines, type ItemTotal, type PurchaseLine } from './line.ts'
import { cheapestMix } from './lot-mix.ts'
import { isPriced, offersByItem, termsFor, type Terms } from './offers.ts'

/** What is bought, what is had for nothing, and how boards and bars are cut. */
export interface Purchase {
  readonly lines: readonly PurchaseLine[]
  /** Needed but not bought: listed so that nobody forgets to fetch it. */
  readonly free: readonly ItemTotal[]
  readonly cutting: ReadonlyMap<ItemKey, CuttingPlan>
  readonly findings: readonly Finding[]
}

/** Needs gathered by item, in the order of the item list, turned into whole lots of the offers that cost least. */
export function purchase(plan: Plan, needs: readonly Need[], effort?: CuttingEffort): Purchase {
  const offers = offersByItem(plan)
  const byItem = new Map<ItemKey, Need[]>()
  for (const one of needs) {
    if (one.gross.value <= 0) continue
    const list = byItem.get(one.item)
    if (list === undefined) byItem.set(one.item, [one])
    else list.push(one)
  }
  const lines: PurchaseLine[] = []
  const free: ItemTotal[] = []
  const cutting = new Map<ItemKey, CuttingPlan>()
  const findings: Finding[] = []
  for (const item of ITEM_KEYS) {
    const wanted = byItem.get(item)
    if (wanted === undefined) continue
    const total = itemTotal(item, wanted)
    const own = offers.get(item)
    const { cut, free: usuallyFree } = itemOf(item)
    if (usuallyFree === true && own === undefined) {
      free.push(total)
      continue
    }
    const terms = termsFor(item, own)
    if (cut === 'lengths') {
      const bars = lengthLines(plan, total, terms, effort)
      lines.push(...bars.lines)
      cutting.set(item, bars.plan)
      findings.push(...bars.findings)
    } else if (cut === undefined) lines.push(...amountLines(total, terms))
    else lines.push(...flatLines(total, terms, plan.trays.kerfM))
  }
  return { lines, free, cutting, findings }
}

/** How cutting is worked out where thousands of plans are: no search beyond the least cost, and each job once. */
export interface CuttingEffort {
  readonly tidyNodes: number
  /** Cutting plans by the job they answer; filled as jobs are met. */
  readonly known?: Map<string, CuttingPlan>
}

/** Items counted, weighed or measured: without a price the first offer, with prices the cheapest mix of whole lots. */
function amountLines(total: ItemTotal, terms: readonly Terms[]): PurchaseLine[] {
  const priced = terms.filter(isPriced)
  const use = priced.length > 0 ? priced : terms.map((one) => ({ ...one, priceMinor: 0 }))
  const { lots } = cheapestMix(total.gross.value, use)
  const own: readonly Terms[] = priced.length > 0 ? priced : terms
  return mixLines(
    total,
    own.map((one, at) => ({ terms: one, lots: lots[at] ?? 0 })),
  )
}

function cutOnce(job: LengthJob, known: CuttingEffort['known']): CuttingPlan {
  if (known === undefined) return cutLengths(job)
  const name = JSON.stringify(job)
  const found = known.get(name) ?? cutLengths(job)
  known.set(name, found)
  return found
}

/** Boards and bars: least cost over the lengths on offer, with the pattern of cuts. */
function lengthLines(
  plan: Plan,
  total: ItemTotal,
  terms: readonly Terms[],
  effort?: CuttingEffort,
): { lines: PurchaseLine[]; plan: CuttingPlan; findings: Finding[] } {
  const cut = cutOnce(
    {
      pieces: total.needs.flatMap((one) => one.pieces ?? []),
      stock: terms.map((one, at) => ({ key: String(at), lengthM: one.lotSize, priceMinor: one.priceMinor })),
      kerfM: plan.trays.kerfM,
      keepM: plan.trays.keepM,
      ...(effort && { tidyNodes: effort.tidyNodes }),
    },
    effort?.known,
  )
  const lots = new Map(cut.stock.map(({ key, count }) => [key, count]))
  const findings = cut.problems.flatMap((problem): Finding[] =>
    problem.kind === 'piece-too-long'
      ? [
          {
            level: 'problem',
            kind: 'buy.piece-too-long',
            args: {
              item: `item.${total.item}`,
              length: { value: problem.lengthM, unit: 'm' },
              longest: { value: problem.longestM, unit: 'm' },
            },
            card: 'money',
            remedies: [],
          },
        ]
      : [],
  )
  return {
    lines: cutLines(
      total,
      terms.map((one, at) => ({ terms: one, lots: lots.get(String(at)) ?? 0 })),
    ),
    plan: cut,
    findings,
  }
}
