import { beforeEach, describe, expect, it } from 'vitest'
import { context, goOffline, openExample, page, takeInHand } from './in-hand.ts'

takeInHand({ hasTouch: true })
let base: string
beforeEach(async () => {
  await openExample(/One chamber/)
  base = page.url().replace(/plan$/, 'build')
  await goOffline()
})

const open = async (card = '') => {
  await page.goto(base + card)
  await page
    .getByRole(card === '' ? 'heading' : 'dialog')
    .first()
    .waitFor({ state: 'attached' })
}
const type = async (name: string, text: string) => {
  const box = page.getByRole('textbox', { name, exact: true })
  await box.fill(text)
  await box.press('Enter')
}
const lay = () => page.getByRole('button', { name: /^Laid: unit/ })
const laid = () => page.locator('.figure-box', { hasText: 'Laid' }).locator('b').innerText()
const saved = () => page.getByText(/^Saved on this phone/).waitFor({ state: 'attached' })
/** What the tape should read, as its box says it, mm. */
const planned = async (name: string): Promise<number> => {
  const help = await page.locator('.field', { hasText: name }).locator('.help').first().innerText()
  return Number(/Should be ([\d.]+)/.exec(help)?.[1])
}

describe('the mason, offline', () => {
  it('pegs out step by step, and the last step ticks the work', async () => {
    await open('/setout')
    for (let step = 0; step < 11; step++) await page.getByRole('button', { name: 'Done, next' }).click()
    await page.getByRole('button', { name: 'Close' }).click()
    const tick = page.getByRole('button', { name: 'Done: Peg out, square and level' })
    const pressed = () => tick.getAttribute('aria-pressed')
    await expect.poll(pressed).toBe('true')
    await tick.click()
    await expect.poll(pressed).toBe('false')
    await page.getByRole('button', { name: 'Undo' }).click()
    await expect.poll(pressed).toBe('true')
  })

  it('types tapes: square, out of square, one misread, an impossible set; what was typed is there after a reload', async () => {
    await open('/tapes')
    const names = ['A to B', 'B to C', 'C to D', 'D to A', 'A to C', 'B to D']
    const lengths = await Promise.all(names.map(planned))
    expect(lengths.every((length) => length > 500)).toBe(true)
    const typeAll = async (off: readonly number[]) => {
      for (const [index, name] of names.entries()) await type(name, String((lengths[index] ?? 0) + (off[index] ?? 0)))
    }
    const says = (text: RegExp) => page.getByRole('dialog').getByText(text).first().waitFor()
    await type('A to B', String(lengths[0]))
    await says(/can still lean/)
    await typeAll([0, 0, 0, 0, 0, 0])
    await says(/It is square/)
    await typeAll([0, 0, 0, 0, 8, -8])
    await says(/Move peg [A-D] .* (left|right)/)
    await typeAll([0, 0, 0, 0, 60, 0])
    await says(/A to C reads .* the other tapes make it/)
    await typeAll([0, 0, 0, 0, 0, 0])
    await type('A to C', String((lengths[0] ?? 0) + (lengths[1] ?? 0) + 40))
    await says(/misread|Another unit/)
    await type('B to D', 'long')
    await page.getByRole('dialog').getByRole('alert').waitFor()
    expect(await page.getByRole('textbox', { name: 'B to D' }).inputValue()).toBe('long')
    await saved()
    await page.reload()
    await page.getByRole('dialog').waitFor()
    const read = await page.getByRole('textbox', { name: 'A to B', exact: true }).inputValue()
    expect(Number(read.replace(/[^\d.]/g, ''))).toBe(lengths[0])
  })

  it('lays unit by unit, takes one back, ticks the course and the step with it', async () => {
    await open('/course')
    expect(await laid()).toBe('0')
    const count = Number(await page.locator('.far-figure').innerText())
    for (let unit = 1; unit <= 3; unit++) await lay().click()
    await expect.poll(laid).toBe('3')
    await page.getByRole('button', { name: 'One back' }).click()
    await expect.poll(laid).toBe('2')
    await page.getByRole('button', { name: 'Whole course laid' }).click()
    await expect.poll(laid).toBe(String(count))
    await page.getByRole('button', { name: 'On to course 2' }).click()
    await expect.poll(laid).toBe('0')
    await saved()
    await page.getByRole('button', { name: 'Close' }).click()
    const below = page.getByRole('button', { name: 'Done: Lay the courses below ground' })
    expect(await below.getAttribute('aria-pressed')).toBe('true')
    // Quick taps and a way out at once lose nothing.
    await open('/course')
    await page.evaluate(() => {
      const button = [...document.querySelectorAll('button')].find((one) => one.textContent.startsWith('Laid: unit'))
      button?.click()
      document.querySelector<HTMLElement>('dialog [aria-label="Close"]')?.click()
    })
    await saved()
    await open('/course')
    await expect.poll(laid).toBe('1')
  })

  it('turns courses with a sweep of the thumb', async () => {
    await open('/course')
    const sweep = (from: number, to: number) =>
      page.locator('.swipe-drawing').evaluate(
        (target, [x0, x1]) => {
          const touch = (clientX: number) => new Touch({ identifier: 1, target, clientX, clientY: 300 })
          target.dispatchEvent(
            new TouchEvent('touchstart', { bubbles: true, touches: [touch(x0)], changedTouches: [touch(x0)] }),
          )
          target.dispatchEvent(new TouchEvent('touchend', { bubbles: true, touches: [], changedTouches: [touch(x1)] }))
        },
        [from, to] as const,
      )
    await sweep(280, 100)
    await page.getByRole('heading', { name: /^Course 2 of/ }).waitFor()
    await sweep(100, 280)
    await expect.poll(() => page.getByRole('dialog').getByRole('heading').first().innerText()).toMatch(/^Course 1 of/)
  })

  it('measures a course high, and the rest of the joints follow to meet the top', async () => {
    await open('/measured')
    const rows = () => page.locator('.site-table tbody tr').allInnerTexts()
    const before = await rows()
    const top = page.getByRole('textbox', { name: 'Real top of the course' })
    const planTop = Number((await top.inputValue()).replace('−', '-'))
    await top.fill(String(planTop - 6))
    await top.press('Enter')
    await expect.poll(rows).not.toEqual(before)
    const after = await rows()
    // The first row is the last course: its level is what it was.
    expect(after[0]?.split('\t')[2]).toBe(before[0]?.split('\t')[2])
    await page.getByRole('button', { name: 'Take this level away' }).click()
    await expect.poll(rows).toEqual(before)
  })

  it('counts broken units against the list and buys what is over', async () => {
    await open('/needed')
    const broken = page.getByRole('textbox', { name: 'Broken now' })
    await broken.fill('9')
    await broken.press('Enter')
    await page.getByRole('button', { name: 'Write down 9 broken' }).click()
    await page.getByText('To buy besides').waitFor()
    await page.getByRole('button', { name: 'Take away' }).click()
    await expect.poll(() => page.getByText('To buy besides').count()).toBe(0)
  })

  it('mixes by the pan, with a quarter more of sand that swelled from 160 to 200 mm', async () => {
    await open('/batch?field=footing')
    const sand = () =>
      page
        .locator('.batch > li')
        .filter({ has: page.getByText('Sand', { exact: true }) })
        .locator('.site-text')
        .innerText()
    const dry = await sand()
    const settled = page.getByRole('textbox', { name: /^Settled under water/ })
    await settled.fill('160')
    await settled.press('Enter')
    await page.getByRole('heading', { name: /swells by 25 %/ }).waitFor()
    await expect.poll(sand).not.toBe(dry)
  })

  it('reads black on white in the sun, and goes back', async () => {
    await open('/course')
    const theme = () => page.locator('html').getAttribute('data-theme')
    await page.getByRole('button', { name: /for the sun/ }).click()
    expect(await theme()).toBe('sun')
    await page.getByRole('button', { name: /for the sun/ }).click()
    expect(await theme()).toBeNull()
  })
})

