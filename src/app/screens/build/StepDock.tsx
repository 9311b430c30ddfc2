import type { ReactNode } from 'react'
import { Icon } from '../../parts/Icon.tsx'

/** The row under the thumb: one step back, the thing to do now, one step on. */
export function StepDock({
  at,
  of,
  less,
  more,
  onStep,
  children,
}: {
  /** Which step is shown, from 0, of how many. */
  readonly at: number
  readonly of: number
  readonly less: string
  readonly more: string
  readonly onStep: (by: 1 | -1) => void
  readonly children: ReactNode
}) {
  const way = (by: 1 | -1, label: string, end: number) => (
    <button
      type="button"
      aria-label={label}
      disabled={at === end}
      onClick={() => {
        onStep(by)
      }}
    >
      <Icon name={by < 0 ? 'back' : 'next'} />
    </button>
  )
  return (
    <div className="lay-dock">
      {way(-1, less, 0)}
      {children}
      {way(1, more, of - 1)}
    </div>
  )
}
