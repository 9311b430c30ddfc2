import { beforeEach, describe, expect, it } from 'vitest'
import { goOffline, openExample, page, takeInHand } from './in-hand.ts'

takeInHand()
beforeEach(async () => {
  await openExample(/One chamber/)
  await goOffline()
  await page.getByRole('link', { name: 'Buy', exact: true }).click()
})

const type = async (name: string, text: string) => {
  const box = page.getByRole('textbox', { name, exact: true })
  await box.fill(text)
  await box.press('Enter')
}
const gone = () => page.getByRole('dialog').waitFor({ state: 'detached' })
const saved = () => page.getByText(/^Saved on this phone/).waitFor({ state: 'attached' })
/** The figure of a button that says its name first. */
const figure = async (name: RegExp) =>
  Number((await page.getByRole('button', { name }).first().innerText()).replace(/\D/g, ''))

describe('the treasurer, offline', () => {
  it('records a purchase, finds it after a reload, sets it right, takes it away and brings it back', async () => {
    await page.getByRole('link', { name: /^Record what was paid: Wire staples/ }).click()
    await type('Paid in all', '1750')
    await page.getByRole('button', { name: /^Record .*1,750/ }).click()
    await gone()
    await page.getByRole('link', { name: /^All there: Wire staples/ }).waitFor()
    await saved()
    await page.reload()
    await page.getByRole('link', { name: /^All there: Wire staples/ }).waitFor()
    await page.getByRole('link', { name: 'Planned and paid' }).click()
    // The example's two records, 5300 and 8000, and this one.
    await expect.poll(() => figure(/^Paid so far/)).toBe(5300 + 8000 + 1750)
    await page
      .getByRole('dialog')
      .getByRole('link', { name: /^\d+ .*Wire staples.*1,750$/ })
      .click()
    await type('Paid in all', '1700')
    await page.getByRole('button', { name: 'Keep the change' }).click()
    await expect.poll(() => figure(/^Paid so far/)).toBe(5300 + 8000 + 1700)
    await page
      .getByRole('dialog')
      .getByRole('link', { name: /^\d+ .*Wire staples.*1,700$/ })
      .click()
    await page.getByRole('button', { name: 'Take this record away' }).click()
    await expect.poll(() => figure(/^Paid so far/)).toBe(5300 + 8000)
    await page.getByRole('button', { name: 'Close' }).first().click()
    await gone()
    await page.getByRole('button', { name: 'Undo' }).last().click()
    await page.getByRole('link', { name: /^All there: Wire staples/ }).waitFor()
  })

  it('keeps the box: a member, a contribution, a payout', async () => {
    await page.getByRole('link', { name: 'Group money' }).click()
    // Cash of the example, 120 000, less cement for 5300.
    await expect.poll(() => figure(/^In the box/)).toBe(114_700)
    await page.getByRole('link', { name: 'Add a member' }).click()
    await type('Name', 'Wood cutters')
    await page.getByRole('button', { name: 'Add this member' }).click()
    await page.getByRole('link', { name: /^Wood cutters/ }).waitFor()
    await page.getByRole('link', { name: 'Record a contribution' }).click()
    await page.getByRole('combobox', { name: 'Who' }).selectOption({ label: 'Wood cutters' })
    await type('Promised', '20000')
    await type('Given so far', '15000')
    await page.getByRole('button', { name: 'Keep this contribution' }).click()
    await expect.poll(() => figure(/^In the box/)).toBe(129_700)
    await page.getByRole('link', { name: 'Pay out of the box' }).click()
    await page.getByRole('combobox', { name: 'To whom' }).selectOption({ label: 'Smokers' })
    await type('How much', '8000')
    await page.getByRole('button', { name: /8,000 paid out/ }).click()
    await expect.poll(() => figure(/^In the box/)).toBe(121_700)
  })
})
