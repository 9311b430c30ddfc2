/** A list of pieces of one section, the lengths it is sold or owned in, and the saw. */
export interface LengthJob {
  readonly pieces: readonly LengthPiece[]
  readonly stock: readonly LengthStock[]
  /** What one saw cut takes, m. */
  readonly kerfM: number
  /** Least offcut worth keeping, m. */
  readonly keepM: number
  /** Search steps before an unproven plan is handed over with its gap; steps, not time, so every device agrees. */
  readonly budgetNodes?: number
  /** Search steps spent on fewer patterns, set-ups and longer offcuts at the same cost; 0 when only the cost matters. */
  readonly tidyNodes?: number
}

export interface LengthPiece {
  readonly lengthM: number
  readonly count: number
  readonly label?: string
}

/** One length of stock. With `available`, no more than that many exist; such a one without a price is owned and free. */
export interface LengthStock {
  readonly key: string
  readonly lengthM: number
  /** Price of one, minor units; null when not known. */
  readonly priceMinor: number | null
  readonly available?: number
}

/** What stands in the way; the rest of the list is cut all the same. */
export type CuttingProblem =
  | { readonly kind: 'piece-not-a-size'; readonly piece: number }
  | { readonly kind: 'count-not-whole'; readonly piece: number }
  | { readonly kind: 'stock-not-a-size'; readonly stock: number }
  | { readonly kind: 'price-not-whole'; readonly stock: number }
  | { readonly kind: 'kerf-not-a-size' }
  | { readonly kind: 'keep-not-a-size' }
  | { readonly kind: 'no-stock' }
  | { readonly kind: 'piece-too-long'; readonly piece: number; readonly lengthM: number; readonly longestM: number }
  | { readonly kind: 'stock-runs-out'; readonly lengthM: number; readonly missing: number }
  /** Nothing is wrong, but cost is compared by length bought, because this stock has no price. */
  | { readonly kind: 'price-missing'; readonly stock: number }

export interface CuttingPlan {
  readonly patterns: readonly CutPattern[]
  /** What is taken of each stock, in the order given. */
  readonly stock: readonly { readonly key: string; readonly count: number; readonly costMinor: number | null }[]
  /** Offcuts worth keeping, longest first. */
  readonly offcuts: readonly { readonly lengthM: number; readonly count: number }[]
  readonly boughtM: number
  readonly piecesM: number
  readonly kerfM: number
  readonly keptM: number
  /** Offcuts too short to keep, m; bought = pieces + kerf + kept + waste. */
  readonly wasteM: number
  /** What was made least: money in minor units, or metres of stock where a price is missing or nothing costs anything. */
  readonly measure: 'money' | 'length'
  readonly cost: number
  /** No way of cutting costs less. */
  readonly lowerBound: number
  /** What might still be saved, as a share of the cost: 0 when proven. */
  readonly gap: number
  readonly method:
    | 'linear-bound'
    | 'remainder-search'
    | 'bar-by-bar-search'
    | 'branching'
    | 'not-proven'
    | 'nothing-to-cut'
  /** Changes of the saw stop when the patterns are cut in the order given, the first setting counted. */
  readonly setUps: number
  /** Whether no plan of this cost has fewer different patterns; false when the search ended before it knew. */
  readonly fewestPatterns: boolean
  readonly problems: readonly CuttingProblem[]
}

/** One way to cut a bar, done `times` over. */
export interface CutPattern {
  readonly stockKey: string
  readonly stockLengthM: number
  readonly times: number
  /** In cutting order from the end the tape hooks on; `labels` has one entry a bar, in order. */
  readonly pieces: readonly { readonly lengthM: number; readonly labels: readonly string[] }[]
  /**
   * Where to mark, running measure in m from the hooked end: the far end of each piece, each after the first with the
   * saw cuts before it. The saw runs beyond the mark. A last piece that ends with the bar needs no mark.
   */
  readonly marksM: readonly number[]
  /** What is left after the last cut; 0 when the last cut takes it all. */
  readonly offcutM: number
  readonly kept: boolean
  /** What the saw takes from one bar, m. */
  readonly kerfM: number
}
