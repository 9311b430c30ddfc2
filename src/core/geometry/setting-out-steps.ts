import { counted, sumOf, type Derived } from '../basics/derived.ts'
import type { KilnGeometry } from './kiln.ts'
import type { OffsetPeg } from './offset-pegs.ts'
import type { SettingOutBearings } from './setting-out.ts'
import { grown, type Rect } from './shape.ts'
import type { SquareCorner } from './square-corner.ts'
import { tapePegs } from './tape-plan.ts'

/** One step of pegging out: a screen of its own. Wording is under `setout.<id>`; its numbers by the names of `numbers`. */
export interface SettingOutStep {
  readonly id: SettingOutStepId
  readonly numbers: Readonly<Record<string, Derived>>
  readonly diagram: StepDiagram
  /** More to say where the place asks for it, under `setout.<id>.<note>`. */
  readonly notes: readonly string[]
  /** Where true north lies on the plan, where a compass is at work. */
  readonly north: { readonly xM: number; readonly yM: number } | null
  /** Wording of the caution under `setout.caution.<key>`. */
  readonly caution: 'look-up' | 'trench-edge' | null
}

export type SettingOutStepId =
  | 'clear'
  | 'front-line'
  | 'front-length'
  | 'square'
  | 'depth'
  | 'fourth-peg'
  | 'diagonals'
  | 'offsets'
  | 'dig-lines'
  | 'levels'
  | 'wall-marks'

/** What to draw, in plan coordinates: pegs driven before, the peg or line of this step, strings, swung arcs, lengths to tape. */
export interface StepDiagram {
  readonly driven: readonly DiagramPoint[]
  readonly now: readonly DiagramPoint[]
  readonly strings: readonly DiagramLine[]
  readonly arcs: readonly { readonly centre: DiagramPoint; readonly radiusM: number }[]
  readonly taped: readonly (DiagramLine & { readonly lengthM: number })[]
  /** Outlines to mark on the ground. */
  readonly marked: readonly Rect[]
  /** Rows of lengths between marks, each on its side of the drawing. */
  readonly rows: readonly DiagramRow[]
  /** Marks of one pull of the tape along the front. */
  readonly running: readonly number[]
  /** A cut through the trench instead of the view from above. */
  readonly cut: TrenchCut | null
}

export interface DiagramRow {
  readonly side: 'top' | 'bottom' | 'left'
  readonly marksM: readonly number[]
}

export interface TrenchCut {
  readonly widthM: number
  readonly depthM: number
  /** How high the level pegs stand over the bottom. */
  readonly pegsM: number
}

export interface DiagramPoint {
  readonly id: string
  readonly xM: number
  readonly yM: number
}

export interface DiagramLine {
  readonly from: DiagramPoint
  readonly to: DiagramPoint
}

const nothing: StepDiagram = {
  driven: [],
  now: [],
  strings: [],
  arcs: [],
  taped: [],
  marked: [],
  rows: [],
  running: [],
  cut: null,
}

const taped = (from: DiagramPoint, to: DiagramPoint) => ({
  from,
  to,
  lengthM: Math.hypot(to.xM - from.xM, to.yM - from.yM),
})

