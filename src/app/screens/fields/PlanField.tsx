import { useState, type ReactNode } from 'react'
import type { Limit } from '../../../core/plan/limits.ts'
import { Segments } from '../../parts/Picks.tsx'
import { Stepper } from '../../parts/Stepper.tsx'
import { inLine } from '../../words/show.ts'
import { useWords } from '../../words/use-words.tsx'
import { Marked } from '../terms/Marked.tsx'
import { fieldWay, type FieldWay } from './field-way.ts'
import { usePlan } from './plan-in-hand.ts'
import { valueAt } from './value-at.ts'

/** A typed number of the plan, by its path: shown, stepped and read in the reader's units, refused beyond its limits. */
export function PlanField({
  at,
  help,
  outside,
  refuse,
}: {
  readonly at: string
  /** A reason of the rest of the plan against a number within the limits, or null: what was typed then stays as typed. */
  readonly refuse?: (value: number) => string | null
  readonly help?: ReactNode
  /** What to do about a number beyond the limits, where saying the limits is not enough. */
  readonly outside?: string
}) {
  const words = useWords()
  const { plan, set } = usePlan()
  const [isRefused, setIsRefused] = useState(false)
  const value = valueAt(plan, at)
  if (typeof value !== 'number') return null
  return (
    <NumberField
      id={at}
      name={words.named(`field.${at}`)}
      value={value}
      way={fieldWay(at, words)}
      onChange={(next) => {
        setIsRefused(!set({ [at]: next }))
      }}
      help={isRefused ? words.say('field.refused') : help}
      {...(outside !== undefined && { outside })}
      {...(refuse !== undefined && { refuse })}
    />
  )
}

/** A typed number with the words that belong to it, whatever keeps it. */
export function NumberField({
  id,
  name,
  value,
  way,
  limit = way.limit,
  onChange,
  help,
  outside,
  refuse,
}: {
  readonly id?: string
  readonly name: string
  readonly value: number
  readonly way: FieldWay
  readonly limit?: Limit
  readonly onChange: (value: number) => void
  readonly help?: ReactNode
  readonly outside?: string
  readonly refuse?: (value: number) => string | null
}) {
  const { say } = useWords()
  const least = inLine(way.show(limit.min))
  const most = inLine(way.show(limit.max))
  return (
    <Stepper
      {...(id !== undefined && { id })}
      name={name}
      value={value}
      min={limit.min}
      max={limit.max}
      step={way.step}
      keyboard={way.keyboard}
      onChange={onChange}
      help={typeof help === 'string' ? <Marked text={help} /> : help}
      {...(refuse !== undefined && { refuse })}
      text={{
        show: way.show,
        read: way.read,
        notANumber: say('field.not-a-number', { example: inLine(way.show(value)) }),
        outside: outside ?? say('field.outside', { min: least, max: most }),
        less: say('field.less', { name }),
        more: say('field.more', { name }),
        atLeast: say('field.least', { value: least }),
        atMost: say('field.most', { value: most }),
      }}
    />
  )
}

/** A number that may be unknown: the plan keeps null until someone has measured it. */
export function MaybeField({
  at,
  begin,
  help,
}: {
  readonly at: string
  readonly begin: number
  readonly help?: ReactNode
}) {
  const { say, named } = useWords()
  const { plan, set } = usePlan()
  const isKnown = valueAt(plan, at) !== null
  return (
    <div className="maybe stack">
      <Segments
        name={named(`field.${at}`)}
        isNameShown
        choices={[
          { key: 'no', label: say('field.not-known') },
          { key: 'yes', label: say('field.known') },
        ]}
        chosen={isKnown ? 'yes' : 'no'}
        onChoose={(key) => set({ [at]: key === 'yes' ? begin : null })}
      />
      {isKnown && <PlanField at={at} help={help} />}
    </div>
  )
}
