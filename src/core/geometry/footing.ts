import { modulesToCover, SAME_LENGTH_M } from '../basics/count.ts'
import { counted, derive, sumOf, typed, type Derived } from '../basics/derived.ts'
import type { Plan } from '../plan/schema.ts'
import { acrossBand, footingSteps, type FootingSteps } from './footing-steps.ts'
import { meanGround, type GroundPlane } from './ground-plane.ts'
import type { Outline } from './outline.ts'
import { areaOf, clipped, grown, type Rect, type Shape } from './shape.ts'
import type { KilnLevels } from './walls.ts'

/** Trench and footing: the concrete fills the trench from side to side, so that the dig is its own mould. */
export interface Footing {
  /** What was built: a strip whose islands close up is a pad. */
  readonly kind: 'strip' | 'pad'
  readonly projection: Derived<'m'>
  readonly thickness: Derived<'m'>
  readonly hardcore: Derived<'m'>
  /** One course with its joint: the height of a step. */
  readonly gauge: Derived<'m'>
  readonly shape: Shape
  readonly area: Derived<'m2'>
  readonly steps: FootingSteps
  readonly beds: readonly FootingBed[]
  readonly concrete: Derived<'m3'>
  readonly hardcoreVolume: Derived<'m3'>
  /** Depth of the dig under the mean ground of the trench; of the deepest bed where it is stepped. */
  readonly depth: Derived<'m'>
}

/** Part of the trench dug to one level. */
export interface FootingBed {
  readonly step: number
  readonly shape: Shape
  readonly topM: number
  /** Bottom of the dig, under concrete and hardcore. */
  readonly formationM: number
  readonly dig: Derived<'m3'>
}

/** Plan area of trench and footing: strips a projection wider than the wall on both sides, or the whole pad. */
function footingArea(
  { outsideLength: L, outsideDepth: D, chamberCount: n, clearSide: a }: Outline,
  p: Derived<'m'>,
  strip: boolean,
) {
  return strip
    ? derive(
        'footing-area',
        'm2',
        '(L + 2·p)·(D + 2·p) − n·(a − 2·p)^2',
        { L, D, p, n, a },
        (v) => (v.L + 2 * v.p) * (v.D + 2 * v.p) - v.n * (v.a - 2 * v.p) ** 2,
        { source: 'geometry' },
      )
    : derive('footing-area', 'm2', '(L + 2·p)·(D + 2·p)', { L, D, p }, (v) => (v.L + 2 * v.p) * (v.D + 2 * v.p), {
        source: 'geometry',
      })
}

const spansOf = (rects: readonly Rect[], whole: Rect, low: 'x0M' | 'y0M', high: 'x1M' | 'y1M') => {
  const edges = [whole[low], ...rects.flatMap((hole) => [hole[low], hole[high]]), whole[high]]
  return edges.flatMap((edge, index) => {
    const next = edges[index + 1]
    return index % 2 === 0 && next !== undefined ? [[edge, next] as const] : []
  })
}

/** Plan and volume of the footing concrete and of the layers under it, m, m² and m³. */
export function footingOf(plan: Plan, outline: Outline, levels: KilnLevels): Footing {
  const p = typed('footing-projection', 'm', plan.ground.projectionM, 'ground.projectionM')
  const c = typed('footing-thickness', 'm', plan.ground.thicknessM, 'ground.thicknessM')
  const hardcore = typed('hardcore-thickness', 'm', plan.ground.hardcoreM, 'ground.hardcoreM')
  const gauge = counted('course-gauge', 'm', levels.gaugeM ?? plan.walls.unit.heightM + plan.walls.joint.usualM)
  const strip = plan.ground.footing === 'strip' && outline.clearSide.value - 2 * p.value > SAME_LENGTH_M
  const shape: Shape = {
    outline: grown(outline.outside, p.value),
    holes: strip ? outline.chambers.map((chamber) => grown(chamber, -p.value)) : [],
  }
  const area = footingArea(outline, p, strip)
  const plane = groundOf(plan)
  const steps = footingSteps({
    plane,
    trench: shape,
    bandsAcross: {
      x: spansOf(shape.holes, shape.outline, 'x0M', 'x1M'),
      y: spansOf(shape.holes.slice(0, 1), shape.outline, 'y0M', 'y1M'),
    },
    thicknessM: c.value,
    gaugeM: gauge.value,
    stepped: plan.ground.formation === 'stepped',
    pad: !strip,
  })
  const below = counted('wall-below', 'm', levels.belowM)
  const parts = { below, thickness: c, hardcore, gauge }
  const slopeOf = (bed: { step: number; shape: Shape }) =>
    steps.zones.length === 1 ? slopeParts(plan, outline, p, gauge) : counts(bed.step, meanGround(plane, bed.shape))
  const beds = bedShapes(shape, steps).map((bed) =>
    bedOf(bed, slopeOf(bed), parts, steps.zones.length === 1 ? area : null),
  )
  const deepest = beds.reduce((low, bed) => (bed.step < low.step ? bed : low))
  return {
    kind: strip ? 'strip' : 'pad',
    projection: p,
    thickness: c,
    hardcore,
    gauge,
    shape,
    area,
    steps,
    beds,
    concrete: footingConcrete(area, c, shape, steps),
    hardcoreVolume: derive('hardcore-volume', 'm3', 'A·h', { A: area, h: hardcore }, (v) => v.A * v.h),
    depth: trenchDepth(parts, slopeOf(deepest)),
  }
}

