import type { WorkedOut } from '../../../core/work-out.ts'
import { KeyNum } from '../../parts/Num.tsx'
import { useWords } from '../../words/use-words.tsx'
import { cardHref, placeHref } from '../route.ts'
import { goTo } from '../use-route.ts'
import { KeyFigure } from '../working/Worked.tsx'

/** The total; where nothing has a price yet, how many things want one, which leads to them. */
export function MoneyFigure({ costs, planId }: { readonly costs: WorkedOut['costs']; readonly planId: string }) {
  const { say, number } = useWords()
  const { unpriced, sellers, total } = costs
  const [first] = unpriced
  const isBare = sellers.every((seller) => seller.unpriced === seller.lines.length)
  if (!isBare) return <KeyFigure label={say(first === undefined ? 'plan.money' : 'plan.money-so-far')} of={total} />
  return (
    <KeyNum
      label={say('plan.to-price')}
      figure={number(unpriced.length)}
      onOpen={() => {
        goTo(first === undefined ? placeHref(planId, 'buy') : cardHref(planId, 'buy', `item:${first}`))
      }}
    />
  )
}
