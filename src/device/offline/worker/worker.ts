import {
  cleanupOutdatedCaches,
  createHandlerBoundToURL,
  matchPrecache,
  precacheAndRoute,
  type PrecacheEntry,
} from 'workbox-precaching'
import { NavigationRoute, registerRoute } from 'workbox-routing'

declare const self: ServiceWorkerGlobalScope

/** Written by the build, always as entries. */
const files = self.__WB_MANIFEST as PrecacheEntry[]
const home = new URL('./', self.location.href)

precacheAndRoute(files)
cleanupOutdatedCaches()
const page = createHandlerBoundToURL('index.html')

/** True when every file of this version is really in the cache: the browser or its owner may have removed some. */
async function isComplete(): Promise<boolean> {
  const found = await Promise.all(files.map(({ url }) => matchPrecache(url)))
  return found.every((response) => response !== undefined)
}

// The page's own addresses are relative, so it is only ever shown at home; any other address in our scope leads there.
registerRoute(
  new NavigationRoute(async (request) => {
    const { pathname, search } = request.url
    const isHome = pathname === home.pathname || pathname === `${home.pathname}index.html`
    return isHome ? page(request) : Response.redirect(new URL(`./${search}`, home), 302)
  }),
)

// The first page is controlled at once: its lazy chunks work offline, and a later update waits instead of slipping in.
self.addEventListener('activate', (event) => {
  event.waitUntil(self.clients.claim())
})

self.addEventListener('message', (event) => {
  const data: unknown = event.data
  if (typeof data !== 'object' || data === null || !('type' in data)) return
  if (data.type === 'SKIP_WAITING') event.waitUntil(self.skipWaiting())
  if (data.type === 'IS_COMPLETE') {
    event.waitUntil(isComplete().then((complete) => event.ports[0]?.postMessage(complete)))
  }
})
