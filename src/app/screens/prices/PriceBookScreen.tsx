import { useState } from 'react'
import { isOldPrice } from '../../../core/documents/old-prices.ts'
import { priceTable } from '../../../core/documents/price-table.ts'
import { bookOf, isSameCurrency, type KeptPrice, type PriceBook } from '../../../core/plan/price-book.ts'
import { Button } from '../../parts/Button.tsx'
import { Icon } from '../../parts/Icon.tsx'
import { PickList } from '../../parts/PickList.tsx'
import { notify } from '../../state/notices.ts'
import { saveFile } from '../../state/paper-actions.ts'
import { useApp } from '../../state/use-app.ts'
import { showIsoDay, todayIso } from '../../words/dates.ts'
import { CURRENCY_CODES, currencyName, currencyOf, localCurrency } from '../../words/currencies.ts'
import { DEFAULT_SHOW } from '../../words/show.ts'
import { useWords, WordsProvider } from '../../words/use-words.tsx'
import type { Words } from '../../words/words.ts'
import { newKey } from '../buy/new-key.ts'
import { firstOffer } from '../buy/usual-offer.ts'
import { FrontBranch } from '../FrontBranch.tsx'
import { PRICES } from '../route.ts'
import { pricedLot, soldName } from './price-text.ts'
import { PriceSheet } from './PriceSheet.tsx'
import { TableButton } from './TableSheet.tsx'
import { usePriceBook, type PriceBookHand } from './use-price-book.ts'
import './prices.css'

type Currency = PriceBook['currency']

/** The market's prices apart from any plan: one book a currency, because money is never converted. */
export function PriceBookScreen() {
  const rows = useApp((state) => state.rows)
  const book = usePriceBook()
  const [chosen, setChosen] = useState<string | null>(null)
  const plans = rows.flatMap(({ plan }) => (plan === null ? [] : [plan]))
  const used = [...(book.prices ?? []).map(({ currency }) => currency), ...plans.map((plan) => plan.currency)].filter(
    (one, index, all) => all.findIndex((other) => isSameCurrency(one, other)) === index,
  )
  const others = CURRENCY_CODES.map(currencyOf).filter(({ code }) => used.every((one) => one.code !== code))
  const currencies = [...used, ...others]
  const currency = currencies.find(({ code }) => code === chosen) ?? used[0] ?? localCurrency()
  return (
    <WordsProvider show={{ ...(plans[0]?.show ?? DEFAULT_SHOW), currency }}>
      <Book key={currency.code} book={book} currency={currency} currencies={currencies} onCurrency={setChosen} />
    </WordsProvider>
  )
}

function Book({
  book,
  currency,
  currencies,
  onCurrency,
}: {
  readonly book: PriceBookHand
  readonly currency: Currency
  readonly currencies: readonly Currency[]
  readonly onCurrency: (code: string) => void
}) {
  const words = useWords()
  const { say } = words
  const [open, setOpen] = useState<KeptPrice | null>(null)
  const prices = (book.prices ?? []).filter((one) => isSameCurrency(one.currency, currency))
  const things = byThing(prices, words)
  return (
    <FrontBranch path={PRICES} title={say('prices.title')}>
      <p className="quiet">{say('prices.why')}</p>
      <PickList
        name={say('prices.currency')}
        value={currency.code}
        options={currencies.map(({ code }) => ({ key: code, label: currencyName(code) }))}
        onChange={onCurrency}
      />
      {book.prices !== null && prices.length === 0 && <p>{say('prices.none')}</p>}
      <div className="two-columns">
        {things.map(([name, sold]) => (
          <section key={name}>
            <h2 className="sold">{name}</h2>
            <ul>
              {sold.map((price) => (
                <PriceRow key={price.id} price={price} onOpen={setOpen} />
              ))}
            </ul>
          </section>
        ))}
      </div>
      <Button
        shape="big"
        tone="fire"
        icon="plus"
        onPress={() => {
          setOpen({ id: newKey(), currency, offer: firstOffer('cement') })
        }}
      >
        {say('prices.add')}
      </Button>
      <div className="choices">
        <TableButton currency={currency} known={book.prices ?? []} onKeep={book.keep} />
        {prices.length > 0 && (
          <Button
            icon="file"
            onPress={() => {
              const name = `prices-${currency.code}.csv`
              saveFile(new File([`\uFEFF${priceTable(bookOf('', currency, prices))}`], name, { type: 'text/csv' }))
              notify({ key: 'sheets.saved', args: { file: name } })
            }}
          >
            {say('prices.save-table')}
          </Button>
        )}
      </div>
      {open !== null && (
        <PriceSheet
          price={open}
          onChange={(offer) => {
            const changed = { ...open, offer }
            setOpen(changed)
            void book.keep([changed])
          }}
          onForget={() => {
            setOpen(null)
            book.forget(open)
          }}
          onClose={() => {
            setOpen(null)
          }}
        />
      )}
    </FrontBranch>
  )
}

/** Prices of each thing together, things in the order of their names. */
function byThing(prices: readonly KeptPrice[], words: Words): (readonly [name: string, KeptPrice[]])[] {
  const things = new Map<string, KeptPrice[]>()
  for (const price of prices) {
    const name = soldName(price.offer, words)
    const known = things.get(name)
    if (known === undefined) things.set(name, [price])
    else known.push(price)
  }
  return [...things].toSorted(([a], [b]) => a.localeCompare(b))
}

/** One seller's price; the whole row opens it. */
function PriceRow({ price, onOpen }: { readonly price: KeptPrice; readonly onOpen: (price: KeptPrice) => void }) {
  const words = useWords()
  const { say, named } = words
  const { offer } = price
  const { seen } = offer
  const where = [named(`seller.${offer.seller}`), offer.sellerName, offer.place].filter(Boolean).join(', ')
  return (
    <li>
      <button
        type="button"
        className="price-row"
        onClick={() => {
          onOpen(price)
        }}
      >
        <span>
          <b>{pricedLot(offer, words)}</b>
          <span className="quiet">{where}</span>
          {seen !== null &&
            (isOldPrice(seen, todayIso()) ? (
              <span className="old">
                <Icon name="caution" /> {say('prices.seen-old', { day: showIsoDay(seen) })}
              </span>
            ) : (
              <span className="quiet">{say('prices.seen', { day: showIsoDay(seen) })}</span>
            ))}
        </span>
        <Icon name="next" />
      </button>
    </li>
  )
}
