import type { LayoutChoices } from './layout-choices.ts'

/** How deep and how thick the courses are: counted from the footing up, bed joint first, then unit. */
export interface CoursePlan {
  readonly unitHeightM: number
  readonly bedM: number
  /** The bed on the footing; thicker than the others where it takes up a levelling difference. */
  readonly firstBedM: number
  readonly count: number
  /** Footing to ground; the ground is z = 0. */
  readonly belowM: number
  /** Ground to the top of the last course. */
  readonly aboveM: number
  /** Whole courses under the sill: the highest course boundary at or below the hearth. */
  readonly sillCourses: number
  /** Whole courses under the head: the lintel lies in the bed joint on top of this course. */
  readonly headCourses: number
}

export type Head =
  | { readonly kind: 'lintel'; readonly bearingM: number; readonly courses: number }
  | { readonly kind: 'steel'; readonly bearingM: number }
  | { readonly kind: 'corbel' }
  | { readonly kind: 'arch'; readonly riseM: number }

/** One hollow cell, open through the height: along the unit's length from its low end, centred on its width. */
export interface UnitCell {
  readonly fromM: number
  readonly lengthM: number
  readonly widthM: number
}

export interface WallUnit {
  readonly lengthM: number
  readonly widthM: number
  readonly heightM: number
  readonly cells: readonly UnitCell[]
  readonly voidFraction: number
}

export interface JointRange {
  readonly minM: number
  readonly usualM: number
  readonly maxM: number
}

/** How far below course 1 the wall reaches at a place of the plan: 0, or −1 for one extra course, −2 for two. */
export type LowestCourseAt = (xM: number, yM: number) => number

export interface LayoutRequest {
  readonly chambers: number
  readonly clearSideM: number
  readonly unit: WallUnit
  /** Single leaf: the wall is as thick as the unit is wide. One-brick: as thick as the unit is long. */
  readonly leaf: 'single' | 'one-brick'
  readonly bond: 'stretcher' | 'english' | 'header'
  readonly perpend: JointRange
  readonly courses: CoursePlan
  readonly opening: { readonly widthM: number; readonly head: Head }
  /** What one cut takes away: the saw's kerf, or what a bolster spoils. */
  readonly cutLossM: number
  /** Fewest units bought (the default) or fewest cuts: they are different layouts. */
  readonly sought?: 'units' | 'cuts'
  /** What a deep search chose, so that every phone lays the same wall. */
  readonly turned?: LayoutChoices
  readonly lowestCourseAt?: LowestCourseAt
}

export type WallId = 'front' | 'back' | 'left' | 'right' | `divider-${number}`

/** `header` is a whole unit laid across a one-brick wall; `closer` a unit split along its length. */
export type PieceKind = 'whole' | 'header' | 'half' | 'cut' | 'closer'

export interface PlacedUnit {
  readonly id: number
  /** 1 is the lowest level course; 0, −1 … are the extra courses of a stepped footing. */
  readonly course: number
  readonly wall: WallId
  /** Low corner. */
  readonly xM: number
  readonly yM: number
  readonly zM: number
  /** Size as placed, along x, y and z. */
  readonly dxM: number
  readonly dyM: number
  readonly dzM: number
  /** 0 where the unit's own length lies along x, 90 where it lies along y. */
  readonly turn: 0 | 90
  readonly kind: PieceKind
  /** What is left of the length (of the width for a closer) after the cut; null for a whole unit. */
  readonly cutLengthM: number | null
  /** For each cell of the unit: does it stand on a cell of the course below (or on the footing), so that fill goes through? */
  readonly cellsOpen: readonly boolean[]
}

export interface Box {
  readonly xM: number
  readonly yM: number
  readonly zM: number
  readonly dxM: number
  readonly dyM: number
  readonly dzM: number
}

export interface PlacedLintel extends Box {
  readonly kind: 'lintel' | 'steel' | 'arch'
  /** Chambers it spans, from 1; more than one where neighbouring lintels would meet. */
  readonly chambers: readonly number[]
  readonly bearingLeftM: number
  readonly bearingRightM: number
  /** Steel lies in the bed joint and takes no volume of its own here. */
  readonly volumeM3: number
}

export interface PlacedOpening {
  readonly chamber: number
  readonly xM: number
  readonly widthM: number
  /** Course boundary the opening starts from; what lies under the hearth inside it is filled with hearth. */
  readonly sillM: number
  /** Top of the last course beside the opening: the level set out on the gauge rod. */
  readonly headM: number
  /** Underside of the lintel: head plus the bed joint the lintel lies on. */
  readonly undersideM: number
  /** Hearth (z = 0) to the underside. */
  readonly clearHeightM: number
  /** The empty space as boxes: one, or a narrowing pile of them under a corbelled head. */
  readonly boxes: readonly Box[]
  readonly volumeM3: number
  readonly arch: ArchHead | null
  readonly corbel: CorbelHead | null
}

export interface ArchHead {
  readonly spanM: number
  readonly riseM: number
  /** Radius of the soffit, for the centring. */
  readonly radiusM: number
  /** The centre lies this far below the springing. */
  readonly centreBelowSpringingM: number
  readonly halfAngleDeg: number
  readonly voussoirs: number
  readonly ringDepthM: number
  readonly jointAtSoffitM: number
  readonly jointAtBackM: number
  /** Mortar of the ring and of the bricks cut to fit round it; not part of the layout's mortar. */
  readonly mortarM3: number
}

