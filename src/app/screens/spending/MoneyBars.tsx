import type { Derived } from '../../../core/basics/derived.ts'
import { useWords } from '../../words/use-words.tsx'
import { Worked } from '../working/Worked.tsx'

type Look = 'full' | 'hatched' | 'dotted' | 'open'

export interface Share {
  readonly key: string
  readonly name: string
  readonly look: Look
  readonly of: Derived<'money'>
}

/** Money as bars of parts on one scale, told apart by their fill; below, every part with its figure. */
export function MoneyBars({
  bars,
}: {
  readonly bars: readonly { readonly name: string; readonly parts: readonly Share[] }[]
}) {
  const { money } = useWords()
  const length = (parts: readonly Share[]) => parts.reduce((sum, { of }) => sum + Math.max(0, of.value), 0)
  const longest = Math.max(1, ...bars.map(({ parts }) => length(parts)))
  return (
    <div className="money-bars">
      {bars.map(({ name, parts }) => {
        const shown = parts.filter(({ of }) => of.value > 0)
        const said = shown.map((part) => `${part.name} ${money(part.of.value)}`).join(', ')
        return (
          <div key={name}>
            <p>
              <b>{name}</b>
            </p>
            <svg className="money-bar" role="img" aria-label={`${name}: ${said}`} focusable="false">
              {shown.map((part, index) => (
                <rect
                  key={part.key}
                  className={part.look}
                  x={percent(length(shown.slice(0, index)), longest)}
                  y="2"
                  width={percent(part.of.value, longest)}
                  height="28"
                />
              ))}
            </svg>
            <ul className="money-key">
              {shown.map((part) => (
                <li key={part.key}>
                  <svg viewBox="0 0 22 16" aria-hidden="true" focusable="false">
                    <rect className={part.look} x="1" y="1" width="20" height="14" />
                  </svg>
                  <span>{part.name}</span>
                  <Worked of={part.of} label={part.name} />
                </li>
              ))}
            </ul>
          </div>
        )
      })}
    </div>
  )
}

const percent = (part: number, whole: number): string => `${String((100 * part) / whole)}%`
