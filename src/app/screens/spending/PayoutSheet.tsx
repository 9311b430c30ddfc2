import { useState } from 'react'
import { groupAccount } from '../../../core/costs/group-account.ts'
import type { Plan } from '../../../core/plan/schema.ts'
import { MoneyRow } from '../../parts/MoneyRow.tsx'
import { PickList } from '../../parts/PickList.tsx'
import { todayIso } from '../../words/dates.ts'
import { useWords } from '../../words/use-words.tsx'
import { newKey } from '../buy/new-key.ts'
import { DayField } from '../fields/DayField.tsx'
import { MoneyField } from '../fields/MoneyField.tsx'
import { usePlan } from '../fields/plan-in-hand.ts'
import type { MoneySheetProps } from './MoneySheet.tsx'
import { RecordFrame } from './RecordFrame.tsx'
import { memberChoices, memberName } from './record-text.ts'
import { useTakeAway } from './use-take-away.ts'

type Payout = Plan['payouts'][string]

/** Money out of the box to a member: for what was paid from the own pocket, or a share given back. */
export function PayoutSheet({ id, onClose }: MoneySheetProps & { readonly id: string | null }) {
  const { say, money } = useWords()
  const { plan, set } = usePlan()
  const kept = id === null ? undefined : plan.payouts[id]
  const choices = memberChoices(plan, kept?.member)
  const [payout, setPayout] = useState<Payout>(
    () => kept ?? { member: choices[0]?.key ?? '', amountMinor: 0, day: todayIso() },
  )
  const takeAway = useTakeAway(onClose)
  const left = groupAccount(plan).cashInBox.value + (kept?.amountMinor ?? 0) - payout.amountMinor
  const missing =
    payout.member === '' ? say('group.needs-member') : payout.amountMinor === 0 ? say('group.needs-amount') : null
  return (
    <RecordFrame
      title={say('group.add-payout')}
      keep={say(id === null ? 'group.keep-payout' : 'spent.save', { amount: money(payout.amountMinor) })}
      missing={missing}
      onKeep={() => {
        if (set({ [`payouts.${id ?? newKey()}`]: payout })) onClose()
      }}
      onTakeAway={
        id === null
          ? undefined
          : () => {
              takeAway(`payouts.${id}`, memberName(plan, payout.member))
            }
      }
      onClose={onClose}
    >
      <PickList
        name={say('group.to-whom')}
        value={payout.member}
        options={choices}
        onChange={(member) => {
          setPayout({ ...payout, member })
        }}
      />
      <MoneyField
        id={id === null ? 'payouts.amount' : `payouts.${id}.amountMinor`}
        name={say('group.amount')}
        minor={payout.amountMinor === 0 ? null : payout.amountMinor}
        onChange={(amountMinor) => {
          setPayout({ ...payout, amountMinor: amountMinor ?? 0 })
        }}
      />
      <MoneyRow name={say('spent.box-after')}>{money(left)}</MoneyRow>
      <DayField
        name={say('spent.day')}
        day={payout.day}
        onChange={(day) => {
          setPayout({ ...payout, day })
        }}
      />
    </RecordFrame>
  )
}
