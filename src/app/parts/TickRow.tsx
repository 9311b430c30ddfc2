import type { ReactNode } from 'react'
import { Icon } from './Icon.tsx'
import './rows.css'

/** Something chosen or not: the whole row ticks it. */
export function TickRow({
  isOn,
  onTick,
  children,
}: {
  readonly isOn: boolean
  readonly onTick: (isOn: boolean) => void
  readonly children: ReactNode
}) {
  return (
    <button
      type="button"
      className="tick-row"
      aria-pressed={isOn}
      onClick={() => {
        onTick(!isOn)
      }}
    >
      <span className={isOn ? 'box done' : 'box'}>{isOn && <Icon name="tick" />}</span>
      <span>{children}</span>
    </button>
  )
}
