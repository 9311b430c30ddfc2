import type { WorkedOut } from '../../../../core/work-out.ts'
import { LinkButton } from '../../../parts/Button.tsx'
import { useWords } from '../../../words/use-words.tsx'
import { MoneyField } from '../../fields/MoneyField.tsx'
import { PlanField } from '../../fields/PlanField.tsx'
import { usePlan } from '../../fields/plan-in-hand.ts'
import { cardHref } from '../../route.ts'
import { CurrencyPick } from './CurrencyPick.tsx'
import { PriceSwings } from './PriceSwings.tsx'
import { TotalRange } from './TotalRange.tsx'

/** In what money the plan counts, how much there is, and what is kept back. */
export function MoneyCard({ worked }: { readonly worked: WorkedOut }) {
  const { say } = useWords()
  const { plan, set } = usePlan()
  return (
    <>
      <CurrencyPick />
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
