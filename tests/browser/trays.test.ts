import { beforeEach, describe, expect, it } from 'vitest'
import { accessibilityFaults } from './accessibility.ts'
import { goOffline, openExample, page, takeInHand } from './in-hand.ts'

takeInHand({ viewport: { width: 360, height: 740 } })
let place: string
beforeEach(async () => {
  await openExample(/Two chambers/)
  place = page.url()
  await goOffline()
})

const open = async (card: string) => {
  await page.goto(`${place}/${card}`)
  await page.getByRole('dialog').waitFor()
}
const type = async (name: string, text: string) => {
  const box = page.getByRole('textbox', { name: new RegExp(`^${name}`) })
  await box.fill(text)
  await box.press('Enter')
}
const dialog = () => page.getByRole('dialog')
/** What a drawing says of itself: with figures to tap it is a group, without an image. */
const drawn = (name: RegExp) =>
  dialog().getByRole('group', { name }).or(dialog().getByRole('img', { name })).first().waitFor()
const figure = async (name: string) =>
  (
    await dialog()
      .getByRole('button', { name: new RegExp(`^${name}`) })
      .first()
      .innerText()
  ).replace(/\D/g, '')
const isNarrow = () => page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth)

describe('the carpenter, offline', () => {
  it('sees the tray change as its sizes are typed, and opens what it weighs', async () => {
    await open('trays')
    // A rail of 20 mm kept 30 mm back bears on 50 mm of a wall of 215.
    await drawn(/rail, 20.mm .*30.mm back .*50.mm .*215.mm/)
    await type('Rail’s inner edge back from the fire face', '40')
    await drawn(/rail, 20.mm .*40.mm back .*60.mm .*215.mm/)
    await page.getByRole('radio', { name: 'From above' }).check()
    // 680 + 2 · (40 + 20) = 800 square; 800 + 2 · 200 = 1200 with handles.
    await drawn(/800.mm/)
    await drawn(/1200.mm/)
    await type('Handle beyond the frame', '150')
    await drawn(/1100.mm/)
    await page.getByRole('radio', { name: 'Corner', exact: true }).check()
    await page.getByRole('radio', { name: /half/i }).check()
    await drawn(/half/i)
    // 2 chambers of 8 and one spare.
    expect(await figure('Trays to make')).toContain('17')
    await type('Spare trays', '3')
    await expect.poll(() => figure('Trays to make')).toContain('19')
    await dialog()
      .getByRole('button', { name: /^Loaded tray/ })
      .click()
    await page.getByRole('dialog').getByText('E + F').first().waitFor()
  })

  it('cuts what is at hand first, with marks in running measure and the proof', async () => {
    await open('trays')
    await page.getByRole('button', { name: 'Add a piece at hand' }).click()
    await type('Its length, 1', '2400')
    await type('How many, 1', '2')
    await page.getByRole('link', { name: 'Cutting plans with marks' }).click()
    await dialog().getByRole('heading', { name: 'Cutting' }).waitFor()
    await dialog().getByText('From what is at hand.').first().waitFor()
    await dialog()
      .getByText(/^Proven: /)
      .first()
      .waitFor()
    // A rail of 1180 and the saw's 3 mm: the second of two begins at 1183 and is marked at 2363.
    await dialog()
      .getByText(/Mark at (.*1180.*2363|.*740.*)/)
      .first()
      .waitFor()
    expect(await isNarrow()).toBe(true)
    expect(await accessibilityFaults(page)).toEqual([])
  })

  it('hears what no length sold gives, and mends it at a tap', async () => {
    await open('trays')
    for (const [number, length] of [
      [1, '1100'],
      [2, '1000'],
    ] as const)
      if ((await page.getByRole('textbox', { name: new RegExp(`^Length sold, ${String(number)}`) }).count()) > 0)
        await type(`Length sold, ${String(number)}`, length)
    await page.goto(`${place}/money`)
    await dialog()
      .getByText(/a piece of 1180.mm is longer than the longest length on offer, 1100.mm/)
      .waitFor()
    await dialog()
      .getByRole('button', { name: /Make handles 160.mm long/ })
      .click()
    await expect
      .poll(() =>
        dialog()
          .getByText(/is longer than the longest length/)
          .count(),
      )
      .toBe(0)
  })

  it('comes back after years: faults found lead to what to buy and cut for the repair', async () => {
    await page.goto(place.replace(/plan$/, 'run/upkeep'))
    await page.getByRole('link', { name: 'Mend trays' }).click()
    await dialog().getByRole('heading', { name: 'To buy for it' }).waitFor()
    await type('Trays to make anew', '3')
    await type('Trays that only need new mesh', '2')
    await type('Covers to make anew', '1')
    await dialog()
      .getByText(/Timber for tray rails/)
      .first()
      .waitFor()
    await dialog()
      .getByText(/Wire mesh/)
      .first()
      .waitFor()
    await dialog().getByText('The repair, in all').waitFor()
    await dialog()
      .getByText(/^Proven: /)
      .first()
      .waitFor()
    expect(await isNarrow()).toBe(true)
    expect(await accessibilityFaults(page)).toEqual([])
  })

  it('has no fault that axe finds in the card', async () => {
    await open('trays')
    expect(await accessibilityFaults(page)).toEqual([])
    expect(await isNarrow()).toBe(true)
  })
})
