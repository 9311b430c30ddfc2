import type { Browser } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, inject } from 'vitest'
import { launch } from './browser.ts'
import { AppServer } from './server.ts'

// The browser of the test file that runs now, and the built app where it is served.
export let browser: Browser
export let server: AppServer
/** Where the app is. */
export let url: string

async function serve(): Promise<void> {
  server = new AppServer(inject('appA'))
  url = await server.open()
}

/** A browser for the file, and the app served once for all its tests or anew for each. */
export function serveApp(how: 'once' | 'each'): void {
  beforeAll(async () => {
    browser = await launch()
    if (how === 'once') await serve()
  })
  afterAll(async () => {
    await browser.close()
    if (how === 'once') await server.close()
  })
  if (how === 'once') return
  beforeEach(serve)
  afterEach(() => server.close())
}
