import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, inject, it } from 'vitest'
import type { Browser, BrowserContext, Page } from 'playwright-core'
import { accessibilityFaults } from './accessibility.ts'
import { buildOf, complaints, launch, phone, waitForOffline } from './browser.ts'
import { AppServer } from './server.ts'

let browser: Browser
let server: AppServer
let context: BrowserContext
let page: Page
let url: string

beforeAll(async () => {
  browser = await launch()
})
afterAll(async () => {
  await browser.close()
})

/** A phone at the door of a server, nothing loaded yet. */
async function arrive(dir: string): Promise<void> {
  server = new AppServer(dir)
  url = await server.open()
  context = await phone(browser)
  page = await context.newPage()
}

async function leave(): Promise<void> {
  const found = complaints(context)
  await context.close()
  await server.close()
  expect(found).toEqual([])
}

/** Asks the browser to look for a new version now: by itself it takes a few seconds after a reload. */
const lookForUpdate = (tab: Page) =>
  tab.evaluate(async () => {
    await (await navigator.serviceWorker.ready).update()
  })

describe('the app without a network', () => {
  beforeEach(() => arrive(inject('appA')))
  afterEach(leave)

  it('works after one visit with the server gone: reload, deep link, new tab', async () => {
    await page.goto(url)
    await waitForOffline(page)
    await server.close()
    await page.reload()
    expect(await buildOf(page)).toBe('a')
    await page.goto(`${url}/index.html?from=home-screen#/some/place`)
    expect(await buildOf(page)).toBe('a')
    await page.goto(`${url}/no/such/page?x=1`)
    expect(await buildOf(page)).toBe('a')
    expect(page.url()).toBe(`${url}/?x=1`) // led home, where the page's relative addresses hold
    await context.setOffline(true)
    const tab = await context.newPage()
    await tab.goto(url)
    expect(await buildOf(tab)).toBe('a')
  })

  it('asks for nothing on the second visit but whether there is a new version', async () => {
    await page.goto(url)
    await waitForOffline(page)
    const assets = server.requests.filter((path) => path.startsWith('/assets/'))
    expect(assets.length).toBeGreaterThan(0)
    expect(new Set(assets).size).toBe(assets.length) // and on the first visit for nothing twice
    server.requests.length = 0
    await page.reload()
    expect(await buildOf(page)).toBe('a')
    expect(server.requests.filter((path) => path !== '/sw.js')).toEqual([])
  })

  it('works below a path', async () => {
    await server.close()
    server = new AppServer(inject('appA'), '/kiln')
    url = await server.open()
    await page.goto(`${url}/kiln/`)
    await waitForOffline(page)
    await server.close()
    await page.goto(`${url}/kiln/no/such/page`)
    expect(await buildOf(page)).toBe('a')
    expect(page.url()).toBe(`${url}/kiln/`)
  })

  it('can be installed, with icons that are what the manifest says', async () => {
    await page.goto(url)
    await waitForOffline(page)
    const devtools = await context.newCDPSession(page)
    const manifest = await devtools.send('Page.getAppManifest')
    expect(manifest.errors).toEqual([])
    const { installabilityErrors } = await devtools.send('Page.getInstallabilityErrors')
    expect(installabilityErrors.filter(({ errorId }) => errorId !== 'in-incognito')).toEqual([])
    const { icons } = JSON.parse(manifest.data ?? '') as { icons: { src: string; sizes: string; purpose: string }[] }
    const sizes = await page.evaluate(
      (names) =>
        Promise.all(
          names.map(async (name) => {
            const image = new Image()
            image.src = name
            await image.decode()
            return `${String(image.naturalWidth)}x${String(image.naturalHeight)}`
          }),
        ),
      icons.map((icon) => icon.src),
    )
    const drawn = icons.map((icon, index) => (icon.sizes === 'any' ? 'any' : sizes[index]))
    expect(drawn).toEqual(icons.map((icon) => icon.sizes))
    expect(icons.map((icon) => icon.purpose)).toContain('maskable')
  })

  it('has a front page that axe finds no fault with', async () => {
    await page.goto(url)
    await buildOf(page)
    expect(await accessibilityFaults(page)).toEqual([])
  })
})

