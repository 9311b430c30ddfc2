/**
 * Numbers in the searches of this folder lie in flat arrays of one kind, so that the engine compiles each loop once.
 * All of them are whole (counts, ticks, money) except where a linear bound says otherwise.
 */
export type Vector = Float64Array

/** The i-th number of a vector; the index is the caller's promise. */
export const at = (vector: Vector, i: number): number => vector[i] as number

/** Numbers as a vector. */
export const vectorOf = (values: readonly number[]): Vector => Float64Array.from(values)

/** Greatest common divisor of whole numbers of any sign; 0 only for two zeros. */
export function greatestCommonDivisor(a: number, b: number): number {
  let x = a < 0 ? -a : a
  let y = b < 0 ? -b : b
  while (y > 0) {
    const rest = x % y
    x = y
    y = rest
  }
  return x
}
