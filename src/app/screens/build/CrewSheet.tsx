import type { WorkedOut } from '../../../core/work-out.ts'
import { Sheet } from '../../parts/Sheet.tsx'
import { showIsoDay } from '../../words/dates.ts'
import { numberLocale } from '../../words/locale.ts'
import { useWords } from '../../words/use-words.tsx'
import { DayField } from '../fields/DayField.tsx'
import { PlanField } from '../fields/PlanField.tsx'
import { usePlan } from '../fields/plan-in-hand.ts'
import { useFieldInSight } from '../fields/use-field-in-sight.ts'
import { Findings } from '../plan/Findings.tsx'
import type { PlanRoute } from '../PlanHere.tsx'
import { placeHref } from '../route.ts'
import { useCloseCard } from '../use-close-card.ts'
import { KeyFigure } from '../working/Worked.tsx'
import { DaysDrawing } from './DaysDrawing.tsx'
import { LostDays } from './LostDays.tsx'

/** Sunday first, as the plan numbers them; 4 January 1970 was a Sunday. */
const WEEKDAYS = [0, 1, 2, 3, 4, 5, 6] as const
const weekdayName = (weekday: number) =>
  new Intl.DateTimeFormat(numberLocale(), { weekday: 'long', timeZone: 'UTC' }).format(Date.UTC(1970, 0, 4 + weekday))

/** Who builds, from when, and on which days nobody works. */
export function CrewSheet({ route, worked }: { readonly route: PlanRoute; readonly worked: WorkedOut }) {
  const { say, named } = useWords()
  const { plan, set } = usePlan()
  const close = useCloseCard(placeHref(route.id, 'build'))
  useFieldInSight(route.field)
  const { restWeekdays, startDay } = plan.build
  return (
    <Sheet
      title={say('card.crew')}
      closeLabel={say('app.close')}
      onClose={close}
      height="full"
      foot={
        <div className="figs foot-figs">
          <KeyFigure label={say('build.ready-after')} of={worked.schedule.length} />
          <KeyFigure label={say('build.mason-days')} of={worked.schedule.labour.mason.days} />
        </div>
      }
    >
      {worked.schedule.readyDay !== null && (
        <p>{say('build.ready-on', { day: showIsoDay(worked.schedule.readyDay) })}</p>
      )}
      {worked.schedule.findings.length > 0 && <Findings findings={worked.schedule.findings} />}
      <DayField
        id="build.startDay"
        name={say('build.start-day')}
        day={startDay}
        onChange={(day) => set({ 'build.startDay': day })}
      />
      <div className="fields">
        <PlanField at="build.masons" />
        <PlanField at="build.labourers" />
        <PlanField at="build.carpenters" />
        <PlanField at="build.hoursPerDay" />
        <PlanField at="build.rainShare" />
      </div>
      <fieldset>
        <legend className="picks-name">{say('build.rest-days')}</legend>
        <ul>
          {WEEKDAYS.map((weekday) => (
            <li key={weekday}>
              <label className="check-line">
                <input
                  type="checkbox"
                  checked={restWeekdays.includes(weekday)}
                  onChange={(event) => {
                    const others = restWeekdays.filter((one) => one !== weekday)
                    set({
                      'build.restWeekdays': event.currentTarget.checked
                        ? [...others, weekday].toSorted((a, b) => a - b)
                        : others,
                    })
                  }}
                />
                <span>{weekdayName(weekday)}</span>
              </label>
            </li>
          ))}
        </ul>
      </fieldset>
      <LostDays />
      <h3>{named('drawing.days-title')}</h3>
      <DaysDrawing schedule={worked.schedule} />
    </Sheet>
  )
}
