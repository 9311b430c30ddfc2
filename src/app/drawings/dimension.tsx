import { Fragment } from 'react'
import type { Derived } from '../../core/basics/derived.ts'
import type { Shape } from '../../core/documents/drawings/drawing.ts'
import { figureWidth, type Paper } from './paper.ts'

export type Dimension = Extract<Shape, { kind: 'dimension' }>

const r = (value: number): string => String(Math.round(value * 100) / 100)

/** One dimension line laid out on paper: two ends along its axis, the line's own place across it. */
interface Laid {
  readonly dimension: Dimension
  readonly fromU: number
  readonly toU: number
  readonly acrossU: number
  readonly text: string
}

/** Dimension lines laid out on paper, and the figures that are written on them. */
export interface LaidDimensions {
  readonly lines: readonly Laid[]
  readonly figures: readonly FigureAt[]
}

export function layDimensions(
  dimensions: readonly Dimension[],
  paper: Paper,
  write: (dimension: Dimension) => string,
): LaidDimensions {
  const lines = dimensions.map((dimension): Laid => {
    const along = dimension.axis === 'x' ? paper.x : paper.y
    const ends = [along(dimension.fromM), along(dimension.toM)]
    return {
      dimension,
      fromU: Math.min(...ends),
      toU: Math.max(...ends),
      acrossU:
        'side' in dimension.place
          ? paper.lane(dimension.place.side, dimension.place.lane)
          : (dimension.axis === 'x' ? paper.y : paper.x)(dimension.place.atM),
      text: write(dimension),
    }
  })
  return { lines, figures: figuresOf(lines) }
}

/**
 * Dimension lines of one axis and one lane, as a mason draws them: thin line running past oblique ticks, the figure standing on it.
 * Where a figure of equal neighbours does not fit its own length, one figure with their number stands for all.
 */
export function Dimensions({ laid, paper }: { readonly laid: LaidDimensions; readonly paper: Paper }) {
  return (
    <>
      {laid.lines.map((one, index) => (
        <Line key={index} laid={one} paper={paper} />
      ))}
      {laid.figures.map(({ text, middleU, acrossU, axis }, index) => (
        <text
          key={index}
          className="halo"
          textAnchor="middle"
          x={r(axis === 'x' ? middleU : acrossU - 4)}
          y={r(axis === 'x' ? acrossU - 4 : middleU)}
          {...(axis === 'y' && { transform: `rotate(-90 ${r(acrossU - 4)} ${r(middleU)})` })}
        >
          {text}
        </text>
      ))}
    </>
  )
}

export interface FigureAt {
  readonly text: string
  /** How the number came about, where it is a worked-out one. */
  readonly working?: Derived
  readonly middleU: number
  readonly acrossU: number
  readonly axis: 'x' | 'y'
}

const workingOf = ({ dimension: { working } }: Laid) => (working === undefined ? {} : { working })

/** Which figures are written: for a row of equal ones too narrow for them, one with their number; else all that stand clear of each other, the ones with most room first. */
function figuresOf(laid: readonly Laid[]): FigureAt[] {
  const figures: FigureAt[] = []
  const rows = new Map<string, Laid[]>()
  for (const one of laid) {
    const row = `${one.dimension.axis} ${r(one.acrossU)}`
    rows.set(row, [...(rows.get(row) ?? []), one])
  }
  for (const row of rows.values()) {
    const first = row[0]
    if (first === undefined) continue
    const fits = (one: Laid) => figureWidth(one.text) + 8 <= one.toU - one.fromU
    const equal = row.every((one) => one.text === first.text)
    if (row.length > 1 && equal && !row.every(fits)) {
      const fromU = Math.min(...row.map((one) => one.fromU))
      const toU = Math.max(...row.map((one) => one.toU))
      figures.push({
        text: `${String(row.length)} × ${first.text}`,
        middleU: (fromU + toU) / 2,
        acrossU: first.acrossU,
        axis: first.dimension.axis,
        ...workingOf(first),
      })
      continue
    }
    const taken: { readonly fromU: number; readonly toU: number }[] = []
    for (const one of row.toSorted((a, b) => Number(fits(b)) - Number(fits(a)) || b.toU - b.fromU - a.toU + a.fromU)) {
      const middleU = (one.fromU + one.toU) / 2
      const halfU = figureWidth(one.text) / 2 + 3
      const isTaken = taken.some((other) => middleU + halfU > other.fromU && middleU - halfU < other.toU)
      if (isTaken || (one.dimension.minor === true && !fits(one))) continue
      taken.push({ fromU: middleU - halfU, toU: middleU + halfU })
      figures.push({ text: one.text, middleU, acrossU: one.acrossU, axis: one.dimension.axis, ...workingOf(one) })
    }
  }
  return figures
}

function Line({ laid, paper }: { readonly laid: Laid; readonly paper: Paper }) {
  const { dimension, fromU, toU, acrossU } = laid
  const flat = dimension.axis === 'x'
  const at = (alongU: number, offU = 0) =>
    flat ? `${r(alongU)} ${r(acrossU + offU)}` : `${r(acrossU + offU)} ${r(alongU)}`
  const edgeM = 'side' in dimension.place ? dimension.place.edgeM : undefined
  const edgeU = edgeM === undefined ? undefined : (flat ? paper.y : paper.x)(edgeM)
  return (
    <>
      {edgeU !== undefined &&
        [fromU, toU].map((alongU) => {
          const past = acrossU + (edgeU < acrossU ? 5 : -5)
          const d = flat ? `M${r(alongU)} ${r(edgeU)}V${r(past)}` : `M${r(edgeU)} ${r(alongU)}H${r(past)}`
          return <path key={alongU} className="k-extension" d={d} />
        })}
      <path className="k-dim" d={`M${at(fromU - 4)}L${at(toU + 4)}`} />
      {[fromU, toU].map((alongU) => (
        <Fragment key={alongU}>
          <path
            className="k-tick"
            d={
              flat
                ? `M${r(alongU - 4)} ${r(acrossU + 4)}L${r(alongU + 4)} ${r(acrossU - 4)}`
                : `M${r(acrossU - 4)} ${r(alongU + 4)}L${r(acrossU + 4)} ${r(alongU - 4)}`
            }
          />
        </Fragment>
      ))}
    </>
  )
}
