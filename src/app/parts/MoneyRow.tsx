import type { ReactNode } from 'react'
import './rows.css'

/** A name, dots, and an amount at the right edge; the total stands between a rule and a double rule. */
export function MoneyRow({
  name,
  children,
  isTotal = false,
}: {
  readonly name: ReactNode
  readonly children: ReactNode
  readonly isTotal?: boolean
}) {
  return (
    <div className={isTotal ? 'lead total' : 'lead'}>
      <span>{name}</span>
      <b>{children}</b>
    </div>
  )
}
