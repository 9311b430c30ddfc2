import type { Schedule } from '../../../core/schedule/schedule.ts'
import { DayChart } from '../../drawings/DayChart.tsx'
import { showShortDay } from '../../words/dates.ts'
import { useWords } from '../../words/use-words.tsx'
import type { Words } from '../../words/words.ts'
import { stepDays, stepName } from './step-text.ts'

const LOOKS = ['critical', 'free', 'wait', 'fire', 'rest', 'rain'] as const

/** The building day by day as a chart for screen and paper, told in words as well. */
export function DaysChart({ schedule }: { readonly schedule: Schedule }) {
  const words = useWords()
  return (
    <DayChart
      schedule={schedule}
      nameOf={(step) => stepName(step, words)}
      dayText={({ day, index }) => (day === null ? words.number(index + 1) : showShortDay(day))}
      label={daysTold(schedule, words)}
    />
  )
}

/** The same with what its inks mean. */
export function DaysDrawing({ schedule }: { readonly schedule: Schedule }) {
  const { say } = useWords()
  return (
    <>
      <DaysChart schedule={schedule} />
      <ul className="day-key">
        {LOOKS.map((look) => (
          <li key={look}>
            <svg viewBox="0 0 22 16" aria-hidden="true" focusable="false">
              <rect className={`key-${look}`} x="1" y="1" width="20" height="14" />
            </svg>
            {say(`build.days.${look}`)}
          </li>
        ))}
      </ul>
    </>
  )
}

function daysTold({ steps }: Schedule, words: Words): string {
  const told = steps.map((step) =>
    words.say(step.critical ? 'build.days.told-critical' : 'build.days.told', {
      name: stepName(step, words),
      days: stepDays(step, words),
    }),
  )
  return [words.named('drawing.days'), ...told].join(' ')
}
