import { writeFile, mkdtemp, rm } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { complaints, phone, waitForOffline } from './browser.ts'
import { browser, context, openExample, page, server, takeInHand, url } from './in-hand.ts'

takeInHand()
let folder: string
beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'journey-'))
})
afterAll(() => rm(folder, { recursive: true }))

const total = () => page.getByRole('button', { name: /^(To buy, in all|Priced so far|Money( so far)?): / }).first()
const saved = () => page.getByText(/^Saved on this phone/).waitFor()

async function newPlan(): Promise<void> {
  await page.getByRole('link', { name: 'New plan' }).click()
  const fish = page.getByRole('textbox', { name: /Fresh fish a day/ })
  await fish.fill('60')
  await fish.press('Enter')
  await page.getByRole('radio', { name: /Pressed earth block/ }).check()
  await page.getByRole('radio', { name: /It sinks in/ }).check()
  await page.getByRole('button', { name: 'Make this plan' }).click()
  await page.getByRole('link', { name: /^Walls/ }).waitFor()
}

describe('from three answers to a priced list, offline', () => {
  it('keeps wall unit, price and total through a dead server and a reload', async () => {
    await waitForOffline(page)
    await newPlan()
    await page.getByRole('link', { name: /^Walls/ }).click()
    await page.getByRole('radio', { name: /Hollow block 390 × 190 × 190/ }).check()
    await page.getByRole('button', { name: 'Close' }).click()
    await page.getByRole('link', { name: /Walls Hollow block 390 × 190 × 190/ }).waitFor()

    await page.getByRole('link', { name: 'Buy' }).click()
    const line = page.getByRole('link', { name: /^Price Hollow block/ })
    await line.click()
    const price = page.getByRole('textbox', { name: /Price of one lot/ })
    await price.fill('2.50')
    await price.press('Enter')
    await page.getByRole('button', { name: 'Close' }).click()
    await page.getByRole('link', { name: /^Change price or lot: .*Hollow block 390/ }).waitFor()
    const withBlocks = await total().textContent()

    await page.getByRole('link', { name: /^Price Cement/ }).click()
    await page.getByRole('textbox', { name: /Price of one lot/ }).fill('9')
    await page.getByRole('textbox', { name: /Price of one lot/ }).press('Enter')
    await page.getByRole('button', { name: 'Close' }).click()
    await expect.poll(() => total().textContent()).not.toBe(withBlocks)
    const withCement = await total().textContent()
    await saved()

    await server.close()
    await context.setOffline(true)
    await page.reload()
    await page.getByRole('link', { name: 'Buy' }).waitFor()
    await expect.poll(() => total().textContent()).toBe(withCement)
    expect(await page.getByRole('link', { name: /^Change price or lot: .*Hollow block 390/ }).count()).toBe(1)
    await page.getByRole('link', { name: 'Plan', exact: true }).click()
    await page.getByRole('link', { name: /Walls Hollow block 390 × 190 × 190/ }).waitFor()
  })

  it('prints a clean list: every line with its box, nothing of the screen', async () => {
    await openExample(/One chamber/)
    await page.getByRole('link', { name: 'Buy' }).click()
    const lines = await page.getByRole('link', { name: /^Change price or lot/ }).count()
    expect(lines).toBeGreaterThan(5)
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('.paper-box').count()).toBe(lines)
    expect(await page.getByRole('banner').isVisible()).toBe(false)
    expect(await page.getByRole('navigation').isVisible()).toBe(false)
    expect(await page.getByText('Materials list').isVisible()).toBe(true)
    const colours = await page.evaluate(() =>
      [...document.querySelectorAll('.paper, .paper *')].map((one) => getComputedStyle(one).color),
    )
    expect(new Set(colours)).toEqual(new Set(['rgb(0, 0, 0)']))
    await page.emulateMedia({ media: 'screen' })
  })

  it('opens the working of the total down to a typed price, and leads to its field', async () => {
    await openExample(/One chamber/)
    await total().click()
    const sheet = page.getByRole('dialog')
    await sheet.getByRole('button', { name: /^All lines/ }).click()
    await sheet.getByRole('button', { name: /^Wall units/ }).click()
    await sheet.getByRole('button', { name: /price/i }).click()
    await sheet.getByText('You typed this.').waitFor()
    await sheet.getByRole('button', { name: 'Change it' }).click()
    await page.getByRole('textbox', { name: /Price of one lot/ }).waitFor()
    expect(await page.evaluate(() => document.activeElement?.id)).toMatch(/^offers\..*\.priceMinor$/)
    expect(page.url()).toContain('/buy/')
  })

  it('goes back step by step: number, card, place, front page', async () => {
    await openExample(/One chamber/)
    await page.getByRole('link', { name: 'Run' }).click()
    await page.getByRole('button', { name: /^Trays: / }).click()
    await page
      .getByRole('dialog')
      .getByRole('button', { name: /^Dressed|^Fish|^Load|./ })
      .first()
      .waitFor()
    await page.goBack()
    await page.getByRole('dialog').waitFor({ state: 'detached' })
    expect(page.url()).toContain('/run')
    await page.goBack()
    await page.getByRole('link', { name: /^Walls/ }).waitFor()
    await page.goBack()
    await page.getByRole('heading', { name: 'Plans on this phone' }).waitFor()
    expect(await page.title()).toContain('Plans on this phone')
  })
})

