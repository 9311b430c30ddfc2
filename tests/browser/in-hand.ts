import type { BrowserContext, BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, expect } from 'vitest'
import { complaints, phone, waitForOffline } from './browser.ts'
import type { Examples } from './screens.ts'
import { browser, serveApp, server, url } from './served.ts'

export { browser, server, url } from './served.ts'

// What the test that runs now holds in its hand.
export let context: BrowserContext
export let page: Page

/** Opens an example from the front page. */
export async function openExample(name: RegExp, at: Page = page): Promise<void> {
  await at.getByRole('button', { name: 'Example' }).click()
  await at.getByRole('dialog').getByRole('button', { name }).click()
  await at.getByRole('link', { name: /^Walls/ }).waitFor()
}

/** Opens two examples, one after the other, and says by which ids they go. */
export async function openExamples(): Promise<Examples> {
  const id = () => page.url().split('/')[5] ?? ''
  await openExample(/One chamber/)
  const one = id()
  await page.goto(`${url}/#/`)
  await openExample(/Two chambers/)
  return { one, two: id() }
}

/** From now on there is no network, and nothing may be asked of one. */
export async function goOffline(): Promise<void> {
  await waitForOffline(page)
  await server.close()
  isOffline = true
}

let isOffline = false

let leftover: string[] = []
let known = 0

/**
 * The tests of a file share a phone that has visited the app: its worker and files stay, all data goes between tests. Before each the app is
 * opened, and its front page waited for. After each nothing may have gone wrong on the way: no error, no breach of the page's policy,
 * nothing asked of another machine, nor of the server once it is gone.
 */
export function takeInHand({
  timeoutMs = 8000,
  ...options
}: BrowserContextOptions & { timeoutMs?: number } = {}): void {
  serveApp('once')
  beforeAll(async () => {
    context = await phone(browser, options)
    context.on('request', (request) => {
      if (/^(https?|wss?):/.test(request.url()) && new URL(request.url()).origin !== url)
        leftover.push(`elsewhere: ${request.url()}`)
    })
    context.on('requestfailed', (request) => {
      if (isOffline && request.failure()?.errorText !== 'net::ERR_ABORTED') leftover.push(`offline: ${request.url()}`)
    })
    if (options.serviceWorkers === 'block') return
    const visit = await context.newPage()
    await visit.goto(url)
    await waitForOffline(visit)
    await visit.close()
  })
  afterAll(async () => {
    await context.close()
  })
  beforeEach(async () => {
    isOffline = false
    leftover = []
    known = complaints(context).length
    await server.open()
    page = await context.newPage()
    page.setDefaultTimeout(timeoutMs)
    const storage = await context.newCDPSession(page)
    await storage.send('Storage.clearDataForOrigin', { origin: url, storageTypes: 'indexeddb,local_storage' })
    await storage.detach()
    await page.goto(url)
    await page.getByRole('heading', { name: 'Plans on this phone' }).waitFor()
  })
  afterEach(async () => {
    const found = [...complaints(context).slice(known), ...leftover]
    isOffline = false
    await Promise.all(context.pages().map((one) => one.close()))
    await context.setOffline(false)
    // oxlint-disable-next-line vitest/no-standalone-expect -- whatever a journey was about, nothing may have gone wrong on the way
    expect(found).toEqual([])
  })
}
