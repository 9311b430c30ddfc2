import { groupAccount, type MemberAccount, type Settlement } from '../../../core/costs/group-account.ts'
import type { Plan } from '../../../core/plan/schema.ts'
import { Button, LinkButton } from '../../parts/Button.tsx'
import { Icon } from '../../parts/Icon.tsx'
import { MoneyRow } from '../../parts/MoneyRow.tsx'
import { NoticeBox } from '../../parts/NoticeBox.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { showIsoDay, todayIso } from '../../words/dates.ts'
import { useWords } from '../../words/use-words.tsx'
import { newKey } from '../buy/new-key.ts'
import { usePlan } from '../fields/plan-in-hand.ts'
import { Findings } from '../plan/Findings.tsx'
import { cardHref } from '../route.ts'
import { KeyFigure, Worked } from '../working/Worked.tsx'
import { MoneyBars } from './MoneyBars.tsx'
import type { MoneySheetProps } from './MoneySheet.tsx'
import { byName, giftText, memberName } from './record-text.ts'
import { useSpending } from './use-spending.ts'

/** The group's money: what is in the box, who promised and gave what, where it went, and who is owed what. */
export function GroupSheet({ worked, planId, onClose }: MoneySheetProps) {
  const words = useWords()
  const { say, money } = words
  const { plan } = usePlan()
  const account = groupAccount(plan)
  const spending = useSpending(worked)
  const members = byName(plan, account.members)
  const hasMembers = Object.keys(plan.members).length > 0
  const gifts = Object.entries(plan.contributions)
  const payouts = Object.entries(plan.payouts)
  return (
    <Sheet title={say('group.title')} closeLabel={say('app.close')} onClose={onClose} height="full">
      <div className="figs step-figs">
        <KeyFigure label={say('group.in-box')} of={account.cashInBox} />
        <KeyFigure label={say('group.promised')} of={account.promised} />
        <KeyFigure label={say('group.given')} of={account.given} />
      </div>
      {account.findings.length > 0 && <Findings findings={account.findings} />}
      <NoticeBox icon="info">{say('group.names-stay')}</NoticeBox>
      {(account.given.value > 0 || account.used.value > 0) && (
        <MoneyBars
          bars={[
            {
              name: say('group.comes-in'),
              parts: [
                { key: 'cash', name: say('group.cash'), look: 'full', of: account.cash },
                { key: 'kind', name: say('group.in-kind'), look: 'hatched', of: account.inKind },
                { key: 'pockets', name: say('group.pockets'), look: 'dotted', of: account.fromPockets },
              ],
            },
            {
              name: say('group.goes-out'),
              parts: [
                { key: 'used', name: say('group.used'), look: 'full', of: account.used },
                { key: 'out', name: say('group.paid-out'), look: 'dotted', of: account.paidOut },
                { key: 'to-pay', name: say('spent.to-pay'), look: 'open', of: spending.toPay },
              ],
            },
          ]}
        />
      )}
      <div>
        <MoneyRow name={say('group.cash')}>
          <Worked of={account.cash} />
        </MoneyRow>
        <MoneyRow name={say('group.less-bought')}>
          <Worked of={account.fromBox} />
        </MoneyRow>
        <MoneyRow name={say('group.less-out')}>
          <Worked of={account.paidOut} />
        </MoneyRow>
        <MoneyRow name={say('group.in-box')} isTotal>
          <Worked of={account.cashInBox} />
        </MoneyRow>
      </div>
      <h3>{say('group.members')}</h3>
      {members.length === 0 && <p className="quiet">{say('group.nobody')}</p>}
      <ul>
        {members.map((member) => (
          <li key={member.id}>
            <a className="dec log-row" href={cardHref(planId, 'buy', `member:${member.id}`)}>
              <span>
                <b>{memberName(plan, member.id)}</b>
                <small>
                  {say('group.promised-given', {
                    promised: money(member.promised.value),
                    given: money(member.given.value + member.ownPocket.value),
                    due: money(member.due.value),
                  })}
                </small>
                <small>{balanceText(member, words)}</small>
              </span>
              <Icon name="next" />
            </a>
          </li>
        ))}
      </ul>
      <LinkButton shape="big" icon="people" href={cardHref(planId, 'buy', 'member')}>
        {say('group.add-member')}
      </LinkButton>
      {hasMembers && (
        <>
          <h3>{say('group.gifts')}</h3>
          <ul>
            {gifts.map(([id, gift]) => (
              <li key={id}>
                <a className="dec log-row" href={cardHref(planId, 'buy', `gift:${id}`)}>
                  <span>
                    <b>{memberName(plan, gift.member)}</b>
                    <small>{giftText(gift, words)}</small>
                    {gift.note !== '' && <small>{gift.note}</small>}
                  </span>
                  <Icon name="next" />
                </a>
              </li>
            ))}
          </ul>
          <LinkButton shape="big" tone="fire" icon="plus" href={cardHref(planId, 'buy', 'gift')}>
            {say('group.add-gift')}
          </LinkButton>
          <SettleUp plan={plan} settlement={account.settlement} />
          {payouts.length > 0 && <h3>{say('group.payouts')}</h3>}
          <ul>
            {payouts.map(([id, { member, amountMinor, day }]) => (
              <li key={id}>
                <a className="dec log-row" href={cardHref(planId, 'buy', `payout:${id}`)}>
                  <span>
                    <b>{memberName(plan, member)}</b>
                    <small>{day === null ? say('spent.no-day') : showIsoDay(day)}</small>
                  </span>
                  <b className="amt">{money(amountMinor)}</b>
                </a>
              </li>
            ))}
          </ul>
          <LinkButton shape="big" icon="coins" href={cardHref(planId, 'buy', 'payout')}>
            {say('group.add-payout')}
          </LinkButton>
          <LinkButton shape="big" icon="print" href={cardHref(planId, 'buy', 'sheets', 'costs')}>
            {say('group.print')}
          </LinkButton>
          <p className="quiet">{say('group.print-why')}</p>
        </>
      )}
    </Sheet>
  )
}

function balanceText({ shareMinor, balanceMinor }: MemberAccount, { say, money }: ReturnType<typeof useWords>): string {
  const share = say('group.share', { share: money(shareMinor) })
  if (balanceMinor === 0) return say('group.even', { share })
  const amount = money(Math.abs(balanceMinor))
  return say(balanceMinor > 0 ? 'group.is-owed' : 'group.owes', { share, amount })
}

/** Payments after which all are even: by the members' shares of what the kiln has taken so far. */
function SettleUp({ plan, settlement }: { readonly plan: Plan; readonly settlement: readonly Settlement[] }) {
  const { say, money } = useWords()
  const { set } = usePlan()
  const name = (id: string | null) => (id === null ? say('spent.box') : memberName(plan, id))
  return (
    <>
      <h3>{say('group.settle')}</h3>
      <p className="quiet">{say(settlement.length === 0 ? 'group.all-even' : 'group.settle-why')}</p>
      <ul>
        {settlement.map(({ from, to, amountMinor }) => (
          <li className="item" key={`${from ?? ''} ${to ?? ''}`}>
            <span className="item-words">
              {say('group.pays', { from: name(from), to: name(to), amount: money(amountMinor) })}
            </span>
            {from === null && to !== null && (
              <Button
                onPress={() => set({ [`payouts.${newKey()}`]: { member: to, amountMinor, day: todayIso() } })}
                label={say('group.paid-now-to', { name: name(to) })}
              >
                {say('group.paid-now')}
              </Button>
            )}
          </li>
        ))}
      </ul>
    </>
  )
}
