import { useCallback, useRef } from 'react'
import { returnTo } from './use-route.ts'

/** Closes what was opened over a place: the place is in the address again. */
export function useCloseCard(place: string): () => void {
  const to = useRef(place)
  return useCallback(() => {
    returnTo(to.current)
  }, [])
}
