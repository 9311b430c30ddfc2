import type { Derived } from '../../../core/basics/derived.ts'
import { missingPrices } from '../../../core/schedule/firing-account.ts'
import { paidBack, payback, type Payback } from '../../../core/schedule/payback.ts'
import { LinkButton } from '../../parts/Button.tsx'
import { MoneyRow } from '../../parts/MoneyRow.tsx'
import { useWords } from '../../words/use-words.tsx'
import { cardHref } from '../route.ts'
import { KeyFigure, KeyRange, Worked, WorkedRange } from '../working/Worked.tsx'
import { LogChart } from './LogCharts.tsx'
import type { RunSheetProps } from './RunSheet.tsx'

/** What a firing costs and brings at the plan's prices, when the kiln has paid for itself, and what the log says of it. */
export function MoneyOfFirings({ worked, log, planId }: RunSheetProps) {
  const { say } = useWords()
  const { plan, fish, costs } = worked
  const low = payback(plan, fish, costs, 'low')
  const high = payback(plan, fish, costs, 'high')
  const back = paidBack(log, costs)
  return (
    <>
      {low !== null && high !== null ? (
        <Expected low={low} high={high} />
      ) : (
        <>
          <p>{say('run.prices-wanted', { count: missingPrices(plan).length })}</p>
          <LinkButton href={cardHref(planId, 'run', 'run')} shape="big" icon="pencil">
            {say('card.run')}
          </LinkButton>
        </>
      )}
      {back !== null && (
        <>
          <h3>{say('run.by-log')}</h3>
          <div className="figs step-figs">
            <KeyFigure label={say('run.net-all', { count: log.netOf })} of={log.net} />
            <KeyFigure label={say('run.net-mean')} of={back.mean} />
            <KeyFigure label={say('run.still-owed')} of={back.left} />
            {back.more !== null && <KeyFigure label={say('run.more-firings')} of={back.more} />}
          </div>
          {back.more === null && <p>{say('run.answer.never')}</p>}
          <LogChart log={log} of="net" />
        </>
      )}
    </>
  )
}

function Expected({ low, high }: { readonly low: Payback; readonly high: Payback }) {
  const { say } = useWords()
  const row = (name: string, of: (one: Payback) => Derived, isTotal = false) => (
    <MoneyRow name={name} isTotal={isTotal}>
      {of(low).value === of(high).value ? (
        <Worked of={of(high)} label={name} />
      ) : (
        <WorkedRange label={name} {...ordered(of(low), of(high))} />
      )}
    </MoneyRow>
  )
  return (
    <>
      <p className="quiet">{say('run.usual-day')}</p>
      <div>
        {row(say('run.fishCostMinor'), (one) => one.account.fish)}
        {row(say('run.woodCostMinor'), (one) => one.account.wood)}
        {row(say('run.otherCostMinor'), (one) => one.account.other)}
        {row(say('run.cost'), (one) => one.account.cost, true)}
        {row(say('run.salesMinor'), (one) => one.account.sales)}
        {row(say('run.net'), (one) => one.account.net, true)}
      </div>
      <h3>{say('run.paid-back')}</h3>
      <div className="figs step-figs">
        {low.firings && high.firings && (
          <KeyRange label={say('run.payback-firings')} from={low.firings} to={high.firings} />
        )}
        {low.days && high.days && <KeyRange label={say('run.payback-days')} from={low.days} to={high.days} />}
        <KeyFigure label={say('run.kiln-on-kilogram')} of={low.perKilogram} />
        <KeyRange label={say('run.cost-kilogram')} from={low.costPerKilogram} to={high.costPerKilogram} />
        <KeyFigure label={say('run.kiln-a-year')} of={low.yearly} />
      </div>
      {high.firings === null && <p>{say('run.may-never')}</p>}
      {!low.complete && <p className="quiet">{say('run.not-whole')}</p>}
    </>
  )
}

const ordered = (a: Derived, b: Derived) => (a.value <= b.value ? { from: a, to: b } : { from: b, to: a })
