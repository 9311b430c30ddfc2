import type { HeatMoment } from '../../core/heat/conduct.ts'
import { scaleStep } from './FiringChart.tsx'
import './chart.css'
import './ink.css'
import { r } from './writing.ts'

const WIDTH = 320
const LEFT = 40
const RIGHT = 8
const TOP = 12
const PLOT = 150
const FOOT = 24

/** Both faces of the wall through a firing and the cooling after it: the fire's face thin, the outer one heavy, limits for a bare hand dashed. */
export function FaceChart({
  moments,
  limits,
  label,
  names,
  scale,
}: {
  readonly moments: readonly HeatMoment[]
  /** Temperatures that a bare hand does not bear. */
  readonly limits: readonly number[]
  readonly label: string
  readonly names: { readonly inside: string; readonly outside: string }
  readonly scale: (value: number) => string
}) {
  const endHours = moments.at(-1)?.atHours ?? 1
  const all = moments.flatMap((one) => [one.insideFaceDegC, one.outsideFaceDegC])
  const most = Math.max(...all, ...limits)
  const step = scaleStep(most)
  const top = Math.ceil(most / step) * step
  const x = (hours: number) => LEFT + (hours / endHours) * (WIDTH - LEFT - RIGHT)
  const y = (degC: number) => TOP + (1 - Math.max(0, degC) / top) * PLOT
  const line = (of: (one: HeatMoment) => number) =>
    moments.map((one, index) => `${index === 0 ? 'M' : 'L'}${r(x(one.atHours))} ${r(y(of(one)))}`).join('')
  const hottest = moments.reduce((most_, one) => (one.insideFaceDegC > most_.insideFaceDegC ? one : most_), {
    atHours: 0,
    insideFaceDegC: 0,
    outsideFaceDegC: 0,
  })
  const peak = moments.reduce((most_, one) => (one.outsideFaceDegC > most_.outsideFaceDegC ? one : most_), hottest)
  const every = [1, 2, 3, 4, 6, 8, 12].find((hours) => endHours / hours <= 6.2) ?? 24
  const hours = Array.from({ length: Math.floor(endHours / every + 1e-9) + 1 }, (_, index) => index * every)
  const ticks = Array.from({ length: Math.round(top / step) + 1 }, (_, index) => index * step)
  const base = TOP + PLOT
  return (
    <svg className="ink chart" viewBox={`0 0 ${String(WIDTH)} ${String(base + FOOT)}`} role="img" aria-label={label}>
      {ticks.map((tick) => (
        <g key={tick}>
          <path className="chart-rule" d={`M${String(LEFT)} ${r(y(tick))}H${String(WIDTH - RIGHT)}`} />
          <text className="small" x={LEFT - 6} y={r(y(tick) + 5)} textAnchor="end">
            {scale(tick)}
          </text>
        </g>
      ))}
      {limits.map((degC) => (
        <g key={degC}>
          <path className="k-string-2" d={`M${String(LEFT)} ${r(y(degC))}H${String(WIDTH - RIGHT)}`} />
          <text className="tiny halo" x={WIDTH - RIGHT} y={r(y(degC) - 4)} textAnchor="end">
            {scale(degC)}
          </text>
        </g>
      ))}
      <path className="k-edge" d={line((one) => one.insideFaceDegC)} />
      <path className="chart-heavy" d={line((one) => one.outsideFaceDegC)} />
      <text className="small halo" x={r(x(hottest.atHours) + 6)} y={r(y(hottest.insideFaceDegC) + 14)}>
        {names.inside}
      </text>
      <text className="small halo" x={r(x(peak.atHours))} y={r(y(peak.outsideFaceDegC) + 22)} textAnchor="middle">
        {names.outside}
      </text>
      {hours.map((hour) => (
        <text key={hour} className="small" x={r(x(hour))} y={base + 18} textAnchor="middle">
          {scale(hour)}
        </text>
      ))}
      <path className="k-ground" d={`M${String(LEFT)} ${String(base)}H${String(WIDTH - RIGHT)}`} />
    </svg>
  )
}
