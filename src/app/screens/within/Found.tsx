import type { Breadth } from '../../../core/choosing/usual-space.ts'
import type { Design, DesignLimits, SearchState } from '../../../core/choosing/within-our-money.ts'
import { CATALOGUE_UNITS } from '../../../core/plan/catalogue.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { Button, LinkButton } from '../../parts/Button.tsx'
import { Course } from '../../parts/Course.tsx'
import { useWords } from '../../words/use-words.tsx'
import { usePlan } from '../fields/plan-in-hand.ts'
import { unitText } from './design-text.ts'
import { Designs } from './Designs.tsx'
import { MoneyChart } from './MoneyChart.tsx'
import { useMoneySearch } from './use-money-search.ts'
import { cardHref } from '../route.ts'

const BLOCKS = 14

/** The search as it goes, and what it has found so far. */
export function Found({
  worked,
  limits,
  breadth,
  onTake,
  onAgain,
}: {
  readonly worked: WorkedOut
  readonly limits: DesignLimits
  readonly breadth: Breadth
  readonly onTake: (design: Design) => void
  readonly onAgain: () => void
}) {
  const words = useWords()
  const { say } = words
  const { plan } = usePlan()
  const { phase, state, stop } = useMoneySearch(plan, limits, breadth)
  const done = state?.done ?? 0
  const of = state?.of ?? 0
  const frontier = state?.frontier ?? []
  return (
    <>
      {phase === 'running' && (
        <div className="work within-work">
          <p>{say('within.looking', { done, of })}</p>
          <Course
            of={BLOCKS}
            laid={of === 0 ? 0 : Math.floor((done / of) * BLOCKS)}
            inHand
            label={say('within.looking', { done, of })}
          />
          <Button onPress={stop}>{say('within.stop')}</Button>
        </div>
      )}
      <div role="status">
        {phase === 'failed' && <p>{say('within.failed')}</p>}
        {phase === 'stopped' && <p>{say('within.stopped', { done, of })}</p>}
        {phase === 'ended' && state !== null && (
          <p>{say('within.ended', { fit: frontier.length, complete: state.complete })}</p>
        )}
      </div>
      {phase === 'stopped' && <Button onPress={onAgain}>{say('within.again')}</Button>}
      {phase === 'ended' && state?.cheapest === null && (
        <NoneFits state={state} limits={limits} planId={worked.plan.id} />
      )}
      {frontier.length > 0 && (
        <>
          <MoneyChart frontier={frontier} worked={worked} budgetMinor={limits.budgetMinor} />
          <Designs frontier={frontier} plan={plan} budgetMinor={limits.budgetMinor} onTake={onTake} />
        </>
      )}
      {state !== null && state.unpriced.length > 0 && (
        <p>
          {say('within.part-priced', {
            units: CATALOGUE_UNITS.filter(({ key }) => state.unpriced.includes(key))
              .map((unit) => unitText(unit, words))
              .join('; '),
          })}
        </p>
      )}
      {state !== null && state.unsound > 0 && phase !== 'running' && (
        <p className="quiet">{say('within.unsound', { count: state.unsound })}</p>
      )}
    </>
  )
}

/** Why nothing fits, and by how much. */
function NoneFits({
  state,
  limits,
  planId,
}: {
  readonly state: SearchState
  readonly limits: DesignLimits
  readonly planId: string
}) {
  const { say, money } = useWords()
  const { cheapestAtAll: least } = state
  const ways = (
    <div className="course-row">
      {(['catch', 'walls'] as const).map((card) => (
        <LinkButton key={card} href={cardHref(planId, 'plan', card)}>
          {say(`card.${card}`)}
        </LinkButton>
      ))}
    </div>
  )
  if (least === null)
    return (
      <>
        <p>{say('within.no-sound')}</p>
        {ways}
      </>
    )
  const short = least.totalMinor - limits.budgetMinor
  return (
    <>
      <p>
        <b>{say('within.none')}</b>
      </p>
      <p>
        {short > 0
          ? say('within.short', { money: money(least.totalMinor), short: money(short) })
          : say('within.tight', {
              money: money(least.totalMinor),
              days: least.days,
              bought: money(least.boughtInMinor),
            })}
      </p>
      {ways}
    </>
  )
}
