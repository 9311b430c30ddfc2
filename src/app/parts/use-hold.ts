import { useCallback, useEffect, useRef, type PointerEvent } from 'react'

const WAIT_MS = 400
const AGAIN_MS = 70

/**
 * A button that acts once when pressed and runs while held. `again` is asked afresh each time and says whether to go on.
 * A press by keyboard or by a reading aid arrives as a click and acts once.
 */
export function useHold(again: () => boolean) {
  const latest = useRef(again)
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined)
  const pressed = useRef(false)
  useEffect(() => {
    latest.current = again
  })
  const stop = useCallback(() => {
    clearTimeout(timer.current)
  }, [])
  useEffect(() => stop, [stop])
  const start = useCallback(() => {
    const tick = () => {
      if (latest.current()) timer.current = setTimeout(tick, AGAIN_MS)
    }
    timer.current = setTimeout(tick, WAIT_MS)
  }, [])
  return {
    onPointerDown: (event: PointerEvent) => {
      if (event.button !== 0) return
      pressed.current = true
      if (latest.current()) start()
    },
    onPointerUp: stop,
    onPointerLeave: stop,
    onPointerCancel: stop,
    onClick: () => {
      if (!pressed.current) latest.current()
      pressed.current = false
    },
  }
}
