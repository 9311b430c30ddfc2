import { useEffect, useState } from 'react'

const MINUTE_MS = 60_000

/** The present, to the minute: enough to tell today from another day. */
export function useNow(): number {
  const [nowMs, setNowMs] = useState(() => Date.now())
  useEffect(() => {
    const timer = setInterval(() => {
      setNowMs(Date.now())
    }, MINUTE_MS)
    return () => {
      clearInterval(timer)
    }
  }, [])
  return nowMs
}
