import type { Browser, BrowserContext } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest'
import { complaints, launch, phone } from './browser.ts'
import { whatDoesNotFit } from './fit.ts'
import { AppServer } from './server.ts'

let browser: Browser
let server: AppServer
let url: string

beforeAll(async () => {
  browser = await launch()
  server = new AppServer(inject('appA'))
  url = await server.open()
})
afterAll(async () => {
  await browser.close()
  await server.close()
})

const SCREENS = [
  'plan',
  'plan/chambers',
  'plan/walls',
  'plan/ground',
  'plan/compare',
  'buy',
  'buy/item:cement',
  'build',
  'build/crew',
  'run',
]

async function visit(context: BrowserContext, fontSize: string | null): Promise<string[]> {
  const page = await context.newPage()
  page.setDefaultTimeout(8000)
  if (fontSize !== null)
    await page.addInitScript((size) => {
      addEventListener('DOMContentLoaded', () => {
        document.documentElement.style.fontSize = size
      })
    }, fontSize)
  const found: string[] = []
  const look = async (where: string) => {
    await page.waitForTimeout(250)
    found.push(...(await whatDoesNotFit(page)).map((one) => `${where}: ${one}`))
  }
  await page.goto(url)
  await page.getByRole('heading', { name: 'Plans on this phone' }).waitFor()
  await look('front page, empty')
  await page.goto(`${url}/#/new`)
  await page.getByRole('button', { name: 'Make this plan' }).waitFor()
  await look('new plan')
  await page.goto(`${url}/#/`)
  await page.getByRole('button', { name: 'Example' }).click()
  await page.getByRole('button', { name: /Three chambers/ }).click()
  await page.getByRole('link', { name: /^Walls/ }).waitFor()
  const base = page.url().replace(/plan$/, '')
  for (const screen of SCREENS) {
    await page.goto(base + screen)
    await look(screen)
  }
  await page.goto(`${base}buy`)
  await page
    .getByRole('button', { name: /^To buy, in all: / })
    .first()
    .click()
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /^All lines/ })
    .click()
  await look('working')
  await page.goto(`${url}/#/`)
  await look('front page')
  return found
}

describe('nothing sticks out or is cut', () => {
  it.each([
    [320, 568, null],
    [360, 740, null],
    [360, 740, '200%'],
    [768, 1024, null],
    [1280, 800, null],
  ] as const)('at %d × %d, text %s', async (width, height, fontSize) => {
    const context = await phone(browser, { viewport: { width, height } })
    expect(await visit(context, fontSize)).toEqual([])
    expect(complaints(context)).toEqual([])
    await context.close()
  })
})

describe('the look', () => {
  it('shows all drawings side by side where there is room, and one at a time in the hand', async () => {
    for (const [width, drawings] of [
      [360, 1],
      [1280, 3],
    ] as const) {
      const context = await phone(browser, { viewport: { width, height: 800 } })
      const page = await context.newPage()
      await page.goto(url)
      await page.getByRole('button', { name: 'Example' }).click()
      await page.getByRole('button', { name: /Two chambers/ }).click()
      await page.getByRole('link', { name: /^Walls/ }).waitFor()
      await expect.poll(async () => Math.min(3, await page.locator('figure.draw:visible').count())).toBe(drawings)
      await context.close()
    }
  })

  it('keeps the light that was chosen', async () => {
    const context = await phone(browser)
    const page = await context.newPage()
    await page.goto(`${url}/#/settings`)
    await page.getByRole('radio', { name: 'Sun' }).check()
    expect(await page.locator('html').getAttribute('data-theme')).toBe('sun')
    await page.reload()
    await page.getByRole('heading', { name: 'Units and light' }).waitFor()
    expect(await page.locator('html').getAttribute('data-theme')).toBe('sun')
    expect(await page.evaluate(() => getComputedStyle(document.body).backgroundColor)).toBe('rgb(255, 255, 255)')
    await page.getByRole('radio', { name: 'As phone' }).check()
    expect(await page.locator('html').getAttribute('data-theme')).toBeNull()
    await context.close()
  })

  it('stands still for those who asked for less motion', async () => {
    const context = await phone(browser, { reducedMotion: 'reduce' })
    const page = await context.newPage()
    await page.goto(url)
    await page.getByRole('button', { name: 'Example' }).click()
    const moving = await page.getByRole('dialog').evaluate((one) => getComputedStyle(one).animationDuration)
    expect(moving).toBe('0s')
    await context.close()
  })
})
