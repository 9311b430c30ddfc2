import { chromium, type Browser, type BrowserContext, type BrowserContextOptions, type Page } from 'playwright-core'
import { findChromium, howToInstall } from '../../.ci/chromium.mjs'

/** Starts the Chromium that `npm test` would find. */
export function launch(more: readonly string[] = []): Promise<Browser> {
  const executablePath = findChromium()
  if (executablePath === undefined) throw new Error(howToInstall)
  return chromium.launch({
    executablePath,
    headless: true,
    chromiumSandbox: false, // it cannot start as root, which is what a container is
    args: [
      '--disable-gpu',
      '--disable-quic',
      '--disable-component-update',
      '--disable-sync',
      '--no-first-run',
      '--disable-dev-shm-usage',
      ...more,
    ],
  })
}

/** A phone with an empty memory. Its pages note what went wrong on them; ask `complaints`. */
export async function phone(browser: Browser, options: BrowserContextOptions = {}): Promise<BrowserContext> {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 }, locale: 'en-GB', ...options })
  const found: string[] = []
  complaintsOf.set(context, found)
  context.on('weberror', (error) => found.push(`error: ${error.error().message}`))
  context.on('console', (message) => {
    // A dead server is what most of these tests are about; the browser's remark about it is not the app's.
    const isNetwork = message.text().startsWith('Failed to load resource: net::ERR_')
    if (message.type() === 'error' && !isNetwork) found.push(`console: ${message.text()}`)
  })
  return context
}

const complaintsOf = new WeakMap<BrowserContext, string[]>()

/** Uncaught errors, console errors and breaches of the page's policy so far, of every page of this phone. */
export const complaints = (context: BrowserContext): readonly string[] => complaintsOf.get(context) ?? []

/** Waits until the app may be used without a network: its worker is active and controls the page. */
export async function waitForOffline(page: Page): Promise<void> {
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated', null, { timeout: 60_000 })
}

/** Which version runs on the page, once it has drawn something. */
export async function buildOf(page: Page): Promise<string | null> {
  await page.locator('#root:not(:empty)').waitFor({ state: 'attached' })
  return page.locator('html').getAttribute('data-build')
}
