import { useMemo, useState } from 'react'
import { unpricedUnits, usualSpace, type Breadth } from '../../../core/choosing/usual-space.ts'
import { designPlan, type Design } from '../../../core/choosing/within-our-money.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { LinkButton } from '../../parts/Button.tsx'
import { Segments } from '../../parts/Picks.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { undo } from '../../state/actions.ts'
import { notify } from '../../state/notices.ts'
import { readNumber } from '../../words/read-number.ts'
import { useWords } from '../../words/use-words.tsx'
import type { FieldWay } from '../fields/field-way.ts'
import { MoneyField } from '../fields/MoneyField.tsx'
import { OpenNumberField } from '../fields/OpenNumberField.tsx'
import { usePlan } from '../fields/plan-in-hand.ts'
import type { PlanRoute } from '../PlanHere.tsx'
import { cardHref, placeHref } from '../route.ts'
import { useCloseCard } from '../use-close-card.ts'
import { unitText } from './design-text.ts'
import { Found } from './Found.tsx'
import './within.css'

const DAYS = { min: 1, max: 1000, unit: 'day', step: 1 } as const

/** What the group's money can build for its catch: the cheapest that fits, and what more money or fewer fish would change. */
export function WithinSheet({ route, worked }: { readonly route: PlanRoute; readonly worked: WorkedOut }) {
  const words = useWords()
  const { say, mass, money, figure } = words
  const { plan, set, edit } = usePlan()
  const close = useCloseCard(placeHref(route.id, route.place))
  const [mostDays, setMostDays] = useState<number | null>(null)
  const [mostBoughtInMinor, setMostBoughtIn] = useState<number | null>(null)
  const [breadth, setBreadth] = useState<Breadth>('usual')
  const [turn, setTurn] = useState(0)
  const { budgetMinor } = plan.money
  const hasWalls = useMemo(() => usualSpace(plan).shells.length > 0, [plan])
  const unpriced = useMemo(() => unpricedUnits(plan), [plan])
  const days: FieldWay = {
    limit: DAYS,
    step: 1,
    show: (value) => figure(value, 'day'),
    read: readNumber,
    keyboard: 'numeric',
  }
  const take = (design: Design) => {
    if (!edit((now) => designPlan(now, design))) return
    close()
    notify({ key: 'within.taken', args: { money: money(design.totalMinor) }, undo })
  }
  return (
    <Sheet title={say('within.title')} closeLabel={say('app.close')} onClose={close} height="full">
      <p className="quiet">{say('within.why', { mass: mass(plan.catch.freshKgPerDay) })}</p>
      <MoneyField
        id="money.budgetMinor"
        name={say('field.money.budgetMinor')}
        minor={budgetMinor}
        onChange={(minor) => set({ 'money.budgetMinor': minor })}
      />
      <details className="work-step">
        <summary>
          <b>{say('within.more')}</b>
        </summary>
        <div className="stack">
          <div className="within-limits">
            <OpenNumberField
              name={say('within.most-days')}
              value={mostDays}
              way={days}
              onChange={setMostDays}
              help={say('within.most-days-why')}
            />
            <MoneyField
              name={say('within.most-bought')}
              minor={mostBoughtInMinor}
              onChange={setMostBoughtIn}
              help={say('within.most-bought-why')}
            />
          </div>
          <Segments
            name={say('within.breadth')}
            isNameShown
            choices={[
              { key: 'usual', label: say('within.breadth.usual') },
              { key: 'every', label: say('within.breadth.every') },
            ]}
            chosen={breadth}
            onChoose={setBreadth}
          />
        </div>
      </details>
      {!hasWalls && (
        <>
          <p>{say('within.no-walls')}</p>
          <LinkButton href={cardHref(route.id, 'buy', 'item:wall-unit')}>{say('within.to-prices')}</LinkButton>
        </>
      )}
      {hasWalls && budgetMinor === null && <p>{say('within.no-budget')}</p>}
      {hasWalls && budgetMinor !== null && (
        <Found
          key={[turn, budgetMinor, mostDays, mostBoughtInMinor, breadth].join(' ')}
          worked={worked}
          limits={{ budgetMinor, mostDays, mostBoughtInMinor }}
          breadth={breadth}
          onTake={take}
          onAgain={() => {
            setTurn(turn + 1)
          }}
        />
      )}
      {hasWalls && unpriced.length > 0 && (
        <>
          <p className="quiet">
            {say('within.unpriced', {
              units: unpriced.map((unit) => unitText(unit, words)).join('; '),
            })}
          </p>
          <LinkButton href={cardHref(route.id, 'buy', 'item:wall-unit')}>{say('within.to-prices')}</LinkButton>
        </>
      )}
    </Sheet>
  )
}
