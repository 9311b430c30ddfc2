import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, expect, inject } from 'vitest'
import { complaints, launch, phone, waitForOffline } from './browser.ts'
import { AppServer } from './server.ts'

// What the test that runs now holds in its hand: a new phone for each.
export let browser: Browser
export let server: AppServer
export let context: BrowserContext
export let page: Page
/** Where the app was opened. */
export let url: string

/** Opens an example from the front page. */
export async function openExample(name: RegExp): Promise<void> {
  await page.getByRole('button', { name: 'Example' }).click()
  await page.getByRole('dialog').getByRole('button', { name }).click()
  await page.getByRole('link', { name: /^Walls/ }).waitFor()
}

/** From now on there is no network, and nothing may be asked of one. */
export async function goOffline(): Promise<void> {
  await waitForOffline(page)
  await server.close()
  context.on('requestfailed', (request) => {
    if (request.failure()?.errorText !== 'net::ERR_ABORTED') leftover.push(`offline: ${request.url()}`)
  })
}

let leftover: string[] = []

/**
 * Before each test of the file a phone opens the app and waits for its front page. After each nothing may have gone wrong on the way: no
 * error, no breach of the page's policy, nothing asked of another machine, nor of the server once it is gone.
 */
export function takeInHand({
  timeoutMs = 8000,
  ...options
}: BrowserContextOptions & { timeoutMs?: number } = {}): void {
  beforeAll(async () => {
    browser = await launch()
  })
  afterAll(async () => {
    await browser.close()
  })
  beforeEach(async () => {
    leftover = []
    server = new AppServer(inject('appA'))
    url = await server.open()
    context = await phone(browser, options)
    context.on('request', (request) => {
      if (/^(https?|wss?):/.test(request.url()) && new URL(request.url()).origin !== url)
        leftover.push(`elsewhere: ${request.url()}`)
    })
    page = await context.newPage()
    page.setDefaultTimeout(timeoutMs)
    await page.goto(url)
    await page.getByRole('heading', { name: 'Plans on this phone' }).waitFor()
  })
  afterEach(async () => {
    const found = [...complaints(context), ...leftover]
    await context.close()
    await server.close()
    // oxlint-disable-next-line vitest/no-standalone-expect -- whatever a journey was about, nothing may have gone wrong on the way
    expect(found).toEqual([])
  })
}
