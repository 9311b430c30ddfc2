import { productAt } from '../../../../core/fish/drying.ts'
import { FISH_DATA, type FishProduct } from '../../../../core/fish/fish-data.ts'
import { Picks } from '../../../parts/Picks.tsx'
import { useWords } from '../../../words/use-words.tsx'
import type { Words } from '../../../words/words.ts'
import { PlanField } from '../../fields/PlanField.tsx'
import { usePlan } from '../../fields/plan-in-hand.ts'

const DAYS_A_MONTH = 30

function keepsText({ keepsDays }: FishProduct, { say, number }: Words): string {
  if (keepsDays === null) return say('catch.keeps-unknown')
  if (keepsDays.to < DAYS_A_MONTH) return say('catch.keeps-days', { to: number(keepsDays.to) })
  return say('catch.keeps-months', {
    from: number(keepsDays.from / DAYS_A_MONTH),
    to: number(keepsDays.to / DAYS_A_MONTH),
  })
}

/** How dry the fish is to become: its kind by name, or the water left as a number; the hours follow where they do not fit it. */
export function ProductPicks() {
  const words = useWords()
  const { say, named, number } = words
  const { plan, set } = usePlan()
  const { catch: fish, firing } = plan
  const kind = productAt(fish.moistureFinal)
  const choose = (key: FishProduct['key']) => {
    const product = FISH_DATA.products.find((one) => one.key === key)
    if (product === undefined) return
    const { from, to } = product.hours
    const hours = Math.min(Math.max(firing.cookHours + firing.dryHours, from), to)
    set({
      'catch.moistureFinal': product.moisture,
      'firing.dryHours': Math.max(0, hours - firing.cookHours),
    })
  }
  return (
    <>
      <Picks
        name={say('catch.product')}
        choices={FISH_DATA.products.map((product) => ({
          key: product.key,
          title: named(`catch.product.${product.key}`),
          detail: say('catch.product-detail', {
            from: product.moistureFrom,
            to: product.moistureTo,
            hours: `${number(product.hours.from)}–${number(product.hours.to)}`,
            keeps: keepsText(product, words),
          }),
        }))}
        chosen={kind.key}
        onChoose={choose}
      />
      <p className="quiet">{say('catch.product-why')}</p>
      <PlanField
        at="catch.moistureFinal"
        refuse={(left) =>
          left < fish.moistureFresh ? null : say('catch.no-drier', { moisture: words.share(fish.moistureFresh) })
        }
      />
    </>
  )
}
