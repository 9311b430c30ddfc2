import type { Plan } from '../../../../core/plan/schema.ts'
import { isItemKey, itemOf, type ItemKey } from '../../../../core/quantities/items.ts'
import { variantOf } from '../../../../core/quantities/variant.ts'
import { Button } from '../../../parts/Button.tsx'
import { PickList } from '../../../parts/PickList.tsx'
import { useWords } from '../../../words/use-words.tsx'
import { newKey } from '../../buy/new-key.ts'
import { fieldWay } from '../../fields/field-way.ts'
import { NumberField } from '../../fields/PlanField.tsx'
import { usePlan } from '../../fields/plan-in-hand.ts'

type Owned = Plan['trays']['owned'][string]

const OWNED_ITEMS = ['rail', 'cover-board', 'cover-sheet', 'bar'] as const satisfies readonly ItemKey[]
/** A first offcut to type over: a rail's usual remainder. */
const FIRST_LENGTH_M = 1
const FIRST_WIDTH_M = 0.6

/** A piece of an item at hand; of rails it is one of the plan's own section. */
function ownedOf(plan: Plan, item: ItemKey, before?: Owned): Owned {
  const variant = variantOf(plan, item)
  return {
    item,
    ...(variant !== '' && { variant }),
    lengthM: before?.lengthM ?? FIRST_LENGTH_M,
    widthM: itemOf(item).cut === 'sheets' ? FIRST_WIDTH_M : 0,
    count: before?.count ?? 1,
  }
}

/** Boards, bars and sheets that the builder has: cut first where that saves. */
export function OwnedPart() {
  const words = useWords()
  const { say, named } = words
  const { plan, set } = usePlan()
  const put = (id: string, owned: Owned | undefined) => set({ [`trays.owned.${id}`]: owned })
  const lengthWay = fieldWay('owned.lengthM', words)
  return (
    <section className="stack">
      <h3>{say('stock.owned')}</h3>
      <p className="quiet">{say('stock.owned-why')}</p>
      {Object.entries(plan.trays.owned).map(([id, owned], index) => (
        <div key={id} className="stack">
          <div className="fields">
            <PickList
              name={say('stock.owned-item', { number: index + 1 })}
              value={isItemKey(owned.item) ? owned.item : 'rail'}
              options={OWNED_ITEMS.map((key) => ({ key, label: named(`item.${key}`) }))}
              onChange={(item) => {
                put(id, ownedOf(plan, item, owned))
              }}
            />
            <NumberField
              id={`trays.owned.${id}.lengthM`}
              name={say('stock.owned-length', { number: index + 1 })}
              value={owned.lengthM}
              way={lengthWay}
              onChange={(lengthM) => {
                put(id, { ...owned, lengthM })
              }}
            />
            {owned.widthM > 0 && (
              <NumberField
                id={`trays.owned.${id}.widthM`}
                name={say('stock.owned-width', { number: index + 1 })}
                value={owned.widthM}
                way={fieldWay('owned.widthM', words)}
                onChange={(widthM) => {
                  put(id, { ...owned, widthM })
                }}
              />
            )}
            <NumberField
              id={`trays.owned.${id}.count`}
              name={say('stock.owned-count', { number: index + 1 })}
              value={owned.count}
              way={fieldWay('owned.count', words)}
              onChange={(count) => {
                put(id, { ...owned, count })
              }}
            />
          </div>
          <Button
            label={say('stock.owned-forget', { number: index + 1 })}
            onPress={() => {
              put(id, undefined)
            }}
          >
            {say('offer.forget')}
          </Button>
        </div>
      ))}
      <Button
        icon="plus"
        onPress={() => {
          put(newKey(), ownedOf(plan, 'rail'))
        }}
      >
        {say('stock.owned-add')}
      </Button>
    </section>
  )
}
