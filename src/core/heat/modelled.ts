import type { Derived } from '../basics/derived.ts'
import type { Unit } from '../basics/unit.ts'

/** A figure that a model worked out step by step: no formula to show in one line, but what went in. */
export const modelled = <U extends Unit>(
  id: string,
  unit: U,
  value: number,
  inputs: Readonly<Record<string, Derived>>,
): Derived<U> => ({ id, unit, value, inputs })
