import { useEffect, useState } from 'react'
import type { WorkedOut } from '../../../core/work-out.ts'
import { useWords } from '../../words/use-words.tsx'

/** Figures that run while a button is held are said once, when they rest. */
const REST_MS = 900

/** Says the total when it has changed, for whoever hears the screen. */
export function TotalAloud({ costs }: { readonly costs: WorkedOut['costs'] }) {
  const { say, money } = useWords()
  const text = say(costs.unpriced.length === 0 ? 'plan.total-now' : 'plan.total-now-priced', {
    money: money(costs.total.value),
  })
  const [said, setSaid] = useState(text)
  useEffect(() => {
    const timer = setTimeout(() => {
      setSaid(text)
    }, REST_MS)
    return () => {
      clearTimeout(timer)
    }
  }, [text])
  return (
    <p className="hide" role="status">
      {said}
    </p>
  )
}
