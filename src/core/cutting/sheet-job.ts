/** Rectangles to be cut by straight cuts from edge to edge, and the sheets there are. */
export interface SheetJob {
  readonly pieces: readonly SheetPiece[]
  readonly sheets: readonly SheetStock[]
  /** What one saw cut takes, m; 0 for snips. */
  readonly kerfM: number
  /** Search steps, not time, so every device agrees. */
  readonly budgetNodes?: number
}

export interface SheetPiece {
  readonly lengthM: number
  readonly widthM: number
  readonly count: number
  readonly label?: string
  /** Whether it may be cut a quarter turned; yes if left out. */
  readonly turns?: boolean
}

/** One size of sheet. With `available`, no more than that many exist; such a one without a price is owned and free. */
export interface SheetStock {
  readonly key: string
  readonly lengthM: number
  readonly widthM: number
  /** Price of one, minor units; null when not known. */
  readonly priceMinor: number | null
  readonly available?: number
}

/** What stands in the way; the rest of the list is cut all the same. */
export type SheetProblem =
  | { readonly kind: 'piece-not-a-size'; readonly piece: number }
  | { readonly kind: 'count-not-whole'; readonly piece: number }
  | { readonly kind: 'sheet-not-a-size'; readonly sheet: number }
  | { readonly kind: 'price-not-whole'; readonly sheet: number }
  | { readonly kind: 'kerf-not-a-size' }
  | { readonly kind: 'no-stock' }
  | { readonly kind: 'piece-too-large'; readonly piece: number; readonly lengthM: number; readonly widthM: number }
  | { readonly kind: 'stock-runs-out'; readonly piece: number; readonly missing: number }
  /** Nothing is wrong, but cost is compared by area bought, because this sheet has no price. */
  | { readonly kind: 'price-missing'; readonly sheet: number }

export interface SheetPlan {
  readonly sheets: readonly CutSheet[]
  /** What is taken of each sheet, in the order given. */
  readonly stock: readonly { readonly key: string; readonly count: number; readonly costMinor: number | null }[]
  readonly boughtM2: number
  readonly piecesM2: number
  readonly kerfM2: number
  /** Bought = pieces + kerf + offcuts. */
  readonly offcutsM2: number
  /** What was made least: money in minor units, or m² of sheet where a price is missing. */
  readonly measure: 'money' | 'area'
  readonly cost: number
  /** No way of guillotine cutting costs less. */
  readonly lowerBound: number
  /** What might still be saved, as a share of the cost: 0 when proven. */
  readonly gap: number
  readonly method: SheetMethod
  readonly problems: readonly SheetProblem[]
}

export type SheetMethod = 'linear-bound' | 'remainder-search' | 'branching' | 'not-proven' | 'nothing-to-cut'

/** One way to cut a sheet, done `times` over. */
export interface CutSheet extends CutUp {
  readonly key: string
  readonly lengthM: number
  readonly widthM: number
  readonly times: number
}

/** A rectangle cut up: the cuts in order, and where everything lay. */
export interface CutUp {
  readonly cuts: readonly SheetCut[]
  readonly pieces: readonly PlacedPiece[]
  readonly offcuts: readonly PlacedPart[]
  readonly kerfM2: number
}

/**
 * One part laid on the bench and cut right through at each mark, all in the same direction. Parts are named by where they
 * come from: '' is the whole sheet, '2' its second part from the origin, '2.1' the first part of that.
 */
export interface SheetCut {
  readonly part: string
  readonly lengthM: number
  readonly widthM: number
  /** Marks are measured along this side from the corner at the origin; the saw runs beyond each mark. */
  readonly along: 'length' | 'width'
  readonly marksM: readonly number[]
}

/** A rectangle in its sheet: the corner nearest the origin, and the sides as they lie. */
export interface PlacedPart {
  readonly part: string
  readonly xM: number
  readonly yM: number
  readonly lengthM: number
  readonly widthM: number
}

export interface PlacedPiece extends PlacedPart {
  /** Place in the job's list, or of a strip in the list it came from. */
  readonly piece: number
  readonly turned: boolean
  /** One a sheet, in order. */
  readonly labels: readonly string[]
}
