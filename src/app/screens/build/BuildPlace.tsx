import { lazy, Suspense } from 'react'
import { isSiteCard, type SiteCard } from './build-card.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { LinkButton } from '../../parts/Button.tsx'
import { showIsoDay } from '../../words/dates.ts'
import { useWords } from '../../words/use-words.tsx'
import { Findings } from '../plan/Findings.tsx'
import { worstFirst } from '../plan/order-findings.ts'
import type { PlanRoute } from '../PlanHere.tsx'
import { cardHref } from '../route.ts'
import { KeyFigure } from '../working/Worked.tsx'
import './build.css'
import { CrewSheet } from './CrewSheet.tsx'
import { courseToLay, stepInHand } from './next-work.ts'
import { StepLine } from './StepLine.tsx'
import { stepName } from './step-text.ts'

const DaysDrawing = lazy(() => import('./DaysDrawing.tsx').then((one) => ({ default: one.DaysDrawing })))
const SiteSheet = lazy(() => import('./SiteSheet.tsx').then((one) => ({ default: one.SiteSheet })))

/** Build: the steps in order on their days, each with its numbers and its caution, and the screens for the work itself. */
export function BuildPlace({ route, worked }: { readonly route: PlanRoute; readonly worked: WorkedOut }) {
  const words = useWords()
  const { say } = words
  const { schedule } = worked
  const findings = worstFirst(worked.findings)
  const { card } = route
  return (
    <>
      <h2 className="hide">{say('place.build')}</h2>
      <div className="figs">
        <KeyFigure label={say('build.ready-after')} of={schedule.length} />
        <KeyFigure label={say('build.mason-days')} of={schedule.labour.mason.days} />
      </div>
      {schedule.readyDay !== null && <p>{say('build.ready-on', { day: showIsoDay(schedule.readyDay) })}</p>}
      <GoOn planId={route.id} worked={worked} />
      <Findings findings={findings} only={(finding) => finding.card === 'build'} />
      <ol className="steps">
        {schedule.steps.map((step) => (
          <StepLine key={step.id} step={step} planId={route.id} worked={worked} />
        ))}
      </ol>
      <details className="work-step">
        <summary>
          <b>{words.named('drawing.days-title')}</b>
        </summary>
        <Suspense fallback={null}>
          <DaysDrawing schedule={schedule} />
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
      <div className="ways">
        <LinkButton href={cardHref(route.id, 'build', 'needed')} shape="big" icon="buy">
          {say('build.open.needed')}
        </LinkButton>
        <LinkButton href={cardHref(route.id, 'build', 'batch')} shape="big" icon="batch">
          {say('build.open.batch')}
        </LinkButton>
        <LinkButton href={cardHref(route.id, 'plan', 'walls')} shape="big" icon="block">
          {say('build.measure-units')}
        </LinkButton>
        <LinkButton href={cardHref(route.id, 'build', 'crew')} shape="big" icon="people">
          {say('card.crew')}
        </LinkButton>
      </div>
      <p className="quiet">{say('build.local')}</p>
      {card === 'crew' && <CrewSheet route={route} worked={worked} />}
      {isSiteCard(card) && (
        <Suspense fallback={null}>
          <SiteSheet card={card} route={route} worked={worked} />
        </Suspense>
      )}
    </>
  )
}

/** The one thing to do now: peg out, or the next course. */
function GoOn({ planId, worked }: { readonly planId: string; readonly worked: WorkedOut }) {
  const words = useWords()
  const { say } = words
  const step = stepInHand(worked)
  if (step === null) return <p>{say('build.all-done')}</p>
  const course = courseToLay(worked)
  const way: { card: SiteCard; text: string } | null =
    step.kind === 'set-out'
      ? { card: 'setout', text: say('build.go-on', { name: say('build.open.setout') }) }
      : (step.kind === 'walls' || step.kind === 'walls-below') && course !== null
        ? { card: 'course', text: say('build.go-on-course', { course: course.index }) }
        : step.kind === 'footing' || step.kind === 'cast-lintels'
          ? { card: 'batch', text: say('build.go-on', { name: stepName(step, words) }) }
          : null
  if (way === null) return <p>{say('build.now', { name: stepName(step, words) })}</p>
  return (
    <LinkButton href={cardHref(planId, 'build', way.card)} shape="big" tone="fire">
      {way.text}
    </LinkButton>
  )
}
