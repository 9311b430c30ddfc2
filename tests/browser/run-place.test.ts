import { beforeEach, describe, expect, it } from 'vitest'
import { goOffline, openExample, page, takeInHand } from './in-hand.ts'

takeInHand({ hasTouch: true })
let base: string
beforeEach(async () => {
  await openExample(/Two chambers/)
  base = page.url().replace(/plan$/, 'run')
  await goOffline()
})

const open = async (card = '') => {
  await page.goto(base + card)
  await page
    .getByRole(card === '' ? 'heading' : 'dialog')
    .first()
    .waitFor({ state: 'attached' })
}
const box = (name: string) => page.getByLabel(name, { exact: true }).and(page.locator('input:not([type=radio])'))
const type = async (name: string, text: string) => {
  await box(name).fill(text)
  await box(name).press('Enter')
}
const close = () => page.getByRole('button', { name: 'Close' }).click()
const saved = () => page.getByText(/^Saved on this phone/).waitFor({ state: 'attached' })

describe('running the kiln, offline', () => {
  it('writes up a firing, keeps what was typed, fills in the money, and takes it out and back again', async () => {
    await open()
    await page.getByRole('button', { name: 'Write up firing 13' }).click()
    await box('Product out').waitFor()
    await type('Fish in, as landed', '200')
    await type('Product out', '54')
    await type('Wood burnt', '100')
    await page.getByRole('button', { name: 'Fill in what is open by your prices' }).click()
    // By hand, the example's prices a kilogram: 200 × 14.00, 100 × 0.60, 260.00 for all else, 54 × 64.00.
    await expect.poll(() => box('Sales').inputValue()).toBe('3,456.00')
    expect(await box('Fish').inputValue()).toBe('2,800.00')
    expect(await box('Wood').inputValue()).toBe('60.00')
    await page.getByRole('button', { name: /^Left: .*336/ }).waitFor()
    await type('Product out', '201')
    await page
      .locator('dialog')
      .getByText(/201.kg out of 200.kg in cannot be/)
      .waitFor()
    await saved()
    await page.reload()
    await expect.poll(() => box('Product out').inputValue()).toBe('201')
    await close()
    await page.getByText('200 kg in, 201 kg out').first().waitFor()
    await page.getByRole('link', { name: /Firing 13/ }).click()
    await page.getByRole('button', { name: 'Take this firing out of the log' }).click()
    await page.getByText(/is out of the log/).waitFor()
    await page.getByRole('link', { name: /Firing 13/ }).waitFor({ state: 'detached' })
    await page.locator('.toast').getByRole('button', { name: 'Undo' }).click()
    await page.getByText('200 kg in, 201 kg out').first().waitFor()
  })

  it('refuses beside the box what cannot be, and loses nothing', async () => {
    await open('/log:example-firing-04')
    for (const [name, wrong] of [
      ['Fish in, as landed', '0'],
      ['Product out', 'many'],
      ['Wood burnt', '-3'],
      ['Hours from lighting to unloading', '500'],
    ] as const) {
      await type(name, wrong)
      await expect.poll(() => box(name).getAttribute('aria-invalid')).toBe('true')
      expect(await box(name).inputValue()).toBe(wrong)
    }
    await page.goto(`${base.replace(/run$/, 'plan')}/catch`)
    await type('Water left in the dried fish', '74')
    await expect.poll(() => box('Water left in the dried fish').getAttribute('aria-invalid')).toBe('true')
    await type('Water in the fresh fish', '60')
    await type('Water left in the dried fish', '65')
    await page.getByText(/No drier than the fresh fish/).waitFor()
    expect(await box('Water left in the dried fish').inputValue()).toBe('65')
  })

  it('keeps looks and faults, and lists what mends them', async () => {
    await open('/upkeep:mesh')
    await page.getByRole('button', { name: 'More: Faults found' }).click()
    await close()
    await open('/upkeep:mesh') // what was begun is still there
    await page.getByRole('button', { name: 'Write down one fault' }).click()
    await page.getByText(/One fault open/).waitFor()
    await close()
    await open('/upkeep')
    await page.getByRole('heading', { name: 'To buy for repairs' }).waitFor()
    await page
      .getByText(/Wire mesh/)
      .first()
      .waitFor()
    await open('/upkeep:mesh')
    await page.getByRole('button', { name: 'It is mended' }).click()
    await expect.poll(() => page.getByText(/One fault open/).count()).toBe(0)
  })

  it('draws every firing in words too', async () => {
    await open()
    expect(await page.getByRole('img', { name: /Firing 4: 23 %, outside of 26\.3 % to 27\.8 %/ }).count()).toBe(1)
    await page.getByRole('radio', { name: 'Wood', exact: true }).check({ force: true })
    await expect.poll(() => page.getByRole('img', { name: /Firing 8: not written down/ }).count()).toBe(1)
  })
})
