import { useCallback, useRef } from 'react'
import { replaceWith } from './use-route.ts'

/** Closes what was opened over a place, and leaves the place in the address: the back button then leads to where one came from. */
export function useCloseCard(place: string): () => void {
  const to = useRef(place)
  return useCallback(() => {
    replaceWith(to.current)
  }, [])
}
