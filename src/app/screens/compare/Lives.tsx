import { LifeBar, LifeYears } from '../../drawings/LifeChart.tsx'
import { Patterns } from '../../drawings/Patterns.tsx'
import { useWords } from '../../words/use-words.tsx'
import { sourceText } from '../working/source-text.ts'
import type { CompareRow } from './rows.ts'

/** How long walls of each kind are said to last: what each source says, one under the other, also where they disagree. */
export function Lives({ rows }: { readonly rows: readonly CompareRow[] }) {
  const { say, named } = useWords()
  return (
    <>
      <Patterns />
      <LifeYears text={(years) => (years === 0 ? '0' : say('compare.years', { count: years }))} />
      <ul>
        {rows.map(({ unit, lives }) => (
          <li key={unit.key} className="life">
            <b>{named(`family.${unit.family}`)}</b>
            {lives.map(({ says, source, fromYears, toYears, likeness }) => (
              <div key={says}>
                {fromYears !== null && <LifeBar life={{ fromYears, toYears, likeness }} />}
                <p>
                  {named(`life.${says}`)}. <span className="quiet">{sourceText(source)}</span>
                </p>
              </div>
            ))}
            {lives.length > 1 && <p>{say('compare.disagree')}</p>}
          </li>
        ))}
      </ul>
      <p className="quiet">{say('compare.lives-key')}</p>
    </>
  )
}
