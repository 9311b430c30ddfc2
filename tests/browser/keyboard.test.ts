import { expect, it } from 'vitest'
import { goOffline, openExample, page, takeInHand, url } from './in-hand.ts'
import { tabTo, underFocus, wayRound } from './keyboard.ts'
import { goTo, settled } from './screens.ts'

takeInHand({ reducedMotion: 'reduce' })

const press = (key: string) => page.keyboard.press(key)
const dialog = () => page.getByRole('dialog')
/** Opens what has the focus, and waits for its sheet. */
const open = async () => {
  await press('Enter')
  await dialog().waitFor()
  await settled(page)
}
/** Closes the sheet with Escape; the focus is where it came from. */
const closeTo = async (from: RegExp) => {
  await press('Escape')
  await dialog().waitFor({ state: 'detached' })
  await expect.poll(() => underFocus(page), { timeout: 3000 }).toMatch(from)
}

it('the main job is done with keys alone: a plan, its catch, its walls, the list, its sheets, a purchase, a step', async () => {
  await goOffline()
  await tabTo(page, /^New plan$/)
  await press('Enter')
  await page.getByRole('button', { name: 'Make this plan' }).waitFor()
  await tabTo(page, /^Fresh fish a day$/)
  await page.keyboard.type('60')
  await tabTo(page, /^What can the walls be made of/)
  await press('ArrowRight')
  await tabTo(page, /^Make this plan$/)
  await press('Enter')
  await page.getByRole('link', { name: /^Walls Fired brick/ }).waitFor()

  await tabTo(page, /^Catch /)
  await open()
  await tabTo(page, /^Fresh fish on a usual day$/)
  await press('ArrowUp')
  await closeTo(/^Catch /)

  await tabTo(page, /^Walls /)
  await open()
  await tabTo(page, /^Wall unit /)
  await press('ArrowUp')
  await closeTo(/^Walls /)

  await tabTo(page, /^Buy$/)
  await press('Enter')
  await tabTo(page, /^(Change price or lot:|Price) .*Cement/)
  await open()
  await tabTo(page, /^Price of one lot/)
  await page.keyboard.type('9.50')
  await press('Enter')
  await settled(page)
  expect(await underFocus(page)).toMatch(/^Price of one lot/)
  await closeTo(/Cement/)

  await tabTo(page, /^More for /)
  await open()
  await tabTo(page, /sheets/i)
  await press('Enter')
  await page.getByRole('heading', { name: 'Sheets' }).waitFor()
  await tabTo(page, /^Save the PDF$/)
  await press('Escape')
  await dialog().waitFor({ state: 'detached' })

  await tabTo(page, /^Record what was paid: Cement/)
  await open()
  await tabTo(page, /^Paid in all/)
  await page.keyboard.type('19')
  await tabTo(page, /^Record .*19$/)
  await press('Enter')
  await dialog().waitFor({ state: 'detached' })
  await page.getByRole('link', { name: /(All there|Record what was paid): Cement/ }).waitFor()

  await tabTo(page, /^Build$/)
  await press('Enter')
  await tabTo(page, /^Done: Peg out, square and level$/)
  await press('Space')
  await expect
    .poll(() => page.getByRole('button', { name: /^Done: Peg out/ }).getAttribute('aria-pressed'))
    .toBe('true')
})

it('every place and sheet is walked through and out of again', async () => {
  await openExample(/One chamber/)
  const base = page.url().replace(/plan$/, '')
  for (const place of ['plan', 'buy', 'build', 'run']) {
    await goTo(page, `${base.slice(url.length + 1)}${place}`)
    const names = await wayRound(page)
    const bar = names.indexOf('Run')
    expect(names.slice(bar - 3, bar + 1)).toEqual(['Plan', 'Buy', 'Build', 'Run'])
  }
  await goTo(page, `${base.slice(url.length + 1)}plan/money`)
  const names = await wayRound(page)
  expect(names[0]).toBe('Close')
  expect(names.at(-1)).toMatch(/^Money/)
})

it('says the new total, and what has come to be wrong, inside the sheet where it was changed', async () => {
  await openExample(/One chamber/)
  const said = () => dialog().getByRole('status').allInnerTexts()
  await page.getByRole('link', { name: /^Chambers/ }).click()
  const before = await said()
  await page.getByRole('button', { name: /^More: Chambers$/ }).press('Enter')
  await expect.poll(said, { timeout: 5000 }).not.toEqual(before)
  expect((await said()).join(' ')).toMatch(/Money, in all: F\sCFA\s[\d,]+/)
  await press('Escape')
  await page.getByRole('link', { name: /^Ground/ }).click()
  await page.getByRole('radio', { name: /^Mud, peat/ }).check({ force: true })
  await expect.poll(async () => (await said()).join(' '), { timeout: 5000 }).toMatch(/Problem\. .*Do not build/)
})
