import { useState } from 'react'
import type { SettingOutStep } from '../../../core/geometry/setting-out-steps.ts'
import { SettingOutDrawing } from '../../drawings/SettingOutDrawing.tsx'
import { Button, LinkButton } from '../../parts/Button.tsx'
import { Course } from '../../parts/Course.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { useWords } from '../../words/use-words.tsx'
import { usePlan } from '../fields/plan-in-hand.ts'
import { cardHref } from '../route.ts'
import { KeyFigure } from '../working/Worked.tsx'
import { Caution } from './Caution.tsx'
import { stepNumbers } from './set-out-text.ts'
import { ReadAloud } from './ReadAloud.tsx'
import type { SiteSheetProps } from './site-sheet-props.ts'
import { StepDock } from './StepDock.tsx'
import { SunTool } from './SunTool.tsx'
import { useFromTheTop } from './use-from-the-top.ts'
import { useSettingOut } from './use-setting-out.ts'
import { useStayAwake } from './use-stay-awake.ts'
import { useSwipe } from './use-swipe.ts'
import { useTick } from './use-tick.ts'

const tickId = (step: SettingOutStep): string => `setout-${step.id}`

/** Pegging out, one step a screen, in the order of the work. */
export function SetOutSheet({ planId, worked, onClose }: SiteSheetProps) {
  useStayAwake()
  const words = useWords()
  const { say, named } = words
  const { plan, set } = usePlan()
  const tick = useTick()
  const { steps } = useSettingOut(worked)
  const isDone = (step: SettingOutStep) => plan.build.ticks[tickId(step)] !== undefined
  const [at, setAt] = useState(() =>
    Math.max(
      0,
      steps.findIndex((step) => !isDone(step)),
    ),
  )
  const go = (by: 1 | -1) => {
    setAt((now) => Math.max(0, Math.min(steps.length - 1, now + by)))
  }
  const swipe = useSwipe(go)
  const inside = useFromTheTop(at)
  const step = steps[at]
  if (step === undefined) return null
  const numbers = stepNumbers(step, words)
  const title = named(`setout.${step.id}.title`, numbers)
  const text = named(`setout.${step.id}.text`, numbers)
  const notes = step.notes.map((note) => named(`setout.${step.id}.${note}`, numbers))
  const caution = step.caution === null ? null : named(`setout.caution.${step.caution}`)
  const finish = () => {
    const others = steps.filter((one) => one !== step)
    const done = isDone(step)
    set({
      [`build.ticks.${tickId(step)}`]: done ? undefined : tick(),
      ...(!done && others.every(isDone) && { 'build.ticks.set-out': plan.build.ticks['set-out'] ?? tick() }),
    })
    if (!done) go(1)
  }
  return (
    <Sheet
      title={say('build.step-of', { number: at + 1, count: steps.length })}
      closeLabel={say('app.close')}
      onClose={onClose}
      height="full"
      tools={<SunTool />}
      foot={
        <StepDock
          at={at}
          of={steps.length}
          less={named('drawing.step-less')}
          more={named('drawing.step-more')}
          onStep={go}
        >
          <Button tone={isDone(step) ? 'solid' : 'fire'} onPress={finish}>
            {say(isDone(step) ? 'build.not-done' : 'build.tick-done')}
          </Button>
        </StepDock>
      }
    >
      <Course
        of={steps.length}
        laid={at}
        inHand
        label={say('build.step-of', { number: at + 1, count: steps.length })}
      />
      <div ref={inside} className="stack" aria-live="polite" {...swipe}>
        <h2 className="site-title">{title}</h2>
        <SettingOutDrawing step={step} />
        <p className="site-text">{text}</p>
        {notes.map((note) => (
          <p key={note} className="site-text">
            {note}
          </p>
        ))}
      </div>
      {caution !== null && <Caution>{caution}</Caution>}
      <div className="figs step-figs">
        {Object.entries(step.numbers).map(([name, of]) => (
          <KeyFigure key={name} label={words.nameOf(of)} of={of} />
        ))}
      </div>
      <div className="ways">
        {step.id === 'diagonals' && (
          <LinkButton href={cardHref(planId, 'build', 'tapes')} shape="big" icon="tape">
            {say('build.open.tapes')}
          </LinkButton>
        )}
        {step.id === 'levels' && (
          <LinkButton href={cardHref(planId, 'build', 'levels')} shape="big" icon="level">
            {say('build.open.levels')}
          </LinkButton>
        )}
        <ReadAloud text={[title, text, ...notes, caution].filter((one) => one !== null).join('. ')} />
      </div>
    </Sheet>
  )
}
