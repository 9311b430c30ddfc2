import { useSyncExternalStore } from 'react'

const WIDE = '(min-width: 900px)'

function listen(changed: () => void): () => void {
  const media = window.matchMedia(WIDE)
  media.addEventListener('change', changed)
  return () => {
    media.removeEventListener('change', changed)
  }
}

/** Whether there is room for several drawings side by side, as the styles have it. */
export const useWide = (): boolean => useSyncExternalStore(listen, () => window.matchMedia(WIDE).matches)
