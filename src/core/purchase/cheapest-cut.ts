import { mixCost } from './lot-mix.ts'
import { isPriced, type PricedTerms, type Terms } from './offers.ts'

/** What any cutting plan says of its stock and its cost; stock of an offer is named by the offer's place in the list. */
interface AnyCut {
  readonly stock: readonly { readonly key: string; readonly count: number }[]
  readonly measure: 'money' | 'length' | 'area'
  readonly cost: number
  readonly lowerBound: number
  readonly gap: number
  /** Pieces that come out of it, together: m or m². */
  readonly piecesM?: number
  readonly piecesM2?: number
}

export interface CheapestCut<Cut> {
  readonly cut: Cut
  /** Lots to buy of each offer, in the order given: what is cut, or the seller's least order. */
  readonly lots: readonly number[]
}

/** Offers up to which every choice among them is tried: fifteen choices of four. */
const MOST_TRIED = 4

/**
 * Cutting from the offers that cost least with their carriage and least orders counted in.
 *
 * The cuts alone do not see what a trip costs, so they are laid out anew for every choice of offers. Whatever is best uses some choice, all of
 * it, so it costs at least what that choice's cuts cost and one trip of each: the least of these is the bound.
 */
export function cheapestCut<Cut extends AnyCut>(
  terms: readonly Terms[],
  cutFrom: (places: readonly number[]) => Cut,
): CheapestCut<Cut> {
  const all = terms.map((_, place) => place)
  const priced = terms.filter(isPriced)
  const isPlain = terms.every((one) => one.transportMinor === 0 && one.leastLots <= 1)
  if (isPlain || priced.length < terms.length) return withLots(cutFrom(all), terms)
  const whole = cutFrom(all)
  let best: CheapestCut<Cut> | null = null
  let cost = Number.POSITIVE_INFINITY
  let bound = Number.POSITIVE_INFINITY
  const tripsOf = (places: readonly number[]): number =>
    places.reduce((sum, place) => sum + (priced[place]?.transportMinor ?? 0), 0)
  const choices = choicesOf(all).map((places) => ({ places, trips: tripsOf(places) }))
  for (const { places, trips } of choices.toSorted((a, b) => a.trips - b.trips)) {
    // The cuts of a choice cost no less than those from all offers: with its trips it may be out before it is laid out.
    const least = moneyOf(whole) + trips
    if (least >= cost) {
      bound = Math.min(bound, least)
      break
    }
    const found = withLots(places.length === all.length ? whole : cutFrom(places), terms)
    // A choice that holds less than all of them together leaves a piece unmade: it is cheap for the wrong reason.
    if (madeBy(found.cut) < madeBy(whole) * (1 - SAME_SHARE)) continue
    const paid = found.lots.reduce((sum, lots, place) => sum + paidFor(lots, priced[place]), 0)
    bound = Math.min(bound, moneyOf(found.cut) + trips)
    if (paid >= cost) continue
    cost = paid
    best = found
  }
  if (best === null) return withLots(whole, terms)
  const lowerBound = Math.min(bound, cost)
  return {
    ...best,
    cut: { ...best.cut, measure: 'money', cost, lowerBound, gap: cost === 0 ? 0 : (cost - lowerBound) / cost },
  }
}

/** The least that the cuts cost: nothing where all stock is free and they were compared by their stuff. */
const moneyOf = ({ measure, lowerBound }: AnyCut): number => (measure === 'money' ? lowerBound : 0)

const SAME_SHARE = 1e-9
const madeBy = ({ piecesM = 0, piecesM2 = 0 }: AnyCut): number => piecesM + piecesM2

const paidFor = (lots: number, terms: PricedTerms | undefined): number =>
  terms === undefined ? 0 : mixCost(lots, terms)

/** Every choice of one or more; of many, each alone and all together. */
function choicesOf(all: readonly number[]): readonly (readonly number[])[] {
  if (all.length > MOST_TRIED) return [all, ...all.map((place) => [place])]
  return all.reduce<readonly (readonly number[])[]>(
    (choices, place) => [...choices, [place], ...choices.map((choice) => [...choice, place])],
    [],
  )
}

function withLots<Cut extends AnyCut>(cut: Cut, terms: readonly Terms[]): CheapestCut<Cut> {
  const taken = new Map(cut.stock.map(({ key, count }) => [key, count]))
  const lots = terms.map(({ leastLots }, place) => {
    const count = taken.get(String(place)) ?? 0
    return count === 0 ? 0 : Math.max(count, leastLots)
  })
  return { cut, lots }
}
