import { beforeEach, describe, expect, it } from 'vitest'
import { accessibilityFaults } from './accessibility.ts'
import { context, openExample, page, takeInHand } from './in-hand.ts'

takeInHand()
beforeEach(async () => {
  await openExample(/two/i)
  await page.getByRole('radio', { name: 'Inside' }).check({ force: true })
  await page.getByRole('slider', { name: 'Courses laid' }).waitFor()
})

const openViewer = async () => {
  await page
    .getByRole('button', { name: /^Open over the whole screen: Inside/ })
    .first()
    .click()
  await page.getByRole('dialog', { name: 'Drawings' }).waitFor()
}
const sheetWidth = () => page.locator('.viewer-sheet').evaluate((sheet) => sheet.getBoundingClientRect().width)

describe('the drawings on a phone', () => {
  it('build up by thumb, course by course', async () => {
    const flames = page.locator('.inside-drawing .k-flame')
    await expect.poll(() => flames.count()).toBe(2)
    await page.getByRole('button', { name: 'One course down' }).click()
    await expect.poll(() => flames.count()).toBe(0)
    await page.getByRole('button', { name: 'One course up' }).click()
    await expect.poll(() => flames.count()).toBe(2)
  })

  it('open over the screen, leaf, zoom, tell of a unit, and give the place back', async () => {
    await openViewer()
    await page.getByLabel('Which drawing').selectOption('course-2')
    const first = page.locator('.viewer-sheet [data-tag]').first()
    const box = await first.boundingBox()
    if (box === null) throw new Error('no unit on the paper')
    await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2)
    await page.getByText(/Course 2, /).waitFor()
    await page.locator('.viewer-sheet .k-unit-chosen').waitFor()

    const before = await sheetWidth()
    await page.mouse.wheel(0, -400)
    expect(await sheetWidth()).toBeGreaterThan(before)
    // A drag moves the paper and is no tap: what was told stays told.
    await page.mouse.down()
    await page.mouse.move(box.x + 120, box.y - 120, { steps: 5 })
    await page.mouse.up()
    expect(await page.locator('.viewer-sheet .k-unit-chosen').count()).toBe(1)
    await page.getByRole('button', { name: 'Whole', exact: true }).click()
    const whole = await sheetWidth()
    expect(whole).toBeLessThanOrEqual(361)
    await page.locator('.viewer-box').focus()
    await page.keyboard.press('+')
    expect(await sheetWidth()).toBeGreaterThan(whole)
    await page.keyboard.press('0')
    expect(await sheetWidth()).toBeCloseTo(whole, 0)

    expect(await accessibilityFaults(page)).toEqual([])
    await page.keyboard.press('Escape')
    await page.getByRole('dialog', { name: 'Drawings' }).waitFor({ state: 'detached' })
    expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toMatch(/Inside/)
  })

  it('are pinched larger by two fingers', async () => {
    await openViewer()
    await page.getByLabel('Which drawing').selectOption('front')
    const before = await sheetWidth()
    const touches = await context.newCDPSession(page)
    const at = (apart: number) => [
      { x: 180 - apart, y: 330, id: 1 },
      { x: 180 + apart, y: 330, id: 2 },
    ]
    await touches.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(30) })
    for (const apart of [40, 50, 60])
      await touches.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at(apart) })
    await touches.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] })
    // Fingers end twice as far apart as they began.
    expect((await sheetWidth()) / before).toBeCloseTo(2, 1)
  })

  it('show every view there is without a fault, none empty', async () => {
    await openViewer()
    const views = await page
      .getByLabel('Which drawing')
      .locator('option')
      .evaluateAll((options) => options.map((one) => (one as HTMLOptionElement).value))
    expect(views.length).toBeGreaterThan(25)
    const empty: string[] = []
    for (const view of views) {
      await page.getByLabel('Which drawing').selectOption(view)
      const paths = await page.locator('.viewer-sheet svg.ink :is(path, rect, circle, text)').count()
      const bad = await page.locator('.viewer-sheet svg').evaluate((svg) => svg.outerHTML.includes('NaN'))
      if (paths < 2 || bad) empty.push(`${view}: ${String(paths)} lines${bad ? ', not a number' : ''}`)
    }
    expect(empty).toEqual([])
  })
})
