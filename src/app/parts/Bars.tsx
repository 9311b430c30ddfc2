import type { ReactNode } from 'react'
import './bars.css'

export interface Bar {
  readonly key: string
  readonly name: string
  /** Length as a share of the longest; null where there is nothing to draw. */
  readonly share: number | null
  readonly figure: ReactNode
  readonly isOn: boolean
}

/** Values side by side as bars, each with its figure. */
export function Bars({ bars }: { readonly bars: readonly Bar[] }) {
  return (
    <ul>
      {bars.map(({ key, name, share, figure, isOn }) => (
        <li key={key} className={isOn ? 'bar-row on' : 'bar-row'}>
          <span className="bar-name">{name}</span>
          <span className="bar-track" aria-hidden="true">
            {share !== null && <i style={{ width: `${String(share * 100)}%` }} />}
          </span>
          {figure}
        </li>
      ))}
    </ul>
  )
}
