import { modulesToCover, SAME_LENGTH_M } from '../basics/count.ts'
import { lowestGround, type GroundPlane } from './ground-plane.ts'
import { rect, type Rect, type Shape } from './shape.ts'

/**
 * How the bottom of the trench follows a slope. `step` counts whole courses under the level case: 0 there, −1 one course lower, so that
 * every step lands on the unit's gauge. Boundaries run square across the kiln along `axis`.
 */
export interface FootingSteps {
  readonly axis: 'x' | 'y'
  /** From low x (or y) to high; the walls change level at `toM` of one and `fromM` of the next. */
  readonly zones: readonly FootingZone[]
  /** How far the higher concrete runs on over the lower, m. */
  readonly overlapM: number
  /** Height of one step, m. */
  readonly stepM: number
  /** Why steps that were asked for were not made. */
  readonly refused: StepRefusal | null
}

export type StepRefusal = 'pad' | 'course-thicker-than-footing' | 'too-close'

export interface FootingZone {
  readonly step: number
  readonly fromM: number
  readonly toM: number
}

/**
 * Least overlap of a stepped strip footing, m: twice the step, the thickness, or 300 mm, whichever is most. A step may not be higher than the
 * footing is thick. NHBC Standards 4.3.8; where a text asks for twice the thickness, the higher step allowed here gives it.
 */
export const stepOverlap = (stepM: number, thicknessM: number): number => Math.max(2 * stepM, thicknessM, 0.3)

interface Slope {
  readonly plane: GroundPlane
  readonly trench: Shape
  /** Bands of trench that run across the steps; no step is made inside one. */
  readonly bandsAcross: { readonly x: readonly Span[]; readonly y: readonly Span[] }
  readonly thicknessM: number
  readonly gaugeM: number
  readonly stepped: boolean
  readonly pad: boolean
}

type Span = readonly [number, number]

/** One level for the whole trench: as many courses lower as the lowest ground of the trench asks for. */
const levelSteps = ({ plane, trench, gaugeM }: Slope, refused: StepRefusal | null): FootingSteps => ({
  axis: 'x',
  zones: [{ step: 0 - coursesUnder(lowestGround(plane, trench.outline), gaugeM), fromM: -Infinity, toM: Infinity }],
  overlapM: 0,
  stepM: 0,
  refused,
})

/** Whole courses that bring the footing as far under this ground as it is under the front left peg. */
const coursesUnder = (groundM: number, gaugeM: number): number => modulesToCover(Math.max(0, -groundM), gaugeM)

/**
 * Where the footing steps with the ground, each step a whole number of courses and no higher than the footing is
 * thick, m.
 */
export function footingSteps(slope: Slope): FootingSteps {
  const { plane, trench, gaugeM, thicknessM } = slope
  const lowest = lowestGround(plane, trench.outline)
  if (!slope.stepped || coursesUnder(lowest, gaugeM) === 0) return levelSteps(slope, null)
  if (slope.pad) return levelSteps(slope, 'pad')
  const coursesAStep = Math.trunc((thicknessM + SAME_LENGTH_M) / gaugeM)
  if (coursesAStep < 1) return levelSteps(slope, 'course-thicker-than-footing')
  const stepM = coursesAStep * gaugeM
  const overlapM = stepOverlap(stepM, thicknessM)
  const axis = Math.abs(plane.across) >= Math.abs(plane.back) ? 'x' : 'y'
  const way = wayDownhill(slope, axis, stepM, overlapM)
  if (way === null) return levelSteps(slope, 'too-close')
  // No room for a step: one level, as little lower as the ground asks for.
  if (way.cuts.length === 0) return levelSteps(slope, null)
  return { axis, zones: zonesOf(way, coursesAStep, alongSlope(slope, axis) > 0), overlapM, stepM, refused: null }
}

const alongSlope = ({ plane }: Slope, axis: 'x' | 'y'): number => (axis === 'x' ? plane.across : plane.back)

interface WayDownhill {
  /** Steps under the level case that the highest length already stands. */
  readonly firstSteps: number
  /** Where each further step goes down, from high to low. */
  readonly cuts: readonly number[]
}

/** Where the footing must be one step lower, going downhill; null where two cuts stand closer than the overlap. */
function wayDownhill(slope: Slope, axis: 'x' | 'y', stepM: number, overlapM: number): WayDownhill | null {
  const { outline } = slope.trench
  const [from, to] = axis === 'x' ? [outline.x0M, outline.x1M] : [outline.y0M, outline.y1M]
  const rise = alongSlope(slope, axis)
  const cross = lowestGround(slope.plane, outline) - Math.min(rise * from, rise * to)
  const downhill = -Math.sign(rise)
  const [top, bottom] = downhill > 0 ? [from, to] : [to, from]
  const cuts: number[] = []
  let firstSteps = 0
  for (let steps = 0; ; steps++) {
    const due = (-steps * stepM - cross) / rise
    if ((due - bottom) * downhill >= -SAME_LENGTH_M) return { firstSteps, cuts }
    const atM = clearOfBands(due, slope.bandsAcross[axis], downhill)
    const room = (atM - (cuts.at(-1) ?? top)) * downhill
    // A first length shorter than the overlap is not worth a step: the lower level begins at the end.
    if (room >= overlapM) cuts.push(atM)
    else if (cuts.length === 0) firstSteps++
    else return null
  }
}

const clearOfBands = (atM: number, bands: readonly Span[], downhill: number): number => {
  const band = bands.find(([low, high]) => atM > low && atM < high)
  if (band === undefined) return atM
  return downhill > 0 ? band[0] : band[1]
}

function zonesOf({ firstSteps, cuts }: WayDownhill, coursesAStep: number, rises: boolean): FootingZone[] {
  const order = rises ? cuts.toReversed() : cuts
  const edges = [-Infinity, ...order, Infinity]
  return edges.slice(1).map((toM, index) => {
    const steps = firstSteps + (rises ? cuts.length - index : index)
    return { step: steps === 0 ? 0 : -steps * coursesAStep, fromM: edges[index] ?? -Infinity, toM }
  })
}

/** Step level at a place: whole courses under the level case, 0 or negative. For the layout's extra courses on the low side. */
export function stepAt({ axis, zones }: FootingSteps, xM: number, yM: number): number {
  const along = axis === 'x' ? xM : yM
  return zones.find((zone) => along <= zone.toM)?.step ?? 0
}

/** A band across the kiln as a rectangle that reaches past it on all sides. */
export const acrossBand = (axis: 'x' | 'y', fromM: number, toM: number): Rect =>
  axis === 'x' ? rect(fromM, toM, -Infinity, Infinity) : rect(-Infinity, Infinity, fromM, toM)
