import type { ReactNode } from 'react'
import type { Derived } from '../../../core/basics/derived.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { Icon } from '../../parts/Icon.tsx'
import { useWords } from '../../words/use-words.tsx'
import { KeyFigure } from '../working/Worked.tsx'
import { cautionsOf, figuresOf, lineOf, stepsOf, type BuildStep } from './steps.ts'
import './build.css'

/** Build: the steps in order, each with its numbers and its caution. */
export function BuildPlace({ worked }: { readonly worked: WorkedOut }) {
  const words = useWords()
  const { say } = words
  return (
    <>
      <h2>{say('build.steps')}</h2>
      <ol className="steps">
        {stepsOf(worked).map((step, index) => (
          <Step key={step} number={index + 1} title={say(`build.${step}`)} figures={figuresOf(step, worked)}>
            {lineOf(step, worked, words)}
            <Cautions of={step} worked={worked} />
          </Step>
        ))}
      </ol>
      <p className="quiet">{say('build.local')}</p>
    </>
  )
}

function Step({
  number,
  title,
  figures,
  children,
}: {
  readonly number: number
  readonly title: string
  readonly figures: readonly { readonly label: string; readonly of: Derived }[]
  readonly children: ReactNode
}) {
  return (
    <li className="step-card stack">
      <h3>
        <span className="question-number">{number}</span> {title}
      </h3>
      {figures.length > 0 && (
        <div className="figs step-figs">
          {figures.map(({ label, of }) => (
            <KeyFigure key={label} label={label} of={of} />
          ))}
        </div>
      )}
      {children}
    </li>
  )
}

function Cautions({ of: step, worked }: { readonly of: BuildStep; readonly worked: WorkedOut }) {
  const { say } = useWords()
  return cautionsOf(step, worked).map((caution) => (
    <p key={caution} className="caution-line">
      <Icon name="caution" />
      <span>
        <b>{say('finding.word.caution')}</b> {say(`build.caution.${caution}`)}
      </span>
    </p>
  ))
}
