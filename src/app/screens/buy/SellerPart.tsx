import type { MaterialsGroup } from '../../../core/documents/materials-list.ts'
import type { ItemSpending } from '../../../core/costs/spending.ts'
import type { PurchaseLine } from '../../../core/purchase/line.ts'
import { Icon } from '../../parts/Icon.tsx'
import { useWords } from '../../words/use-words.tsx'
import { usePlan } from '../fields/plan-in-hand.ts'
import { cardHref } from '../route.ts'
import { Worked } from '../working/Worked.tsx'
import { gotText } from './got-text.ts'
import { itemName, lotsText, lotText, whyText } from './line-text.ts'

/** What is bought of one seller. A tap on the thing changes price, lot or seller; a tap on the money opens its working. */
export function SellerPart({
  seller,
  planId,
  spent,
}: {
  readonly seller: MaterialsGroup
  readonly planId: string
  readonly spent: readonly ItemSpending[]
}) {
  const words = useWords()
  const { named } = words
  const kind = named(`seller.${seller.seller}`)
  return (
    <section>
      <div className="seller">
        <h2>
          {kind}
          {seller.sellerName !== '' && <small className="quiet">{seller.sellerName}</small>}
        </h2>
        {seller.rows.length > seller.unpriced && <Worked of={seller.cost} label={kind} />}
      </div>
      <ul>
        {seller.rows.map((line, index) => (
          <Line
            key={`${line.item} ${line.offerId ?? ''} ${String(index)}`}
            line={line}
            planId={planId}
            spent={spent.find(({ item }) => item === line.item)}
          />
        ))}
      </ul>
    </section>
  )
}

function Line({
  line,
  planId,
  spent,
}: {
  readonly line: PurchaseLine
  readonly planId: string
  readonly spent: ItemSpending | undefined
}) {
  const words = useWords()
  const { plan } = usePlan()
  const { say } = words
  const name = itemName(line.item, plan, words)
  const lot = lotText(line, words)
  const got = spent?.got.value ?? 0
  const isHere = spent !== undefined && got > 0 && spent.missing.value <= 0
  const href = cardHref(planId, 'buy', `item:${line.item}`)
  return (
    <li className={isHere ? 'item here' : 'item'}>
      <a
        className="pay-box"
        href={cardHref(planId, 'buy', `pay:${line.item}`)}
        aria-label={say(isHere ? 'spent.box-done' : 'spent.box-for', { name: lot === '' ? name : `${name}, ${lot}` })}
      >
        <span className={isHere ? 'box done' : 'box'}>{isHere && <Icon name="tick" />}</span>
      </a>
      <a className="item-words" href={href}>
        <span className="hide">{say('buy.change')} </span>
        <b>{say('buy.lots', { count: lotsText(line, words), name: lot === '' ? name : `${name}, ${lot}` })}</b>
        <span className="quiet">{whyText(line, words)}</span>
        {spent !== undefined && got > 0 && !isHere && <span>{gotText(spent, words)}</span>}
      </a>
      {line.cost === null ? (
        <a className="btn" href={href}>
          <span>
            {say('buy.no-price')} <span className="hide">{name}</span>
          </span>
        </a>
      ) : (
        <Worked of={line.cost} label={name} />
      )}
    </li>
  )
}
