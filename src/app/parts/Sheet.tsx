import { useEffect, useId, useRef, type ReactNode } from 'react'
import { Icon } from './Icon.tsx'
import './sheet.css'

/**
 * A sheet over the screen, made of the platform's own dialog: the page behind is out of reach, Escape and a tap beside it close it, and the focus
 * goes back to where it came from.
 */
export function Sheet({
  title,
  closeLabel,
  onClose,
  onCancel = onClose,
  back,
  height = 'fit',
  tools,
  foot,
  children,
}: {
  readonly title: ReactNode
  readonly closeLabel: string
  readonly onClose: () => void
  /** What Escape and the phone's back gesture do, where that is not to close it. */
  readonly onCancel?: () => void
  /** A step back inside the sheet. */
  readonly back?: { readonly label: string; readonly onBack: () => void } | undefined
  readonly height?: 'fit' | 'full'
  /** Buttons beside the one that closes. */
  readonly tools?: ReactNode
  readonly foot?: ReactNode
  readonly children: ReactNode
}) {
  const dialog = useRef<HTMLDialogElement>(null)
  const heading = useId()
  useEffect(() => {
    const shown = dialog.current
    if (shown === null) return
    const cameFrom = document.activeElement
    if (!shown.open) shown.showModal()
    return () => {
      shown.close()
      if (cameFrom !== null) wayBack(cameFrom)?.focus({ preventScroll: true })
    }
  }, [])
  return (
    // Escape closes it as well: the click is a second way for the pointer.
    // oxlint-disable-next-line jsx-a11y/click-events-have-key-events, jsx-a11y/no-noninteractive-element-interactions
    <dialog
      ref={dialog}
      className={height === 'full' ? 'sheet full' : 'sheet'}
      aria-labelledby={heading}
      onCancel={(event) => {
        event.preventDefault()
        onCancel()
      }}
      onClick={(event) => {
        if (event.target === event.currentTarget && isBeside(event.currentTarget, event.clientX, event.clientY))
          onClose()
      }}
    >
      <div className="sheet-head">
        {back && (
          <button type="button" aria-label={back.label} onClick={back.onBack}>
            <Icon name="back" />
          </button>
        )}
        <div>
          <h2 id={heading} tabIndex={-1}>
            {title}
          </h2>
        </div>
        {tools}
        <button type="button" aria-label={closeLabel} onClick={onClose}>
          <Icon name="close" />
        </button>
      </div>
      <div className="sheet-body">{children}</div>
      {foot && <div className="sheet-foot">{foot}</div>}
    </dialog>
  )
}

/** What opened the sheet, or what leads there now: a line may stand elsewhere once its sheet has changed it. */
function wayBack(cameFrom: Element): HTMLElement | null {
  if (cameFrom instanceof HTMLElement && cameFrom.isConnected) return cameFrom
  const href = cameFrom.getAttribute('href')
  const same = href === null ? null : document.querySelector<HTMLElement>(`a[href="${CSS.escape(href)}"]`)
  return same ?? document.querySelector('main')
}

function isBeside(dialog: HTMLElement, x: number, y: number): boolean {
  const { left, right, top, bottom } = dialog.getBoundingClientRect()
  return x < left || x > right || y < top || y > bottom
}
