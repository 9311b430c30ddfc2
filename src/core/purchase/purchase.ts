import type { Finding } from '../basics/finding.ts'
import type { CuttingPlan } from '../cutting/length-job.ts'
import type { Plan } from '../plan/schema.ts'
import { ITEM_KEYS, itemOf, type ItemKey } from '../quantities/items.ts'
import type { Need } from '../quantities/need.ts'
import type { CuttingEffort } from './cut-memory.ts'
import { flatLines, type FlatPlan } from './flat-lines.ts'
import { lengthLines } from './length-lines.ts'
import { itemTotal, mixLines, type ItemTotal, type PurchaseLine } from './line.ts'
import { cheapestMix } from './lot-mix.ts'
import { isPriced, offersByItem, termsFor, type Terms } from './offers.ts'

/** What is bought, what is had for nothing, and how boards, bars, rolls and sheets are cut. */
export interface Purchase {
  readonly lines: readonly PurchaseLine[]
  /** Needed but not bought: listed so that nobody forgets to fetch it. */
  readonly free: readonly ItemTotal[]
  readonly cutting: ReadonlyMap<ItemKey, CuttingPlan>
  readonly flat: ReadonlyMap<ItemKey, FlatPlan>
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
  const flat = new Map<ItemKey, FlatPlan>()
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
    else {
      const flats = flatLines(plan, total, terms, effort)
      lines.push(...flats.lines)
      if (flats.plan !== null) flat.set(item, flats.plan)
      findings.push(...flats.findings)
    }
  }
  return { lines, free, cutting, flat, findings }
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
