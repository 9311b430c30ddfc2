import { useEffect, useRef, useState } from 'react'
import type { WorkedOut } from '../../../../core/work-out.ts'
import { Button } from '../../../parts/Button.tsx'
import { searchWalls, type WallAsk, type WallNews } from '../../../state/wall-search.ts'
import { useWords } from '../../../words/use-words.tsx'
import { usePlan } from '../../fields/plan-in-hand.ts'

type Found = Extract<WallNews, { kind: 'laying' }>
type Search =
  | { readonly kind: 'idle' }
  | { readonly kind: 'running'; readonly best: Found | null }
  | { readonly kind: 'ended'; readonly best: Found | null }
  | { readonly kind: 'failed' }

/** How good the present arrangement is, and a longer search for a better one, beside the page and stopped at any time. */
export function WallSearch({ worked }: { readonly worked: WorkedOut }) {
  const { say } = useWords()
  const { plan, set } = usePlan()
  const [search, setSearch] = useState<Search>({ kind: 'idle' })
  const stop = useRef<(() => void) | null>(null)
  useEffect(() => () => stop.current?.(), [])
  const { counts, trace } = worked.layout
  const isSearched = plan.walls.laying !== null && trace.choices.thorough
  const isBetter = (found: Found) =>
    found.breaches < trace.breaches ||
    (found.breaches === trace.breaches && (found.bought < counts.bought || found.cutPieces < counts.cutPieces))
  const start = (ask: WallAsk) => {
    setSearch({ kind: 'running', best: null })
    stop.current = searchWalls(plan, ask, (news) => {
      setSearch((now) => {
        const best = now.kind === 'running' || now.kind === 'ended' ? now.best : null
        if (news === null) return { kind: 'failed' }
        if (news.kind === 'laying') return { kind: 'running', best: news }
        return { kind: 'ended', best }
      })
    })
  }
  const found = search.kind === 'ended' && search.best !== null && isBetter(search.best) ? search.best : null
  return (
    <section className="stack">
      <h3>{say('walls.search')}</h3>
      <p>{say('walls.search-now', { bought: counts.bought, cuts: counts.cutPieces, bound: counts.lowerBound })}</p>
      {counts.savedByPairing > 0 && <p>{say('walls.search-saved', { count: counts.savedByPairing })}</p>}
      <p className="quiet">{say('walls.search-order')}</p>
      {isSearched && <p>{say('walls.search-is')}</p>}
      {search.kind === 'running' ? (
        <div className="work">
          <p role="status">
            {say('walls.searching', {
              bought: search.best?.bought ?? counts.bought,
              cuts: search.best?.cutPieces ?? counts.cutPieces,
            })}
          </p>
          <progress value={search.best?.done ?? 0} max={Math.max(1, search.best?.of ?? 1)} />
          <Button
            onPress={() => {
              stop.current?.()
              setSearch({ kind: 'ended', best: search.best })
            }}
          >
            {say('walls.search-stop')}
          </Button>
        </div>
      ) : (
        <div className="choices">
          <Button
            onPress={() => {
              start('units')
            }}
          >
            {say('walls.search-units')}
          </Button>
          <Button
            onPress={() => {
              start('cuts')
            }}
          >
            {say('walls.search-cuts')}
          </Button>
          {isSearched && <Button onPress={() => set({ 'walls.laying': null })}>{say('walls.search-quick')}</Button>}
        </div>
      )}
      <div role="status">
        {search.kind === 'failed' && <p>{say('walls.search-failed')}</p>}
        {search.kind === 'ended' && found === null && <p>{say('walls.search-none')}</p>}
        {found !== null && (
          <>
            <p>{say('walls.search-found', { bought: found.bought, cuts: found.cutPieces })}</p>
            <Button
              tone="solid"
              onPress={() => {
                set({ 'walls.laying': found.laying })
                setSearch({ kind: 'idle' })
              }}
            >
              {say('walls.search-use')}
            </Button>
          </>
        )}
      </div>
    </section>
  )
}
