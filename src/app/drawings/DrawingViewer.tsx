import { useEffect, useMemo, useRef, useState } from 'react'
import type { Finding } from '../../core/basics/finding.ts'
import type { Point } from '../../core/documents/drawings/drawing.ts'
import { unitAt, viewOf, viewsOf, type ViewKey } from '../../core/documents/drawings/views.ts'
import type { PlacedUnit } from '../../core/layout/contract.ts'
import type { WorkedOut } from '../../core/work-out.ts'
import { Icon } from '../parts/Icon.tsx'
import { useWords } from '../words/use-words.tsx'
import { CourseSlider } from './CourseSlider.tsx'
import { DrawingSheet } from './DrawingSheet.tsx'
import { FillingBars } from './FillingBars.tsx'
import { paperFor, readableWidth, SHEET_WIDTH } from './paper.ts'
import { UnitTold } from './UnitTold.tsx'
import { useWriting } from './use-writing.ts'
import { useZoom } from './use-zoom.ts'
import { viewName } from './view-name.ts'
import './viewer.css'

interface Told {
  readonly unit: PlacedUnit
  readonly rings: readonly (readonly Point[])[]
}

/** A drawing over the whole screen: leaf through all of them, pinch, drag, and tap a unit to hear what it is. */
export function DrawingViewer({
  worked,
  findings,
  start,
  onClose,
}: {
  readonly worked: WorkedOut
  readonly findings: readonly Finding[]
  readonly start: ViewKey
  readonly onClose: () => void
}) {
  const words = useWords()
  const { named } = words
  const [view, setView] = useState(start)
  const [told, setTold] = useState<Told | null>(null)
  const lastCourse = worked.layout.courses.at(-1)?.index ?? 1
  const [upTo, setUpTo] = useState(lastCourse)
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => {
    const shown = dialog.current
    const cameFrom = document.activeElement
    if (shown !== null && !shown.open) shown.showModal()
    return () => {
      shown?.close()
      if (cameFrom instanceof HTMLElement && cameFrom.isConnected) cameFrom.focus({ preventScroll: true })
    }
  }, [])
  const views = viewsOf(worked)
  const turnTo = (next: ViewKey | undefined) => {
    if (next === undefined) return
    setTold(null)
    setView(next)
  }
  const at = views.indexOf(view)
  return (
    <dialog
      ref={dialog}
      className="viewer"
      aria-label={named('drawing.viewer')}
      onCancel={(event) => {
        event.preventDefault()
        onClose()
      }}
    >
      <div className="viewer-head">
        <button
          type="button"
          aria-label={named('drawing.before')}
          disabled={at <= 0}
          onClick={() => {
            turnTo(views[at - 1])
          }}
        >
          <Icon name="back" />
        </button>
        <select
          aria-label={named('drawing.which')}
          value={view}
          onChange={(event) => {
            turnTo(views.find((one) => one === event.currentTarget.value))
          }}
        >
          {views.map((one) => (
            <option key={one} value={one}>
              {viewName(one, words)}
            </option>
          ))}
        </select>
        <button
          type="button"
          aria-label={named('drawing.after')}
          disabled={at >= views.length - 1}
          onClick={() => {
            turnTo(views[at + 1])
          }}
        >
          <Icon name="next" />
        </button>
        <button type="button" aria-label={named('drawing.close')} onClick={onClose}>
          <Icon name="close" />
        </button>
      </div>
      <ZoomedDrawing
        key={view}
        view={view}
        worked={worked}
        findings={findings}
        upTo={Math.min(upTo, lastCourse)}
        told={told}
        onTold={setTold}
      />
      <div className="viewer-foot">
        {view === 'inside' && <CourseSlider layout={worked.layout} course={upTo} onChange={setUpTo} />}
        {view === 'wall-layers' && <FillingBars plan={worked.plan} />}
        <UnitTold unit={told?.unit ?? null} worked={worked} view={view} />
      </div>
    </dialog>
  )
}

/** Wider screens draw on a larger sheet, so that figures do not grow into posters. */
const SCREEN_PER_UNIT = 1.6
/** Height of what stands round a model: dimension lanes and the like. */
const LANES_U = 130

/** Whether figures stand inside units. */
const small = (view: ViewKey): boolean => /^(course|back|left|right|divider)/.test(view)

function ZoomedDrawing({
  view,
  worked,
  findings,
  upTo,
  told,
  onTold,
}: {
  readonly view: ViewKey
  readonly worked: WorkedOut
  readonly findings: readonly Finding[]
  readonly upTo: number
  readonly told: Told | null
  readonly onTold: (told: Told | null) => void
}) {
  const { named } = useWords()
  const { writing, spoken, unit } = useWriting(view === 'tapes')
  const drawing = useMemo(() => viewOf(view, worked, findings), [view, worked, findings])
  const least = small(view) || /^(plan|front|board)/.test(view) ? readableWidth(drawing, small(view)) : SHEET_WIDTH
  const widthU = Math.max(least, window.innerWidth / SCREEN_PER_UNIT)
  const mostHighU = Math.max(300, window.innerHeight / SCREEN_PER_UNIT - LANES_U)
  const { heightU } = useMemo(
    () => paperFor(drawing, writing, widthU, mostHighU),
    [drawing, writing, widthU, mostHighU],
  )
  const { box, sheet, zoomBy, whole } = useZoom(widthU, heightU)
  const onPoint = useMemo(
    () => (at: Point) => {
      onTold(unitAt(view, worked, at, upTo))
    },
    [view, worked, upTo, onTold],
  )
  return (
    <div className="viewer-room">
      {unit !== undefined && view !== 'inside' && <span className="draw-unit">{unit}</span>}
      {/* It scrolls, so it must be reachable by keys. */}
      {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex */}
      <div ref={box} className="viewer-box" tabIndex={0} role="region" aria-label={named('drawing.zoom-keys')}>
        <div ref={sheet} className="viewer-sheet">
          <DrawingSheet
            drawing={drawing}
            writing={writing}
            spoken={spoken}
            widthU={widthU}
            mostHighU={mostHighU}
            upToCourse={upTo}
            {...(told !== null && { chosen: told.rings })}
            onPoint={onPoint}
          />
        </div>
      </div>
      <div className="viewer-zoom">
        <button
          type="button"
          aria-label={named('drawing.smaller')}
          onClick={() => {
            zoomBy(1 / 1.5)
          }}
        >
          <Icon name="minus" />
        </button>
        <button type="button" onClick={whole}>
          {named('drawing.whole')}
        </button>
        <button
          type="button"
          aria-label={named('drawing.larger')}
          onClick={() => {
            zoomBy(1.5)
          }}
        >
          <Icon name="plus" />
        </button>
      </div>
    </div>
  )
}
