import { cited, counted, derive, typed, type Derived } from '../basics/derived.ts'
import type { TrayFrame } from '../fish/tray-frame.ts'
import { GRAVITY } from '../fish/tray-mass.ts'
import { CATALOGUE_MIXES, soilOf } from '../plan/catalogue.ts'
import type { Plan, WallUnit } from '../plan/schema.ts'
import type { KilnGeometry } from './kiln.ts'

/** What the ground is asked to carry, what it may carry, and the footing that this needs. */
export interface Foundation {
  /** Pressure under the heaviest run of footing, Pa. */
  readonly pressure: Derived<'Pa'>
  readonly bearing: Derived<'Pa'>
  /** Projection each side that brings the pressure down to the bearing; null where the ground does not even carry the concrete. */
  readonly neededProjection: Derived<'m'> | null
  /** Plain concrete is at least as thick as it projects. */
  readonly neededThickness: Derived<'m'>
}

/** Least projection and thickness of a footing poured in a trench, m: a shovel's room, and two layers of stone. */
const LEAST_PROJECTION_M = 0.05
const LEAST_THICKNESS_M = 0.1

/** Weight of masonry by kind, N/m³. The table has no earth block; solid brick stands in for it, concrete for solid block. */
const MASONRY_WEIGHT: Readonly<Record<WallUnit['family'], number>> = {
  'hollow-block': 16_000,
  'solid-block': 24_000,
  'fired-brick': 18_000,
  'earth-block': 18_000,
  'clay-brick': 16_000,
}
const CONCRETE_WEIGHT = 24_000

/** Weight of the wall with what fills its hollows, N/m³. */
function wallWeight({ walls }: Plan): Derived<'N/m3'> {
  const w = cited('masonry-weight', 'N/m3', MASONRY_WEIGHT[walls.unit.family], 'cte-db-se-ae')
  const fill = CATALOGUE_MIXES.fill.find(({ key }) => key === walls.fill)
  if (fill === undefined || walls.unit.voidFraction === 0) return w
  const v = typed('void-fraction', '1', walls.unit.voidFraction, 'walls.unit.voidFraction')
  const rho = cited('fill-density', 'kg/m3', fill.densityKgM3, fill.source)
  return derive('filled-wall-weight', 'N/m3', 'w + v·rho·g', { w, v, rho, g: GRAVITY }, (x) => x.w + x.v * x.rho * x.g)
}

/** Full stack on one chamber, kg: trays with their fish, and a cover as heavy as an empty tray. */
function stackMass({ trays }: Plan, { mass }: TrayFrame): Derived<'kg'> {
  const k = typed('tray.per-chamber', 'piece', trays.perChamber, 'trays.perChamber')
  return derive('stack-mass', 'kg', 'k·m + e', { k, m: mass.loaded, e: mass.empty }, (v) => v.k * v.m + v.e)
}

/**
 * Weight on the footing, pressure on the ground, Pa, against what the soil is presumed to bear, and the footing's own
 * proportions.
 */
export function foundationOf(plan: Plan, geometry: KilnGeometry, tray: TrayFrame): Foundation {
  const soil = soilOf(plan.ground.soil)
  const w = wallWeight(plan)
  const P = stackMass(plan, tray)
  const y = cited('concrete-weight', 'N/m3', CONCRETE_WEIGHT, 'cte-db-se-ae')
  const q = cited('allowable-bearing', 'Pa', soil.bearingKPa * 1000, soil.source)
  const { thickness: c, projection: p } = geometry.footing
  const least = cited('least-thickness', 'm', LEAST_THICKNESS_M, 'common-practice')
  const carried = {
    w,
    P,
    y,
    q,
    H: wallHeight(geometry),
    m: cited('least-projection', 'm', LEAST_PROJECTION_M, 'common-practice'),
  }
  const carries = q.value > c.value * y.value
  const { pressure, needed } =
    geometry.footing.kind === 'strip' ? stripNeeds(geometry, carried) : padNeeds(geometry, carried)
  return {
    pressure,
    bearing: q,
    neededProjection: carries ? needed() : null,
    neededThickness: derive('needed-thickness', 'm', 'max(m, p)', { m: least, p }, (v) => Math.max(v.m, v.p)),
  }
}

