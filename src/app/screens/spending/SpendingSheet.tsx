import { useEffect } from 'react'
import { OTHER_THINGS, type ItemSpending } from '../../../core/costs/spending.ts'
import type { Spending } from '../../../core/plan/money-records.ts'
import { LinkButton } from '../../parts/Button.tsx'
import { Icon } from '../../parts/Icon.tsx'
import { MoneyRow } from '../../parts/MoneyRow.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { dropUnnamedReceipts } from '../../state/receipt-actions.ts'
import { showIsoDay } from '../../words/dates.ts'
import { WideTable } from '../../parts/WideTable.tsx'
import { useWords } from '../../words/use-words.tsx'
import { gotText } from '../buy/got-text.ts'
import { itemName } from '../buy/line-text.ts'
import { usePlan } from '../fields/plan-in-hand.ts'
import { Findings } from '../plan/Findings.tsx'
import { cardHref, placeHref } from '../route.ts'
import { KeyFigure, Worked } from '../working/Worked.tsx'
import type { MoneySheetProps } from './MoneySheet.tsx'
import { ReceiptPicture } from './ReceiptPicture.tsx'
import { memberName } from './record-text.ts'
import { useSpending } from './use-spending.ts'

/** Planned against paid: in all, by part of the kiln, by thing; and every record, to be set right. */
export function SpendingSheet({ worked, planId, onClose }: MoneySheetProps) {
  const words = useWords()
  const { say, named } = words
  const { plan, costs } = worked
  const account = useSpending(worked)
  const paidFor = new Map(account.sections.map(({ section, cost }) => [section, cost]))
  const plannedFor = new Map(costs.sections.map(({ section, cost }) => [section, cost]))
  useEffect(() => {
    // Tidying up: what cannot be done now is done next time.
    dropUnnamedReceipts(plan).catch(() => {})
  }, [plan])
  const sections = [...new Set([...plannedFor.keys(), ...paidFor.keys()])]
  return (
    <Sheet title={say('spent.title')} closeLabel={say('app.close')} onClose={onClose} height="full">
      <div className="figs step-figs">
        <KeyFigure label={say('spent.paid')} of={account.paid} />
        <KeyFigure label={say('spent.to-pay')} of={account.toPay} />
        <KeyFigure label={say('spent.forecast')} of={account.forecast} />
      </div>
      {account.findings.length > 0 && <Findings findings={account.findings} />}
      {costs.unpriced.length > 0 && <p className="quiet">{say('spent.unpriced', { count: costs.unpriced.length })}</p>}
      <div>
        <MoneyRow name={say('spent.list')}>
          <Worked of={costs.subtotal} />
        </MoneyRow>
        <MoneyRow name={say('spent.over')}>
          <Worked of={account.over} />
        </MoneyRow>
        <MoneyRow name={say('spent.reserve')}>
          <Worked of={costs.contingency} />
        </MoneyRow>
        <MoneyRow name={say('spent.reserve-left')} isTotal>
          <Worked of={account.reserveLeft} />
        </MoneyRow>
      </div>
      <WideTable name={say('spent.by-part')}>
        <table className="money-table">
          <caption>{say('spent.by-part')}</caption>
          <thead>
            <tr>
              <th scope="col">{say('spent.part')}</th>
              <th scope="col">{say('spent.planned')}</th>
              <th scope="col">{say('spent.paid')}</th>
            </tr>
          </thead>
          <tbody>
            {sections.map((section) => (
              <tr key={section}>
                <th scope="row">{named(`section.${section}`)}</th>
                <td>{words.money(plannedFor.get(section)?.value ?? 0)}</td>
                <td>{words.money(paidFor.get(section)?.value ?? 0)}</td>
              </tr>
            ))}
            {account.others.value !== 0 && (
              <tr>
                <th scope="row">{say('spent.others')}</th>
                <td>{words.money(0)}</td>
                <td>{words.money(account.others.value)}</td>
              </tr>
            )}
            <tr className="total">
              <th scope="row">{say('buy.sum')}</th>
              <td>{words.money(costs.subtotal.value)}</td>
              <td>{words.money(account.paid.value)}</td>
            </tr>
          </tbody>
        </table>
      </WideTable>
      <h3>{say('spent.by-thing')}</h3>
      <ul>
        {account.items.map((one) => (
          <Thing key={one.item} of={one} planId={planId} />
        ))}
      </ul>
      <LinkButton shape="big" icon="plus" href={cardHref(planId, 'buy', `pay:${OTHER_THINGS}`)}>
        {say('spent.other')}
      </LinkButton>
      <h3>{say('spent.records')}</h3>
      <Records records={Object.entries(plan.spending)} planId={planId} />
    </Sheet>
  )
}

/** One thing: what is there and what is missing; planned and paid. */
function Thing({ of, planId }: { readonly of: ItemSpending; readonly planId: string }) {
  const words = useWords()
  const { say, money } = words
  const { plan } = usePlan()
  const { item, planned, paid, forecast } = of
  const asMoney = (cost: typeof planned) => (cost === null ? say('spent.no-price') : money(cost.value))
  return (
    <li>
      <a className="dec log-row" href={cardHref(planId, 'buy', `pay:${item}`)}>
        <span>
          <b>{itemName(item, plan, words)}</b>
          <small>{gotText(of, words)}</small>
          <small>
            {paid.value === 0
              ? say('spent.planned-only', { planned: asMoney(planned) })
              : say('spent.planned-paid', {
                  planned: asMoney(planned),
                  paid: money(paid.value),
                  forecast: asMoney(forecast),
                })}
          </small>
        </span>
        <Icon name="next" />
      </a>
    </li>
  )
}

function Records({
  records,
  planId,
}: {
  readonly records: readonly (readonly [string, Spending])[]
  readonly planId: string
}) {
  const words = useWords()
  const { say, money } = words
  const { plan } = usePlan()
  if (records.length === 0)
    return (
      <>
        <p className="quiet">{say('spent.none')}</p>
        <LinkButton href={placeHref(planId, 'buy')}>{say('empty.to-list')}</LinkButton>
      </>
    )
  const newestFirst = [...records].sort(([, a], [, b]) => ((a.day ?? '') < (b.day ?? '') ? 1 : -1))
  return (
    <ul>
      {newestFirst.map(([id, one]) => (
        <li key={id} className={one.receipt === null ? undefined : 'with-receipt'}>
          <a className="dec log-row" href={cardHref(planId, 'buy', `paid:${id}`)}>
            <span>
              <small>
                {[
                  one.day === null ? say('spent.no-day') : showIsoDay(one.day),
                  one.sellerName,
                  one.paidBy === null ? say('spent.box') : memberName(plan, one.paidBy),
                ]
                  .filter((part) => part !== '')
                  .join(' · ')}
              </small>
              <b>{one.instead === '' ? itemName(one.item, plan, words) : one.instead}</b>
              {one.note !== undefined && one.note !== '' && <small>{one.note}</small>}
            </span>
            <b className="amt">{one.kind === 'return' ? `−${money(one.paidMinor)}` : money(one.paidMinor)}</b>
          </a>
          {one.receipt !== null && (
            <ReceiptPicture planId={planId} receipt={one.receipt} what={itemName(one.item, plan, words)} />
          )}
        </li>
      ))}
    </ul>
  )
}
