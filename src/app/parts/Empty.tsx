import type { ReactNode } from 'react'
import './rows.css'

/** Nothing here yet, and what will bring something. */
export function Empty({
  title,
  picture,
  children,
}: {
  readonly title: string
  readonly picture?: ReactNode
  readonly children: ReactNode
}) {
  return (
    <div className="empty">
      {picture}
      <h2>{title}</h2>
      <p className="quiet">{children}</p>
    </div>
  )
}