export interface CorbelHead {
  readonly stepM: number
  readonly steps: number
  readonly stepLimitM: number
  readonly bridgedM: number
}

export interface LaidCourse {
  readonly index: number
  readonly zBottomM: number
  readonly zTopM: number
  /** Ids of its units, from first up to but not including end, in `units`. */
  readonly firstUnit: number
  readonly endUnit: number
  /** Courses with the same number are laid exactly alike. */
  readonly pattern: number
}

export interface CutCount {
  readonly lengthM: number
  readonly count: number
  /** Cut across the length, or split along it (closers). */
  readonly way: 'across' | 'along'
}

/** How one bought unit is cut: the pieces out of it, and how many units are cut so. */
export interface CutPattern {
  readonly way: 'across' | 'along'
  readonly piecesM: readonly number[]
  readonly units: number
}

export interface LayoutCounts {
  /** Pieces that lie in courses: as many as there are placed units. */
  readonly laid: number
  readonly whole: number
  readonly cuts: readonly CutCount[]
  readonly cutPieces: number
  readonly cutPatterns: readonly CutPattern[]
  /** Bricks of the arches, which lie in no course: ring and cut to fit round it. */
  readonly archUnits: number
  readonly fittedUnits: number
  /** Whole units plus units bought to be cut; before breakage. */
  readonly bought: number
  /** Units saved because offcuts are used: cut pieces less units bought to be cut. */
  readonly savedByPairing: number
  /** No legal layout of this plan can be built from fewer. */
  readonly lowerBound: number
  readonly gap: number
}

export interface WallSolid extends Box {
  readonly wall: WallId
}

export type Remedy =
  | { readonly kind: 'clear-side'; readonly clearSideM: number }
  | { readonly kind: 'opening-width'; readonly widthM: number }
  | { readonly kind: 'bond'; readonly bond: LayoutRequest['bond']; readonly leaf: LayoutRequest['leaf'] }

interface FindingPlace {
  readonly wall: WallId
  /** Every course in which it happens at this place. */
  readonly courses: readonly number[]
  readonly xM: number
  readonly yM: number
  readonly remedy?: Remedy
}

export type LayoutFinding =
  | (FindingPlace & { readonly kind: 'lap-short'; readonly lapM: number; readonly neededM: number })
  | (FindingPlace & { readonly kind: 'piece-short'; readonly lengthM: number; readonly neededM: number })
  | (FindingPlace & {
      readonly kind: 'joint-out-of-range'
      readonly widthM: number
      readonly minM: number
      readonly maxM: number
    })
  | (FindingPlace & {
      /** A lintel deeper than a course ends in one joint as tall as itself; no bond can change that. */
      readonly kind: 'lintel-end'
      readonly deepCourses: number
    })
  | (FindingPlace & {
      /** Between two openings no arrangement of the courses laps: narrower than the one or wider than the other it would. */
      readonly kind: 'pillar-unbonded'
      readonly pillarM: number
      readonly mostM: number | null
      readonly leastM: number
      readonly remedies: readonly Remedy[]
    })
  | (FindingPlace & { readonly kind: 'bearing-short'; readonly bearingM: number; readonly neededM: number })
  | { readonly kind: 'opening-too-wide'; readonly widthM: number; readonly widestM: number; readonly remedy?: Remedy }
  | { readonly kind: 'head-above-wall'; readonly neededCourses: number; readonly availableCourses: number }
  | { readonly kind: 'head-needs-brick'; readonly leaf: LayoutRequest['leaf'] }
  | { readonly kind: 'corbel-too-far'; readonly projectionM: number; readonly limitM: number }
  | {
      readonly kind: 'arch-joint'
      readonly soffitM: number
      readonly backM: number
      readonly minM: number
      readonly maxM: number
    }
  | { readonly kind: 'arch-rise'; readonly riseM: number; readonly minM: number; readonly maxM: number }
  | {
      readonly kind: 'bond-unsuitable'
      readonly bond: LayoutRequest['bond']
      readonly laidAs: LayoutRequest['bond']
      readonly remedy?: Remedy
    }

export interface LayoutTrace {
  /** Junction schemes and starts compared. */
  readonly tried: number
  readonly choices: LayoutChoices
  /** What was made small, in this order. */
  readonly order: readonly ('breaches' | 'bought' | 'cutPieces' | 'cutLengths' | 'lap')[]
  readonly breaches: number
  readonly cutLengths: number
  readonly smallestLapM: number
  readonly lapNeededM: number
}

export interface Layout {
  readonly lengthM: number
  readonly depthM: number
  readonly thicknessM: number
  readonly bond: LayoutRequest['bond']
  readonly courses: readonly LaidCourse[]
  readonly units: readonly PlacedUnit[]
  readonly lintels: readonly PlacedLintel[]
  readonly openings: readonly PlacedOpening[]
  readonly walls: readonly WallSolid[]
  readonly counts: LayoutCounts
  readonly joints: {
    readonly bedM: number
    readonly perpendMinM: number
    readonly perpendMaxM: number
    readonly perpends: number
  }
  readonly findings: readonly LayoutFinding[]
  readonly wallVolumeM3: number
  readonly unitVolumeM3: number
  readonly mortarM3: number
  /** Cells that stand on a cell or on the footing: what can be filled, before compaction. */
  readonly fillableVoidM3: number
  readonly trace: LayoutTrace
}
