import type { Derived } from './derived.ts'
import type { Unit } from './unit.ts'

/** Two ends between which knowledge leaves a figure: both are worked out, neither is a guess at the middle. */
export interface Range<U extends Unit = Unit> {
  readonly low: Derived<U>
  readonly high: Derived<U>
}
