import { useLayoutEffect, useRef, type RefObject } from 'react'

/** Another step begins at its top, not where the one before was read to. The ref goes on anything inside the sheet. */
export function useFromTheTop(at: number): RefObject<HTMLDivElement | null> {
  const inside = useRef<HTMLDivElement>(null)
  useLayoutEffect(() => {
    inside.current?.closest('dialog')?.scrollTo(0, 0)
  }, [at])
  return inside
}
