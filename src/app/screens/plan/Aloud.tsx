import { useEffect, useState } from 'react'
import type { Finding } from '../../../core/basics/finding.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { useWords } from '../../words/use-words.tsx'

/** Figures that run while a button is held are said once, when they rest. */
const REST_MS = 900

/** The text as it was when it last rested. */
function useRested(text: string): string {
  const [rested, setRested] = useState(text)
  useEffect(() => {
    const timer = setTimeout(() => {
      setRested(text)
    }, REST_MS)
    return () => {
      clearTimeout(timer)
    }
  }, [text])
  return rested
}

/** Says the total when it has changed, for whoever hears the screen. */
export function TotalAloud({ costs }: { readonly costs: WorkedOut['costs'] }) {
  const { say, money } = useWords()
  const key = costs.unpriced.length === 0 ? 'plan.total-now' : 'plan.total-now-priced'
  return (
    <p className="hide" role="status">
      {useRested(say(key, { money: money(costs.total.value) }))}
    </p>
  )
}

/** Says what has come to be wrong since the screen opened or last spoke, and when nothing is any more. */
export function FindingsAloud({ findings }: { readonly findings: readonly Finding[] }) {
  const words = useWords()
  const texts = findings.flatMap((one) =>
    one.level === 'good' ? [] : [`${words.say(`finding.word.${one.level}`)} ${words.finding(one)}`],
  )
  const now = useRested([...new Set(texts)].join('\n'))
  const [before, setBefore] = useState(now)
  const [said, setSaid] = useState('')
  if (now !== before) {
    const known = before.split('\n')
    const fresh = now.split('\n').filter((text) => !known.includes(text))
    setBefore(now)
    setSaid(now === '' ? words.say('plan.no-findings') : fresh.join(' '))
  }
  return (
    <p className="hide" role="status">
      {said}
    </p>
  )
}
