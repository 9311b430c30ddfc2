import { counted, derive, typed, type Derived } from '../basics/derived.ts'
import { wallThickness } from '../fish/wall-thickness.ts'
import type { Plan } from '../plan/schema.ts'
import { rect, type Rect, type Shape } from './shape.ts'

/**
 * The kiln in plan: a row of square chambers, neighbours sharing one wall.
 * Origin at the front left outside corner, x along the front, y to the back, z up from the ground there.
 */
export interface Outline {
  readonly chamberCount: Derived<'piece'>
  readonly clearSide: Derived<'m'>
  readonly wall: Derived<'m'>
  readonly outsideLength: Derived<'m'>
  readonly outsideDepth: Derived<'m'>
  /** Corner to opposite corner, outside: both diagonals of a square kiln. */
  readonly diagonal: Derived<'m'>
  readonly insideDiagonal: Derived<'m'>
  readonly wallPlanArea: Derived<'m2'>
  readonly chambers: readonly Rect[]
  readonly outside: Rect
  /** All walls together, in plan. */
  readonly ring: Shape
}

/** Outside of the kiln and its chambers, m: n square chambers in a row, with walls between and around. */
export function outlineOf(plan: Plan): Outline {
  const n = typed('chamber-count', 'piece', plan.chambers.count, 'chambers.count')
  const a = typed('clear-side', 'm', plan.chambers.clearSideM, 'chambers.clearSideM')
  const t = wallThickness(plan)
  const L = derive('outside-length', 'm', 'n·a + (n + 1)·t', { n, a, t }, (v) => v.n * v.a + (v.n + 1) * v.t)
  const D = derive('outside-depth', 'm', 'a + 2·t', { a, t }, (v) => v.a + 2 * v.t)
  const outside = rect(0, L.value, 0, D.value)
  const chambers = Array.from({ length: n.value }, (_, i) => {
    const x0M = t.value + i * (a.value + t.value)
    return rect(x0M, x0M + a.value, t.value, t.value + a.value)
  })
  return {
    chamberCount: n,
    clearSide: a,
    wall: t,
    outsideLength: L,
    outsideDepth: D,
    diagonal: derive('outside-diagonal', 'm', 'sqrt(L^2 + D^2)', { L, D }, (v) => Math.sqrt(v.L ** 2 + v.D ** 2)),
    insideDiagonal: derive('inside-diagonal', 'm', 'sqrt(2)·a', { a }, (v) => Math.SQRT2 * v.a),
    wallPlanArea: derive('wall-plan-area', 'm2', 'L·D − n·a^2', { L, D, n, a }, (v) => v.L * v.D - v.n * v.a ** 2),
    chambers,
    outside,
    ring: { outline: outside, holes: chambers },
  }
}

/** Clear inside side of a row measured over all: a = (L − (n + 1)·t) / n. */
export const clearSideFromOutside = (outsideM: number, count: number, wallM: number): number =>
  (outsideM - (count + 1) * wallM) / count

/** Clear inside side from the outside depth: a = D − 2·t. */
export const clearSideFromDepth = (depthM: number, wallM: number): number => depthM - 2 * wallM

/** Length over all of a row: n·a + (n + 1)·t. */
export const outsideFromClearSide = (clearSideM: number, count: number, wallM: number): number =>
  count * clearSideM + (count + 1) * wallM

export interface TapeMark {
  readonly at: Derived<'m'>
  readonly kind: 'start' | 'chamber-start' | 'chamber-end' | 'opening-start' | 'opening-end' | 'end'
  /** From 1; null for the two ends. */
  readonly chamber: number | null
}

/** One pull of the tape along one side, read from the peg it starts at, so that errors do not add up from chamber to chamber. */
export interface TapeRun {
  readonly side: 'front' | 'back' | 'left' | 'right'
  readonly fromPeg: 'A' | 'B' | 'D'
  readonly marks: readonly TapeMark[]
}

/** Running measures along the front and the side, each from one end, m. */
export function tapeRuns(outline: Outline, plan: Plan): TapeRun[] {
  const { clearSide: a, wall: t, outsideLength: L, outsideDepth: D, chambers } = outline
  const w = typed('opening-width', 'm', plan.openings.widthM, 'openings.widthM')
  const start: TapeMark = { at: counted('tape-start', 'm', 0), kind: 'start', chamber: null }
  const mark = (kind: TapeMark['kind'], chamber: number): TapeMark => {
    const i = counted('chamber-number', '1', chamber)
    const args = { chamber }
    switch (kind) {
      case 'chamber-start':
        return {
          kind,
          chamber,
          at: derive('tape-chamber-start', 'm', 'i·t + (i − 1)·a', { i, t, a }, (v) => v.i * v.t + (v.i - 1) * v.a, {
            args,
          }),
        }
      case 'chamber-end':
        return {
          kind,
          chamber,
          at: derive('tape-chamber-end', 'm', 'i·(t + a)', { i, t, a }, (v) => v.i * (v.t + v.a), { args }),
        }
      case 'opening-start':
        return {
          kind,
          chamber,
          at: derive(
            'tape-opening-start',
            'm',
            'i·t + (i − 1)·a + (a − w) / 2',
            { i, t, a, w },
            (v) => v.i * v.t + (v.i - 1) * v.a + (v.a - v.w) / 2,
            { args },
          ),
        }
      case 'opening-end':
        return {
          kind,
          chamber,
          at: derive(
            'tape-opening-end',
            'm',
            'i·t + (i − 1)·a + (a + w) / 2',
            { i, t, a, w },
            (v) => v.i * v.t + (v.i - 1) * v.a + (v.a + v.w) / 2,
            { args },
          ),
        }
      case 'start':
      case 'end':
        return start
    }
  }
  const row = (kinds: readonly TapeMark['kind'][]): TapeMark[] => [
    start,
    ...chambers.flatMap((_, index) => kinds.map((kind) => mark(kind, index + 1))),
    { at: L, kind: 'end', chamber: null },
  ]
  const side: TapeMark[] = [
    start,
    mark('chamber-start', 1),
    mark('chamber-end', 1),
    { at: D, kind: 'end', chamber: null },
  ]
  return [
    { side: 'front', fromPeg: 'A', marks: row(['chamber-start', 'opening-start', 'opening-end', 'chamber-end']) },
    { side: 'back', fromPeg: 'D', marks: row(['chamber-start', 'chamber-end']) },
    { side: 'left', fromPeg: 'A', marks: side },
    { side: 'right', fromPeg: 'B', marks: side },
  ]
}
