import { CATALOGUE_TIMBER, CATALOGUE_UNITS } from '../../../core/plan/catalogue.ts'
import type { Offer } from '../../../core/plan/schema.ts'
import type { KeptPrice } from '../../../core/plan/price-book.ts'
import { isItemKey, ITEM_KEYS } from '../../../core/quantities/items.ts'
import { Button } from '../../parts/Button.tsx'
import { PickList } from '../../parts/PickList.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { useWords } from '../../words/use-words.tsx'
import { OfferFields } from '../buy/OfferFields.tsx'
import { firstOffer } from '../buy/usual-offer.ts'
import { soldName } from './price-text.ts'

/** Makes among which a price can choose; nothing where there is only one. */
const makesOf = (item: string): readonly string[] =>
  item === 'wall-unit'
    ? CATALOGUE_UNITS.map(({ key }) => key)
    : item === 'rail'
      ? CATALOGUE_TIMBER.sections.map(({ key }) => key)
      : []

/** One price of the book: every box is kept as soon as it is left. */
export function PriceSheet({
  price,
  onChange,
  onForget,
  onClose,
}: {
  readonly price: KeptPrice
  readonly onChange: (offer: Offer) => void
  readonly onForget: () => void
  readonly onClose: () => void
}) {
  const words = useWords()
  const { say, named } = words
  const { offer } = price
  const { variant = '', ...plain } = offer
  const makes = makesOf(offer.item)
  return (
    <Sheet title={soldName(offer, words)} closeLabel={say('app.close')} onClose={onClose} height="full">
      <PickList
        name={say('prices.item')}
        value={isItemKey(offer.item) ? offer.item : 'wall-unit'}
        options={ITEM_KEYS.map((key) => ({ key, label: named(`item.${key}`) }))}
        onChange={(item) => {
          onChange({ ...firstOffer(item), priceMinor: offer.priceMinor, seen: offer.seen })
        }}
      />
      {makes.length > 0 && (
        <PickList
          name={say('prices.make')}
          value={variant}
          options={[
            { key: '', label: say('prices.any') },
            ...(variant === '' || makes.includes(variant) ? [] : [{ key: variant, label: variant }]),
            ...makes.map((key) => ({ key, label: soldName({ item: offer.item, variant: key }, words) })),
          ]}
          onChange={(key) => {
            onChange(key === '' ? plain : { ...plain, variant: key })
          }}
        />
      )}
      <OfferFields id={null} offer={offer} onChange={onChange} />
      <Button onPress={onForget}>{say('prices.forget')}</Button>
    </Sheet>
  )
}