describe('a new version of the app', () => {
  beforeEach(() => arrive(inject('appA')))
  afterEach(leave)

  it('waits for consent, then takes over every tab, for good', async () => {
    await page.goto(url)
    await waitForOffline(page)
    const tab = await context.newPage()
    await tab.goto(url)
    server.dir = inject('appB')
    await lookForUpdate(page)
    const offer = page.getByRole('button', { name: 'Update now' })
    await offer.waitFor()
    expect([await buildOf(page), await buildOf(tab)]).toEqual(['a', 'a'])
    await page.reload() // the offer outlives a reload, and a reload is no consent
    expect(await buildOf(page)).toBe('a')
    await offer.click()
    for (const each of [page, tab]) await each.locator('html[data-build=b]').waitFor({ state: 'attached' })
    await server.close()
    await page.reload()
    expect(await buildOf(page)).toBe('b')
    expect(await offer.count()).toBe(0)
  })
})

describe('the update itself, on a bare page', () => {
  const html = (tab: Page) => tab.locator('html')
  const offline = (tab: Page) => () => html(tab).getAttribute('data-offline')
  const build = (tab: Page) => () => html(tab).getAttribute('data-build')
  const patience = { timeout: 10_000 }

  beforeEach(async () => {
    await arrive(inject('updateA'))
    await page.goto(url)
    await waitForOffline(page)
  })
  afterEach(leave)

  it('says ready only when every file is kept', async () => {
    await expect.poll(offline(page), patience).toBe('starting ready')
    await page.evaluate(async () => {
      const [name = ''] = await caches.keys()
      const cache = await caches.open(name)
      const [first] = await cache.keys()
      if (first === undefined || !(await cache.delete(first))) throw new Error('nothing was kept')
    })
    await page.reload()
    await expect.poll(offline(page), patience).toBe('starting failed')
  })

  it('still says ready when there is no network to ask', async () => {
    await server.close()
    await context.setOffline(true)
    await page.reload()
    await expect.poll(offline(page), patience).toBe('starting ready')
  })

  it('says failed when a file cannot be fetched on the first visit', async () => {
    const broken = new AppServer(inject('updateA'))
    broken.missing = '/icon.svg'
    const elsewhere = await context.newPage()
    await elsewhere.goto(await broken.open())
    await expect.poll(offline(elsewhere), patience).toBe('starting failed')
    await broken.close()
  })

  it('is held while another tab has unsaved work', async () => {
    const tab = await context.newPage()
    await tab.goto(url)
    await tab.getByLabel('Unsaved work').check()
    server.dir = inject('updateB')
    await lookForUpdate(page)
    await expect.poll(offline(page), patience).toMatch(/update-waiting$/)
    await page.getByRole('button').click()
    await page.locator('html[data-outcome=held]').waitFor({ state: 'attached' })
    expect(await page.evaluate(async () => (await navigator.serviceWorker.ready).waiting !== null)).toBe(true)
    await tab.getByLabel('Unsaved work').uncheck()
    await page.getByRole('button').click()
    for (const each of [page, tab]) await expect.poll(build(each), patience).toBe('b')
  })

  it('does not reload a tab over work that became unsaved meanwhile, and does once it is saved', async () => {
    const tab = await context.newPage()
    await tab.goto(url)
    server.dir = inject('updateB')
    await lookForUpdate(page)
    await expect.poll(offline(page), patience).toMatch(/update-waiting$/)
    await tab.getByLabel('Unsaved work').check()
    await page.evaluate(async () => {
      ;(await navigator.serviceWorker.ready).waiting?.postMessage({ type: 'SKIP_WAITING' })
    })
    await expect.poll(build(page), patience).toBe('b')
    await new Promise((resolve) => setTimeout(resolve, 1500)) // three times as long as a tab waits between its looks
    expect(await html(tab).getAttribute('data-build')).toBe('a')
    expect(await tab.getByLabel('Unsaved work').isChecked()).toBe(true)
    await tab.getByLabel('Unsaved work').uncheck()
    await expect.poll(build(tab), patience).toBe('b')
  })

  it('does not reload the page when the first worker takes control', async () => {
    await expect.poll(offline(page), patience).toBe('starting ready')
    const howOpened = () =>
      performance.getEntriesByType('navigation').map((entry) => entry.toJSON() as { type: string })
    expect(await page.evaluate(howOpened)).toMatchObject([{ type: 'navigate' }])
    await page.reload() // the measure does tell one from the other
    expect(await page.evaluate(howOpened)).toMatchObject([{ type: 'reload' }])
  })

  it('tells how full the storage is', async () => {
    await page.locator('html[data-quota-bytes]').waitFor({ state: 'attached' })
    expect(Number(await html(page).getAttribute('data-quota-bytes'))).toBeGreaterThan(1_000_000)
    expect(['promised', 'not-promised']).toContain(await html(page).getAttribute('data-persistence'))
  })
})