describe('typing', () => {
  it('refuses beside the field with the limits, keeps what was typed, changes nothing', async () => {
    await openExample(/One chamber/)
    await page.getByRole('link', { name: /^Chambers/ }).click()
    const side = page.getByRole('textbox', { name: /Clear side of a chamber/ })
    const before = await side.inputValue()
    const money = await total().textContent()
    await side.fill('5000')
    await side.press('Enter')
    await page.getByText(/Between 400\smm and 2000\smm/).waitFor()
    expect(await side.inputValue()).toBe('5000')
    expect(await total().textContent()).toBe(money)
    await side.fill('2 ft 6 in')
    await side.press('Enter')
    expect(await side.inputValue()).toBe('762')
    await page.getByRole('button', { name: 'Close' }).click()
    await page.getByRole('button', { name: 'Undo' }).click()
    await page.getByRole('link', { name: new RegExp(`^Chambers .*${before}`) }).waitFor()
  })

  it('takes inside or overall, and the other follows', async () => {
    await openExample(/One chamber/)
    await page.getByRole('link', { name: /^Chambers/ }).click()
    const inside = page.getByRole('textbox', { name: /Clear side of a chamber/ })
    const overall = page.getByRole('textbox', { name: /Front of the kiln/ })
    const wallsMm = Number(await overall.inputValue()) - Number(await inside.inputValue())
    await overall.fill(String(1000 + wallsMm))
    await overall.press('Enter')
    await expect.poll(() => inside.inputValue()).toBe('1000')
  })
})

describe('files', () => {
  const open = async (name: string, text: string) => {
    const file = path.join(folder, name)
    await writeFile(file, text)
    await page.locator('input[type=file]').setInputFiles(file)
  }

  it.each([
    ['not ours', '{"hello": "there"}', /does not hold a kiln plan/],
    ['no text at all', '\u0000\u0001garbage', /does not hold a kiln plan/],
    ['damaged', '{"format":"kilnwright-plan","version":1,"id":"x"}', /part of it is damaged/],
    ['newer', '{"format":"kilnwright-plan","version":99,"id":"x"}', /comes from a newer version/],
  ])('%s: says so, and nothing changes', async (name, text, message) => {
    await openExample(/One chamber/)
    await saved()
    await page.getByRole('link', { name: 'All plans' }).click()
    await page.getByRole('heading', { name: 'Plans on this phone' }).waitFor()
    await open(`${name}.json`, text)
    await page.getByRole('alert').filter({ hasText: message }).waitFor()
    await page.getByRole('button', { name: 'Close' }).click()
    expect(await page.getByRole('listitem').count()).toBe(1)
    expect(page.url()).toMatch(/#\/$/)
  })

  it('saves a plan as a file that opens again, on another phone too', async () => {
    await openExample(/Two chambers/)
    await page.getByRole('link', { name: 'All plans' }).click()
    await page.getByRole('button', { name: /^More for/ }).click()
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as a file' }).click(),
    ])
    const file = path.join(folder, 'handed-on.json')
    await download.saveAs(file)
    const other = await phone(browser)
    const theirs = await other.newPage()
    await theirs.goto(url)
    await theirs.getByRole('heading', { name: 'Plans on this phone' }).waitFor()
    await theirs.locator('input[type=file]').setInputFiles(file)
    await theirs.getByRole('link', { name: /^Walls Fired brick/ }).waitFor()
    expect(complaints(other)).toEqual([])
    await other.close()
  })

  it('brings a deleted plan back from the notice', async () => {
    await openExample(/One chamber/)
    await saved()
    await page.getByRole('link', { name: 'All plans' }).click()
    await page.getByRole('button', { name: /^More for/ }).click()
    await page.getByRole('button', { name: 'Delete' }).click()
    await page.getByText('No plans here yet').waitFor()
    await page.getByRole('button', { name: 'Undo' }).click()
    await page.getByRole('button', { name: /^More for/ }).waitFor()
    expect(await page.getByText('No plans here yet').count()).toBe(0)
  })
})
