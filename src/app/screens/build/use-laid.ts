import { useCallback, useEffect, useRef, useState } from 'react'
import type { LaidCourse } from '../../../core/layout/contract.ts'

interface Ahead {
  readonly course: LaidCourse
  readonly units: number
}

/**
 * Units as just ticked: the figure answers the thumb at once, and the plan is written when the screen has shown it. Several quick taps are written as one,
 * and leaving the screen writes what is still to write.
 */
export function useLaid(write: (course: LaidCourse, units: number) => void): {
  readonly ahead: Ahead | null
  readonly lay: (course: LaidCourse, units: number) => void
} {
  const [ahead, setAhead] = useState<Ahead | null>(null)
  const pending = useRef<Ahead | null>(null)
  const writer = useRef(write)
  useEffect(() => {
    writer.current = write
  })
  const flush = useCallback(() => {
    const last = pending.current
    pending.current = null
    if (last === null) return
    writer.current(last.course, last.units)
    setAhead(null)
  }, [])
  useEffect(() => flush, [flush])
  const lay = useCallback(
    (course: LaidCourse, units: number) => {
      if (pending.current !== null && pending.current.course !== course) flush()
      const isFirst = pending.current === null
      pending.current = { course, units }
      setAhead(pending.current)
      if (isFirst) requestAnimationFrame(() => setTimeout(flush))
    },
    [flush],
  )
  return { ahead, lay }
}
