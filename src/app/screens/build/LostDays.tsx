import { useState } from 'react'
import { Button } from '../../parts/Button.tsx'
import { showIsoDay, todayIso } from '../../words/dates.ts'
import { useWords } from '../../words/use-words.tsx'
import { DayField } from '../fields/DayField.tsx'
import { usePlan } from '../fields/plan-in-hand.ts'

/** Days on which nobody could work outdoors: each moves what follows. */
export function LostDays() {
  const { say } = useWords()
  const { plan, set } = usePlan()
  const { lostDays, startDay } = plan.build
  const [day, setDay] = useState(todayIso)
  const isBefore = startDay !== null && day < startDay
  const put = (days: readonly string[]) => set({ 'build.lostDays': [...new Set(days)].toSorted() })
  return (
    <section className="stack">
      <h3>{say('build.lost-days')}</h3>
      <ul>
        {lostDays.map((lost) => (
          <li key={lost} className="lead">
            <span>{showIsoDay(lost)}</span>
            <Button icon="close" onPress={() => put(lostDays.filter((one) => one !== lost))}>
              {say('build.take-away')}
            </Button>
          </li>
        ))}
      </ul>
      {startDay === null ? (
        <p className="quiet">{say('build.lost-no-start')}</p>
      ) : (
        <>
          <DayField name={say('build.lost-day')} day={day} onChange={(typed) => setDay(typed ?? todayIso())} />
          {isBefore ? (
            <p className="quiet">{say('build.lost-before', { start: showIsoDay(startDay) })}</p>
          ) : (
            <Button shape="big" icon="plus" onPress={() => put([...lostDays, day])}>
              {say('build.add-lost')}
            </Button>
          )}
        </>
      )}
    </section>
  )
}
