import type { ReactNode } from 'react'
import './finding.css'

export type FindingLevel = 'problem' | 'caution' | 'good'

/** The mark of a finding: solid square, outlined triangle or circle, with its number. */
function FindingMark({ level, number }: { readonly level: FindingLevel; readonly number: number }) {
  return (
    <svg className="find-mark" viewBox="0 0 30 30" aria-hidden="true" focusable="false">
      {level === 'problem' && <rect className="problem" x="5" y="6" width="20" height="20" />}
      {level === 'caution' && <path className="caution" d="M15 3l13 23H2z" />}
      {level === 'good' && <circle className="good" cx="15" cy="16" r="10" />}
      <text x="15" y={level === 'caution' ? 23 : 21}>
        {number}
      </text>
    </svg>
  )
}

/** One line that says what is wrong, by how much, and offers the change that mends it as a button. */
export function FindingLine({
  level,
  number,
  word,
  children,
  ways,
}: {
  readonly level: FindingLevel
  readonly number: number
  readonly word: string
  readonly children: ReactNode
  readonly ways?: ReactNode
}) {
  return (
    <li className={`find ${level}`}>
      <FindingMark level={level} number={number} />
      <p>
        <span className="word">{word}</span> {children}
      </p>
      {ways && <div className="ways">{ways}</div>}
    </li>
  )
}
