import type { ReactNode } from 'react'
import { Icon } from './Icon.tsx'
import './rows.css'

/** A decision and its present answer on one line; the whole line opens it. */
export function DecisionLine({
  name,
  answer,
  picture,
  href,
}: {
  readonly name: string
  readonly answer: string
  readonly picture?: ReactNode
  readonly href: string
}) {
  return (
    <a className="dec" href={href}>
      <span className="pic" aria-hidden="true">
        {picture}
      </span>
      <span>
        <small>{name}</small>
        <b>{answer}</b>
      </span>
      <Icon name="next" />
    </a>
  )
}
