import { lotsFor } from '../basics/count.ts'
import type { Offer } from '../plan/schema.ts'

type Terms = Pick<Offer, 'lotSize' | 'leastLots' | 'transportMinor' | 'tripLots'> & { readonly priceMinor: number }

export interface LotMix {
  /** Lots taken of each offer, in the order given. */
  readonly lots: readonly number[]
  readonly costMinor: number
  /** False where the search ended at its step budget: then the mix covers the need, but a cheaper one may exist. */
  readonly proven: boolean
}

/** Steps of the search before it hands over what it has; steps, not time, so that every phone buys the same. */
const STEPS = 20_000

/** Trips that carry a number of lots; one trip takes all where the offer states no load. */
const tripsFor = (lots: number, tripLots: number): number =>
  lots === 0 ? 0 : tripLots === 0 ? 1 : lotsFor(lots, tripLots)

/** Price and carriage of a number of lots, minor units: exact, all are integers. */
export const mixCost = (lots: number, terms: Terms): number =>
  lots * terms.priceMinor + tripsFor(lots, terms.tripLots) * terms.transportMinor

/**
 * Cheapest whole lots of one or several offers that together hold a need.
 *
 *   least Σ xᵢ · priceᵢ + tripsᵢ · carriageᵢ   with   Σ xᵢ · sizeᵢ ≥ need,   xᵢ = 0 or xᵢ ≥ least order
 *
 * Branch and bound from the lowest price per unit up: what is still missing costs at least the lowest price per unit of the offers not yet
 * decided. Of equal costs the smaller surplus wins, then the fewer sellers, then the earlier offers.
 */
export function cheapestMix(need: number, offers: readonly Terms[]): LotMix {
  const [only] = offers
  if (need <= 0) return { lots: offers.map(() => 0), costMinor: 0, proven: true }
  if (offers.length === 1 && only !== undefined) {
    const lots = leastFor(need, only)
    return { lots: [lots], costMinor: mixCost(lots, only), proven: true }
  }
  const order = offers
    .map((terms, at) => ({ terms, at, perUnit: terms.priceMinor / terms.lotSize }))
    .toSorted((a, b) => a.perUnit - b.perUnit || a.at - b.at)
  let best: { lots: number[]; cost: number; bought: number; sellers: number } | null = null
  let steps = 0
  const chosen = offers.map(() => 0)

  const settle = (cost: number, bought: number): void => {
    const sellers = chosen.filter((lots) => lots > 0).length
    const better =
      best === null ||
      cost < best.cost ||
      (cost === best.cost && (bought < best.bought || (bought === best.bought && sellers < best.sellers)))
    if (better) best = { lots: [...chosen], cost, bought, sellers }
  }

  const decide = (turn: number, missing: number, cost: number, bought: number): void => {
    steps++
    const now = order[turn]
    if (lotsFor(missing, need) === 0) return settle(cost, bought)
    if (now === undefined) return
    const { terms, at } = now
    const most = leastFor(missing, terms)
    const next = order[turn + 1]
    const floor = next === undefined ? most : 0
    for (let lots = most; lots >= floor; lots = lots > terms.leastLots ? lots - 1 : lots > 0 ? 0 : -1) {
      const spent = cost + mixCost(lots, terms)
      const rest = Math.max(0, missing - lots * terms.lotSize)
      const least = spent + rest * (next?.perUnit ?? 0)
      if (best !== null && least > best.cost + 1e-6) {
        // Without carriage, fewer of the cheapest only cost more from here down.
        if (lots < most && terms.transportMinor === 0) break
        continue
      }
      if (steps > STEPS) break
      chosen[at] = lots
      decide(turn + 1, rest, spent, bought + lots * terms.lotSize)
      chosen[at] = 0
    }
  }
  decide(0, need, 0, 0)
  const found = best as { lots: number[]; cost: number } | null
  if (found === null) return { lots: chosen, costMinor: 0, proven: true }
  return { lots: found.lots, costMinor: found.cost, proven: steps <= STEPS }
}

const leastFor = (need: number, terms: Terms): number => {
  const lots = lotsFor(need, terms.lotSize)
  return lots === 0 ? 0 : Math.max(lots, terms.leastLots)
}
