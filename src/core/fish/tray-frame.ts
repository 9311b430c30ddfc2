import { derive, typed, type Derived } from '../basics/derived.ts'
import type { Finding } from '../basics/finding.ts'
import type { Plan } from '../plan/schema.ts'
import { trayFindings } from './tray-findings.ts'
import { trayFixings, type TrayFixings } from './tray-fixings.ts'
import { fishPerTray } from './tray-load.ts'
import { trayMass, type TrayMass } from './tray-mass.ts'
import { traySizes, type TraySizes } from './tray-sizes.ts'
import { trayStrength, type TrayStrength } from './tray-strength.ts'
import { wallThickness } from './wall-thickness.ts'

/** Timber of one tray by piece. All pieces are of the rail's section. */
export interface TrayPiece {
  readonly kind: 'through-rail' | 'cross-rail' | 'batten'
  readonly perTray: number
  readonly length: Derived<'m'>
}

/** One tray, as it seats on this kiln, and the stack it makes. */
export interface TrayFrame extends TraySizes {
  readonly wall: Derived<'m'>
  readonly pieces: readonly TrayPiece[]
  readonly fish: Derived<'kg'>
  readonly mass: TrayMass
  readonly strength: TrayStrength
  readonly fixings: TrayFixings
  /** Trays to make: all stacks and the spares. */
  readonly count: Derived<'piece'>
  /** Height of a full stack over the wall's top, m, and of its top over the ground. */
  readonly stackHeight: Derived<'m'>
  readonly topHeight: Derived<'m'>
  readonly findings: readonly Finding[]
}

/** Sizes of one tray, m, from the inside of the chamber; its mass when loaded, kg; and what does not fit. */
export function trayFrame(plan: Plan): TrayFrame {
  const sizes = traySizes(plan)
  const wall = wallThickness(plan)
  const fish = fishPerTray(plan, sizes)
  const mass = trayMass(plan, sizes, fish)
  const n = typed('chamber-count', 'piece', plan.chambers.count, 'chambers.count')
  const perChamber = typed('tray.per-chamber', 'piece', plan.trays.perChamber, 'trays.perChamber')
  const spares = typed('tray.spares', 'piece', plan.trays.spares, 'trays.spares')
  const above = typed('wall-above', 'm', plan.walls.aboveM, 'walls.aboveM')
  const stackHeight = derive(
    'tray.stack-height',
    'm',
    'k · d',
    { k: perChamber, d: sizes.rail.depth },
    (v) => v.k * v.d,
  )
  const frame = {
    ...sizes,
    wall,
    fish,
    mass,
    strength: trayStrength(plan, sizes, mass, fish),
    fixings: trayFixings(plan, sizes),
    pieces: piecesOf(sizes, plan.trays.battens),
    count: derive('tray.count', 'piece', 'n · k + s', { n, k: perChamber, s: spares }, (v) => v.n * v.k + v.s),
    stackHeight,
    topHeight: derive('tray.top-height', 'm', 'z + h', { z: above, h: stackHeight }, (v) => v.z + v.h),
  }
  return { ...frame, findings: trayFindings(plan, frame) }
}

const piecesOf = (sizes: TraySizes, battens: number): readonly TrayPiece[] => [
  { kind: 'through-rail', perTray: 2, length: sizes.throughRail },
  { kind: 'cross-rail', perTray: 2, length: sizes.crossRail },
  ...(battens > 0 ? [{ kind: 'batten' as const, perTray: battens, length: sizes.batten }] : []),
]
