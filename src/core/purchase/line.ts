import { cited, counted, derive, sumOf, typed, type Derived } from '../basics/derived.ts'
import { lotsFor, wholeUp } from '../basics/count.ts'
import type { Offer } from '../plan/schema.ts'
import { isItemKey, itemOf, type ItemKey } from '../quantities/items.ts'
import type { Need } from '../quantities/need.ts'
import type { Terms } from './offers.ts'

/** One thing to ask one seller for. An item bought in several lots or from several sellers has one line for each. */
export interface PurchaseLine {
  readonly item: ItemKey
  readonly seller: Offer['seller']
  readonly sellerName: string
  readonly lotName: Offer['lotName']
  /** Width of a roll or sheet, m; 0 where it has none. */
  readonly widthM: number
  /** All needs of the item, over all its lines. */
  readonly needs: readonly Need[]
  readonly net: Derived
  readonly gross: Derived
  /** The part of the need that this line is bought for. */
  readonly covers: Derived
  /** Running length of a roll that the pieces take, where the item comes from a roll. */
  readonly run?: Derived<'m'>
  readonly lotSize: Derived
  readonly lots: Derived<'piece'>
  readonly bought: Derived
  readonly surplus: Derived
  readonly offerId: string | null
  readonly price: Derived<'money'> | null
  readonly carriage: Derived<'money'> | null
  readonly cost: Derived<'money'> | null
}

/** Net and gross of an item over all its needs. */
export interface ItemTotal {
  readonly item: ItemKey
  readonly needs: readonly Need[]
  readonly net: Derived
  readonly gross: Derived
}

/** All needs of an item together, net and with waste, in the item's unit. */
export function itemTotal(item: ItemKey, needs: readonly Need[]): ItemTotal {
  const [first] = needs
  const args = argsOf(item)
  if (first !== undefined && needs.length === 1) return { item, needs, net: first.net, gross: first.gross }
  return {
    item,
    needs,
    net: sumOf(
      'buy.net',
      itemOf(item).unit,
      needs.map((one) => one.net),
      { args },
    ),
    gross: sumOf(
      'buy.gross',
      itemOf(item).unit,
      needs.map((one) => one.gross),
      { args },
    ),
  }
}

type Args = Readonly<Record<string, string>>

/** The name of an item for a message; what no list knows is “other things”. */
export const argsOf = (item: string): Args => ({ item: isItemKey(item) ? `item.${item}` : 'item.other' })

/** Lots taken of one offer. */
interface Pick {
  readonly terms: Terms
  readonly lots: number
}

/** Lines of an item bought by dividing amounts: the first offers are used up whole, the last covers what they leave. */
export const mixLines = (total: ItemTotal, picks: readonly Pick[]): PurchaseLine[] =>
  inTurn(total, total.gross, picks, (terms, count, rest, size, last) =>
    lotsOf(total.item, terms, count, last ? rest : null, size),
  )

/** What the cuts say beyond the lots of each offer. */
export interface CutFacts {
  /** Amount that comes out of what is owned already, in the item's unit. */
  readonly owned: number
  /** No plan takes fewer lots; null where there are several offers, or lots cost nothing. */
  readonly leastLots: number | null
}

/** Lines of an item whose lots were found by laying out the cuts. */
export function cutLines(
  total: ItemTotal,
  picks: readonly Pick[],
  { owned, leastLots }: CutFacts,
  areaOf?: (terms: Terms) => AreaFrom,
): PurchaseLine[] {
  const args = argsOf(total.item)
  const g = total.gross
  const toBuy =
    owned === 0
      ? g
      : derive(
          'buy.after-owned',
          g.unit,
          'max(g − o, 0)',
          { g, o: counted('buy.owned', g.unit, owned, args) },
          (of) => Math.max(of.g - of.o, 0),
          { args },
        )
  const lotsFrom: LotsFrom = ({ leastLots: order }, count) =>
    leastLots === null || count <= order
      ? counted('buy.lots-cut', 'piece', count, args)
      : derive(
          'buy.lots-cut',
          'piece',
          'b + e',
          {
            b: counted('buy.lots-bound', 'piece', leastLots, args),
            e: counted('buy.lots-open', 'piece', count - leastLots, args),
          },
          (of) => of.b + of.e,
          { args },
        )
  return inTurn(total, toBuy, picks, lotsFrom, areaOf)
}

type AreaFrom = (lots: Derived<'piece'>, size: Derived<'m'>) => Derived<'m2'>
type LotsFrom = (terms: Terms, count: number, rest: Derived, size: Derived, last: boolean) => Derived<'piece'>

