import type { ReactNode } from 'react'
import './frame.css'
import './picks.css'

/** The frame of a drawing; the unit of its figures stands once in the corner. */
export function DrawingFrame({ unit, children }: { readonly unit?: string; readonly children: ReactNode }) {
  return (
    <figure className="draw drawn">
      {unit !== undefined && <span className="draw-unit">{unit}</span>}
      {children}
    </figure>
  )
}
