import type { KeyboardEvent, MouseEvent } from 'react'
import type { Derived } from '../../core/basics/derived.ts'
import type { FigureAt } from './dimension.tsx'
import './figure-tap.css'
import { r } from './writing.ts'

/** Room for a thumb round a figure, paper units: 44 px where a card on a phone of 320 px makes its drawing three tenths smaller. */
const THUMB = 64

/** The figure whose middle is nearest to the tap: where figures stand close their rooms lie over each other. */
function nearest({ currentTarget, clientX, clientY }: MouseEvent): Element {
  const away = (one: Element) => {
    const { left, right, top, bottom } = one.getBoundingClientRect()
    return Math.hypot((left + right) / 2 - clientX, (top + bottom) / 2 - clientY)
  }
  const all = currentTarget.parentElement?.querySelectorAll(':scope > .figure-tap') ?? []
  return [...all].reduce((best, one) => (away(one) < away(best) ? one : best), currentTarget)
}

/** A worked-out figure of a dimension line that opens its working. */
export function FigureTap({
  figure: { middleU, acrossU, axis },
  working,
  label,
  onOpen,
}: {
  readonly figure: FigureAt
  readonly working: Derived
  readonly label: string
  readonly onOpen: (derived: Derived) => void
}) {
  const open = (event: MouseEvent | KeyboardEvent) => {
    event.stopPropagation()
    onOpen(working)
  }
  const [xU, yU] = axis === 'x' ? [middleU, acrossU - 9] : [acrossU - 9, middleU]
  return (
    // An SVG has no buttons of its own.
    // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role
    <g
      className="figure-tap"
      role="button"
      tabIndex={0}
      aria-label={label}
      onClick={(event) => {
        const meant = event.detail === 0 ? event.currentTarget : nearest(event)
        if (meant === event.currentTarget) open(event)
        else {
          event.stopPropagation()
          meant.dispatchEvent(new window.MouseEvent('click', { bubbles: true }))
        }
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Enter' && event.key !== ' ') return
        event.preventDefault()
        open(event)
      }}
    >
      <rect x={r(xU - THUMB / 2)} y={r(yU - THUMB / 2)} width={THUMB} height={THUMB} />
    </g>
  )
}
