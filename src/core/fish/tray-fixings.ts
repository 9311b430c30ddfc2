import { cited, counted, derive, typed, type Derived } from '../basics/derived.ts'
import { wholeUp } from '../basics/count.ts'
import type { Plan } from '../plan/schema.ts'
import { PI } from './tray-mass.ts'
import type { TraySizes } from './tray-sizes.ts'

const NAIL_DIAMETER = cited('nail-diameter', 'm', 0.0025, 'common-practice')
const NAIL_LENGTH = cited('nail-length', 'm', 0.05, 'common-practice')
const STEEL_DENSITY = cited('steel-density', 'kg/m3', 7850, 'is-723')
/** A made nail is lighter than a rod of its length: the part that fits the standard's table. */
const NAIL_SHARE = cited('nail-share', '1', 0.977, 'is-723')
const STAPLE_SPACING = cited('staple-spacing', 'm', 0.05, 'common-practice')
const NAILS_PER_CORNER = cited('nails-per-corner', 'piece', 2, 'common-practice')

/** Wire nails in a kilogram: 0.977 / (7850 · π / 4 · d² · L), which fits the table of IS 723. */
export const nailsPerKg = (diameter: Derived<'m'>, length: Derived<'m'>): Derived<'piece/kg'> =>
  derive(
    'tray.nails-per-kg',
    'piece/kg',
    'k / (rho · pi / 4 · d^2 · L)',
    { k: NAIL_SHARE, rho: STEEL_DENSITY, pi: PI, d: diameter, L: length },
    (v) => v.k / (((v.rho * v.pi) / 4) * v.d ** 2 * v.L),
    { source: 'is-723' },
  )

export interface TrayFixings {
  /** Nails of one tray: four corners and two ends of each batten. */
  readonly nails: Derived<'piece'>
  readonly nailMass: Derived<'kg'>
  /** Staples or clenched nails around the mesh and along each batten. */
  readonly staples: Derived<'piece'>
}

/** Nails of one tray, pieces and kg, two for each corner and batten end; staples by their spacing along the mesh. */
export function trayFixings({ trays }: Plan, { mesh, batten }: TraySizes): TrayFixings {
  const n = typed('tray.battens', 'piece', trays.battens, 'trays.battens')
  const corners = counted('tray.corners', 'piece', 4)
  const nails = derive(
    'tray.nails',
    'piece',
    'k · (c + 2 · n)',
    { k: NAILS_PER_CORNER, c: corners, n },
    (v) => v.k * (v.c + 2 * v.n),
  )
  const perKg = nailsPerKg(NAIL_DIAMETER, NAIL_LENGTH)
  return {
    nails,
    nailMass: derive('tray.nail-mass', 'kg', 'N / k', { N: nails, k: perKg }, (v) => v.N / v.k),
    staples: derive(
      'tray.staples',
      'piece',
      '4 · ceil(w / s) + n · ceil(b / s)',
      { w: mesh, b: batten, n, s: STAPLE_SPACING },
      (v) => 4 * wholeUp(v.w / v.s) + v.n * wholeUp(v.b / v.s),
    ),
  }
}
