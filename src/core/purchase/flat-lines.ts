import { counted, derive, typed, cited, type Derived } from '../basics/derived.ts'
import { lotsFor, wholeModulesIn, wholeUp } from '../basics/count.ts'
import type { Piece } from '../quantities/need.ts'
import { itemOf } from '../quantities/items.ts'
import { fitInRoll, fitInSheet, rollRunM } from './flat.ts'
import { lineFor, type ItemTotal, type PurchaseLine } from './line.ts'
import { mixCost } from './lot-mix.ts'
import { isPriced, type Terms } from './offers.ts'

/**
 * Squares of mesh from rolls, or of covers from sheets: the one offer that costs least (or, without prices, takes the least stuff).
 * A roll sold by the metre is one running length; whole rolls and sheets each give so many whole squares.
 */
export function flatLines(total: ItemTotal, offers: readonly Terms[], kerfM: number): PurchaseLine[] {
  const [piece] = total.needs.flatMap((one) => one.pieces ?? [])
  if (piece === undefined) return []
  const choices = offers.map((terms) => ({ terms, ...lotsOf(total, piece, terms, kerfM) }))
  const worth = ({ terms, lots }: { terms: Terms; lots: Derived<'piece'> }) =>
    isPriced(terms) ? mixCost(lots.value, terms) : lots.value * terms.lotSize * terms.widthM
  const best = choices.reduce((least, one) => (worth(one) < worth(least) ? one : least))
  const { terms, lots, run } = best
  const args = { item: `item.${total.item}` }
  const width = widthOf(total, terms)
  const line = lineFor(
    total,
    terms,
    () => total.gross,
    () => lots,
    (n, size) =>
      derive('buy.bought-area', 'm2', 'n · s · b', { n, s: size, b: width }, (of) => of.n * of.s * of.b, { args }),
  )
  return [run === null ? line : { ...line, run }]
}

const widthOf = ({ item }: ItemTotal, terms: Terms): Derived<'m'> => {
  const args = { item: `item.${item}` }
  return terms.id === null
    ? cited('buy.width', 'm', terms.widthM, 'common-practice', args)
    : typed('buy.width', 'm', terms.widthM, `offers.${terms.id}.widthM`, args)
}

const sizeOf = ({ item }: ItemTotal, terms: Terms): Derived<'m'> => {
  const args = { item: `item.${item}` }
  return terms.id === null
    ? cited('buy.lot-length', 'm', terms.lotSize, 'common-practice', args)
    : typed('buy.lot-length', 'm', terms.lotSize, `offers.${terms.id}.lotSize`, args)
}

function lotsOf(
  total: ItemTotal,
  piece: Piece,
  terms: Terms,
  kerfM: number,
): { lots: Derived<'piece'>; run: Derived<'m'> | null } {
  const args = { item: `item.${total.item}` }
  const waste = total.needs[0]?.waste ?? cited('waste.none', '1', 0, 'common-practice')
  const N = counted('buy.squares', 'piece', piece.count, args)
  const s = counted('buy.square-side', 'm', piece.lengthM, args)
  if (itemOf(total.item).cut === 'sheets') {
    const { perSheet, parts } = fitInSheet(piece.lengthM, terms.lotSize, terms.widthM, kerfM)
    const q = counted('buy.parts', '1', parts, args)
    const k = counted('buy.per-sheet', '1', perSheet, args)
    const lots = derive('buy.sheets', 'piece', 'ceil(N · q / k)', { N, q, k }, (of) => lotsFor(of.N * of.q, of.k), {
      args,
    })
    return { lots: atLeast(lots, terms, args), run: null }
  }
  const fit = fitInRoll(piece.lengthM, terms.widthM)
  const run = runOf(N, s, fit, args)
  const gross = derive('buy.run-gross', 'm', 'R · (1 + w)', { R: run, w: waste }, (of) => of.R * (1 + of.w), { args })
  const inOneRoll = wholeModulesIn(terms.lotSize, piece.lengthM)
  if (terms.lotName === 'roll' && inOneRoll > 0) {
    const rows = derive('buy.rows', 'piece', 'ceil(R / s)', { R: gross, s }, (of) => wholeUp(of.R / of.s), { args })
    const k = counted('buy.rows-per-roll', '1', inOneRoll, args)
    const lots = derive('buy.rolls', 'piece', 'ceil(r / k)', { r: rows, k }, (of) => wholeUp(of.r / of.k), { args })
    return { lots: atLeast(lots, terms, args), run: gross }
  }
  const size = sizeOf(total, terms)
  const lots = derive('buy.lots', 'piece', 'ceil(R / s)', { R: gross, s: size }, (of) => lotsFor(of.R, of.s), { args })
  return { lots: atLeast(lots, terms, args), run: gross }
}

const runOf = (
  N: Derived<'piece'>,
  s: Derived<'m'>,
  fit: ReturnType<typeof fitInRoll>,
  args: Readonly<Record<string, string>>,
) => {
  if (fit.across > 0) {
    const k = counted('buy.across', '1', fit.across, args)
    return derive('buy.run', 'm', 'ceil(N / k) · s', { N, k, s }, (of) => rollRunM(of.N, of.s, fit), { args })
  }
  const k = counted('buy.strips', '1', fit.strips, args)
  return derive('buy.run', 'm', 'N · k · s', { N, k, s }, (of) => of.N * of.k * of.s, { args })
}

const atLeast = (lots: Derived<'piece'>, terms: Terms, args: Readonly<Record<string, string>>): Derived<'piece'> =>
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
