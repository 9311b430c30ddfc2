import type { ChartDay, Schedule, Step } from '../../core/schedule/schedule.ts'
import './chart.css'
import './ink.css'
import { figureWidth } from './paper.ts'
import { r } from './writing.ts'

const WIDTH = 320
const ROW = 40
const BAR = 14
const TOP = 26
/** Least distance from one named day to the next. */
const DAY_ROOM = 22

/**
 * The building day by day: work solid where a delay of it delays the first smoking, framed where it has time; waiting hatched; rest and rain as
 * shaded and dotted columns, so that it reads in black and white.
 */
export function DayChart({
  schedule,
  nameOf,
  dayText,
  label,
}: {
  readonly schedule: Schedule
  readonly nameOf: (step: Step) => string
  /** A day at the head of its column. */
  readonly dayText: (day: ChartDay) => string
  /** What the chart says, for whoever hears it. */
  readonly label: string
}) {
  const { steps, days } = schedule
  const dayU = WIDTH / Math.max(1, days.length)
  const heightU = TOP + steps.length * ROW
  const room = Math.max(...days.map((day) => figureWidth(dayText(day))), DAY_ROOM - 6) + 6
  const every = [1, 7, 14, 28].find((count) => count * dayU >= room) ?? 56
  return (
    <svg className="ink chart" viewBox={`0 0 ${String(WIDTH)} ${String(heightU)}`} role="img" aria-label={label}>
      {days.map(({ index, kind }) =>
        kind === 'work' ? null : (
          <rect
            key={index}
            className={kind === 'rest' ? 'k-shade' : 'chart-rain'}
            x={r(index * dayU)}
            y={TOP}
            width={r(dayU)}
            height={heightU - TOP}
          />
        ),
      )}
      <path className="k-thin" d={`M0 ${String(TOP)}H${String(WIDTH)}`} />
      {days
        .filter(({ index }) => index % every === 0)
        .map((day) => (
          <g key={day.index}>
            <path className="k-thin" d={`M${r(day.index * dayU)} ${String(TOP - 5)}V${String(heightU)}`} />
            {day.index * dayU + room <= WIDTH + 8 && (
              <text className="small" x={r(day.index * dayU + 2)} y={TOP - 8}>
                {dayText(day)}
              </text>
            )}
          </g>
        ))}
      {steps.map((step, row) => {
        const y = TOP + row * ROW
        const x = step.start * dayU
        const width = Math.max(2, (step.end - step.start) * dayU)
        const name = nameOf(step)
        const isRight = x + figureWidth(name) > WIDTH
        return (
          <g key={step.id}>
            <text
              className="small halo"
              x={r(isRight ? Math.min(WIDTH, Math.max(x + width, figureWidth(name))) : x)}
              y={y + 16}
              textAnchor={isRight ? 'end' : 'start'}
            >
              {name}
            </text>
            <rect className={classOf(step)} x={r(x)} y={y + 20} width={r(width)} height={BAR} />
          </g>
        )
      })}
    </svg>
  )
}

function classOf({ kind, wait, critical }: Step): string {
  if (kind === 'first-fires') return 'chart-fire'
  if (wait !== undefined) return 'k-offcut'
  return critical ? 'k-wood' : 'k-wood-face'
}
