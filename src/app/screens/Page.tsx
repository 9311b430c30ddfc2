import { useEffect, useLayoutEffect, useRef, type ReactNode } from 'react'

/** Where each page stood when one left it; a place found again is found as it was. */
const scrolled = new Map<string, number>()
let isFirst = true

/**
 * A page under its title block. Entering one names the window after it, puts the focus at the head of its work and its scroll where it was;
 * a sheet opened over it changes nothing.
 */
export function Page({
  path,
  title,
  kind,
  header,
  foot,
  children,
}: {
  readonly path: string
  readonly title: string
  readonly kind: 'single' | 'placed'
  readonly header: ReactNode
  readonly foot?: ReactNode
  readonly children: ReactNode
}) {
  const main = useRef<HTMLElement>(null)
  useEffect(() => {
    document.title = title
  }, [title])
  useLayoutEffect(() => {
    window.scrollTo(0, scrolled.get(path) ?? 0)
    const remember = () => {
      scrolled.set(path, window.scrollY)
    }
    window.addEventListener('scroll', remember, { passive: true })
    return () => {
      window.removeEventListener('scroll', remember)
    }
  }, [path])
  useEffect(() => {
    if (!isFirst) main.current?.focus({ preventScroll: true })
    isFirst = false
  }, [path])
  return (
    <div className={`page ${kind}`}>
      {header}
      <main ref={main} tabIndex={-1}>
        {children}
      </main>
      {foot}
    </div>
  )
}
