import { wholeModulesIn } from '../basics/count.ts'
import { cited, counted, derive, type Derived } from '../basics/derived.ts'
import { CLEAR_OF_DIG_M } from './offset-pegs.ts'
import type { KilnGeometry } from './kiln.ts'

/** Three lengths in the ratio 3 : 4 : 5 that square a corner, as large as the strings of this kiln allow: a larger triangle errs less. */
export interface SquareCorner {
  readonly unit: Derived<'m'>
  readonly short: Derived<'m'>
  readonly long: Derived<'m'>
  readonly slant: Derived<'m'>
}

/** Legs are whole multiples of this, m, so that a tape shows them without fractions. */
const STEP_M = 0.05

/** The long leg runs along the front, the short one along the side; both strings reach to the offset pegs. */
export function squareCorner({
  outsideLength: L,
  outsideDepth: D,
}: Pick<KilnGeometry, 'outsideLength' | 'outsideDepth'>): SquareCorner {
  const c = counted('string-past-corner', 'm', CLEAR_OF_DIG_M)
  const s = cited('square-step', 'm', STEP_M, 'common-practice')
  const unit = derive(
    'square-unit',
    'm',
    'floor(min((L + c) / 4, (D + c) / 3) / s)·s',
    { L, D, c, s },
    (v) => wholeModulesIn(Math.min((v.L + v.c) / 4, (v.D + v.c) / 3), v.s) * v.s,
  )
  return {
    unit,
    short: derive('square-short', 'm', '3·u', { u: unit }, (v) => 3 * v.u),
    long: derive('square-long', 'm', '4·u', { u: unit }, (v) => 4 * v.u),
    slant: derive('square-slant', 'm', '5·u', { u: unit }, (v) => 5 * v.u),
  }
}
