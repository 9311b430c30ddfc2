import type { Derived } from '../../basics/derived.ts'

/**
 * A drawing as plain data: shapes in model metres, the way a mason would ink them. What carries a figure is in metres and true to scale;
 * what stands beside the model (dimension lines, levels, tape marks) names a side and a lane, and the paper decides the distance.
 * Words are message keys; figures are numbers: the renderer writes both in the reader's language and units.
 */
export interface Drawing {
  /** The part of the model that must be seen, metres: x to the right, y upward on the paper. */
  readonly box: Box
  readonly shapes: readonly Shape[]
  /** Message key of the spoken label, with its figures. */
  readonly label: { readonly key: string; readonly args: Readonly<Record<string, Figure | number | string>> }
}

export interface Box {
  readonly x0M: number
  readonly y0M: number
  readonly x1M: number
  readonly y1M: number
}

export type Point = readonly [xM: number, yM: number]

/** A length to be written in the reader's units. */
export interface Figure {
  readonly lengthM: number
  /** Written with its unit, because it is not in the unit of the drawing's corner. */
  readonly alone?: true
}

/** Line and fill conventions: cut and outline heavy, seen edges middle, joints and hidden lines thin. */
export type Ink =
  | 'outline'
  | 'edge'
  | 'thin'
  | 'hidden'
  | 'extension'
  | 'masonry'
  | 'concrete'
  | 'concrete-hidden'
  | 'earth'
  | 'fill'
  | 'hearth'
  | 'wood'
  | 'wood-face'
  | 'mesh'
  | 'fish'
  | 'unit'
  | 'unit-cut'
  | 'unit-ghost'
  | 'unit-next'
  | 'unit-laid'
  | 'lintel'
  | 'cell'
  | 'hollow'
  | 'offcut'
  | 'ground'
  | 'string'
  | 'diagonal'
  | 'board'
  | 'veil'
  | 'face'
  | 'face-shaded'
  | 'top'
  | 'steel'
  | 'veil-shaded'
  | 'inner'
  | 'inner-shaded'
  | 'shade'
  | 'lintel-veil'
  | 'unit-chosen'
  | 'mesh-cut'
  | 'edge-open'
  | 'string-2'

export type Side = 'top' | 'bottom' | 'left' | 'right'

export type Shape =
  /** Closed rings; a ring inside another is a hole. `tag` names the thing that a tap tells about. */
  | {
      readonly kind: 'area'
      readonly ink: Ink
      readonly rings: readonly (readonly Point[])[]
      readonly tag?: string
      /** In a drawing that builds up: the course from which it is seen, and the last one where something comes over it. */
      readonly shown?: { readonly fromCourse: number; readonly toCourse?: number }
    }
  | { readonly kind: 'line'; readonly ink: Ink; readonly points: readonly Point[] }
  /** Many lines of one ink, drawn as one. */
  | { readonly kind: 'lines'; readonly ink: Ink; readonly lines: readonly (readonly Point[])[] }
  /** A dimension along one axis, outside the model in a lane of a side, or inside it at `atM`. */
  | {
      readonly kind: 'dimension'
      readonly axis: 'x' | 'y'
      readonly fromM: number
      readonly toM: number
      readonly place: { readonly side: Side; readonly lane: number; readonly edgeM?: number } | { readonly atM: number }
      readonly value: Figure | number
      /** Opened by a tap where the figure is a worked-out number. */
      readonly working?: Derived
      /** Left out first where it would not fit; `times` says one figure stands for several equal ones. */
      readonly minor?: boolean
      readonly times?: number
    }
  /** One tape pulled along x from a peg: marks in running measure. */
  | { readonly kind: 'running'; readonly side: 'bottom'; readonly lane: number; readonly marksM: readonly number[] }
  /** A height from the ground at the origin: a filled triangle on a line at the right. */
  | { readonly kind: 'level'; readonly yM: number; readonly valueM: number }
  | {
      readonly kind: 'text'
      readonly at: Point
      readonly text: string | Figure | number
      readonly size?: 'small' | 'tiny' | 'big'
      /** Beside the place rather than on it. */
      readonly beside?: Side
      readonly turned?: boolean
      readonly order?: boolean
      readonly on?: 'soot'
      readonly ember?: boolean
      /** Turned to run along a slanting line, degrees anticlockwise. */
      readonly slantDeg?: number
      readonly anchor?: 'start' | 'middle' | 'end'
      /** Room along the text and across it: left out where it would not fit. */
      readonly roomM?: number
      readonly highM?: number
    }
  | {
      readonly kind: 'words'
      readonly at: Point
      readonly key: string
      readonly args?: Readonly<Record<string, Figure | number | string>>
      readonly lane?: { readonly side: 'bottom' | 'top'; readonly lane: number }
      readonly anchor?: 'start' | 'middle' | 'end'
      readonly roomM?: number
    }
  | {
      readonly kind: 'fire'
      readonly at: Point
      readonly heightM: number
      readonly shown?: { readonly fromCourse: number; readonly toCourse?: number }
    }
  | { readonly kind: 'arrow'; readonly from: Point; readonly to: Point; readonly ember?: boolean }
  /** Where the wind blows to, beside the model: degrees clockwise from up the paper. */
  | {
      readonly kind: 'wind'
      readonly xM: number
      readonly lane: { readonly side: 'bottom'; readonly lane: number }
      readonly towardDeg: number
    }
  | {
      readonly kind: 'peg'
      readonly at: Point
      readonly name?: string
      readonly nameAt?: 'above-left' | 'above-right' | 'below-left' | 'below-right'
      readonly driven: boolean
    }
  | {
      readonly kind: 'flag'
      readonly at: Point
      readonly level: 'problem' | 'caution' | 'good'
      readonly number: number
    }

/** The corners of a rectangle, m, going round. */
export const rectangle = (x0M: number, y0M: number, x1M: number, y1M: number): readonly Point[] => [
  [x0M, y0M],
  [x1M, y0M],
  [x1M, y1M],
  [x0M, y1M],
]
