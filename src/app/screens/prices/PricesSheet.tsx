import { useState } from 'react'
import type { WorkedOut } from '../../../core/work-out.ts'
import { bookOf, isSameCurrency, isSameOffer, pricesToKeep, withPrices } from '../../../core/plan/price-book.ts'
import { Button, LinkButton } from '../../parts/Button.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { useWords } from '../../words/use-words.tsx'
import { usePlan } from '../fields/plan-in-hand.ts'
import type { PlanRoute } from '../PlanHere.tsx'
import { placeHref, PRICES } from '../route.ts'
import { useCloseCard } from '../use-close-card.ts'
import { KeyFigure } from '../working/Worked.tsx'
import { usePriceBook } from './use-price-book.ts'

/** Between the plan and the phone's price book: take its prices, or keep this plan's for the next. */
export function PricesSheet({ route, worked }: { readonly route: PlanRoute; readonly worked: WorkedOut }) {
  const { say } = useWords()
  const { plan, edit } = usePlan()
  const book = usePriceBook()
  const close = useCloseCard(placeHref(route.id, 'buy'))
  const [told, setTold] = useState('')
  const known = book.prices ?? []
  const { currency } = plan
  const inCurrency = known.filter((one) => isSameCurrency(one.currency, currency))
  const taken = withPrices(plan, bookOf('', currency, known))
  const changed = taken.ok
    ? Object.entries(taken.value.offers).filter(([id, offer]) => !isSameOffer(plan.offers[id], offer)).length
    : 0
  const priced = Object.fromEntries(Object.entries(plan.offers).filter(([, { priceMinor }]) => priceMinor !== null))
  const toKeep = pricesToKeep(known, currency, priced, (id) => `${plan.id} ${id}`.slice(0, 60))
  return (
    <Sheet
      title={say('prices.title')}
      closeLabel={say('app.close')}
      onClose={close}
      foot={
        <div className="figs foot-figs">
          <KeyFigure
            label={say(worked.costs.unpriced.length === 0 ? 'buy.total' : 'buy.total-so-far')}
            of={worked.costs.total}
          />
        </div>
      }
    >
      <p className="quiet">{say('prices.why')}</p>
      {book.prices !== null && inCurrency.length === 0 && (
        <p>{say('prices.other-currency', { currency: currency.code })}</p>
      )}
      {changed > 0 && (
        <Button
          shape="big"
          icon="buy"
          onPress={() => {
            if (taken.ok && edit(() => taken.value)) setTold(say('prices.taken', { count: changed }))
          }}
        >
          {say('prices.take', { count: changed })}
        </Button>
      )}
      {inCurrency.length > 0 && changed === 0 && <p>{say('prices.nothing-new')}</p>}
      {plan.example && <p className="quiet">{say('prices.example')}</p>}
      {!plan.example && toKeep.length > 0 && (
        <Button
          shape="big"
          icon="file"
          onPress={() => {
            void book.keep(toKeep).then((isKept) => {
              if (isKept) setTold(say('prices.kept', { count: toKeep.length }))
            })
          }}
        >
          {say('prices.keep-plan', { count: toKeep.length })}
        </Button>
      )}
      <p role="status" className="told">
        {told}
      </p>
      <LinkButton href={PRICES}>{say('prices.open')}</LinkButton>
    </Sheet>
  )
}
