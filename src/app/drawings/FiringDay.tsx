import type { FiringStep } from '../../core/fish/timetable.ts'
import './chart.css'
import './ink.css'
import { r } from './writing.ts'

const WIDTH = 320
const LEFT = 8
const RIGHT = 20
const BAR_Y = 20
const BAR = 28

/** One firing along the hours: embers open, cooking hatched, drying empty, a solid mark at every turn of the trays. */
export function FiringDay({
  steps,
  label,
  hourText,
  names,
}: {
  readonly steps: readonly FiringStep[]
  readonly label: string
  readonly hourText: (hours: number) => string
  readonly names: { readonly cook: string; readonly dry: string }
}) {
  const end = steps.at(-1)?.atHours ?? 1
  const x = (hours: number) => LEFT + (hours / end) * (WIDTH - LEFT - RIGHT)
  const loaded = steps.find(({ action }) => action === 'load')?.atHours ?? 0
  const cooked = steps.find(({ action }) => action === 'bank')?.atHours ?? end
  const every = [0.5, 1, 2, 3, 4, 6, 8, 12].find((hours) => end / hours <= 5.2) ?? 24
  const marks = Array.from({ length: Math.floor(end / every + 1e-9) + 1 }, (_, index) => index * every)
  const part = (className: string, from: number, to: number, name?: string) =>
    to - from > 1e-9 && (
      <g>
        <rect className={className} x={r(x(from))} y={BAR_Y} width={r(x(to) - x(from))} height={BAR} />
        {name !== undefined && x(to) - x(from) > name.length * 8 && (
          <text className="small halo" x={r((x(from) + x(to)) / 2)} y={BAR_Y + 19} textAnchor="middle">
            {name}
          </text>
        )}
      </g>
    )
  return (
    <svg className="ink chart" viewBox={`0 0 ${String(WIDTH)} 78`} role="img" aria-label={label}>
      {part('k-wood-face', 0, loaded)}
      {part('k-offcut', loaded, cooked, names.cook)}
      {part('k-wood-face', cooked, end, names.dry)}
      {steps
        .filter(({ action }) => action === 'turn')
        .map(({ atHours }) => (
          <path key={atHours} className="k-solid" d={`M${r(x(atHours))} ${String(BAR_Y - 2)}l-6 -10h12z`} />
        ))}
      {marks.map((hours) => (
        <g key={hours}>
          <path className="k-edge" d={`M${r(x(hours))} ${String(BAR_Y + BAR)}v8`} />
          <text className="small" x={r(x(hours))} y={BAR_Y + BAR + 24} textAnchor={hours === 0 ? 'start' : 'middle'}>
            {hourText(hours)}
          </text>
        </g>
      ))}
    </svg>
  )
}
