import { useMemo } from 'react'
import { compareFillings } from '../../core/heat/compare-fillings.ts'
import type { Plan } from '../../core/plan/schema.ts'
import { useWords } from '../words/use-words.tsx'
import { Bars } from './Bars.tsx'

/** Wood that the walls take in one firing after another, filled in each way; the plan's own filling is solid. */
export function FillingBars({ plan }: { readonly plan: Plan }) {
  const { named, mass } = useWords()
  const rows = useMemo(
    () =>
      compareFillings(plan).map(({ filling, current, repeated }) => ({
        key: filling,
        name: named(`drawing.filling.${filling}`),
        text: mass(repeated.wood.value),
        parts: [{ value: repeated.wood.value, fill: current ? ('solid' as const) : ('hatched' as const) }],
      })),
    [plan, named, mass],
  )
  return (
    <div>
      <p className="course-text">{named('drawing.filling-bars')}</p>
      <Bars rows={rows} label={named('drawing.filling-bars')} />
    </div>
  )
}
