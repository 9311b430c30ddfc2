import { useState } from 'react'
import type { Contribution } from '../../../core/plan/money-records.ts'
import { PickList } from '../../parts/PickList.tsx'
import { Segments } from '../../parts/Picks.tsx'
import { TextField } from '../../parts/TextField.tsx'
import { todayIso } from '../../words/dates.ts'
import { useWords } from '../../words/use-words.tsx'
import { newKey } from '../buy/new-key.ts'
import { DayField } from '../fields/DayField.tsx'
import { fieldWay } from '../fields/field-way.ts'
import { MoneyField } from '../fields/MoneyField.tsx'
import { NumberField } from '../fields/PlanField.tsx'
import { usePlan } from '../fields/plan-in-hand.ts'
import type { MoneySheetProps } from './MoneySheet.tsx'
import { RecordFrame } from './RecordFrame.tsx'
import { memberChoices, memberName } from './record-text.ts'
import { useTakeAway } from './use-take-away.ts'

const KINDS = ['cash', 'material', 'labour'] as const

/** What a member promised and gave: cash, material at an agreed worth, or days of work at a stated rate. */
export function GiftSheet({ id, worked, onClose }: MoneySheetProps & { readonly id: string | null }) {
  const words = useWords()
  const { say, money } = words
  const { plan, set } = usePlan()
  const kept = id === null ? undefined : plan.contributions[id]
  const choices = memberChoices(plan, kept?.member)
  const [gift, setGift] = useState<Contribution>(
    () =>
      kept ?? {
        kind: 'cash',
        member: choices[0]?.key ?? '',
        promisedMinor: 0,
        givenMinor: 0,
        note: '',
        day: todayIso(),
      },
  )
  const takeAway = useTakeAway(onClose)
  // A helper's day by the list, where it has a price: the usual rate to begin from.
  const usualRate = worked.purchase.lines.find(({ item }) => item === 'labourer')?.price?.value ?? 0
  const { member, note, day } = gift
  const turn = (kind: Contribution['kind']) => {
    if (kind === 'labour') setGift({ kind, member, note, day, promisedDays: 0, givenDays: 0, rateMinor: usualRate })
    else if (gift.kind === 'labour') setGift({ kind, member, note, day, promisedMinor: 0, givenMinor: 0 })
    else setGift({ ...gift, kind })
  }
  const isNothing =
    gift.kind === 'labour' ? gift.promisedDays + gift.givenDays === 0 : gift.promisedMinor + gift.givenMinor === 0
  const missing = member === '' ? say('group.needs-member') : isNothing ? say('group.needs-amount') : null
  return (
    <RecordFrame
      title={say(id === null ? 'group.add-gift' : 'group.one-gift')}
      keep={say(id === null ? 'group.keep-gift' : 'spent.save')}
      missing={missing}
      onKeep={() => {
        if (set({ [`contributions.${id ?? newKey()}`]: gift })) onClose()
      }}
      onTakeAway={
        id === null
          ? undefined
          : () => {
              takeAway(`contributions.${id}`, memberName(plan, member))
            }
      }
      onClose={onClose}
    >
      <PickList
        name={say('group.who')}
        value={member}
        options={choices}
        onChange={(key) => {
          setGift({ ...gift, member: key })
        }}
      />
      <Segments
        name={say('group.what')}
        isNameShown
        choices={KINDS.map((key) => ({ key, label: say(`gift.${key}`) }))}
        chosen={gift.kind}
        onChoose={turn}
      />
      {gift.kind === 'labour' ? (
        <div className="fields">
          {(['promisedDays', 'givenDays'] as const).map((field) => (
            <NumberField
              key={field}
              {...(id !== null && { id: `contributions.${id}.${field}` })}
              name={say(`gift.${field}`)}
              value={gift[field]}
              way={fieldWay('contribution.days', words)}
              onChange={(days) => {
                setGift({ ...gift, [field]: days })
              }}
            />
          ))}
          <MoneyField
            {...(id !== null && { id: `contributions.${id}.rateMinor` })}
            name={say('gift.rateMinor')}
            minor={gift.rateMinor}
            help={say('gift.worth', { worth: money(Math.round(gift.givenDays * gift.rateMinor)) })}
            onChange={(rateMinor) => {
              setGift({ ...gift, rateMinor: rateMinor ?? 0 })
            }}
          />
        </div>
      ) : (
        <div className="fields">
          {(['promisedMinor', 'givenMinor'] as const).map((field) => (
            <MoneyField
              key={field}
              {...(id !== null && { id: `contributions.${id}.${field}` })}
              name={say(gift.kind === 'material' ? `gift.material.${field}` : `gift.${field}`)}
              minor={gift[field]}
              onChange={(minor) => {
                setGift({ ...gift, [field]: minor ?? 0 })
              }}
            />
          ))}
        </div>
      )}
      <div className="fields">
        <DayField
          name={say('spent.day')}
          day={day}
          onChange={(next) => {
            setGift({ ...gift, day: next })
          }}
        />
        <TextField
          name={say('spent.note')}
          value={note}
          most={80}
          onChange={(next) => {
            setGift({ ...gift, note: next })
          }}
        />
      </div>
    </RecordFrame>
  )
}
