import { useEffect, useRef, useState } from 'react'
import {
  rangingTotal,
  type Doubt,
  type DoubtKey,
  type TotalRange as Ranged,
} from '../../../../core/choosing/total-range.ts'
import type { Plan } from '../../../../core/plan/schema.ts'
import { Button } from '../../../parts/Button.tsx'
import { useWords } from '../../../words/use-words.tsx'
import type { Words } from '../../../words/words.ts'
import { usePlan } from '../../fields/plan-in-hand.ts'
import { sourceText } from '../../working/source-text.ts'

/** Between what the total lies, and which figures move it most: worked out when asked for, a piece at a time. */
export function TotalRange() {
  const { say, money } = useWords()
  const { plan } = usePlan()
  const [found, setFound] = useState<{ readonly of: Plan; readonly range: Ranged | null } | null>(null)
  const stop = useRef<() => void>(undefined)
  useEffect(() => () => stop.current?.(), [plan])
  const look = () => {
    setFound({ of: plan, range: null })
    stop.current = pieceByPiece(rangingTotal(plan), (range) => {
      setFound({ of: plan, range })
    })
  }
  const now = found?.of === plan ? found : null
  const range = now === null ? null : now.range
  return (
    <section className="stack">
      <h3>{say('range.title')}</h3>
      <p className="quiet">{say('range.why')}</p>
      {range === null && (
        <Button onPress={look} disabled={now !== null}>
          {say(now === null ? 'range.look' : 'range.looking')}
        </Button>
      )}
      <div role="status">
        {range !== null && (
          <p>
            <b>{say('range.between', { cheap: money(range.cheapMinor), dear: money(range.dearMinor) })}</b>
          </p>
        )}
      </div>
      {range !== null && <Doubts range={range} />}
    </section>
  )
}

/** Steps on while the page can still answer a tap between two steps; gives back what stops it. */
function pieceByPiece<T>(steps: Generator<undefined, T>, done: (value: T) => void): () => void {
  let timer = setTimeout(function step() {
    const next = steps.next()
    if (next.done === true) done(next.value)
    else timer = setTimeout(step)
  })
  return () => {
    clearTimeout(timer)
  }
}

function Doubts({ range: { cheapMinor, dearMinor, totalMinor, doubts } }: { readonly range: Ranged }) {
  const words = useWords()
  const span = Math.max(1, dearMinor - cheapMinor)
  const at = (minor: number) => `${String((100 * (minor - cheapMinor)) / span)}%`
  return (
    <ul className="range-rows">
      {doubts.map((doubt) => (
        <li key={doubt.key}>
          <b>{words.named(`range.${doubt.key}`)}</b>
          <span className="range-track" aria-hidden="true">
            <i style={{ left: at(doubt.cheapMinor), right: `calc(100% - ${at(doubt.dearMinor)})` }} />
            <u style={{ left: at(totalMinor) }} />
          </span>
          <span>
            {words.say('range.moves', { cheap: words.money(doubt.cheapMinor), dear: words.money(doubt.dearMinor) })}
          </span>
          <small>
            {endsText(doubt, words)} {sourceText(doubt.source)}
          </small>
        </li>
      ))}
    </ul>
  )
}

const PLAIN: ReadonlySet<DoubtKey> = new Set<DoubtKey>(['dry-factor'])

/** The two ends of a doubted figure: shares in per cent. */
function endsText({ key, low, high }: Doubt, { say, number, share }: Words): string {
  const text = (value: number) => (PLAIN.has(key) ? number(value, 2) : share(value))
  return say('range.ends', { low: text(low), high: text(high) })
}
