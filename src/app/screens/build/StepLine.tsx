import { lazy, Suspense, useState } from 'react'
import type { Step } from '../../../core/schedule/schedule.ts'
import { coursesOf } from '../../../core/schedule/site-work.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { LinkButton } from '../../parts/Button.tsx'
import type { IconName } from '../../parts/Icon.tsx'
import { TextField } from '../../parts/TextField.tsx'
import { useWords } from '../../words/use-words.tsx'
import { usePlanHand } from '../fields/plan-in-hand.ts'
import { cardHref } from '../route.ts'
import { KeyFigure } from '../working/Worked.tsx'
import type { SiteCard } from './build-card.ts'
import { Caution } from './Caution.tsx'
import { DayBar } from './DayBar.tsx'
import { figuresOf, lineOf } from './figures.ts'
import { ReadAloud } from './ReadAloud.tsx'
import { StepMaterials } from './StepMaterials.tsx'
import { stepDays, stepName, stepSpoken } from './step-text.ts'
import { TickBox } from './TickBox.tsx'
import { useTick } from './use-tick.ts'

const StepDrawings = lazy(() =>
  import('../../drawings/StepDrawings.tsx').then(({ StepDrawings: shown }) => ({ default: shown })),
)

/** Screens of their own that a step leads to. */
function waysOf(step: Step, worked: WorkedOut): readonly { readonly card: SiteCard; readonly icon: IconName }[] {
  if (step.kind === 'set-out')
    return [
      { card: 'setout', icon: 'peg' },
      { card: 'tapes', icon: 'tape' },
    ]
  if (step.kind === 'footing' || step.kind === 'cast-lintels')
    return [
      { card: 'batch', icon: 'batch' },
      ...(step.kind === 'footing' ? [{ card: 'levels', icon: 'level' } as const] : []),
    ]
  if (coursesOf(step, worked.schedule.steps, worked.layout).length > 0)
    return [
      { card: 'course', icon: 'block' },
      { card: 'measured', icon: 'level' },
      { card: 'batch', icon: 'batch' },
    ]
  return []
}

/** One step: its box, its name and days, and when opened all that one needs for it. */
export function StepLine({
  step,
  planId,
  worked,
}: {
  readonly step: Step
  readonly planId: string
  readonly worked: WorkedOut
}) {
  const words = useWords()
  const { say } = words
  const { set } = usePlanHand()
  const tick = useTick()
  const [isOpen, setIsOpen] = useState(false)
  const name = stepName(step, words)
  const at = `build.ticks.${step.id}`
  const isDone = step.done !== null
  return (
    <li className="step-row">
      <TickBox
        isDone={isDone}
        label={say('build.done', { name })}
        onTick={() => {
          set({ [at]: isDone ? undefined : tick() })
        }}
      />
      <details
        className={isDone ? 'work-step is-done' : 'work-step'}
        onToggle={(event) => {
          setIsOpen(event.currentTarget.open)
        }}
      >
        <summary>
          <span className="step-name">
            <b>{name}</b>
            <span className="quiet">{stepDays(step, words)}</span>
          </span>
          <DayBar step={step} days={worked.schedule.days.length} />
        </summary>
        {isOpen && <StepBody step={step} planId={planId} worked={worked} />}
      </details>
    </li>
  )
}

function StepBody({
  step,
  planId,
  worked,
}: {
  readonly step: Step
  readonly planId: string
  readonly worked: WorkedOut
}) {
  const words = useWords()
  const { named, say } = words
  const figures = figuresOf(step.kind, worked)
  const line = lineOf(step.kind, worked, words)
  return (
    <div className="step-body stack">
      {figures.length > 0 && (
        <div className="figs step-figs">
          {figures.map(({ label, of }) => (
            <KeyFigure key={label} label={label} of={of} />
          ))}
        </div>
      )}
      {line !== null && <p>{line}</p>}
      {step.cautions.map((caution) => (
        <Caution key={caution}>{named(`task-caution.${caution}`)}</Caution>
      ))}
      <div className="ways">
        {waysOf(step, worked).map(({ card, icon }) => (
          <LinkButton key={card} href={cardHref(planId, 'build', card)} shape="big" icon={icon}>
            {say(`build.open.${card}`)}
          </LinkButton>
        ))}
      </div>
      <Suspense fallback={null}>
        <StepDrawings task={step.kind} worked={worked} />
      </Suspense>
      <StepMaterials step={step} worked={worked} />
      {Object.entries(step.hours).length > 0 && (
        <div className="figs step-figs">
          {Object.entries(step.hours).map(([trade, hours]) => (
            <KeyFigure key={trade} label={named(`item.${trade}`)} of={hours} />
          ))}
        </div>
      )}
      {step.wait && <KeyFigure label={say('build.wait')} of={step.wait} />}
      <ReadAloud text={stepSpoken(step, worked, words)} />
      {step.done !== null && <Ticked step={step} done={step.done} />}
    </div>
  )
}

/** When it was done and by whom: open to be set right. */
function Ticked({ step, done }: { readonly step: Step; readonly done: NonNullable<Step['done']> }) {
  const { say } = useWords()
  const { set } = usePlanHand()
  const at = `build.ticks.${step.id}`
  return (
    <div className="fields">
      <label className="field">
        <span className="field-name">{say('build.done-on')}</span>
        <input
          type="date"
          className="pick-list"
          value={done.day}
          onChange={(event) => {
            const day = event.currentTarget.value
            if (day !== '') set({ [at]: { ...done, day } })
          }}
        />
      </label>
      <TextField
        name={say('build.done-by')}
        value={done.who}
        most={80}
        onChange={(who) => {
          set({ [at]: { ...done, who } })
        }}
      />
    </div>
  )
}
