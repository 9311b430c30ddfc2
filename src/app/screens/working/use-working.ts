import { useCallback, useEffect, useMemo, useRef, useState } from 'react'
import type { Derived } from '../../../core/basics/derived.ts'

interface WorkingSteps {
  /** The number looked at and the ones it was reached through, outermost first. */
  readonly path: readonly Derived[]
  readonly open: (derived: Derived) => void
  readonly back: () => void
  readonly close: () => void
  /** Closes the working and then goes on, once the address is back where the first number was opened. */
  readonly closeThen: (goOn: () => void) => void
}

const depthIn = (state: unknown): number =>
  typeof state === 'object' && state !== null && 'workingDepth' in state && typeof state.workingDepth === 'number'
    ? state.workingDepth
    : 0

/** Steps into a number's working are steps of the back button: each goes back one number, the first closes it. */
export function useWorking(): WorkingSteps {
  const [path, setPath] = useState<readonly Derived[]>([])
  const next = useRef<(() => void) | null>(null)
  const depthNow = useRef(0)
  useEffect(() => {
    const onPop = (event: PopStateEvent) => {
      const depth = Math.min(depthIn(event.state), depthNow.current)
      depthNow.current = depth
      setPath((before) => before.slice(0, depth))
      if (depth > 0) return
      next.current?.()
      next.current = null
    }
    window.addEventListener('popstate', onPop)
    return () => {
      window.removeEventListener('popstate', onPop)
    }
  }, [])
  const open = useCallback((derived: Derived) => {
    depthNow.current += 1
    window.history.pushState({ workingDepth: depthNow.current }, '')
    setPath((before) => [...before, derived])
  }, [])
  return useMemo(() => {
    const close = () => {
      if (path.length > 0) window.history.go(-path.length)
    }
    return {
      path,
      open,
      back: () => {
        window.history.back()
      },
      close,
      closeThen: (goOn) => {
        next.current = goOn
        close()
      },
    }
  }, [path, open])
}
