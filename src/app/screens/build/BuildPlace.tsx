import { lazy, Suspense, useState } from 'react'
import type { Step } from '../../../core/schedule/schedule.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { LinkButton } from '../../parts/Button.tsx'
import { Icon } from '../../parts/Icon.tsx'
import { showIsoDay } from '../../words/dates.ts'
import { useWords } from '../../words/use-words.tsx'
import { Findings } from '../plan/Findings.tsx'
import { worstFirst } from '../plan/order-findings.ts'
import type { PlanRoute } from '../PlanHere.tsx'
import { cardHref } from '../route.ts'
import { KeyFigure } from '../working/Worked.tsx'
import './build.css'
import { stepDays, stepName } from './step-text.ts'
import { CourseViewer } from './CourseViewer.tsx'
import { CrewSheet } from './CrewSheet.tsx'
import { DayBar } from './DayBar.tsx'
import { coursesOf, figuresOf, lineOf } from './figures.ts'

const StepDrawings = lazy(() =>
  import('../../drawings/StepDrawings.tsx').then(({ StepDrawings: shown }) => ({ default: shown })),
)
const DayChart = lazy(() => import('../../drawings/DayChart.tsx').then(({ DayChart: shown }) => ({ default: shown })))

/** Build: the steps in order on their days, each with its numbers and its caution. */
export function BuildPlace({ route, worked }: { readonly route: PlanRoute; readonly worked: WorkedOut }) {
  const words = useWords()
  const { say } = words
  const { schedule } = worked
  const findings = worstFirst(worked.findings)
  return (
    <>
      <h2 className="hide">{say('place.build')}</h2>
      <div className="figs">
        <KeyFigure label={say('build.ready-after')} of={schedule.length} />
        <KeyFigure label={say('build.mason-days')} of={schedule.labour.mason.days} />
      </div>
      {schedule.readyDay !== null && <p>{say('build.ready-on', { day: showIsoDay(schedule.readyDay) })}</p>}
      <Findings findings={findings} only={({ card, level }) => card === 'build' && level !== 'good'} />
      <ol className="steps">
        {schedule.steps.map((step, index) => (
          <StepLine key={step.id} step={step} number={index + 1} worked={worked} />
        ))}
      </ol>
      <details className="work-step">
        <summary>
          <b>{words.named('drawing.days-title')}</b>
        </summary>
        <Suspense fallback={null}>
          <DayChart schedule={schedule} nameOf={(step) => stepName(step, words)} label={words.named('drawing.days')} />
        </Suspense>
      </details>
      <ul className="day-key">
        {(['work', 'wait', 'fire'] as const).map((look) => (
          <li key={look}>
            <svg viewBox="0 0 22 16" aria-hidden="true" focusable="false">
              <rect className={look} x="1" y="1" width="20" height="14" />
            </svg>
            {say(`build.key.${look}`)}
          </li>
        ))}
      </ul>
      <LinkButton href={cardHref(route.id, 'build', 'crew')} shape="big" icon="people">
        {say('card.crew')}
      </LinkButton>
      <p className="quiet">{say('build.local')}</p>
      {route.card === 'crew' && <CrewSheet route={route} worked={worked} />}
    </>
  )
}

function StepLine({
  step,
  number,
  worked,
}: {
  readonly step: Step
  readonly number: number
  readonly worked: WorkedOut
}) {
  const words = useWords()
  const { named } = words
  const figures = figuresOf(step.kind, worked)
  const line = lineOf(step.kind, worked, words)
  const courses = coursesOf(step, worked)
  const [isOpen, setIsOpen] = useState(false)
  return (
    <li>
      <details
        className="work-step"
        onToggle={(event) => {
          setIsOpen(event.currentTarget.open)
        }}
      >
        <summary>
          <span className="question-number">{number}</span>
          <span className="step-name">
            <b>{stepName(step, words)}</b>
            <span className="quiet">{stepDays(step, words)}</span>
          </span>
          <DayBar step={step} days={worked.schedule.days.length} />
        </summary>
        <div className="step-body stack">
          {figures.length > 0 && (
            <div className="figs step-figs">
              {figures.map(({ label, of }) => (
                <KeyFigure key={label} label={label} of={of} />
              ))}
            </div>
          )}
          {line !== null && <p>{line}</p>}
          {isOpen && (
            <Suspense fallback={null}>
              <StepDrawings task={step.kind} worked={worked} />
            </Suspense>
          )}
          {isOpen && courses.length > 0 && <CourseViewer courses={courses} worked={worked} />}
          {Object.entries(step.hours).length > 0 && (
            <div className="figs step-figs">
              {Object.entries(step.hours).map(([trade, hours]) => (
                <KeyFigure key={trade} label={named(`item.${trade}`)} of={hours} />
              ))}
            </div>
          )}
          {step.wait && <KeyFigure label={words.say('build.wait')} of={step.wait} />}
          {step.cautions.map((caution) => (
            <p key={caution} className="caution-line">
              <Icon name="caution" />
              <span>
                <b>{words.say('finding.word.caution')}</b> {named(`task-caution.${caution}`)}
              </span>
            </p>
          ))}
        </div>
      </details>
    </li>
  )
}