describe('every screen of the work', () => {
  it('has figures that are read at arm’s length', async () => {
    await open('/course')
    const size = (of: string) =>
      page
        .locator(of)
        .first()
        .evaluate((one) => Number.parseFloat(getComputedStyle(one).fontSize))
    expect(await size('.far-figure')).toBeGreaterThanOrEqual(56)
    expect(await size('.figure-box b')).toBeGreaterThanOrEqual(32)
    expect(await size('.figure-box span')).toBeGreaterThanOrEqual(16)
  })

  it('answers every thumb in course mode on a phone six times slower, and says in how many ms', async () => {
    await open('/course')
    await lay().waitFor()
    await page.waitForTimeout(1000)
    const slow = await context.newCDPSession(page)
    await slow.send('Emulation.setCPUThrottlingRate', { rate: 6 })
    await page.evaluate(() => {
      const took: number[] = []
      Object.assign(window, { took })
      new PerformanceObserver((list) => {
        for (const one of list.getEntries()) if (one.name === 'click') took.push(one.duration)
      }).observe({ type: 'event', durationThreshold: 16 } as PerformanceObserverInit)
    })
    const box = await lay().boundingBox()
    if (box === null) throw new Error('the button is on the screen')
    for (let tap = 0; tap < 8; tap++) {
      await page.mouse.click(box.x + 20, box.y + 20)
      await page.waitForTimeout(500)
    }
    const took = await page.evaluate(() => (window as unknown as { took: number[] }).took)
    // The budget is 100 ms. It is reported and no gate: the machine that tests is shared, and its clock says more of the others than of the app.
    const sorted = took.toSorted((one, other) => one - other)
    expect(sorted.length).toBeGreaterThan(3)
    await expect.poll(laid).toBe('8')
    console.info(
      `course mode, CPU slowed 6 times: median tap ${String(sorted[Math.floor(sorted.length / 2)])} ms of ${sorted.join(', ')}`,
    )
  })
})
