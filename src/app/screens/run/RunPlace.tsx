import { lazy, Suspense, useMemo, useState } from 'react'
import { firingTime } from '../../../core/fish/timetable.ts'
import { todaysLoad } from '../../../core/schedule/todays-load.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { FiringDay } from '../../drawings/FiringDay.tsx'
import { Button } from '../../parts/Button.tsx'
import { DecisionLine } from '../../parts/DecisionLine.tsx'
import { DrawingFrame } from '../../parts/DrawingFrame.tsx'
import { Icon } from '../../parts/Icon.tsx'
import { showHours, todayIso } from '../../words/dates.ts'
import { useWords } from '../../words/use-words.tsx'
import '../build/build.css'
import { Caution } from '../build/Caution.tsx'
import { newKey } from '../buy/new-key.ts'
import { fieldWay } from '../fields/field-way.ts'
import { usePlanHand } from '../fields/plan-in-hand.ts'
import { NumberField } from '../fields/PlanField.tsx'
import { Findings } from '../plan/Findings.tsx'
import type { PlanRoute } from '../PlanHere.tsx'
import { cardHref } from '../route.ts'
import { goTo } from '../use-route.ts'
import { KeyFigure, KeyRange } from '../working/Worked.tsx'
import { CAUTIONS } from './cautions.ts'
import { LogPart } from './LogPart.tsx'
import { runAnswers } from './run-answers.ts'
import { runCardOf } from './run-card.ts'
import './run.css'
import { turnText } from './turn-text.ts'
import { useLog } from './use-log.ts'

const RunSheet = lazy(() => import('./RunSheet.tsx').then((one) => ({ default: one.RunSheet })))

/** Run: what to load of today's fish and for how long, what came of it, and what it brings. */
export function RunPlace({ route, worked }: { readonly route: PlanRoute; readonly worked: WorkedOut }) {
  const words = useWords()
  const { say, mass } = words
  const { plan, fish } = worked
  const { set } = usePlanHand()
  const [todayKg, setTodayKg] = useState(plan.catch.freshKgPerDay)
  const today = useMemo(() => todaysLoad(plan, fish, todayKg), [plan, fish, todayKg])
  const log = useLog(plan)
  const card = runCardOf(route.card)
  const answers = useMemo(() => runAnswers(worked, log, words), [worked, log, words])
  const writeUp = () => {
    const id = newKey()
    const open = { productKg: null, woodKg: null, hours: null }
    const unpaid = { fishCostMinor: null, woodCostMinor: null, otherCostMinor: null, salesMinor: null }
    const firing = { day: todayIso(), freshKg: todayKg, ...open, ...unpaid, note: '' }
    if (set({ [`run.firings.${id}`]: firing })) goTo(cardHref(route.id, 'run', `log:${id}`))
  }
  return (
    <>
      <h2 className="hide">{say('place.run')}</h2>
      <div className="run-columns">
        <section className="stack">
          <NumberField
            name={say('run.today')}
            value={todayKg}
            way={fieldWay('catch.freshKgPerDay', words)}
            onChange={setTodayKg}
            help={say('run.takes', { mass: mass(fish.freshPerDay.value) })}
          />
          {today.findings.length > 0 && <Findings findings={today.findings} />}
          <div className="figs step-figs">
            <KeyFigure label={say('run.trays')} of={today.trays} />
            <KeyFigure label={say('run.chambers')} of={today.chambers} />
            <KeyFigure label={say('run.firings')} of={today.firings} />
            <KeyFigure label={say('run.hours')} of={firingTime(plan)} />
            <KeyRange
              label={say('run.dry-fish')}
              from={today.dried.productRange.low}
              to={today.dried.productRange.high}
            />
            <KeyRange label={say('run.wood')} from={today.wood.low} to={today.wood.high} />
            <KeyFigure label={say('run.per-tray')} of={fish.perTray} />
          </div>
          <Button shape="big" tone="fire" icon="plus" onPress={writeUp}>
            {say('run.write-up', { number: words.number(log.firings.length + 1) })}
          </Button>
          <h2>{say('run.timetable')}</h2>
          <DrawingFrame>
            <FiringDay
              steps={today.timetable}
              label={say('run.day-told', { hours: words.inLine(firingTime(plan).value, 'h') })}
              hourText={showHours}
              names={{ cook: say('run.day.cook'), dry: say('run.day.dry') }}
            />
          </DrawingFrame>
          <details className="work-step">
            <summary>
              <b>{say('run.step-by-step')}</b>
            </summary>
            <ol className="turns">
              {today.timetable.map((step) => (
                <li key={step.atHours}>
                  <span className="hour">{showHours(step.atHours)}</span>
                  <span>{turnText(step, words)}</span>
                </li>
              ))}
            </ol>
          </details>
          <Caution>{say('run.caution.short')}</Caution>
        </section>
        <section className="stack">
          <LogPart log={log} planId={route.id} />
          <nav aria-label={say('run.more')}>
            {answers.map(({ card: key, icon, answer }) => (
              <DecisionLine
                key={key}
                name={say(`card.${key}`)}
                answer={answer}
                picture={<Icon name={icon} />}
                href={cardHref(route.id, 'run', key)}
              />
            ))}
          </nav>
        </section>
      </div>
      <section className="stack">
        <h2>{say('run.cautions')}</h2>
        {CAUTIONS.map((caution) => (
          <p key={caution} className="caution-line">
            <Icon name="caution" />
            <span>{say(`run.caution.${caution}`)}</span>
          </p>
        ))}
      </section>
      {card !== null && (
        <Suspense fallback={null}>
          <RunSheet card={card} route={route} worked={worked} log={log} />
        </Suspense>
      )}
    </>
  )
}
