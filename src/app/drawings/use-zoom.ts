import { useCallback, useEffect, useLayoutEffect, useRef, type RefObject } from 'react'

const MOST_ZOOM = 6
/** A pointer that moved less than this meant to tap. */
const TAP_PX = 6
const WHEEL_STEP = 0.0016
const KEY_STEP = 1.4

interface Held {
  readonly x: number
  readonly y: number
}

export interface Zoom {
  /** The box that scrolls, and the sheet inside it. */
  readonly box: RefObject<HTMLDivElement | null>
  readonly sheet: RefObject<HTMLDivElement | null>
  readonly zoomBy: (factor: number) => void
  /** The whole sheet in sight. */
  readonly whole: () => void
}

/**
 * Pan by one pointer, zoom by two, by the wheel, or by + − 0 on the keys, inside a scrolling box whose sheet is `widthPx` by `heightPx` at a zoom of 1.
 * Sizes are set on the element itself, so that a pinch draws no component anew. A drag never counts as a tap.
 */
export function useZoom(widthPx: number, heightPx: number): Zoom {
  const box = useRef<HTMLDivElement>(null)
  const sheet = useRef<HTMLDivElement>(null)
  const zoom = useRef(1)
  const fitted = useCallback(() => {
    const { clientWidth = widthPx, clientHeight = heightPx } = box.current ?? {}
    return Math.min(clientWidth / widthPx, clientHeight / heightPx)
  }, [widthPx, heightPx])
  const zoomTo = useCallback(
    (wanted: number, at?: Held) => {
      const scroller = box.current
      const inner = sheet.current
      if (scroller === null || inner === null) return
      const least = Math.min(1, fitted())
      const next = Math.min(MOST_ZOOM, Math.max(least, wanted))
      const { left, top, width, height } = scroller.getBoundingClientRect()
      const x = (at?.x ?? left + width / 2) - left
      const y = (at?.y ?? top + height / 2) - top
      const grown = next / zoom.current
      const [fromLeft, fromTop] = [scroller.scrollLeft + x, scroller.scrollTop + y]
      zoom.current = next
      inner.style.width = `${String(widthPx * next)}px`
      scroller.scrollLeft = fromLeft * grown - x
      scroller.scrollTop = fromTop * grown - y
    },
    [widthPx, fitted],
  )
  // A sheet that would be too small to read when whole begins at its left, at a size that can be read.
  useLayoutEffect(() => {
    const fit = fitted()
    zoom.current = 1
    zoomTo(fit < 0.75 ? 1 : fit)
    if (box.current !== null && fit < 0.75) {
      box.current.scrollLeft = 0
      box.current.scrollTop = Math.max(0, (heightPx - box.current.clientHeight) / 2)
    }
  }, [fitted, zoomTo, heightPx])
  useEffect(() => {
    const scroller = box.current
    if (scroller === null) return
    const held = new Map<number, Held>()
    let moved = 0
    const between = () => {
      const [one, other] = [...held.values()]
      if (one === undefined || other === undefined) return null
      return {
        at: { x: (one.x + other.x) / 2, y: (one.y + other.y) / 2 },
        apart: Math.hypot(one.x - other.x, one.y - other.y),
      }
    }
    const down = (event: PointerEvent) => {
      if (held.size === 0) moved = 0
      held.set(event.pointerId, { x: event.clientX, y: event.clientY })
    }
    const move = (event: PointerEvent) => {
      const before = held.get(event.pointerId)
      if (before === undefined) return
      const pinched = between()
      held.set(event.pointerId, { x: event.clientX, y: event.clientY })
      moved += Math.hypot(event.clientX - before.x, event.clientY - before.y)
      if (moved > TAP_PX && !scroller.hasPointerCapture(event.pointerId)) scroller.setPointerCapture(event.pointerId)
      const now = between()
      if (pinched === null || now === null) {
        scroller.scrollLeft -= event.clientX - before.x
        scroller.scrollTop -= event.clientY - before.y
        return
      }
      scroller.scrollLeft -= now.at.x - pinched.at.x
      scroller.scrollTop -= now.at.y - pinched.at.y
      if (pinched.apart > 0) zoomTo((zoom.current * now.apart) / pinched.apart, now.at)
    }
    const up = (event: PointerEvent) => {
      held.delete(event.pointerId)
    }
    const click = (event: MouseEvent) => {
      if (moved > TAP_PX) event.stopPropagation()
    }
    const wheel = (event: WheelEvent) => {
      event.preventDefault()
      zoomTo(zoom.current * Math.exp(-event.deltaY * WHEEL_STEP), { x: event.clientX, y: event.clientY })
    }
    const key = (event: KeyboardEvent) => {
      if (event.key === '+' || event.key === '=') zoomTo(zoom.current * KEY_STEP)
      else if (event.key === '-') zoomTo(zoom.current / KEY_STEP)
      else if (event.key === '0') zoomTo(fitted())
    }
    const ends = new AbortController()
    const { signal } = ends
    scroller.addEventListener('pointerdown', down, { signal })
    scroller.addEventListener('pointermove', move, { signal })
    scroller.addEventListener('pointerup', up, { signal })
    scroller.addEventListener('pointercancel', up, { signal })
    scroller.addEventListener('click', click, { signal, capture: true })
    scroller.addEventListener('wheel', wheel, { signal, passive: false })
    scroller.addEventListener('keydown', key, { signal })
    return () => {
      ends.abort()
    }
  }, [zoomTo, fitted])
  return {
    box,
    sheet,
    zoomBy: (factor) => {
      zoomTo(zoom.current * factor)
    },
    whole: () => {
      zoomTo(fitted())
    },
  }
}
