import { useRef, type TouchEvent } from 'react'

const LEAST_PX = 56

/** A sweep of the thumb to the left goes on, to the right goes back; up and down stay the page's. */
export function useSwipe(onStep: (by: 1 | -1) => void): {
  readonly onTouchStart: (event: TouchEvent) => void
  readonly onTouchEnd: (event: TouchEvent) => void
} {
  const from = useRef<{ x: number; y: number } | null>(null)
  return {
    onTouchStart: ({ touches }) => {
      const touch = touches[0]
      from.current = touch === undefined || touches.length > 1 ? null : { x: touch.clientX, y: touch.clientY }
    },
    onTouchEnd: ({ changedTouches }) => {
      const start = from.current
      const touch = changedTouches[0]
      from.current = null
      if (start === null || touch === undefined) return
      const dx = touch.clientX - start.x
      const dy = touch.clientY - start.y
      if (Math.abs(dx) >= LEAST_PX && Math.abs(dx) > 2 * Math.abs(dy)) onStep(dx < 0 ? 1 : -1)
    },
  }
}
