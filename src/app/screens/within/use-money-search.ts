import { useEffect, useRef, useState } from 'react'
import type { Breadth } from '../../../core/choosing/usual-space.ts'
import type { DesignLimits, SearchState } from '../../../core/choosing/within-our-money.ts'
import type { Plan } from '../../../core/plan/schema.ts'
import { searchWithinMoney } from '../../state/money-search.ts'

export interface MoneySearch {
  readonly phase: 'running' | 'ended' | 'stopped' | 'failed'
  readonly state: SearchState | null
}

/** Looks from the moment it is on the screen until it has seen every kiln, is stopped or leaves the screen. */
export function useMoneySearch(
  plan: Plan,
  { budgetMinor, mostDays, mostBoughtInMinor }: DesignLimits,
  breadth: Breadth,
): MoneySearch & { readonly stop: () => void } {
  const [search, setSearch] = useState<MoneySearch>({ phase: 'running', state: null })
  const end = useRef<(() => void) | null>(null)
  useEffect(() => {
    const stop = searchWithinMoney({ plan, limits: { budgetMinor, mostDays, mostBoughtInMinor }, breadth }, (news) => {
      setSearch((now) => {
        if (news === null) return { phase: 'failed', state: now.state }
        return { phase: news.kind === 'end' ? 'ended' : 'running', state: news.state }
      })
    })
    end.current = stop
    return stop
  }, [plan, budgetMinor, mostDays, mostBoughtInMinor, breadth])
  return {
    ...search,
    stop: () => {
      end.current?.()
      setSearch((now) => ({ ...now, phase: 'stopped' }))
    },
  }
}
