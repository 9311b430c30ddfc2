import { SAME_LENGTH_M, lotsFor, wholeModulesIn } from '../basics/count.ts'
import type { SheetPlan, SheetStock } from '../cutting/sheet-job.ts'
import type { Piece } from '../quantities/need.ts'
import { cheapestCut, type CheapestCut } from './cheapest-cut.ts'
import { sheetsOnce, type CuttingEffort } from './cut-memory.ts'
import type { Terms } from './offers.ts'

/** A cover that no sheet holds is made of equal parts, edge to edge, over the fewest sheets. */
export interface CoverParts {
  readonly along: number
  readonly across: number
}

/** Sheets of one size at hand for nothing. */
export type OwnedSheet = Pick<SheetStock, 'key' | 'lengthM' | 'widthM'> & { readonly available: number }

const fits = (sideM: number, { lengthM, widthM }: { readonly lengthM: number; readonly widthM: number }): boolean =>
  wholeModulesIn(lengthM, sideM) > 0 && wholeModulesIn(widthM, sideM) > 0

const parts = (sideM: number, { lotSize, widthM }: Terms): CoverParts => ({
  along: lotsFor(sideM - SAME_LENGTH_M, lotSize),
  across: lotsFor(sideM - SAME_LENGTH_M, widthM),
})

/** Into how many parts each square is cut: none where some sheet holds it whole, else the fewest that an offer allows. */
export function coverParts(sideM: number, terms: readonly Terms[], owned: readonly OwnedSheet[]): CoverParts {
  const sizes = [...owned, ...terms.map(({ lotSize, widthM }) => ({ lengthM: lotSize, widthM }))]
  if (sizes.some((size) => fits(sideM, size))) return { along: 1, across: 1 }
  return terms
    .map((one) => parts(sideM, one))
    .reduce((fewest, one) => (one.along * one.across < fewest.along * fewest.across ? one : fewest))
}

/** Squares, or their parts, from the sheets that cost least: what is owned first where it saves, then the offers with their carriage. */
export function cheapestSheets(
  { lengthM: sideM, count, label }: Piece,
  { along, across }: CoverParts,
  terms: readonly Terms[],
  owned: readonly OwnedSheet[],
  kerfM: number,
  effort?: CuttingEffort,
): CheapestCut<SheetPlan> {
  const pieces = [{ lengthM: sideM / along, widthM: sideM / across, count: count * along * across, label }]
  return cheapestCut(terms, (places) =>
    sheetsOnce(
      {
        pieces,
        sheets: [
          ...owned.map((one) => ({ ...one, priceMinor: null })),
          ...terms.flatMap(({ lotSize, widthM, priceMinor }, place) =>
            places.includes(place) ? [{ key: String(place), lengthM: lotSize, widthM, priceMinor }] : [],
          ),
        ],
        kerfM,
      },
      effort,
    ),
  )
}