/** The order of work, each step standing on the ones before. */
export function stepsOf(
  geometry: KilnGeometry,
  offsets: readonly OffsetPeg[],
  square: SquareCorner,
  bearings: SettingOutBearings | null,
): SettingOutStep[] {
  const { outsideLength: length, outsideDepth: depth, diagonal, footing, outside } = geometry
  const [a, b, c, d] = tapePegs(geometry) as [DiagramPoint, DiagramPoint, DiagramPoint, DiagramPoint]
  const frontEnd = { id: 'square-long', xM: square.long.value, yM: 0 }
  const sideEnd = { id: 'square-short', xM: 0, yM: square.short.value }
  const front = { from: a, to: b }
  const left = { from: a, to: d }
  const sides = [front, { from: b, to: c }, { from: c, to: d }, left]
  const lines = stringsBetween(offsets)
  const clearing = counted('clearing-beyond', 'm', -Math.min(...offsets.map(({ xM }) => xM)))
  const trench = footing.shape.outline
  const pegsOver = levelPegs(footing)
  const cleared = grown(outside, clearing.value)
  const step = (
    id: SettingOutStepId,
    numbers: SettingOutStep['numbers'],
    diagram: Partial<StepDiagram>,
    more: Partial<Pick<SettingOutStep, 'notes' | 'north' | 'caution'>> = {},
  ): SettingOutStep => ({
    id,
    numbers,
    diagram: { ...nothing, ...diagram },
    notes: [],
    north: null,
    caution: null,
    ...more,
  })
  return [
    step(
      'clear',
      { length, depth, beyond: clearing },
      {
        marked: [cleared, outside],
        rows: [
          { side: 'bottom', marksM: edgesAlong('x', cleared, [outside]) },
          { side: 'left', marksM: edgesAlong('y', cleared, [outside]) },
        ],
      },
      { caution: 'look-up' },
    ),
    step(
      'front-line',
      bearings === null ? {} : { bearing: bearings.frontLine, compass: bearings.frontLineMagnetic },
      { now: [a], strings: [front] },
      bearings === null
        ? { notes: ['no-wind'] }
        : { notes: bearings.isNeedleTrue ? ['bearing', 'needle'] : ['bearing'], north: bearings.north },
    ),
    step('front-length', { length }, { driven: [a], now: [b], strings: [front], taped: [taped(a, b)] }),
    step(
      'square',
      { long: square.long, short: square.short, slant: square.slant },
      {
        driven: [a, b],
        now: [sideEnd],
        strings: [front, { from: a, to: sideEnd }],
        arcs: [
          { centre: a, radiusM: square.short.value },
          { centre: frontEnd, radiusM: square.slant.value },
        ],
        taped: [taped(a, frontEnd), taped(a, sideEnd), taped(frontEnd, sideEnd)],
      },
    ),
    step('depth', { depth }, { driven: [a, b], now: [d], strings: [front, left], taped: [taped(a, d)] }),
    step(
      'fourth-peg',
      { length, depth },
      {
        driven: [a, b, d],
        now: [c],
        strings: [front, left],
        arcs: [
          { centre: b, radiusM: depth.value },
          { centre: d, radiusM: length.value },
        ],
        taped: [taped(b, c), taped(d, c)],
      },
    ),
    step('diagonals', { diagonal }, { driven: [a, b, c, d], strings: sides, taped: [taped(a, c), taped(b, d)] }),
    step(
      'offsets',
      { beyond: clearing, projection: footing.projection, wall: geometry.wall },
      { driven: [a, b, c, d], now: offsets, strings: lines },
      { notes: ['boards'] },
    ),
    step(
      'dig-lines',
      { projection: footing.projection, area: footing.area },
      {
        strings: lines,
        marked: [trench, ...footing.shape.holes],
        rows: [
          { side: 'bottom', marksM: [trench.x0M, outside.x0M, outside.x1M, trench.x1M] },
          { side: 'top', marksM: edgesAlong('x', trench, footing.shape.holes) },
          { side: 'left', marksM: edgesAlong('y', trench, footing.shape.holes.slice(0, 1)) },
        ],
      },
    ),
    step(
      'levels',
      { depth: footing.depth, over: pegsOver, top: footingTop(footing) },
      {
        cut: {
          widthM:
            footing.kind === 'strip' ? geometry.wall.value + 2 * footing.projection.value : 2 * footing.depth.value,
          depthM: footing.depth.value,
          pegsM: pegsOver.value,
        },
      },
      {
        notes: footing.steps.zones.length > 1 ? ['steps'] : isLevel(geometry) ? [] : ['slope'],
        caution: 'trench-edge',
      },
    ),
    step(
      'wall-marks',
      { wall: geometry.wall, side: geometry.clearSide },
      {
        strings: lines,
        marked: [outside, ...geometry.chambers],
        rows: [{ side: 'left', marksM: edgesAlong('y', outside, geometry.chambers.slice(0, 1)) }],
        running: edgesAlong('x', outside, geometry.chambers),
      },
      { notes: ['running'] },
    ),
  ]
}

const isLevel = ({ ground }: KilnGeometry): boolean => ground.across === 0 && ground.back === 0

/** Edges of an outline and of what lies in it, in the order of the tape. */
const edgesAlong = (axis: 'x' | 'y', outline: Rect, inner: readonly Rect[]): number[] => {
  const edges = ({ x0M, x1M, y0M, y1M }: Rect) => (axis === 'x' ? [x0M, x1M] : [y0M, y1M])
  return [outline, ...inner].flatMap(edges).toSorted((one, other) => one - other)
}

/** Height of the level pegs over the bottom of the dig: their tops are the top of the concrete. */
const levelPegs = ({ thickness, hardcore }: KilnGeometry['footing']): Derived<'m'> =>
  hardcore.value === 0 ? thickness : sumOf('level-pegs', 'm', [hardcore, thickness])

/** How far the highest concrete lies under the ground at peg A. */
const footingTop = ({ beds }: KilnGeometry['footing']): Derived<'m'> =>
  counted('footing-top', 'm', Math.min(...beds.map(({ topM }) => -topM)))

/** Pegs that keep the same line hold one string. */
const stringsBetween = (offsets: readonly OffsetPeg[]): DiagramLine[] =>
  (['front', 'right', 'back', 'left'] as const).flatMap((line) => {
    const [from, to] = offsets.filter((peg) => peg.line === line)
    return from === undefined || to === undefined ? [] : [{ from, to }]
  })