/** The slope of the ground along the front and toward the back, m of rise a metre. */
export const groundOf = ({ ground }: Plan): GroundPlane => ({ across: ground.slopeAcross, back: ground.slopeBack })

/** What the slope adds to the depth, down to what was typed, for a trench dug to one level: its middle is the kiln's middle. */
interface SlopeParts {
  readonly coursesLower: Derived<'1'>
  readonly meanRise: Derived<'m'>
}

function slopeParts(
  plan: Plan,
  { outsideLength: L, outsideDepth: D }: Outline,
  p: Derived<'m'>,
  g: Derived<'m'>,
): SlopeParts {
  const x = typed('slope-across', '1', plan.ground.slopeAcross, 'ground.slopeAcross')
  const y = typed('slope-back', '1', plan.ground.slopeBack, 'ground.slopeBack')
  const low = derive(
    'lowest-ground',
    'm',
    'min(−x·p, x·(L + p)) + min(−y·p, y·(D + p))',
    { x, y, p, L, D },
    (v) => Math.min(-v.x * v.p, v.x * (v.L + v.p)) + Math.min(-v.y * v.p, v.y * (v.D + v.p)),
  )
  return {
    coursesLower: derive('courses-lower', '1', 'ceil(max(0, −l) / g)', { l: low, g }, (v) =>
      modulesToCover(Math.max(0, -v.l), v.g),
    ),
    meanRise: derive('mean-ground-rise', 'm', '(x·L + y·D) / 2', { x, y, L, D }, (v) => (v.x * v.L + v.y * v.D) / 2),
  }
}

const counts = (step: number, meanM: number): SlopeParts => ({
  coursesLower: counted('courses-lower', '1', 0 - step),
  meanRise: counted('mean-ground-rise', 'm', meanM),
})

interface DepthParts {
  readonly below: Derived<'m'>
  readonly thickness: Derived<'m'>
  readonly hardcore: Derived<'m'>
  readonly gauge: Derived<'m'>
}

/** Depth of the dig under mean ground: wall below ground, footing, and on sloping ground the courses added and the mean rise. */
function trenchDepth(
  { below, thickness, hardcore, gauge: g }: DepthParts,
  { coursesLower: k, meanRise }: SlopeParts,
): Derived<'m'> {
  const addends = [below, thickness]
  if (hardcore.value > 0) addends.push(hardcore)
  if (k.value !== 0) addends.push(derive('step-drop', 'm', 'k·g', { k, g }, (v) => v.k * v.g))
  if (meanRise.value !== 0) addends.push(meanRise)
  return sumOf('trench-depth', 'm', addends)
}

/** The zones of the dig: each lower level reaches uphill under the higher concrete by the overlap. */
function bedShapes(shape: Shape, { axis, zones, overlapM }: FootingSteps): { step: number; shape: Shape }[] {
  return zones.flatMap((zone, index) => {
    const before = zones[index - 1]
    const after = zones[index + 1]
    const fromM = before === undefined ? zone.fromM : zone.fromM + (before.step > zone.step ? -overlapM : overlapM)
    const toM = after === undefined ? zone.toM : zone.toM + (after.step > zone.step ? overlapM : -overlapM)
    const part = clipped(shape, acrossBand(axis, fromM, toM))
    return part === null ? [] : [{ step: zone.step, shape: part }]
  })
}

function bedOf(
  bed: { step: number; shape: Shape },
  slope: SlopeParts,
  parts: DepthParts,
  whole: Derived<'m2'> | null,
): FootingBed {
  const { step, shape } = bed
  const topM = -parts.below.value + step * parts.gauge.value
  const d = trenchDepth(parts, slope)
  const A = whole ?? counted('bed-area', 'm2', areaOf(shape))
  return {
    step,
    shape,
    topM,
    formationM: topM - parts.thickness.value - parts.hardcore.value,
    dig: derive('trench-dig', 'm3', 'A·d', { A, d }, (v) => v.A * v.d, { source: 'geometry' }),
  }
}

/** Concrete of the footing, m³, before waste: area × thickness, and at each step the overlap again by the height of the step. */
function footingConcrete(
  A: Derived<'m2'>,
  c: Derived<'m'>,
  shape: Shape,
  { axis, zones, overlapM, stepM }: FootingSteps,
) {
  const flat = derive('footing-concrete', 'm3', 'A·c', { A, c }, (v) => v.A * v.c)
  if (zones.length === 1) return flat
  const laps = zones.slice(1).map((zone, index) => {
    const uphillIsBefore = (zones[index]?.step ?? 0) > zone.step
    const band = uphillIsBefore
      ? acrossBand(axis, zone.fromM - overlapM, zone.fromM)
      : acrossBand(axis, zone.fromM, zone.fromM + overlapM)
    const part = clipped(shape, band)
    const area = counted('overlap-area', 'm2', part === null ? 0 : areaOf(part))
    const s = counted('step-height', 'm', stepM)
    return derive('overlap-concrete', 'm3', 'A·s', { A: area, s }, (v) => v.A * v.s)
  })
  return sumOf('footing-concrete-stepped', 'm3', [flat, ...laps])
}