/** One line after the other: each covers what it brings, the last whatever is left. */
function inTurn(
  total: ItemTotal,
  toBuy: Derived,
  picks: readonly Pick[],
  lotsFrom: LotsFrom,
  areaOf?: (terms: Terms) => AreaFrom,
): PurchaseLine[] {
  const used = picks.filter((pick) => pick.lots > 0)
  const args = argsOf(total.item)
  let rest = toBuy
  return used.map(({ terms, lots: count }, at) => {
    const last = at === used.length - 1
    const g = rest
    const line = lineFor(
      total,
      terms,
      (bought) =>
        last ? g : derive('buy.covers', g.unit, 'min(g, b)', { g, b: bought }, (of) => Math.min(of.g, of.b), { args }),
      (size) => lotsFrom(terms, count, g, size, last),
      areaOf?.(terms),
    )
    rest = derive('buy.rest', g.unit, 'g − c', { g, c: line.covers }, (of) => of.g - of.c, { args })
    return line
  })
}

/** Whole lots: worked out from the need where that decides them, else the seller's least order, else the cheapest mix. */
function lotsOf(item: ItemKey, terms: Terms, count: number, covers: Derived | null, size: Derived): Derived<'piece'> {
  const args = argsOf(item)
  if (covers !== null && lotsFor(covers.value, terms.lotSize) === count)
    return derive('buy.lots', 'piece', 'ceil(g / s)', { g: covers, s: size }, (of) => wholeUp(of.g / of.s), { args })
  if (covers !== null && count === terms.leastLots)
    return typed('buy.least', 'piece', count, `offers.${terms.id ?? ''}.leastLots`, args)
  return counted('buy.lots-mix', 'piece', count, args)
}

/** A line from its terms, how its lots follow from the size of one, and what they cover. */
export function lineFor(
  total: ItemTotal,
  terms: Terms,
  coversFrom: (bought: Derived) => Derived,
  lotsFrom: (size: Derived) => Derived<'piece'>,
  areaFrom?: AreaFrom,
): PurchaseLine {
  const { item, needs, net, gross } = total
  const args = argsOf(item)
  const field = terms.id === null ? null : `offers.${terms.id}`
  const unit = areaFrom === undefined ? gross.unit : 'm'
  const lotSize =
    field === null
      ? cited('buy.lot-size', unit, terms.lotSize, 'common-practice', args)
      : typed('buy.lot-size', unit, terms.lotSize, `${field}.lotSize`, args)
  const lots = lotsFrom(lotSize)
  const bought =
    areaFrom?.(lots, lotSize as Derived<'m'>) ??
    derive('buy.bought', gross.unit, 'n · s', { n: lots, s: lotSize }, (of) => of.n * of.s, { args })
  const covers = coversFrom(bought)
  const price =
    terms.priceMinor === null || field === null
      ? null
      : typed('buy.price', 'money', terms.priceMinor, `${field}.priceMinor`, args)
  const carriage = price === null || field === null ? null : carriageOf(terms, field, lots, args)
  return {
    item,
    seller: terms.seller,
    sellerName: terms.sellerName,
    lotName: terms.lotName,
    widthM: terms.widthM,
    needs,
    net,
    gross,
    covers,
    lotSize,
    lots,
    bought,
    surplus: derive('buy.surplus', gross.unit, 'b − g', { b: bought, g: covers }, (of) => of.b - of.g, { args }),
    offerId: terms.id,
    price,
    carriage,
    cost: price === null ? null : costOf(lots, price, carriage, args),
  }
}

function carriageOf(terms: Terms, field: string, lots: Derived<'piece'>, args: Args): Derived<'money'> | null {
  if (terms.transportMinor === 0) return null
  const trip = typed('buy.trip-price', 'money', terms.transportMinor, `${field}.transportMinor`, args)
  if (terms.tripLots === 0) return trip
  const load = typed('buy.trip-lots', 'piece', terms.tripLots, `${field}.tripLots`, args)
  return derive(
    'buy.carriage',
    'money',
    'ceil(n / q) · t',
    { n: lots, q: load, t: trip },
    (of) => wholeUp(of.n / of.q) * of.t,
    {
      args,
    },
  )
}

const costOf = (
  lots: Derived<'piece'>,
  price: Derived<'money'>,
  carriage: Derived<'money'> | null,
  args: Args,
): Derived<'money'> =>
  carriage === null
    ? derive('buy.cost', 'money', 'n · p', { n: lots, p: price }, (of) => of.n * of.p, { args })
    : derive('buy.cost', 'money', 'n · p + f', { n: lots, p: price, f: carriage }, (of) => of.n * of.p + of.f, { args })
