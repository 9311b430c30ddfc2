import type { Unit } from '../../../core/basics/unit.ts'
import { LIMITS } from '../../../core/plan/limits.ts'
import type { Offer } from '../../../core/plan/schema.ts'
import { isItemKey, itemOf } from '../../../core/quantities/items.ts'
import { PickList } from '../../parts/PickList.tsx'
import { TextField } from '../../parts/TextField.tsx'
import { readFigure } from '../../words/figure.ts'
import { showLength } from '../../words/length.ts'
import { useWords } from '../../words/use-words.tsx'
import type { Words } from '../../words/words.ts'
import type { FieldWay } from '../fields/field-way.ts'
import { MoneyField } from '../fields/MoneyField.tsx'
import { NumberField } from '../fields/PlanField.tsx'

const SELLERS = ['block-maker', 'hardware', 'timber', 'sand-stone', 'labour'] as const
const LOTS = ['piece', 'bag', 'load', 'length', 'roll', 'sheet', 'metre', 'kg', 'day', 'm3'] as const

/** A size of the offer in its own unit: kg of cement, m of timber, m³ of sand. */
function sizeWay(unit: Unit, words: Words, step: number): FieldWay {
  return {
    limit: { ...LIMITS['offer.lotSize'], unit, step },
    step,
    show: (value) => (unit === 'm' ? showLength(value, words.show, true) : words.figure(value, unit)),
    read: (typed) => readFigure(typed, unit, words.show),
    keyboard: 'decimal',
  }
}

/** One way to buy: price, lot, seller. Without an id it is a beginning: the first thing typed makes it an offer of the plan. */
export function OfferFields({
  id,
  offer,
  onChange,
}: {
  readonly id: string | null
  readonly offer: Offer
  readonly onChange: (offer: Offer) => void
}) {
  const words = useWords()
  const { say, named } = words
  const own = isItemKey(offer.item) ? itemOf(offer.item).unit : 'piece'
  const unit: Unit = offer.widthM > 0 || own === 'm2' ? 'm' : own
  const boxId = (field: string) => (id === null ? `offer.${field}` : `offers.${id}.${field}`)
  const count = sizeWay('1', words, 1)
  return (
    <div className="stack">
      <MoneyField
        id={boxId('priceMinor')}
        name={say('offer.price')}
        minor={offer.priceMinor}
        help={say('offer.price-help')}
        onChange={(priceMinor) => {
          onChange({ ...offer, priceMinor })
        }}
      />
      <div className="fields">
        <PickList
          name={say('offer.lot-name')}
          value={offer.lotName}
          options={LOTS.map((key) => ({ key, label: named(`lot.${key}`, { count: 1 }) }))}
          onChange={(lotName) => {
            onChange({ ...offer, lotName })
          }}
        />
        <NumberField
          id={boxId('lotSize')}
          name={say('offer.lot-size')}
          value={offer.lotSize}
          way={sizeWay(unit, words, unit === 'm3' ? 0.1 : unit === 'm' ? 0.1 : 1)}
          onChange={(lotSize) => {
            onChange({ ...offer, lotSize })
          }}
        />
        {offer.widthM > 0 && (
          <NumberField
            id={boxId('widthM')}
            name={say('offer.width')}
            value={offer.widthM}
            way={{ ...sizeWay('m', words, 0.05), limit: { min: 0.05, max: 10, unit: 'm', step: 0.05 } }}
            onChange={(widthM) => {
              onChange({ ...offer, widthM })
            }}
          />
        )}
      </div>
      <div className="fields">
        <PickList
          name={say('offer.seller')}
          value={offer.seller}
          options={SELLERS.map((key) => ({ key, label: named(`seller.${key}`) }))}
          onChange={(seller) => {
            onChange({ ...offer, seller })
          }}
        />
        <TextField
          name={say('offer.seller-name')}
          value={offer.sellerName}
          most={80}
          onChange={(sellerName) => {
            onChange({ ...offer, sellerName })
          }}
        />
        <TextField
          name={say('offer.place')}
          value={offer.place}
          most={80}
          onChange={(place) => {
            onChange({ ...offer, place })
          }}
        />
        <label className="field">
          <span className="field-name">{say('offer.seen')}</span>
          <input
            type="date"
            className="pick-list"
            value={offer.seen ?? ''}
            onChange={(event) => {
              const seen = event.currentTarget.value
              onChange({ ...offer, seen: seen === '' ? null : seen })
            }}
          />
        </label>
        <NumberField
          id={boxId('leastLots')}
          name={say('offer.least')}
          value={offer.leastLots}
          way={{ ...count, limit: LIMITS['offer.leastLots'], keyboard: 'numeric' }}
          onChange={(leastLots) => {
            onChange({ ...offer, leastLots })
          }}
        />
        <MoneyField
          id={boxId('transportMinor')}
          name={say('offer.carriage')}
          minor={offer.transportMinor}
          onChange={(transportMinor) => {
            onChange({ ...offer, transportMinor: transportMinor ?? 0 })
          }}
        />
        {offer.transportMinor > 0 && (
          <NumberField
            id={boxId('tripLots')}
            name={say('offer.trip-lots')}
            value={offer.tripLots}
            way={{ ...count, limit: LIMITS['offer.tripLots'], keyboard: 'numeric' }}
            help={say('offer.trip-lots-help')}
            onChange={(tripLots) => {
              onChange({ ...offer, tripLots })
            }}
          />
        )}
      </div>
    </div>
  )
}
