import { useState } from 'react'
import { priceSwings, type PriceSwing } from '../../../../core/costs/price-swings.ts'
import type { Plan } from '../../../../core/plan/schema.ts'
import type { WorkedOut } from '../../../../core/work-out.ts'
import { Bars } from '../../../parts/Bars.tsx'
import { Button } from '../../../parts/Button.tsx'
import { useWords } from '../../../words/use-words.tsx'

const MOST_SHOWN = 10

/** What matters most: how far the total moves when all prices of one thing fall or rise by a fifth, the longest bar first. */
export function PriceSwings({ worked }: { readonly worked: WorkedOut }) {
  const { say, named, money } = useWords()
  const [found, setFound] = useState<{ readonly of: Plan; readonly swings: readonly PriceSwing[] } | null>(null)
  const { plan, needs, costs } = worked
  const swings = found?.of === plan ? found.swings : null
  const longest = swings?.[0]?.spanMinor ?? 0
  return (
    <section className="stack">
      <h3>{say('swings.title')}</h3>
      <p className="quiet">{say('swings.why')}</p>
      {swings === null ? (
        <Button
          onPress={() => {
            setFound({ of: plan, swings: priceSwings(plan, needs) })
          }}
        >
          {say('swings.look')}
        </Button>
      ) : (
        <>
          <p role="status">{say('swings.total', { money: money(costs.total.value), count: swings.length })}</p>
          <Bars
            bars={swings.slice(0, MOST_SHOWN).map(({ item, lowMinor, highMinor, spanMinor }) => ({
              key: item,
              name: named(`item.${item}`),
              share: longest > 0 ? spanMinor / longest : null,
              isOn: spanMinor === longest,
              figure: <span>{say('swings.moves', { low: money(lowMinor), high: money(highMinor) })}</span>,
            }))}
          />
          {costs.unpriced.length > 0 && <p>{say('swings.unpriced', { count: costs.unpriced.length })}</p>}
        </>
      )}
    </section>
  )
}
