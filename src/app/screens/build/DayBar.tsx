import type { Step } from '../../../core/schedule/schedule.ts'

/** One step on the line of days: work is solid, waiting hatched, fire in ember; all bars of a list share one scale. */
export function DayBar({ step, days }: { readonly step: Step; readonly days: number }) {
  const look = step.kind === 'first-fires' ? 'fire' : step.wait === undefined ? 'work' : 'wait'
  const least = days / 60
  return (
    <svg
      className="day-bar"
      viewBox={`0 0 ${String(days)} 10`}
      preserveAspectRatio="none"
      aria-hidden="true"
      focusable="false"
    >
      <path className="day-line" d={`M0 9.5H${String(days)}`} />
      <rect className={look} x={step.start} y="1" width={Math.max(least, step.end - step.start)} height="7" />
    </svg>
  )
}
