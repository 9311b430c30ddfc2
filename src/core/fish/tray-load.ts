import { derive, typed, type Derived } from '../basics/derived.ts'
import type { Plan } from '../plan/schema.ts'
import type { TraySizes } from './tray-sizes.ts'

/**
 * Dressed fish on one tray, kg, in the one of two ways that the user loads: a single open layer by area of mesh, or packed by the tray.
 * The two are different practices with different published figures and are never averaged.
 */
export function fishPerTray({ catch: fish }: Plan, { inner }: TraySizes): Derived<'kg'> {
  if (fish.loading === 'packed') return typed('load.per-tray', 'kg', fish.loadKgPerTray, 'catch.loadKgPerTray')
  const w = typed('load.per-area', 'kg/m2', fish.loadKgPerM2, 'catch.loadKgPerM2')
  return derive('load.per-tray', 'kg', 'w · i^2', { w, i: inner }, (v) => v.w * v.i ** 2)
}
