import { type CutPattern } from './length-job.ts'
import { type CutUp, type SheetPiece } from './sheet-job.ts'

/** Rectangles to be cut from a roll of mesh or cloth. */
export interface RollJob {
  readonly pieces: readonly SheetPiece[]
  readonly roll: Roll
  /** What one cut takes, m; 0 for snips. */
  readonly kerfM: number
  /** Lap of the strips of a piece that is wider than the roll both ways; without it such a piece is not made. */
  readonly lapM?: number
  /** Search steps, not time, so every device agrees. */
  readonly budgetNodes?: number
}

export interface Roll {
  readonly key: string
  readonly widthM: number
  /** Cut to length at the shop in whole steps of so much, or only whole rolls of one length. */
  readonly sold: { readonly by: 'length'; readonly stepM: number } | { readonly by: 'roll'; readonly lengthM: number }
  /** Price of one step or of one roll, minor units; null when not known. */
  readonly priceMinor: number | null
}

export type RollProblem =
  | { readonly kind: 'piece-not-a-size'; readonly piece: number }
  | { readonly kind: 'count-not-whole'; readonly piece: number }
  | { readonly kind: 'piece-too-large'; readonly piece: number; readonly lengthM: number; readonly widthM: number }
  | { readonly kind: 'roll-not-a-size' }
  | { readonly kind: 'price-not-whole' }
  | { readonly kind: 'kerf-not-a-size' }
  | { readonly kind: 'lap-not-a-size' }
  /** Wider than the roll whichever way it lies: it can be made of strips, which `strips` describes, once a lap is given. */
  | { readonly kind: 'needs-joining'; readonly piece: number; readonly strips: number }

/** A piece made of strips side by side, each lapping the next. */
export interface JoinedPiece {
  readonly piece: number
  readonly count: number
  readonly strips: number
  readonly stripLengthM: number
  /** The last strip may be narrower than the roll. */
  readonly lastStripWidthM: number
  readonly lapM: number
}

export interface RollPlan {
  /** Lengths cut across the roll, in order from its end, each cut up further. */
  readonly sections: readonly RollSection[]
  /** The roll, or each roll, as one strip: its sections in cutting order and where to mark them in running measure. */
  readonly rolls: readonly CutPattern[]
  readonly joined: readonly JoinedPiece[]
  /** Length cut off the roll or rolls, cuts between the sections included. */
  readonly usedM: number
  readonly boughtM: number
  /** Steps or rolls bought. */
  readonly lots: number
  readonly costMinor: number | null
  readonly piecesM2: number
  /** Bought area over the area of the pieces, less one. */
  readonly wasteShare: number
  /** No way of cutting these pieces takes less length, or lets less be bought. */
  readonly leastUsedM: number
  readonly leastBoughtM: number
  /** What might still be saved of what is bought, as a share: 0 when proven. */
  readonly gap: number
  readonly method: 'linear-bound' | 'not-proven' | 'nothing-to-cut'
  readonly problems: readonly RollProblem[]
}

export interface RollSection extends CutUp {
  readonly lengthM: number
  readonly times: number
}
