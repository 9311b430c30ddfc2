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
      <h3>{title}</h3>
      <p className="quiet">{children}</p>
    </div>
  )
}
