import { cited, derive, typed, type Derived } from '../basics/derived.ts'
import { CATALOGUE_TIMBER } from '../plan/catalogue.ts'
import type { Plan } from '../plan/schema.ts'
import type { TraySizes } from './tray-sizes.ts'

/** Circumference of a circle over its width. */
export const PI = cited('pi', '1', Math.PI, 'geometry')
/** Standard weight of a kilogram, N/kg. */
export const GRAVITY = cited('gravity', 'm/s2', 9.80665, 'si')
const STEEL_DENSITY = cited('steel-density', 'kg/m3', 7850, 'is-723')

export interface TrayMass {
  readonly timber: Derived<'kg'>
  readonly mesh: Derived<'kg'>
  readonly empty: Derived<'kg'>
  readonly loaded: Derived<'kg'>
}

/** What one tray weighs, kg, dry and without nails. Mesh is wires of both directions at its pitch; timber is rails and battens of one section. */
export function trayMass({ trays }: Plan, sizes: TraySizes, fish: Derived<'kg'>): TrayMass {
  const { rail, throughRail, crossRail, batten } = sizes
  const rho = cited('timber-density', 'kg/m3', CATALOGUE_TIMBER.densityKgM3, CATALOGUE_TIMBER.source)
  const n = typed('tray.battens', 'piece', trays.battens, 'trays.battens')
  const length = derive(
    'tray.timber-length',
    'm',
    '2 · u + 2 · c + n · b',
    { u: throughRail, c: crossRail, n, b: batten },
    (v) => 2 * v.u + 2 * v.c + v.n * v.b,
  )
  const timber = derive(
    'tray.timber-mass',
    'kg',
    'L · r · d · rho',
    { L: length, r: rail.thickness, d: rail.depth, rho },
    (v) => v.L * v.r * v.d * v.rho,
  )
  const wire = typed('tray.mesh-wire', 'm', trays.meshWireM, 'trays.meshWireM')
  const pitch = typed('tray.mesh-pitch', 'm', trays.meshPitchM, 'trays.meshPitchM')
  const mesh = derive(
    'tray.mesh-mass',
    'kg',
    '2 · w^2 / p · pi · d^2 / 4 · rho',
    { w: sizes.mesh, p: pitch, pi: PI, d: wire, rho: STEEL_DENSITY },
    (v) => ((2 * v.w ** 2) / v.p) * ((v.pi * v.d ** 2) / 4) * v.rho,
  )
  const empty = derive('tray.empty-mass', 'kg', 'T + M', { T: timber, M: mesh }, (v) => v.T + v.M)
  return {
    timber,
    mesh,
    empty,
    loaded: derive('tray.loaded-mass', 'kg', 'E + F', { E: empty, F: fish }, (v) => v.E + v.F),
  }
}
