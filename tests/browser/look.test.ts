import { describe, expect, it } from 'vitest'
import { accessibilityFaults } from './accessibility.ts'
import { phone } from './browser.ts'
import { browser, serveApp, url } from './served.ts'

serveApp('once')

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
    await page.getByRole('heading', { name: 'Settings' }).waitFor()
    expect(await page.locator('html').getAttribute('data-theme')).toBe('sun')
    expect(await page.evaluate(() => getComputedStyle(document.body).backgroundColor)).toBe('rgb(255, 255, 255)')
    await page.getByRole('radio', { name: 'As phone' }).check()
    expect(await page.locator('html').getAttribute('data-theme')).toBeNull()
    await context.close()
  })

  it.each(['light', 'dark'] as const)(
    'keeps what is chosen, drawn and worked out apart in the reader’s own colours, %s',
    async (colorScheme) => {
      const context = await phone(browser, { forcedColors: 'active', colorScheme, reducedMotion: 'reduce' })
      const page = await context.newPage()
      page.setDefaultTimeout(8000)
      await page.goto(url)
      await page.getByRole('button', { name: 'Example' }).click()
      await page.getByRole('button', { name: /One chamber/ }).click()
      await page.getByRole('link', { name: /^Walls/ }).waitFor()
      const [canvas, text] = await page.evaluate(() => {
        const probe = document.createElement('i')
        document.body.append(probe)
        const colourOf = (name: string) => {
          probe.style.color = name
          return getComputedStyle(probe).color
        }
        const both = [colourOf('Canvas'), colourOf('CanvasText')]
        probe.remove()
        return both
      })
      const style = (of: string, property: string) =>
        page
          .locator(of)
          .first()
          .evaluate((one, name) => getComputedStyle(one).getPropertyValue(name), property)
      expect(canvas).not.toBe(text)
      expect(await style('body', 'background-color')).toBe(canvas)
      expect(await style('.bar a[aria-current]', 'background-color')).toBe(text)
      expect(await style('.bar a:not([aria-current])', 'background-color')).toBe(canvas)
      expect(await style('.num', 'background-image')).toContain(text)
      expect(await style('.draw .k-masonry', 'stroke')).toBe(text)
      expect(await accessibilityFaults(page)).toEqual([])
      await context.close()
    },
  )

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
