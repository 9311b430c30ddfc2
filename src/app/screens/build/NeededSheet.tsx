import { useMemo } from 'react'
import { besideTheWall } from '../../../core/schedule/beside-the-wall.ts'
import { shareToLay, stillNeeded } from '../../../core/schedule/still-needed.ts'
import { Sheet } from '../../parts/Sheet.tsx'
import { useWords } from '../../words/use-words.tsx'
import { Worked } from '../working/Worked.tsx'
import { BrokenUnits } from './BrokenUnits.tsx'
import { besideText } from './pieces-text.ts'
import type { SiteSheetProps } from './site-sheet-props.ts'

/** What the work that is left still takes, and what to carry to the wall today. */
export function NeededSheet({ worked, onClose }: SiteSheetProps) {
  const words = useWords()
  const { say, named, share } = words
  const { plan, layout, schedule, needs } = worked
  const rows = useMemo(() => stillNeeded(plan, layout, schedule.steps, needs), [plan, layout, schedule, needs])
  const today = useMemo(() => besideTheWall(plan, layout, schedule), [plan, layout, schedule])
  const toLay = shareToLay(plan, layout, schedule.steps).value
  return (
    <Sheet title={say('build.open.needed')} closeLabel={say('app.close')} onClose={onClose} height="full">
      <p>{say('build.laid-share', { share: share(1 - toLay) })}</p>
      {today.courses.length > 0 && (
        <section className="stack">
          <h2>{say('build.beside')}</h2>
          <p className="site-text">{besideText(today, words)}</p>
        </section>
      )}
      <h2>{say('build.still')}</h2>
      <ul>
        {rows.map(({ item, left, all }) => (
          <li key={item} className="still-row">
            <b>{named(`item.${item}`)}</b>
            <Worked of={left} label={named(`item.${item}`)} />
            <span className="quiet">{say('build.of-all', { all: words.inLine(all.value, all.unit) })}</span>
          </li>
        ))}
      </ul>
      <p className="quiet">{say('build.still-how')}</p>
      <BrokenUnits worked={worked} />
    </Sheet>
  )
}
