import { lazy, Suspense, useState } from 'react'
import type { Finding } from '../../../core/basics/finding.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { Button, LinkButton } from '../../parts/Button.tsx'
import { Course } from '../../parts/Course.tsx'
import { KeyNum } from '../../parts/Num.tsx'
import { Segments } from '../../parts/Picks.tsx'
import { MoneyRow } from '../../parts/MoneyRow.tsx'
import { notify } from '../../state/notices.ts'
import { printPage } from '../../state/paper-actions.ts'
import { useWords } from '../../words/use-words.tsx'
import { Findings } from '../plan/Findings.tsx'
import { worstFirst } from '../plan/order-findings.ts'
import { TotalAloud } from '../plan/Aloud.tsx'
import type { PlanRoute } from '../PlanHere.tsx'
import { cardHref } from '../route.ts'
import { goTo } from '../use-route.ts'
import { moneyCardOf } from '../spending/money-card.ts'
import { useSpending } from '../spending/use-spending.ts'
import { KeyFigure, Worked } from '../working/Worked.tsx'
import './buy.css'
import { ItemSheet } from './ItemSheet.tsx'
import { itemOfCard } from './item-of-card.ts'
import { PrintedList } from './PrintedList.tsx'
import { SellerPart } from './SellerPart.tsx'
import { SendText } from './SendText.tsx'

const PricesSheet = lazy(() => import('../prices/PricesSheet.tsx').then((one) => ({ default: one.PricesSheet })))
const MoneySheet = lazy(() => import('../spending/MoneySheet.tsx').then((one) => ({ default: one.MoneySheet })))

/** Buy: everything by seller, from need to money, and the list for the market. */
export function BuyPlace({ route, worked }: { readonly route: PlanRoute; readonly worked: WorkedOut }) {
  const words = useWords()
  const { say, share } = words
  const { plan, costs, list, purchase } = worked
  const [column, setColumn] = useState<'priced' | 'blank'>('priced')
  const isPriced = costs.unpriced.length === 0
  const item = itemOfCard(route.card, plan)
  const moneyCard = moneyCardOf(route.card)
  const spending = useSpending(worked)
  const isBuying = Object.keys(plan.spending).length > 0
  const things = spending.items.filter(({ lines }) => lines.length > 0)
  const here = things.filter(({ got, missing }) => got.value > 0 && missing.value <= 0)
  const findings = worstFirst([...worked.findings, ...spending.findings])
  const isMoney = ({ card, level }: Finding) => card === 'money' && level !== 'good'
  return (
    <>
      <div className="screen-only stack">
        <h2 className="hide">{say('place.buy')}</h2>
        <div className="figs">
          <KeyFigure label={say(isPriced ? 'buy.total' : 'buy.total-so-far')} of={costs.total} />
          {isBuying && <KeyFigure label={say('spent.to-pay')} of={spending.toPay} />}
          {!isPriced && (
            <KeyNum
              label={say('buy.unpriced')}
              figure={words.number(costs.unpriced.length)}
              onOpen={() => {
                const [first] = costs.unpriced
                if (first !== undefined) goTo(cardHref(route.id, 'buy', `item:${first}`))
              }}
            />
          )}
        </div>
        {!isPriced && (
          <Course
            of={purchase.lines.length}
            laid={purchase.lines.length - costs.unpriced.length}
            label={say('buy.priced-of', {
              priced: purchase.lines.length - costs.unpriced.length,
              all: purchase.lines.length,
            })}
          />
        )}
        {isPriced && isBuying && (
          <Course
            of={things.length}
            laid={here.length}
            label={say('spent.bought-of', { bought: here.length, all: things.length })}
          />
        )}
        <TotalAloud costs={costs} />
        {findings.some(isMoney) && <Findings findings={findings} only={isMoney} />}
        <div className="two-columns">
          {list.groups.map((seller) => (
            <SellerPart
              key={`${seller.seller} ${seller.sellerName}`}
              seller={seller}
              planId={route.id}
              spent={spending.items}
            />
          ))}
          {list.free.length > 0 && (
            <section>
              <div className="seller">
                <h2>{say('buy.free')}</h2>
              </div>
              {list.free.map((total) => (
                <div className="item" key={total.item}>
                  <span className="item-words">
                    <b>{words.named(`item.${total.item}`)}</b>
                    <span className="quiet">{say('buy.for', { uses: usesOf(total.needs, words.named) })}</span>
                  </span>
                  <Worked of={total.gross} />
                </div>
              ))}
            </section>
          )}
          <section>
            <div className="seller">
              <h2>{say('buy.by-part')}</h2>
            </div>
            {costs.sections.map(({ section, cost }) => (
              <MoneyRow key={section} name={words.named(`section.${section}`)}>
                <Worked of={cost} />
              </MoneyRow>
            ))}
            <MoneyRow name={say('buy.contingency', { share: share(plan.money.contingency) })}>
              <Worked of={costs.contingency} />
            </MoneyRow>
            <MoneyRow name={say(isPriced ? 'buy.sum' : 'buy.total-so-far')} isTotal>
              {words.money(costs.total.value)}
            </MoneyRow>
          </section>
        </div>
        <div className="choices">
          <LinkButton shape="big" icon="coins" href={cardHref(route.id, 'buy', 'spending')}>
            {say('spent.title')}
          </LinkButton>
          <LinkButton shape="big" icon="people" href={cardHref(route.id, 'buy', 'group')}>
            {say('group.title')}
          </LinkButton>
        </div>
        <LinkButton icon="pencil" href={cardHref(route.id, 'buy', 'prices')}>
          {say('prices.title')}
        </LinkButton>
        <LinkButton href={cardHref(route.id, 'plan', 'money')}>{say('swings.link')}</LinkButton>
        <section className="stack print-choice">
          <Segments
            name={say('buy.print')}
            choices={[
              { key: 'priced', label: say('buy.print-priced') },
              { key: 'blank', label: say('buy.print-blank') },
            ]}
            chosen={column}
            onChoose={setColumn}
          />
          <Button
            shape="big"
            icon="print"
            onPress={() => {
              void printPage().then((isPrinting) => {
                if (!isPrinting) notify({ key: 'buy.no-print-window' })
              })
            }}
          >
            {say('buy.print')}
          </Button>
          <SendText worked={worked} />
        </section>
      </div>
      <PrintedList worked={worked} column={column} />
      {moneyCard !== null && (
        <Suspense fallback={null}>
          <MoneySheet key={route.card} card={moneyCard} route={route} worked={worked} />
        </Suspense>
      )}
      {route.card === 'prices' && (
        <Suspense fallback={null}>
          <PricesSheet route={route} worked={worked} />
        </Suspense>
      )}
      {item !== null && <ItemSheet key={item} item={item} route={route} worked={worked} />}
    </>
  )
}

function usesOf(needs: WorkedOut['needs'], named: (key: string) => string): string {
  return [...new Set(needs.map(({ use }) => named(`use.${use}`)))].join(', ')
}
