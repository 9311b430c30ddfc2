import { useEffect, useMemo, useRef, useState } from 'react'
import { workOut } from '../../../../core/work-out.ts'
import { Button } from '../../../parts/Button.tsx'
import { searchWalls, type WallNews } from '../../../state/wall-search.ts'
import { useWords } from '../../../words/use-words.tsx'
import { usePlan } from '../../fields/plan-in-hand.ts'

type Sizes = Extract<WallNews, { kind: 'sizes' }>['sizes']

const MOST_SIZES = 6

/** Clear sides close by that need fewer cuts or break fewer rules, with what each takes; one tap takes one. */
export function NearSizes() {
  const { say, length, inLine, money } = useWords()
  const { plan, set } = usePlan()
  const [sizes, setSizes] = useState<Sizes | 'looking' | 'failed' | null>(null)
  const stop = useRef<(() => void) | null>(null)
  useEffect(() => () => stop.current?.(), [])
  const look = () => {
    setSizes('looking')
    stop.current = searchWalls(plan, 'sizes', (news) => {
      if (news === null) setSizes('failed')
      else if (news.kind === 'sizes') setSizes(news.sizes)
    })
  }
  const listed = useMemo(
    () =>
      (Array.isArray(sizes) ? (sizes as Sizes) : []).slice(0, MOST_SIZES).map((size) => {
        const { costs } = workOut({ ...plan, chambers: { ...plan.chambers, clearSideM: size.clearSideM } })
        return { ...size, costMinor: costs.total.value }
      }),
    [sizes, plan],
  )
  const areaOf = (clearSideM: number) => inLine((clearSideM + 2 * plan.trays.setbackM) ** 2, 'm2')
  return (
    <section className="stack">
      <h3>{say('walls.near')}</h3>
      <Button onPress={look} disabled={sizes === 'looking'}>
        {say(sizes === 'looking' ? 'walls.near-looking' : 'walls.near-look')}
      </Button>
      <div role="status">
        {sizes === 'failed' && <p>{say('walls.search-failed')}</p>}
        {Array.isArray(sizes) && sizes.length === 0 && <p>{say('walls.near-none')}</p>}
      </div>
      {listed.length > 0 && (
        <ul className="stack">
          {listed.map(({ clearSideM, bought, cutPieces, breaches, costMinor }) => (
            <li key={clearSideM}>
              <Button
                shape="big"
                onPress={() => {
                  set({ 'chambers.clearSideM': clearSideM })
                  setSizes(null)
                }}
              >
                {say('walls.near-line', { side: length(clearSideM) })}
              </Button>
              <p className="quiet">
                {say(breaches === 0 ? 'walls.near-clean' : 'walls.near-why', {
                  bought,
                  cuts: cutPieces,
                  area: areaOf(clearSideM),
                  cost: money(costMinor),
                })}
              </p>
            </li>
          ))}
        </ul>
      )}
    </section>
  )
}
