import { usualSpace, type Breadth } from '../../core/choosing/usual-space.ts'
import { withinOurMoney, type DesignLimits, type SearchState } from '../../core/choosing/within-our-money.ts'
import type { Plan } from '../../core/plan/schema.ts'

export interface MoneyAsk {
  readonly kind: 'money'
  readonly plan: Plan
  readonly limits: DesignLimits
  readonly breadth: Breadth
}

/** What the search tells as it goes: where it stands, and at the end where it came to. */
export interface MoneyNews {
  readonly kind: 'state' | 'end'
  readonly state: SearchState
}

/** Between two news, ms: as quick as one can follow, and no more to hand over than that. */
const PAUSE_MS = 120

/** Every design worth looking at against the money there is; runs wherever it is stepped. */
export function* moneySearch({ plan, limits, breadth }: Omit<MoneyAsk, 'kind'>): Generator<MoneyNews, void> {
  const search = withinOurMoney(plan, usualSpace(plan, breadth), limits)
  let toldMs = -Infinity
  let hasFound = false
  for (let next = search.next(); ; next = search.next()) {
    if (next.done === true) {
      yield { kind: 'end', state: next.value }
      return
    }
    // The first that fits is told at once: it is what one waits for.
    const isFirst: boolean = !hasFound && next.value.cheapest !== null
    if (!isFirst && performance.now() - toldMs < PAUSE_MS) continue
    hasFound ||= isFirst
    yield { kind: 'state', state: next.value }
    toldMs = performance.now()
  }
}
