import { derive, typed, type Derived } from '../basics/derived.ts'
import type { Plan } from '../plan/schema.ts'

/** Every length of one tray, m. Two rails run through from front to back and on as handles; two cross rails stand between or into them. */
export interface TraySizes {
  readonly rail: { readonly thickness: Derived<'m'>; readonly depth: Derived<'m'> }
  /** From rail to rail inside the frame: the mesh on which fish lies. */
  readonly inner: Derived<'m'>
  /** Outside of the frame, without handles. */
  readonly side: Derived<'m'>
  readonly throughRail: Derived<'m'>
  readonly crossRail: Derived<'m'>
  /** Supports under the mesh, from through rail to through rail. */
  readonly batten: Derived<'m'>
  /** Side of the square of mesh, its lap on the rails included. */
  readonly mesh: Derived<'m'>
  /** How much of each wall the frame lies on, from the fire face outwards. */
  readonly bearing: Derived<'m'>
}

/**
 * A tray that seats on the walls with no timber over the fire: frame side f = a + 2 · (m + r), where the rails' inner edge stands the setback m
 * back from the fire face. Handles run front to back, so that neighbouring trays never meet with them.
 */
export function traySizes({ chambers, trays }: Plan): TraySizes {
  const a = typed('clear-side', 'm', chambers.clearSideM, 'chambers.clearSideM')
  const m = typed('tray.setback', 'm', trays.setbackM, 'trays.setbackM')
  const r = typed('tray.rail-thickness', 'm', trays.railThicknessM, 'trays.railThicknessM')
  const h = typed('tray.handle', 'm', trays.handleM, 'trays.handleM')
  const lap = typed('tray.mesh-lap', 'm', trays.meshLapM, 'trays.meshLapM')
  const inner = derive('tray.inner', 'm', 'a + 2 · m', { a, m }, (v) => v.a + 2 * v.m)
  const side = derive('tray.side', 'm', 'a + 2 · (m + r)', { a, m, r }, (v) => v.a + 2 * (v.m + v.r))
  return {
    rail: { thickness: r, depth: typed('tray.rail-depth', 'm', trays.railDepthM, 'trays.railDepthM') },
    inner,
    side,
    throughRail: derive('tray.through-rail', 'm', 'f + 2 · h', { f: side, h }, (v) => v.f + 2 * v.h),
    crossRail: crossRail(trays.corner, side, r),
    batten: derive('tray.batten', 'm', 'i', { i: inner }, (v) => v.i),
    mesh: derive('tray.mesh-side', 'm', 'i + 2 · l', { i: inner, l: lap }, (v) => v.i + 2 * v.l),
    bearing: derive('tray.bearing', 'm', 'm + r', { m, r }, (v) => v.m + v.r),
  }
}

/** Cross rail, m. Butt: between the through rails. Lap: each end enters a rebate half a rail deep. Half-lap: both are notched and the rail reaches the outside. */
function crossRail(corner: Plan['trays']['corner'], f: Derived<'m'>, r: Derived<'m'>): Derived<'m'> {
  switch (corner) {
    case 'butt':
      return derive('tray.cross-rail', 'm', 'f − 2 · r', { f, r }, (v) => v.f - 2 * v.r)
    case 'lap':
      return derive('tray.cross-rail', 'm', 'f − r', { f, r }, (v) => v.f - v.r)
    case 'half-lap':
      return derive('tray.cross-rail', 'm', 'f', { f }, (v) => v.f)
    default:
      return corner satisfies never
  }
}
