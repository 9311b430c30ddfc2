import { cited, counted, derive, typed, type Derived } from '../basics/derived.ts'
import type { Plan } from '../plan/schema.ts'
import { GRAVITY, PI, type TrayMass } from './tray-mass.ts'
import type { TraySizes } from './tray-sizes.ts'

/** Stiffness along the grain of an ordinary light softwood: low for most timbers, so that the sag is not understated. */
const TIMBER_MODULUS = cited('timber-modulus', 'Pa', 8e9, 'memory')
const STEEL_MODULUS = cited('steel-modulus', 'Pa', 2e11, 'memory')

/** Mesh may hang a quarter of the rail's depth, so that fish never presses on the tray below. */
export const SAG_OF_RAIL = 0.25
/** Rails and battens may bend by this part of their span. */
export const BEND_OF_SPAN = 1 / 200

export interface TrayStrength {
  /** From support to support under the mesh, m. */
  readonly span: Derived<'m'>
  /** Farthest that supports may stand apart before the mesh hangs too deep: battens, or wires drawn tight under it. */
  readonly mostSpan: Derived<'m'>
  readonly meshSag: Derived<'m'>
  readonly battenSag: Derived<'m'>
  /** Sag of a through rail while two people carry the loaded tray by its handles. */
  readonly railSag: Derived<'m'>
}

/** Second moment of an upright rectangle, m⁴. */
const upright = (id: string, b: Derived<'m'>, d: Derived<'m'>) =>
  derive(id, 'm4', 'b · d^3 / 12', { b, d }, (v) => (v.b * v.d ** 3) / 12)

/** Middle sag of a simple beam under a load spread evenly, m: 5 · w · L⁴ / (384 · E · I). */
const beamSag = (id: string, w: Derived<'N/m'>, L: Derived<'m'>, E: Derived<'Pa'>, I: Derived<'m4'>) =>
  derive(id, 'm', '5 · w · L^4 / (384 · E · I)', { w, L, E, I }, (v) => (5 * v.w * v.L ** 4) / (384 * v.E * v.I))

/**
 * Mesh, battens and rails as simple beams. Mesh is taken as its single wires, each carrying its own strip: mesh stapled on all sides also hangs
 * as a net and sags less, so this is the safe side.
 */
export function trayStrength({ trays }: Plan, sizes: TraySizes, mass: TrayMass, fish: Derived<'kg'>): TrayStrength {
  const { inner, rail, side } = sizes
  const n = typed('tray.battens', 'piece', trays.battens, 'trays.battens')
  const one = counted('one', 'piece', 1)
  const span = derive('tray.mesh-span', 'm', 'i / (n + k)', { i: inner, n, k: one }, (v) => v.i / (v.n + v.k))
  const q = derive(
    'tray.pressure',
    'Pa',
    'g · F / i^2',
    { g: GRAVITY, F: fish, i: inner },
    (v) => (v.g * v.F) / v.i ** 2,
  )

  const d = typed('tray.mesh-wire', 'm', trays.meshWireM, 'trays.meshWireM')
  const p = typed('tray.mesh-pitch', 'm', trays.meshPitchM, 'trays.meshPitchM')
  const wire = derive('tray.wire-moment', 'm4', 'pi · d^4 / 64', { pi: PI, d }, (v) => (v.pi * v.d ** 4) / 64)
  const onWire = derive('tray.wire-load', 'N/m', 'q · p', { q, p }, (v) => v.q * v.p)

  const share = cited('tray.sag-share', '1', SAG_OF_RAIL, 'common-practice')
  const mostSpan = derive(
    'tray.most-span',
    'm',
    'sqrt(sqrt(384 · E · I · c · d / (5 · w)))',
    { E: STEEL_MODULUS, I: wire, c: share, d: rail.depth, w: onWire },
    (v) => Math.sqrt(Math.sqrt((384 * v.E * v.I * v.c * v.d) / (5 * v.w))),
  )

  const section = upright('tray.rail-moment', rail.thickness, rail.depth)
  const onBatten = derive('tray.batten-load', 'N/m', 'q · s', { q, s: span }, (v) => v.q * v.s)
  const onRail = derive(
    'tray.rail-load',
    'N/m',
    'g · M / (2 · f)',
    { g: GRAVITY, M: mass.loaded, f: side },
    (v) => (v.g * v.M) / (2 * v.f),
  )
  return {
    span,
    mostSpan,
    meshSag: beamSag('tray.mesh-sag', onWire, span, STEEL_MODULUS, wire),
    battenSag: beamSag('tray.batten-sag', onBatten, inner, TIMBER_MODULUS, section),
    railSag: beamSag('tray.rail-sag', onRail, side, TIMBER_MODULUS, section),
  }
}

/** Fewest battens at which the mesh sags no more than allowed: the sag goes with the fourth power of the span. */
export function battensForSag(sagM: number, allowedM: number, battens: number, most: number): number | null {
  for (let count = 0; count <= most; count++) if (sagM * ((battens + 1) / (count + 1)) ** 4 <= allowedM) return count
  return null
}
