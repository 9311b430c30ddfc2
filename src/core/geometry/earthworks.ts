import { lotsFor } from '../basics/count.ts'
import { cited, counted, derive, sumOf, typed, type Derived } from '../basics/derived.ts'
import { soilOf } from '../plan/catalogue.ts'
import type { Plan } from '../plan/schema.ts'
import { groundOf, type Footing } from './footing.ts'
import { volumeAbove, volumeBelow, volumeDownTo } from './ground-plane.ts'
import type { Outline } from './outline.ts'
import { acrossBand } from './footing-steps.ts'
import { areaOf, clipped, rectArea, type Shape } from './shape.ts'

/** Soil dug, thrown up, put back and left over. Bank means as it lay, loose as it lies in the heap. */
export interface Earthworks {
  readonly dig: Derived<'m3'>
  readonly loose: Derived<'m3'>
  readonly wallBelow: Derived<'m3'>
  /** Room to fill again round the walls and under the hearth, as it will lie when rammed. */
  readonly backfill: Derived<'m3'>
  /** Loose soil left over; negative where soil must be brought. */
  readonly surplus: Derived<'m3'>
  readonly surplusPans: Derived<'piece'>
  readonly surplusBarrows: Derived<'piece'>
  readonly hearthSlab: Derived<'m3'>
  readonly apronSlab: Derived<'m3'>
  /** How much lower the apron's outer edge lies than the hearth, so that rain runs off. */
  readonly apronFall: Derived<'m'>
}

/** Thickness of the apron slab in front, m. */
const APRON_THICKNESS_M = 0.075
/** Fall of a surface away from a building, m per m. */
export const SURFACE_FALL = 0.05

/** Soil dug, put back and carried off, m³, under ground that may slope; loose soil by the swell of its kind. */
export function earthworksOf(plan: Plan, outline: Outline, footing: Footing, belowM: number): Earthworks {
  const soil = soilOf(plan.ground.soil)
  const hearthSlab = hearthConcrete(plan, outline)
  const apronSlab = apronConcrete(plan, outline)
  const digs = [
    ...footing.beds.map((bed) => bed.dig),
    ...digInside(plan, outline, footing),
    ...digApron(plan, outline, footing),
  ]
  const dig = digs.length === 1 && digs[0] !== undefined ? digs[0] : sumOf('dig', 'm3', digs)
  const wallBelow = wallUnderGround(plan, outline, footing, belowM)
  const level = plan.ground.slopeAcross === 0 && plan.ground.slopeBack === 0
  const backfill = level
    ? backfillOnLevelGround(dig, footing, wallBelow, hearthSlab, apronSlab)
    : counted('backfill-on-slope', 'm3', backfillOnSlope(plan, outline, footing))
  const k = cited('soil-loose', '1', soil.loose, soil.bulkingSource)
  const r = cited('soil-compacted', '1', soil.compacted, soil.bulkingSource)
  const loose = derive('spoil-loose', 'm3', 'V·k', { V: dig, k }, (v) => v.V * v.k)
  const surplus = derive(
    'spoil-surplus',
    'm3',
    '(V − B / r)·k',
    { V: dig, B: backfill, r, k },
    (v) => (v.V - v.B / v.r) * v.k,
  )
  return {
    dig,
    loose,
    wallBelow,
    backfill,
    surplus,
    surplusPans: loadsOf('surplus-pans', surplus, typed('head-pan', 'm3', plan.ground.panM3, 'ground.panM3')),
    surplusBarrows: loadsOf(
      'surplus-barrows',
      surplus,
      typed('wheelbarrow', 'm3', plan.ground.barrowM3, 'ground.barrowM3'),
    ),
    hearthSlab,
    apronSlab,
    apronFall: apronFall(plan),
  }
}

/** Whole loads to carry; none where soil is short. */
const loadsOf = (id: string, S: Derived<'m3'>, q: Derived<'m3'>): Derived<'piece'> =>
  derive(id, 'piece', 'max(0, ceil(S / q))', { S, q }, (v) => lotsFor(v.S, v.q))

/** Slab inside the chambers whose face is the hearth, level with the ground at the front left peg. */
function hearthConcrete(plan: Plan, { chamberCount: n, clearSide: a }: Outline) {
  const h = typed('hearth-thickness', 'm', plan.ground.hearthM, 'ground.hearthM')
  return derive('hearth-slab', 'm3', 'n·a^2·h', { n, a, h }, (v) => v.n * v.a ** 2 * v.h)
}

/** Slab in front, its face level with the hearth at the wall and falling away from it. */
function apronConcrete(plan: Plan, { outsideLength: L }: Outline) {
  const w = typed('apron-width', 'm', plan.ground.apronM, 'ground.apronM')
  const s = cited('apron-thickness', 'm', APRON_THICKNESS_M, 'common-practice')
  return derive('apron-slab', 'm3', 'L·w·s', { L, w, s }, (v) => v.L * v.w * v.s)
}

