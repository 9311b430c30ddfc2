import { useId } from 'react'
import './chart.css'
import './ink.css'
import { r } from './writing.ts'

export interface ChartFiring {
  readonly key: string
  /** Its number in the log, under its column. */
  readonly name: string
  readonly value: number | null
  /** What was to be expected. */
  readonly low?: number | undefined
  readonly high?: number | undefined
  /** Lies outside of what was expected. */
  readonly isOut: boolean
}

const WIDTH = 320
const LEFT = 44
const TOP = 30
const PLOT = 130
const FOOT = 24
const STEPS = [1, 2, 2.5, 5, 10]

/** A round step of the scale that takes about four to the top. */
export function scaleStep(most: number): number {
  if (most <= 0) return 1
  const rough = most / 4
  const power = 10 ** Math.floor(Math.log10(rough))
  return (STEPS.find((step) => step * power >= rough - 1e-12) ?? 10) * power
}

/**
 * One column a firing, solid on a dotted band of what was expected. A column outside of it carries a triangle, so that it reads in black and white; a firing
 * that was not weighed has a dash.
 */
export function FiringChart({
  firings,
  label,
  scale,
}: {
  readonly firings: readonly ChartFiring[]
  /** What the chart says, for whoever hears it. */
  readonly label: string
  readonly scale: (value: number) => string
}) {
  const flag = useId()
  const values = firings.flatMap(({ value, high }) => [value ?? 0, high ?? 0])
  const step = scaleStep(Math.max(...values, -Math.min(...values, 0), 0))
  const top = Math.max(1, Math.ceil(Math.max(...values, 0) / step - 1e-9)) * step
  const bottom = Math.floor(Math.min(...values, 0) / step + 1e-9) * step
  const y = (value: number) => TOP + ((top - value) / (top - bottom)) * PLOT
  const slot = (WIDTH - LEFT) / Math.max(1, firings.length)
  const bar = Math.min(26, slot * 0.56)
  const ticks = Array.from({ length: Math.round((top - bottom) / step) + 1 }, (_, index) => bottom + index * step)
  const base = TOP + PLOT
  return (
    <svg className="ink chart" viewBox={`0 0 ${String(WIDTH)} ${String(base + FOOT)}`} role="img" aria-label={label}>
      <defs>
        <path id={flag} className="chart-flag" d="M0 -15L8 0H-8Z" />
      </defs>
      {ticks.map((tick) => (
        <g key={tick}>
          <path className="chart-rule" d={`M${String(LEFT)} ${r(y(tick))}H${String(WIDTH)}`} />
          <text className="small" x={LEFT - 6} y={r(y(tick) + 5)} textAnchor="end">
            {scale(tick)}
          </text>
        </g>
      ))}
      {firings.map(({ key, name, value, low, high, isOut }, index) => {
        const x = LEFT + (index + 0.5) * slot
        return (
          <g key={key}>
            {low !== undefined && high !== undefined && (
              <rect
                className="k-fill"
                x={r(x - slot / 2)}
                y={r(y(high))}
                width={r(slot)}
                height={r(Math.max(2, y(low) - y(high)))}
              />
            )}
            {value === null ? (
              <path className="k-edge" d={`M${r(x - 6)} ${r(y(0) - 8)}h12`} />
            ) : (
              <rect
                className={isOut ? 'chart-fire' : 'k-wood'}
                x={r(x - bar / 2)}
                y={r(Math.min(y(value), y(0)))}
                width={r(bar)}
                height={r(Math.abs(y(value) - y(0)))}
              />
            )}
            {isOut && value !== null && (
              <use href={`#${flag}`} x={r(x)} y={r(Math.min(y(value), y(high ?? value), y(0)) - 5)} />
            )}
            <text className="small" x={r(x)} y={base + 18} textAnchor="middle">
              {name}
            </text>
          </g>
        )
      })}
      <path className="k-ground" d={`M${String(LEFT)} ${r(y(0))}H${String(WIDTH)}`} />
    </svg>
  )
}
