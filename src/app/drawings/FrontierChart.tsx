import './chart.css'
import { scaleStep } from './FiringChart.tsx'
import './ink.css'
import { r } from './writing.ts'

/** Marks that can be told apart without colour. */
export type PointMark = 'square' | 'solid-square' | 'triangle' | 'circle' | 'diamond'

export interface ChartPoint {
  readonly key: string
  readonly x: number
  readonly y: number
  readonly mark: PointMark
}

interface Axis {
  readonly name: string
  readonly text: (value: number) => string
}

const WIDTH = 320
const LEFT = 46
const RIGHT = 10
const TOP = 48
const PLOT = 168
const FOOT = 44
const MARK = 5
/** A limit further away than this share of what is shown stays off the chart: it would press the points together. */
const FAR = 0.6

const OUTLINES: Readonly<Record<PointMark, string>> = {
  square: `M-${MARK} -${MARK}h${2 * MARK}v${2 * MARK}h-${2 * MARK}z`,
  'solid-square': `M-${MARK} -${MARK}h${2 * MARK}v${2 * MARK}h-${2 * MARK}z`,
  triangle: `M0 -${MARK + 2}L${MARK + 2} ${MARK}H-${MARK + 2}z`,
  circle: `M-${MARK} 0a${MARK} ${MARK} 0 1 0 ${2 * MARK} 0a${MARK} ${MARK} 0 1 0 -${2 * MARK} 0z`,
  diamond: `M0 -${MARK + 2}L${MARK + 2} 0L0 ${MARK + 2}L-${MARK + 2} 0z`,
}

/** One mark, for points and for the key below the chart. */
export const MarkPath = ({ mark }: { readonly mark: PointMark }) => (
  <path className={mark === 'solid-square' ? 'k-wood' : 'k-wood-face'} d={OUTLINES[mark]} />
)

/** Round ends and steps of a scale from the least to the most. */
function scaleOf(values: readonly number[]): { from: number; to: number; ticks: number[] } {
  const least = Math.min(...values)
  const most = Math.max(...values)
  const step = scaleStep(most - least > 0 ? most - least : Math.max(most, 1))
  const from = Math.floor(least / step + 1e-9) * step
  const to = Math.max(from + step, Math.ceil(most / step - 1e-9) * step)
  const count = Math.round((to - from) / step)
  return { from, to, ticks: Array.from({ length: count + 1 }, (_, index) => from + index * step) }
}

/**
 * The edge of what can be had: a stair from the cheapest to the largest, each mark a design, the shape its kind of wall. The limits stand as
 * dashed lines, what is planned now as a cross.
 */
export function FrontierChart({
  points,
  now,
  limit,
  need,
  x,
  y,
  label,
}: {
  /** Cheapest first. */
  readonly points: readonly ChartPoint[]
  readonly now: { readonly x: number; readonly y: number; readonly name: string } | null
  readonly limit: { readonly value: number; readonly name: string }
  readonly need: { readonly value: number; readonly name: string }
  readonly x: Axis
  readonly y: Axis
  /** What the chart says, for whoever hears it. */
  readonly label: string
}) {
  const xs = [need.value, ...points.map((one) => one.x), ...(now === null ? [] : [now.x])]
  const ys = [...points.map((one) => one.y), ...(now === null ? [] : [now.y])]
  const most = Math.max(...ys)
  const hasLimit = limit.value <= most + FAR * Math.max(most - Math.min(...ys), most * 0.1)
  const across = scaleOf(xs)
  const up = scaleOf(hasLimit ? [...ys, limit.value] : ys)
  const xU = (value: number) => LEFT + ((value - across.from) / (across.to - across.from)) * (WIDTH - RIGHT - LEFT)
  const yU = (value: number) => TOP + ((up.to - value) / (up.to - up.from)) * PLOT
  const base = TOP + PLOT
  const stair = points.map(({ x: at, y: cost }, index) =>
    index === 0 ? `M${r(xU(at))} ${r(yU(cost))}` : `H${r(xU(at))}V${r(yU(cost))}`,
  )
  const isNeedRight = xU(need.value) > (LEFT + WIDTH) / 2
  return (
    <svg className="ink chart" viewBox={`0 0 ${String(WIDTH)} ${String(base + FOOT)}`} role="img" aria-label={label}>
      <text className="small" x="0" y="14">
        {y.name}
      </text>
      {up.ticks.map((tick) => (
        <g key={tick}>
          <path className="chart-rule" d={`M${String(LEFT)} ${r(yU(tick))}H${String(WIDTH - RIGHT)}`} />
          <text className="small" x={LEFT - 6} y={r(yU(tick) + 5)} textAnchor="end">
            {y.text(tick)}
          </text>
        </g>
      ))}
      {across.ticks.map((tick) => (
        <g key={tick}>
          <path className="k-edge" d={`M${r(xU(tick))} ${String(base)}v5`} />
          <text className="small" x={r(xU(tick))} y={base + 20} textAnchor="middle">
            {x.text(tick)}
          </text>
        </g>
      ))}
      <text className="small" x={WIDTH - RIGHT} y={base + 39} textAnchor="end">
        {x.name}
      </text>
      <path className="k-ground" d={`M${String(LEFT)} ${String(base)}H${String(WIDTH - RIGHT)}`} />
      <path className="k-hidden" d={`M${r(xU(need.value))} ${String(TOP - 14)}V${String(base)}`} />
      <path className="chart-heavy" d={stair.join('')} />
      {hasLimit && (
        <path className="chart-limit" d={`M${String(LEFT)} ${r(yU(limit.value))}H${String(WIDTH - RIGHT)}`} />
      )}
      {points.map(({ key, x: at, y: cost, mark }) => (
        <g key={key} transform={`translate(${r(xU(at))} ${r(yU(cost))})`}>
          <MarkPath mark={mark} />
        </g>
      ))}
      {now !== null && (
        <>
          <path className="chart-heavy" d={`M${r(xU(now.x) - 6)} ${r(yU(now.y) - 6)}l12 12m0 -12l-12 12`} />
          <text
            className="small halo"
            x={r(xU(now.x) + (xU(now.x) > WIDTH / 2 ? -10 : 10))}
            y={r(yU(now.y) + 18)}
            textAnchor={xU(now.x) > WIDTH / 2 ? 'end' : 'start'}
          >
            {now.name}
          </text>
        </>
      )}
      <text
        className="small halo"
        x={r(xU(need.value) + (isNeedRight ? -5 : 5))}
        y={TOP - 6}
        textAnchor={isNeedRight ? 'end' : 'start'}
      >
        {need.name}
      </text>
      {hasLimit && (
        <text className="small halo" x={LEFT + 4} y={r(yU(limit.value) - 6)}>
          {limit.name}
        </text>
      )}
    </svg>
  )
}
