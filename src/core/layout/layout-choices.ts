/**
 * Where the cuts of the course laid first go, while the rest follows from the laps; or, in bays, that the front and back
 * walls are laid alike from each dividing wall to the next: with a unit, or with a perpend, over the middle of the junction.
 */
export type CutPlace = 'any' | 'first' | 'last' | 'middle' | 'ends' | 'bays' | 'half-bays'

export interface RunExchange {
  readonly wall: 'front' | 'back' | 'left' | 'right' | 'divider'
  readonly course: number
  readonly track: number
  readonly run: number
  /** The pieces from the start of the run, whole micrometres. */
  readonly lengthsUm: readonly number[]
}

/**
 * The choices a layout follows from. `owns` holds, for the six kinds of junction (front left, front middle, front right,
 * back left, back middle, back right), the parity of the courses in which the front or back wall runs through it.
 */
export interface LayoutChoices {
  /** Laid by a deep search: every course laid again between its neighbours until nothing improves. */
  readonly thorough: boolean
  readonly owns: readonly (0 | 1)[]
  readonly cutPlaces: Readonly<Record<'front' | 'back' | 'left' | 'right' | 'divider', CutPlace>>
  /** Course of the pair from which a wall is worked out, 0 or 1, by wall. */
  readonly starts: Readonly<Record<'back' | 'left' | 'right' | 'divider', 0 | 1>>
  /** Runs filled otherwise than the search would, so that offcuts are used: by wall, lowest course laid so, row and run. */
  readonly exchanges: readonly RunExchange[]
  /** Bearing of the lintels towards the ends of the row and towards the dividing walls. */
  readonly bearingM: { readonly outer: number; readonly inner: number }
}
