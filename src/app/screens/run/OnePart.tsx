import { useState } from 'react'
import { LIMITS } from '../../../core/plan/limits.ts'
import type { Upkeep } from '../../../core/plan/schema.ts'
import { upkeepDue } from '../../../core/schedule/upkeep.ts'
import { Button, LinkButton } from '../../parts/Button.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { TextField } from '../../parts/TextField.tsx'
import { showIsoDay, todayIso } from '../../words/dates.ts'
import { useWords } from '../../words/use-words.tsx'
import { Caution } from '../build/Caution.tsx'
import { newKey } from '../buy/new-key.ts'
import { DayField } from '../fields/DayField.tsx'
import { fieldWay } from '../fields/field-way.ts'
import { MoneyField } from '../fields/MoneyField.tsx'
import { NumberField } from '../fields/PlanField.tsx'
import { usePlan } from '../fields/plan-in-hand.ts'
import { KeyFigure } from '../working/Worked.tsx'
import { firstUse } from './first-use.ts'
import { cardHref } from '../route.ts'
import type { RunSheetProps } from './RunSheet.tsx'
import { dueText } from './upkeep-text.ts'

const MOST_FAULTS = 1000

type Found = Omit<Upkeep, 'part' | 'mended'>
/** What was typed and not yet written down, by plan and part: a sheet closed by mistake opens again as it was. */
const begun = new Map<string, Found>()

/** One part of the kiln: when it was looked at, what was found, and that it is mended. */
export function OnePart({ part, worked, log, onClose }: RunSheetProps & { readonly part: string }) {
  const words = useWords()
  const { say, named } = words
  const { plan, set } = usePlan()
  const key = `${plan.id} ${part}`
  const [found, setFound] = useState<Found>(() => begun.get(key) ?? nothingFound())
  const today = todayIso()
  const due = upkeepDue(plan, firstUse(worked, log), today).find((one) => one.part === part)
  if (due === undefined)
    return (
      <Sheet title={say('card.upkeep')} closeLabel={say('app.close')} onClose={onClose}>
        <p>{say('run.no-such-part')}</p>
        <LinkButton href={cardHref(plan.id, 'run', 'upkeep')}>{say('card.upkeep')}</LinkButton>
      </Sheet>
    )
  const records = Object.entries(plan.run.upkeep)
    .filter(([, record]) => record.part === part)
    .toSorted(([, a], [, b]) => b.day.localeCompare(a.day))
  const write = (mended: boolean) => {
    const record: Upkeep = { ...found, bad: mended ? 0 : found.bad, part: due.part, mended }
    if (!set({ [`run.upkeep.${newKey()}`]: record })) return
    begun.delete(key)
    setFound(nothingFound())
  }
  const change = (typed: Partial<Found>) => {
    begun.set(key, { ...found, ...typed })
    setFound({ ...found, ...typed })
  }
  return (
    <Sheet
      title={named(`upkeep.${part}`)}
      closeLabel={say('app.close')}
      onClose={onClose}
      height="full"
      foot={
        <div className="figs foot-figs">
          <KeyFigure label={say('run.look-every')} of={due.every} />
        </div>
      }
    >
      <p>{dueText(due, words)}</p>
      <Caution>{say('run.caution.cold')}</Caution>
      <div className="fields">
        <DayField name={say('run.looked-on')} day={found.day} onChange={(day) => change({ day: day ?? today })} />
        <NumberField
          name={say('run.faults')}
          value={found.bad}
          way={fieldWay('built.units', words)}
          limit={{ ...LIMITS['built.units'], max: MOST_FAULTS }}
          onChange={(bad) => change({ bad })}
          help={say('run.faults-why')}
        />
        <MoneyField
          name={say('run.look-cost')}
          minor={found.costMinor}
          onChange={(costMinor) => change({ costMinor })}
        />
        <TextField name={say('run.note')} value={found.note} most={500} onChange={(note) => change({ note })} />
      </div>
      {found.day > today && <p className="quiet">{say('run.day-to-come')}</p>}
      <Button shape="big" tone="fire" icon="plus" onPress={() => write(false)}>
        {say('run.look-write', { count: found.bad })}
      </Button>
      {due.bad > 0 && (
        <Button shape="big" icon="tick" onPress={() => write(true)}>
          {say('run.all-mended', { count: due.bad })}
        </Button>
      )}
      {records.length > 0 && <h3>{say('run.looks')}</h3>}
      <ul>
        {records.map(([id, record]) => (
          <li key={id} className="lead">
            <span>
              {say('run.look-line', {
                day: showIsoDay(record.day),
                mended: record.mended ? 'yes' : 'no',
                count: record.bad,
              })}
              {record.note !== '' && `: ${record.note}`}
            </span>
            <Button icon="close" onPress={() => set({ [`run.upkeep.${id}`]: undefined })}>
              {say('build.take-away')}
            </Button>
          </li>
        ))}
      </ul>
    </Sheet>
  )
}

const nothingFound = (): Found => ({ day: todayIso(), bad: 0, costMinor: null, note: '' })
