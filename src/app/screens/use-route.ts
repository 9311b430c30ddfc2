import { useMemo, useSyncExternalStore } from 'react'
import { readRoute, type Route } from './route.ts'

const subscribe = (onChange: () => void) => {
  window.addEventListener('hashchange', onChange)
  window.addEventListener('popstate', onChange)
  return () => {
    window.removeEventListener('hashchange', onChange)
    window.removeEventListener('popstate', onChange)
  }
}

const readHash = () => window.location.hash

/** Where one is, followed as the address changes: links, the back button, a typed address. */
export function useRoute(): Route {
  const hash = useSyncExternalStore(subscribe, readHash)
  return useMemo(() => readRoute(hash), [hash])
}

let cameFrom: string | null = null
window.addEventListener('hashchange', ({ oldURL }) => {
  cameFrom = new URL(oldURL).hash
})

/** Goes back to a place where one just came from it, so that the back button does not lead there twice; else puts it in place of where one is. */
export function returnTo(href: string): void {
  if (cameFrom === href) window.history.back()
  else replaceWith(href)
}

/** Goes somewhere by the address, so that the back button leads here again. */
export function goTo(href: string): void {
  window.location.hash = href
}

/** Goes somewhere in place of where one is: the back button skips this step. */
export function replaceWith(href: string): void {
  window.history.replaceState(window.history.state, '', href)
  window.dispatchEvent(new PopStateEvent('popstate', { state: window.history.state as unknown }))
}
