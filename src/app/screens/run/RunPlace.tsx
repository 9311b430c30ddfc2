import { useMemo, useState } from 'react'
import { todaysLoad } from '../../../core/schedule/todays-load.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { LinkButton } from '../../parts/Button.tsx'
import { Icon } from '../../parts/Icon.tsx'
import { showHours } from '../../words/dates.ts'
import { useWords } from '../../words/use-words.tsx'
import '../build/build.css'
import { fieldWay } from '../fields/field-way.ts'
import { NumberField } from '../fields/PlanField.tsx'
import type { PlanRoute } from '../PlanHere.tsx'
import { cardHref } from '../route.ts'
import { turnText } from './turn-text.ts'
import { KeyFigure, KeyRange } from '../working/Worked.tsx'
import { FiringSheet } from './FiringSheet.tsx'

const CAUTIONS = ['air', 'burns', 'wood', 'store', 'food', 'local'] as const

/** Run: what to load of today's fish, for how long, with how much wood, and what to mind every time. */
export function RunPlace({ route, worked }: { readonly route: PlanRoute; readonly worked: WorkedOut }) {
  const words = useWords()
  const { say, mass } = words
  const { plan, fish } = worked
  const [todayKg, setTodayKg] = useState(plan.catch.freshKgPerDay)
  const today = useMemo(() => todaysLoad(plan, fish, todayKg), [plan, fish, todayKg])
  return (
    <>
      <h2 className="hide">{say('place.run')}</h2>
      <NumberField
        name={say('run.today')}
        value={todayKg}
        way={fieldWay('catch.freshKgPerDay', words)}
        onChange={setTodayKg}
        help={say('run.takes', { mass: mass(fish.freshPerDay.value) })}
      />
      <div className="figs step-figs">
        <KeyFigure label={say('run.trays')} of={today.trays} />
        <KeyFigure label={say('run.chambers')} of={today.chambers} />
        <KeyFigure label={say('run.firings')} of={today.firings} />
        <KeyRange label={say('run.dry-fish')} from={today.dried.productRange.low} to={today.dried.productRange.high} />
        <KeyRange label={say('run.wood')} from={today.wood.low} to={today.wood.high} />
        <KeyFigure label={say('run.per-tray')} of={fish.perTray} />
      </div>
      <section className="stack">
        <h2>{say('run.timetable')}</h2>
        <ol className="turns">
          {today.timetable.map((step) => (
            <li key={step.atHours}>
              <span className="hour">{showHours(step.atHours)}</span>
              <span>{turnText(step, words)}</span>
            </li>
          ))}
        </ol>
        <LinkButton href={cardHref(route.id, 'run', 'firing')} shape="big" icon="run">
          {say('card.firing')}
        </LinkButton>
      </section>
      <section className="stack">
        <h2>{say('run.cautions')}</h2>
        {CAUTIONS.map((caution) => (
          <p key={caution} className="caution-line">
            <Icon name="caution" />
            <span>{say(`run.caution.${caution}`)}</span>
          </p>
        ))}
      </section>
      {(route.card === 'firing' || route.card === 'run') && <FiringSheet route={route} />}
    </>
  )
}
