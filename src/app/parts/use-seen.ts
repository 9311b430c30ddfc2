import { useEffect, useState, type RefObject } from 'react'

/** What comes within this distance of the screen counts as seen, so that whoever scrolls finds it drawn. */
const AHEAD_PX = 600

const waiting = new WeakMap<Element, () => void>()
let watcher: IntersectionObserver | undefined

/** One watcher for everything: hundreds of them would cost what they save. */
const watch = (): IntersectionObserver =>
  (watcher ??= new IntersectionObserver(
    (entries, own) => {
      for (const { target, isIntersecting } of entries)
        if (isIntersecting) {
          own.unobserve(target)
          waiting.get(target)?.()
        }
    },
    { rootMargin: `${String(AHEAD_PX)}px` },
  ))

/** Whether an element has been in sight, or nearly; `atOnce` where that is known before it is there. */
export function useSeen(ref: RefObject<Element | null>, atOnce: boolean): boolean {
  const [isSeen, setIsSeen] = useState(atOnce)
  useEffect(() => {
    const element = ref.current
    if (isSeen || element === null) return undefined
    const watching = watch()
    waiting.set(element, () => {
      setIsSeen(true)
    })
    watching.observe(element)
    return () => {
      watching.unobserve(element)
    }
  }, [ref, isSeen])
  return isSeen
}
