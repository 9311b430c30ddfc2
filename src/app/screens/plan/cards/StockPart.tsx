import { CATALOGUE_TIMBER } from '../../../../core/plan/catalogue.ts'
import type { Plan } from '../../../../core/plan/schema.ts'
import { itemOf } from '../../../../core/quantities/items.ts'
import { offerFits } from '../../../../core/quantities/variant.ts'
import { Button } from '../../../parts/Button.tsx'
import { PickList } from '../../../parts/PickList.tsx'
import { useWords } from '../../../words/use-words.tsx'
import { newKey } from '../../buy/new-key.ts'
import { usualOffer } from '../../buy/usual-offer.ts'
import { fieldWay } from '../../fields/field-way.ts'
import { MoneyField } from '../../fields/MoneyField.tsx'
import { NumberField } from '../../fields/PlanField.tsx'
import { usePlan } from '../../fields/plan-in-hand.ts'

/** Lengths nearer than this are the same length of the market. */
const SAME_M = 0.0005

/** Rails by the sections that markets usually have: both sides of the section at once. */
export function SectionPick() {
  const { say, sizes } = useWords()
  const { plan, set } = usePlan()
  const { railThicknessM, railDepthM } = plan.trays
  const { sections } = CATALOGUE_TIMBER
  const now = sections.find((one) => one.thicknessM === railThicknessM && one.depthM === railDepthM)
  return (
    <PickList
      name={say('stock.section')}
      value={now?.key ?? ''}
      options={[
        ...(now === undefined ? [{ key: '', label: say('stock.own-section') }] : []),
        ...sections.map(({ key, thicknessM, depthM }) => ({ key, label: sizes(thicknessM, depthM) })),
      ]}
      onChange={(key) => {
        const taken = sections.find((one) => one.key === key)
        if (taken !== undefined) set({ 'trays.railThicknessM': taken.thicknessM, 'trays.railDepthM': taken.depthM })
      }}
    />
  )
}

const offersOf = (plan: Plan) => Object.entries(plan.offers).filter(([, offer]) => offerFits(plan, 'rail', offer))

/** Lengths that the market sells of the rails' section, each with its price; usual ones are added by a tap. */
export function LengthsSold() {
  const words = useWords()
  const { say, length } = words
  const { plan, set } = usePlan()
  const offers = offersOf(plan)
  const missing = CATALOGUE_TIMBER.lengthsM.filter((lengthM) =>
    offers.every(([, { lotSize }]) => Math.abs(lotSize - lengthM) > SAME_M),
  )
  return (
    <section className="stack">
      <h3>{say('stock.offers')}</h3>
      <p className="quiet">
        {offers.length === 0
          ? say('stock.no-offers', { length: length(itemOf('rail').lotSize) })
          : say('stock.offers-why')}
      </p>
      {offers.map(([id, offer], index) => (
        <div key={id} className="stack">
          <div className="fields">
            <NumberField
              id={`offers.${id}.lotSize`}
              name={say('stock.length', { number: index + 1 })}
              value={offer.lotSize}
              way={fieldWay('owned.lengthM', words)}
              onChange={(lotSize) => {
                set({ [`offers.${id}`]: { ...offer, lotSize } })
              }}
            />
            <MoneyField
              id={`offers.${id}.priceMinor`}
              name={say('stock.price', { number: index + 1 })}
              minor={offer.priceMinor}
              onChange={(priceMinor) => {
                set({ [`offers.${id}`]: { ...offer, priceMinor } })
              }}
            />
          </div>
          <Button
            label={say('stock.forget', { number: index + 1 })}
            onPress={() => {
              set({ [`offers.${id}`]: undefined })
            }}
          >
            {say('offer.forget')}
          </Button>
        </div>
      ))}
      <div className="fields">
        {missing.map((lengthM) => (
          <Button
            key={lengthM}
            icon="plus"
            onPress={() => {
              set({ [`offers.${newKey()}`]: { ...usualOffer(plan, 'rail'), lotSize: lengthM } })
            }}
          >
            {say('stock.add', { length: length(lengthM) })}
          </Button>
        ))}
      </div>
      <p className="quiet">{say('stock.feet')}</p>
    </section>
  )
}
