import type { Design } from '../../../core/choosing/within-our-money.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { FrontierChart, MarkPath } from '../../drawings/FrontierChart.tsx'
import { DrawingFrame } from '../../parts/DrawingFrame.tsx'
import { currencySign } from '../../words/money.ts'
import { useWords } from '../../words/use-words.tsx'
import { designKey } from './design-text.ts'
import { MARKS } from './marks.ts'

/** Large amounts go by the thousand or the million, so that the scale stays readable. */
const scaleName = (most: number): { readonly by: number; readonly name: 'one' | 'thousand' | 'million' } =>
  most >= 2e6 ? { by: 1e6, name: 'million' } : most >= 1e4 ? { by: 1e3, name: 'thousand' } : { by: 1, name: 'one' }

/** Money against daily fish of the kilns worth choosing, with the kiln as it is planned now. */
export function MoneyChart({
  frontier,
  worked,
  budgetMinor,
}: {
  readonly frontier: readonly Design[]
  readonly worked: WorkedOut
  readonly budgetMinor: number
}) {
  const { say, named, number, mass, money, figure, show } = useWords()
  const [cheapest] = frontier
  const largest = frontier.at(-1)
  if (cheapest === undefined || largest === undefined) return null
  const { costs, fish, plan } = worked
  const major = 10 ** show.currency.digits
  const isPriced = costs.unpriced.length === 0
  const scale = scaleName(Math.max(largest.totalMinor, isPriced ? costs.total.value : 0) / major)
  const families = [...new Set(frontier.map(({ walls }) => walls.unit.family))]
  const kgShown = (massKg: number) => figure(massKg, 'kg').figure
  return (
    <section className="stack">
      <h3>{say('within.chart')}</h3>
      <DrawingFrame>
        <FrontierChart
          points={frontier.map((one) => ({
            key: designKey(one),
            x: one.freshKgPerDay,
            y: one.totalMinor / major,
            mark: MARKS[one.walls.unit.family],
          }))}
          now={isPriced ? { x: fish.freshPerDay.value, y: costs.total.value / major, name: say('within.now') } : null}
          limit={{ value: budgetMinor / major, name: say('within.budget') }}
          need={{ value: plan.catch.freshKgPerDay, name: say('within.catch') }}
          x={{ name: say('within.axis.fish', { unit: figure(1, 'kg').unit }), text: kgShown }}
          y={{
            name: say(`within.axis.${scale.name}`, { sign: currencySign(show.currency) }),
            text: (value) => number(value / scale.by),
          }}
          label={say('within.chart-told', {
            count: frontier.length,
            least: money(cheapest.totalMinor),
            leastFish: mass(cheapest.freshKgPerDay),
            most: money(largest.totalMinor),
            mostFish: mass(largest.freshKgPerDay),
          })}
        />
      </DrawingFrame>
      <ul className="within-key">
        {families.map((family) => (
          <li key={family}>
            <svg className="ink" viewBox="-8 -8 16 16" aria-hidden="true" focusable="false">
              <MarkPath mark={MARKS[family]} />
            </svg>
            {named(`family.${family}`)}
          </li>
        ))}
      </ul>
    </section>
  )
}
