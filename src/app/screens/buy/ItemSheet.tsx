import type { Offer } from '../../../core/plan/schema.ts'
import { useState } from 'react'
import type { ItemKey } from '../../../core/quantities/items.ts'
import { offerFits } from '../../../core/quantities/variant.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { Button } from '../../parts/Button.tsx'
import { MoneyRow } from '../../parts/MoneyRow.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { useWords } from '../../words/use-words.tsx'
import { usePlan } from '../fields/plan-in-hand.ts'
import { useFieldInSight } from '../fields/use-field-in-sight.ts'
import { TotalAloud } from '../plan/Aloud.tsx'
import type { PlanRoute } from '../PlanHere.tsx'
import { placeHref } from '../route.ts'
import { useCloseCard } from '../use-close-card.ts'
import { KeyFigure, Worked } from '../working/Worked.tsx'
import { itemName } from './line-text.ts'
import { newKey } from './new-key.ts'
import { OfferFields } from './OfferFields.tsx'
import { usualOffer } from './usual-offer.ts'

/** Everything about buying one thing: its offers, and the way from what the work needs to what it costs. */
export function ItemSheet({
  item,
  route,
  worked,
}: {
  readonly item: ItemKey
  readonly route: PlanRoute
  readonly worked: WorkedOut
}) {
  const words = useWords()
  const { say } = words
  const { plan, set } = usePlan()
  const close = useCloseCard(placeHref(route.id, 'buy'))
  useFieldInSight(route.field)
  const offers = Object.entries(plan.offers).filter(([, offer]) => offerFits(plan, item, offer))
  const isNone = offers.length === 0
  // Known before the first price is typed, so that its box stays the same one, with the focus in it.
  const [firstId] = useState(newKey)
  const lines = worked.purchase.lines.filter((line) => line.item === item)
  const name = itemName(item, plan, words)
  const put = (id: string, offer: Offer) => set({ [`offers.${id}`]: offer })
  return (
    <Sheet
      title={name}
      closeLabel={say('app.close')}
      onClose={close}
      height="full"
      foot={
        <>
          <div className="figs foot-figs">
            <KeyFigure
              label={say(worked.costs.unpriced.length === 0 ? 'buy.total' : 'buy.total-so-far')}
              of={worked.costs.total}
            />
          </div>
          <TotalAloud costs={worked.costs} />
        </>
      }
    >
      {isNone && <p className="quiet">{say('offer.none')}</p>}
      {(isNone ? [[firstId, usualOffer(plan, item)] as const] : offers).map(([id, offer], index) => (
        <section className="stack" key={id}>
          {offers.length > 1 && <h3>{say('offer.number', { number: index + 1 })}</h3>}
          <OfferFields
            id={isNone ? null : id}
            offer={offer}
            onChange={(changed) => {
              put(id, changed)
            }}
          />
          {!isNone && <Button onPress={() => set({ [`offers.${id}`]: undefined })}>{say('offer.forget')}</Button>}
        </section>
      ))}
      {offers.length > 0 && (
        <Button
          shape="big"
          icon="plus"
          onPress={() => {
            put(newKey(), usualOffer(plan, item))
          }}
        >
          {say('offer.another')}
        </Button>
      )}
      <h3>{say('buy.working')}</h3>
      {lines.map((line, index) => (
        <div key={line.offerId ?? index}>
          <MoneyRow name={say('buy.net')}>
            <Worked of={line.net} />
          </MoneyRow>
          <MoneyRow name={say('buy.waste')}>
            <Worked of={line.gross} />
          </MoneyRow>
          <MoneyRow name={say('buy.lot')}>
            <Worked of={line.lots} />
          </MoneyRow>
          <MoneyRow name={say('buy.bought')}>
            <Worked of={line.bought} />
          </MoneyRow>
          <MoneyRow name={say('buy.surplus')}>
            <Worked of={line.surplus} />
          </MoneyRow>
          {line.cost && (
            <MoneyRow name={say('buy.cost')}>
              <Worked of={line.cost} />
            </MoneyRow>
          )}
        </div>
      ))}
    </Sheet>
  )
}
