import { isDetermined, leastSquares, type Linearised } from './least-squares.ts'

/** A peg where the plan wants it, in plan coordinates. */
export interface Peg {
  readonly id: string
  readonly xM: number
  readonly yM: number
}

/** One taped length between two pegs, level, m. */
export interface TapeReading {
  readonly from: string
  readonly to: string
  readonly lengthM: number
}

/** Where the pegs stand by the tapes: A is the origin and B lies on the x axis, since lengths alone cannot say where A is nor which way AB points. */
export interface AdjustedPegs {
  readonly pegs: readonly Peg[]
  /** What must be added to each reading, m, in their order. */
  readonly corrections: readonly number[]
  readonly checked: readonly number[]
  /** Readings more than the shape needs. */
  readonly redundancy: number
}

/** A coordinate is a sum of unknowns: one of its own, none where it is fixed, those of two pegs where a parallelogram is taken. */
interface Layout {
  readonly x: readonly (readonly number[])[]
  readonly y: readonly (readonly number[])[]
  readonly start: readonly number[]
}

const indexOf = (pegs: readonly Peg[], id: string): number => pegs.findIndex((peg) => peg.id === id)

/** A held, B on the axis, all others free. */
function freeLayout(pegs: readonly Peg[]): Layout {
  const start: number[] = []
  const unknown = (value: number) => [start.push(value) - 1]
  const x = pegs.map((peg) => (peg.id === 'A' ? [] : unknown(peg.xM)))
  const y = pegs.map((peg) => (peg.id === 'A' || peg.id === 'B' ? [] : unknown(peg.yM)))
  return { x, y, start }
}

/** Four pegs whose opposite sides are taken as equal: C = B + D. For four lengths: front, side and both diagonals. */
function parallelogramLayout(pegs: readonly Peg[]): Layout {
  const at = (id: string) => pegs.find((peg) => peg.id === id) ?? { xM: 0, yM: 0 }
  const places: Record<string, readonly [number[], number[]]> = {
    A: [[], []],
    B: [[0], []],
    C: [[0, 1], [2]],
    D: [[1], [2]],
  }
  return {
    x: pegs.map((peg) => places[peg.id]?.[0] ?? []),
    y: pegs.map((peg) => places[peg.id]?.[1] ?? []),
    start: [at('B').xM, at('D').xM, at('D').yM],
  }
}

const isPair = ({ from, to }: TapeReading, one: string, other: string): boolean =>
  (from === one && to === other) || (from === other && to === one)

/** One of each pair of opposite sides and both diagonals, nothing else. */
export function asksForParallelogram(readings: readonly TapeReading[]): boolean {
  const has = (one: string, other: string) => readings.some((reading) => isPair(reading, one, other))
  return (
    readings.length === 4 &&
    has('A', 'B') !== has('C', 'D') &&
    has('B', 'C') !== has('D', 'A') &&
    has('A', 'C') &&
    has('B', 'D')
  )
}

const layoutFor = (pegs: readonly Peg[], parallelogram: boolean): Layout =>
  parallelogram ? parallelogramLayout(pegs) : freeLayout(pegs)

const valueOf = (sum: readonly number[], unknowns: readonly number[]): number =>
  sum.reduce((total, index) => total + (unknowns[index] ?? 0), 0)

function linearised(
  pegs: readonly Peg[],
  layout: Layout,
  readings: readonly TapeReading[],
  unknowns: readonly number[],
): Linearised {
  const misfit: number[] = []
  const slopes: number[][] = []
  for (const { from, to, lengthM } of readings) {
    const i = indexOf(pegs, from)
    const j = indexOf(pegs, to)
    const dx = valueOf(layout.x[j] ?? [], unknowns) - valueOf(layout.x[i] ?? [], unknowns)
    const dy = valueOf(layout.y[j] ?? [], unknowns) - valueOf(layout.y[i] ?? [], unknowns)
    const length = Math.hypot(dx, dy)
    const row = unknowns.map(() => 0)
    const add = (sum: readonly number[] | undefined, slope: number) => {
      for (const index of sum ?? []) row[index] = (row[index] ?? 0) + slope
    }
    if (length > 0) {
      add(layout.x[j], dx / length)
      add(layout.x[i], -dx / length)
      add(layout.y[j], dy / length)
      add(layout.y[i], -dy / length)
    }
    misfit.push(length - lengthM)
    slopes.push(row)
  }
  return { misfit, slopes }
}

/** Do these tapes fix the shape, whatever they read? Judged on the plan's own shape. */
export function fixesShape(pegs: readonly Peg[], readings: readonly TapeReading[]): boolean {
  const layout = layoutFor(pegs, asksForParallelogram(readings))
  return isDetermined(linearised(pegs, layout, readings, layout.start).slopes, layout.start.length)
}

/** The shape that fits the tapes best, all equally trusted: least sum of squared corrections. Null where they fix no shape. */
export function adjustPegs(
  pegs: readonly Peg[],
  readings: readonly TapeReading[],
  parallelogram: boolean,
): AdjustedPegs | null {
  const layout = layoutFor(pegs, parallelogram)
  const fit = leastSquares(layout.start, (unknowns) => linearised(pegs, layout, readings, unknowns))
  if (fit === null) return null
  return {
    pegs: pegs.map((peg, index) => ({
      id: peg.id,
      xM: valueOf(layout.x[index] ?? [], fit.unknowns),
      yM: valueOf(layout.y[index] ?? [], fit.unknowns),
    })),
    corrections: fit.misfit,
    checked: fit.checked,
    redundancy: readings.length - layout.start.length,
  }
}
