import { useState } from 'react'
import { groupAccount } from '../../../core/costs/group-account.ts'
import { TextField } from '../../parts/TextField.tsx'
import { MoneyRow } from '../../parts/MoneyRow.tsx'
import { useWords } from '../../words/use-words.tsx'
import { newKey } from '../buy/new-key.ts'
import { fieldWay } from '../fields/field-way.ts'
import { NumberField } from '../fields/PlanField.tsx'
import { usePlan } from '../fields/plan-in-hand.ts'
import { Worked } from '../working/Worked.tsx'
import type { MoneySheetProps } from './MoneySheet.tsx'
import { RecordFrame } from './RecordFrame.tsx'
import { memberName } from './record-text.ts'
import { useTakeAway } from './use-take-away.ts'

/** One member: a name that stays on this phone, and the share of the costs. */
export function MemberSheet({ id, onClose }: MoneySheetProps & { readonly id: string | null }) {
  const words = useWords()
  const { say } = words
  const { plan, set } = usePlan()
  const kept = id === null ? undefined : plan.members[id]
  const [member, setMember] = useState(() => kept ?? { name: '', weight: 1 })
  const takeAway = useTakeAway(onClose)
  const own = groupAccount(plan).members.find((one) => one.id === id)
  return (
    <RecordFrame
      title={id === null ? say('group.new-member') : memberName(plan, id)}
      keep={say(id === null ? 'group.keep-member' : 'spent.save')}
      missing={member.name === '' && kept?.name !== '' ? say('group.needs-name') : null}
      onKeep={() => {
        if (set({ [`members.${id ?? newKey()}`]: member })) onClose()
      }}
      onTakeAway={
        id === null || kept === undefined
          ? undefined
          : () => {
              takeAway(`members.${id}`, memberName(plan, id))
            }
      }
      onClose={onClose}
    >
      <TextField
        name={say('group.name')}
        value={member.name}
        most={80}
        help={say('group.names-stay')}
        onChange={(name) => {
          setMember({ ...member, name })
        }}
      />
      <NumberField
        name={say('group.weight')}
        value={member.weight}
        way={fieldWay('member.weight', words)}
        help={say('group.weight-why')}
        onChange={(weight) => {
          setMember({ ...member, weight })
        }}
      />
      {own && (
        <div>
          <MoneyRow name={say('group.given')}>
            <Worked of={own.given} />
          </MoneyRow>
          <MoneyRow name={say('group.pockets')}>
            <Worked of={own.ownPocket} />
          </MoneyRow>
          <MoneyRow name={say('group.paid-out')}>
            <Worked of={own.paidOut} />
          </MoneyRow>
          <MoneyRow name={say('group.put-in')} isTotal>
            <Worked of={own.putIn} />
          </MoneyRow>
          <MoneyRow name={say('group.share-of-used')}>{words.money(own.shareMinor)}</MoneyRow>
        </div>
      )}
    </RecordFrame>
  )
}
