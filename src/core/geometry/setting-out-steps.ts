import { counted, type Derived } from '../basics/derived.ts'
import type { KilnGeometry } from './kiln.ts'
import type { OffsetPeg } from './offset-pegs.ts'
import type { SettingOutBearings } from './setting-out.ts'
import type { Rect } from './shape.ts'
import type { SquareCorner } from './square-corner.ts'
import { tapePegs } from './tape-plan.ts'

/** One step of pegging out: a screen of its own. Wording is under `setout.<id>`; its numbers by the names of `numbers`. */
export interface SettingOutStep {
  readonly id: SettingOutStepId
  readonly numbers: Readonly<Record<string, Derived>>
  readonly diagram: StepDiagram
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

const nothing: StepDiagram = { driven: [], now: [], strings: [], arcs: [], taped: [], marked: [] }

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
  const step = (
    id: SettingOutStepId,
    numbers: SettingOutStep['numbers'],
    diagram: Partial<StepDiagram>,
    caution: SettingOutStep['caution'] = null,
  ): SettingOutStep => ({ id, numbers, diagram: { ...nothing, ...diagram }, caution })
  return [
    step('clear', { length, depth, beyond: clearing }, { marked: [outside] }, 'look-up'),
    step('front-line', bearings === null ? {} : { bearing: bearings.frontLine, compass: bearings.frontLineMagnetic }, {
      now: [a],
      strings: [front],
    }),
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
    step('offsets', { beyond: clearing }, { driven: [a, b, c, d], now: offsets, strings: lines }),
    step(
      'dig-lines',
      { projection: footing.projection, area: footing.area },
      {
        driven: offsets,
        strings: lines,
        marked: [footing.shape.outline, ...footing.shape.holes],
      },
    ),
    step(
      'levels',
      { depth: footing.depth, thickness: footing.thickness },
      {
        driven: offsets,
        marked: [footing.shape.outline, ...footing.shape.holes],
      },
      'trench-edge',
    ),
    step(
      'wall-marks',
      { wall: geometry.wall, side: geometry.clearSide },
      {
        driven: offsets,
        strings: lines,
        marked: [outside, ...geometry.chambers],
      },
    ),
  ]
}

/** Pegs that keep the same line hold one string. */
const stringsBetween = (offsets: readonly OffsetPeg[]): DiagramLine[] =>
  (['front', 'right', 'back', 'left'] as const).flatMap((line) => {
    const [from, to] = offsets.filter((peg) => peg.line === line)
    return from === undefined || to === undefined ? [] : [{ from, to }]
  })
