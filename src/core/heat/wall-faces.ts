import { derive, typed, type Derived } from '../basics/derived.ts'
import type { Plan } from '../plan/schema.ts'

/** Faces of the walls that the fire sees, m². Corners and what stands below ground are left out. */
export interface WallFaces {
  /** Of walls with open air behind them, fire openings taken out. */
  readonly outer: Derived<'m2'>
  /** Of dividing walls, both sides. */
  readonly shared: Derived<'m2'>
  readonly hearth: Derived<'m2'>
}

/** Faces through which heat leaves, m²: outside walls less the openings, and walls between chambers. */
export function wallFaces({ chambers, walls, openings }: Plan): WallFaces {
  const n = typed('chamber-count', 'piece', chambers.count, 'chambers.count')
  const a = typed('clear-side', 'm', chambers.clearSideM, 'chambers.clearSideM')
  const z = typed('wall-above', 'm', walls.aboveM, 'walls.aboveM')
  const b = typed('opening-width', 'm', openings.widthM, 'openings.widthM')
  const h = typed('opening-height', 'm', openings.heightM, 'openings.heightM')
  return {
    outer: derive(
      'heat.outer-face',
      'm2',
      '(2 · n + 2) · a · z − n · b · h',
      { n, a, z, b, h },
      (v) => (2 * v.n + 2) * v.a * v.z - v.n * v.b * v.h,
    ),
    shared: derive('heat.shared-face', 'm2', '2 · (n − 1) · a · z', { n, a, z }, (v) => 2 * (v.n - 1) * v.a * v.z),
    hearth: derive('heat.hearth-face', 'm2', 'n · a^2', { n, a }, (v) => v.n * v.a ** 2),
  }
}