/** Surfaces fall away from a building by 5 % (IRC R401.3). */
function apronFall(plan: Plan): Derived<'m'> {
  const w = typed('apron-width', 'm', plan.ground.apronM, 'ground.apronM')
  return derive('apron-fall', 'm', 'w·s', { w, s: cited('surface-fall', '1', SURFACE_FALL, 'irc') }, (v) => v.w * v.s)
}

/** Ground taken off between the strips, down to the bed of the hearth. */
function digInside(plan: Plan, { chamberCount: n, clearSide: a }: Outline, footing: Footing): Derived<'m3'>[] {
  if (footing.kind === 'pad') return []
  const plane = groundOf(plan)
  const bedM = -plan.ground.hearthM
  if (plane.across === 0 && plane.back === 0) {
    if (bedM === 0) return []
    const h = typed('hearth-thickness', 'm', plan.ground.hearthM, 'ground.hearthM')
    return [
      derive(
        'dig-hearth',
        'm3',
        'n·(a − 2·p)^2·h',
        { n, a, p: footing.projection, h },
        (v) => v.n * (v.a - 2 * v.p) ** 2 * v.h,
      ),
    ]
  }
  const cut = footing.shape.holes.reduce((sum, hole) => sum + volumeAbove(plane, hole, bedM), 0)
  return cut > 0 ? [counted('dig-inside', 'm3', cut)] : []
}

/** Ground taken off under the apron beyond the trench; the slab follows the ground as it falls. */
function digApron(plan: Plan, { outsideLength: L }: Outline, footing: Footing): Derived<'m3'>[] {
  if (plan.ground.apronM <= footing.projection.value) return []
  const w = typed('apron-width', 'm', plan.ground.apronM, 'ground.apronM')
  const s = cited('apron-thickness', 'm', APRON_THICKNESS_M, 'common-practice')
  return [derive('dig-apron', 'm3', 'L·(w − p)·s', { L, w, p: footing.projection, s }, (v) => v.L * (v.w - v.p) * v.s)]
}

/** Masonry under the ground, m³. */
function wallUnderGround(plan: Plan, outline: Outline, footing: Footing, belowM: number): Derived<'m3'> {
  const plane = groundOf(plan)
  const S = outline.wallPlanArea
  if (plane.across === 0 && plane.back === 0) {
    const b = counted('wall-below', 'm', belowM)
    return derive('wall-below-ground', 'm3', 'S·b', { S, b }, (v) => v.S * v.b)
  }
  return counted(
    'wall-below-ground',
    'm3',
    overZones(outline.ring, footing, (part, topM) => volumeDownTo(plane, part, topM)),
  )
}

/** Sums over the parts of a shape that stand on one level of footing. */
function overZones(shape: Shape, { steps, beds }: Footing, volume: (part: Shape, topM: number) => number): number {
  return steps.zones.reduce((sum, zone) => {
    const part = clipped(shape, acrossBand(steps.axis, zone.fromM, zone.toM))
    const bed = beds.find((one) => one.step === zone.step)
    return part === null || bed === undefined ? sum : sum + volume(part, bed.topM)
  }, 0)
}

/** What was dug and is not taken by concrete, hardcore, wall or slab. */
function backfillOnLevelGround(
  V: Derived<'m3'>,
  footing: Footing,
  W: Derived<'m3'>,
  S: Derived<'m3'>,
  P: Derived<'m3'>,
): Derived<'m3'> {
  const less: Record<string, Derived<'m3'>> = { C: footing.concrete, W }
  if (footing.hardcoreVolume.value > 0) less['H'] = footing.hardcoreVolume
  if (S.value > 0) less['S'] = S
  if (P.value > 0) less['P'] = P
  const left = Object.values(less).reduce((rest, one) => rest - one.value, V.value)
  return derive('backfill', 'm3', ['V', ...Object.keys(less)].join(' − '), { V, ...less }, () => left)
}

/** Outside: from the footing up to the ground. Inside: up to the bed of the hearth, which is level. */
function backfillOnSlope(plan: Plan, outline: Outline, footing: Footing): number {
  const plane = groundOf(plan)
  const bedM = -plan.ground.hearthM
  const around: Shape = { outline: footing.shape.outline, holes: [outline.outside] }
  const outer = overZones(around, footing, (part, topM) => volumeDownTo(plane, part, topM))
  const inner = outline.chambers.reduce((sum, chamber, index) => {
    const island = footing.shape.holes[index]
    const trench: Shape = { outline: chamber, holes: island === undefined ? [] : [island] }
    const overFooting = overZones(trench, footing, (part, topM) => areaOf(part) * Math.max(0, bedM - topM))
    return sum + overFooting + (island === undefined ? 0 : volumeBelow(plane, island, bedM))
  }, 0)
  const apron = rectArea({ ...outline.outside, y0M: 0, y1M: Math.min(plan.ground.apronM, footing.projection.value) })
  return outer + inner - apron * APRON_THICKNESS_M
}
