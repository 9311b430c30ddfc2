import { withCurrency } from '../../../../core/plan/currency-change.ts'
import type { WorkedOut } from '../../../../core/work-out.ts'
import { LinkButton } from '../../../parts/Button.tsx'
import { PickList } from '../../../parts/PickList.tsx'
import { CURRENCY_CODES, currencyName, currencyOf } from '../../../words/currencies.ts'
import { useWords } from '../../../words/use-words.tsx'
import { MoneyField } from '../../fields/MoneyField.tsx'
import { PlanField } from '../../fields/PlanField.tsx'
import { usePlan } from '../../fields/plan-in-hand.ts'
import { cardHref } from '../../route.ts'
import { PriceSwings } from './PriceSwings.tsx'
import { TotalRange } from './TotalRange.tsx'

/** In what money the plan counts, how much there is, and what is kept back. */
export function MoneyCard({ worked }: { readonly worked: WorkedOut }) {
  const { say } = useWords()
  const { plan, edit, set } = usePlan()
  const { code } = plan.currency
  const codes = CURRENCY_CODES.includes(code) ? CURRENCY_CODES : [code, ...CURRENCY_CODES]
  return (
    <>
      <PickList
        name={say('money.currency')}
        value={code}
        options={codes.map((key) => ({ key, label: currencyName(key) }))}
        onChange={(chosen) => edit((now) => withCurrency(now, currencyOf(chosen)))}
      />
      <p className="quiet">{say('money.currency-why')}</p>
      <MoneyField
        name={say('field.money.budgetMinor')}
        id="money.budgetMinor"
        minor={plan.money.budgetMinor}
        onChange={(minor) => set({ 'money.budgetMinor': minor })}
        help={say('money.budget-why')}
      />
      <PlanField at="money.contingency" />
      <LinkButton href={cardHref(plan.id, 'plan', 'within')}>{say('within.title')}</LinkButton>
      <PriceSwings worked={worked} />
      <TotalRange />
    </>
  )
}