interface Carried {
  readonly w: Derived<'N/m3'>
  readonly P: Derived<'kg'>
  readonly y: Derived<'N/m3'>
  readonly q: Derived<'Pa'>
  readonly H: Derived<'m'>
  readonly m: Derived<'m'>
}

interface Needs {
  readonly pressure: Derived<'Pa'>
  readonly needed: () => Derived<'m'>
}

/** Wall over the deepest part of the footing, m. */
function wallHeight({ wallBelow: b, wallAbove: h, footing }: KilnGeometry): Derived<'m'> {
  const lower = Math.max(...footing.beds.map((bed) => -bed.step))
  if (lower === 0) return derive('wall-over-footing', 'm', 'b + h', { b, h }, (v) => v.b + v.h)
  const k = counted('courses-lower', '1', lower)
  return derive('wall-over-footing', 'm', 'b + h + k·g', { b, h, k, g: footing.gauge }, (v) => v.b + v.h + v.k * v.g)
}

/** A metre of the heaviest wall: a dividing wall carries a side of two stacks. */
function stripNeeds(
  { wall: t, clearSide: a, chamberCount, footing }: KilnGeometry,
  { w, P, y, q, H, m }: Carried,
): Needs {
  const { projection: p, thickness: c } = footing
  const s = counted('stacks-on-wall', '1', chamberCount.value > 1 ? 2 : 1)
  const W = derive('wall-line-load', 'N/m', 'w·t·H', { w, t, H }, (v) => v.w * v.t * v.H)
  const S = derive(
    'stack-line-load',
    'N/m',
    's·P·g / (4·a)',
    { s, P, g: GRAVITY, a },
    (v) => (v.s * v.P * v.g) / (4 * v.a),
  )
  return {
    pressure: derive(
      'ground-pressure',
      'Pa',
      '(W + S) / (t + 2·p) + c·y',
      { W, S, t, p, c, y },
      (v) => (v.W + v.S) / (v.t + 2 * v.p) + v.c * v.y,
    ),
    needed: () => {
      const B = derive(
        'needed-width',
        'm',
        '(W + S) / (q − c·y)',
        { W, S, q, c, y },
        (v) => (v.W + v.S) / (v.q - v.c * v.y),
      )
      return derive('needed-projection', 'm', 'max(m, (B − t) / 2)', { m, B, t }, (v) => Math.max(v.m, (v.B - v.t) / 2))
    },
  }
}

/** The whole kiln on one slab. */
function padNeeds(
  { outsideLength: L, outsideDepth: D, chamberCount: n, wallPlanArea, footing }: KilnGeometry,
  { w, P, y, q, H, m }: Carried,
): Needs {
  const { area: A, thickness: c } = footing
  const F = derive(
    'kiln-weight',
    'N',
    'w·S·H + n·P·g',
    { w, S: wallPlanArea, H, n, P, g: GRAVITY },
    (v) => v.w * v.S * v.H + v.n * v.P * v.g,
  )
  return {
    pressure: derive('ground-pressure', 'Pa', 'F / A + c·y', { F, A, c, y }, (v) => v.F / v.A + v.c * v.y),
    needed: () => {
      const N = derive('needed-area', 'm2', 'F / (q − c·y)', { F, q, c, y }, (v) => v.F / (v.q - v.c * v.y))
      return derive('needed-projection', 'm', 'max(m, (sqrt((L − D)^2 + 4·N) − (L + D)) / 4)', { m, L, D, N }, (v) =>
        Math.max(v.m, (Math.sqrt((v.L - v.D) ** 2 + 4 * v.N) - (v.L + v.D)) / 4),
      )
    },
  }
}
