import { describe, expect, it } from 'vitest'
import { accessibilityFaults } from './accessibility.ts'
import { goOffline, openExample, page, takeInHand, url } from './in-hand.ts'

takeInHand({ viewport: { width: 360, height: 740 } })

// A treasurer's table with four good lines and the usual faults.
const TABLE = [
  'item,lot_size,lot,width_m,price,currency,seller,seller_name,place,seen',
  'cement,50,bag,,104.50,GHS,hardware,Market row,Old town,2026-01-10',
  'cement,50,bag,,99,GHS,hardware,"Corner, new",New town,2026-11-20',
  'mesh,25,roll,0.9,620,GHS,hardware,Corner,,2026-11-20',
  'rail,3.6,length,,26,GHS,timber,Shed,,2026-11-20',
  'wall-unit,1,piece,,=HYPERLINK("x"),GHS,block-maker,,,',
  'cement,50,bag,,"1,234",GHS,hardware,X,,',
  'marble,1,piece,,1,GHS,,,,',
  'sand,3,load,,90,XOF,,,,',
].join('\n')

const openTable = async (text: string) => {
  const asked = page.waitForEvent('filechooser')
  await page.locator('button', { hasText: 'Open a table' }).click()
  await (await asked).setFiles({ name: 'prices.csv', mimeType: 'text/csv', buffer: Buffer.from(text) })
}
const row = (text: RegExp) => page.getByRole('button', { name: text })
const isNarrow = () => page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth)
const dialog = () => page.getByRole('dialog')

describe('the price book, offline', () => {
  it('reads a table line by line, keeps the good lines, and lends them to a plan', async () => {
    await openExample(/Two chambers/)
    const plan = page.url()
    await goOffline()
    await page.goto(`${url}/#/prices`)
    await page.getByText('No prices yet.', { exact: false }).waitFor()
    await openTable(TABLE)
    await dialog().getByText('4 lines are good.').waitFor()
    for (const told of [
      'Line 6, price: formulas are never run. Write the number.',
      'Line 7, price: “1,234” is no number, or could be read in two ways.',
      'Line 8: nothing here is called “marble”.',
      'Line 9: XOF, where this book is in GHS.',
    ])
      await dialog().getByText(told).waitFor()
    expect(await accessibilityFaults(page)).toEqual([])
    await dialog().getByRole('button', { name: 'Keep the 4 good lines' }).click()
    await row(/99.*bag.*Corner, new.*New town/).waitFor()
    await row(/104\.50.*10 January 2026: ask again/).waitFor()
    expect(await isNarrow()).toBe(true)
    await page.reload()
    await row(/620.*roll/).waitFor()
    expect(await accessibilityFaults(page)).toEqual([])

    await page.goto(`${plan.replace(/plan$/, 'buy')}/prices`)
    await dialog().getByRole('button', { name: 'Take 4 prices from the book' }).click()
    await dialog().getByText('This plan has all the prices of the book.').waitFor()
    await dialog().getByText('Prices of an example are invented: they stay out of the book.').waitFor()
    await page.goto(`${plan.replace(/plan$/, 'buy')}/item:cement`)
    await expect
      .poll(() =>
        dialog()
          .getByRole('textbox', { name: /^Name of the seller/ })
          .last()
          .inputValue(),
      )
      .not.toBe('')
  })

  it('writes one down, changes it, takes it away and brings it back, and saves a table that opens again', async () => {
    await goOffline()
    await page.goto(`${url}/#/prices`)
    await page.getByRole('combobox', { name: 'Currency' }).selectOption('TZS')
    await page.getByRole('button', { name: 'Write down a price' }).click()
    const price = dialog().getByRole('textbox', { name: /^Price of one lot/ })
    await price.fill('104.50')
    await price.press('Enter')
    const name = dialog().getByRole('textbox', { name: /^Name of the seller/ })
    await name.fill('=Corner')
    await name.press('Enter')
    await dialog().getByRole('button', { name: 'Close' }).click()
    await row(/104.*bag.*=Corner/).waitFor()
    const saving = page.waitForEvent('download')
    await page.getByRole('button', { name: 'Save as a table' }).click()
    const saved = await saving
    const stream = await saved.createReadStream()
    let text = ''
    for await (const part of stream) text += String(part)
    // A name that looks like a formula must not run where the table is opened.
    expect(text).toContain("'=Corner")
    await row(/104.*bag.*=Corner/).click()
    await dialog().getByRole('button', { name: 'Take this price away' }).click()
    await page.getByText('No prices yet.', { exact: false }).waitFor()
    await page.getByRole('button', { name: 'Undo' }).click()
    await row(/104.*bag.*=Corner/).click()
    await dialog().getByRole('button', { name: 'Take this price away' }).click()
    await page.getByText('No prices yet.', { exact: false }).waitFor()
    await openTable(text)
    await dialog().getByRole('button', { name: 'Keep the good line' }).click()
    await row(/104.*bag.*=Corner/).waitFor()
  })

  it('keeps the prices of a plan of one’s own', async () => {
    await page
      .getByRole('link', { name: 'New plan' })
      .or(page.getByRole('button', { name: 'New plan' }))
      .first()
      .click()
    await page.getByRole('button', { name: 'Make this plan' }).click()
    await page.getByRole('link', { name: /^Walls/ }).waitFor()
    const buy = page.url().replace(/plan$/, 'buy')
    await goOffline()
    await page.goto(`${buy}/item:cement`)
    const price = dialog().getByRole('textbox', { name: /^Price of one lot/ })
    await price.fill('100')
    await price.press('Enter')
    await page.goto(`${buy}/prices`)
    await dialog().getByRole('button', { name: 'Keep one price of this plan in the book' }).click()
    await dialog().getByText('One price kept in the book.').waitFor()
    await dialog().getByRole('link', { name: 'Open the price book' }).click()
    expect(await row(/100.*bag, 50.kg/).innerText()).toContain('Hardware')
  })
  it('takes a currency that is on no list, with its three digits, and counts in it', async () => {
    await openExample(/One chamber/)
    const money = `${page.url()}/money`
    await goOffline()
    await page.goto(money)
    await dialog().getByRole('combobox', { name: 'Currency' }).selectOption('other')
    const letters = dialog().getByRole('textbox', { name: 'Letters of the currency' })
    await letters.fill('T1')
    await letters.press('Enter')
    await expect.poll(() => letters.getAttribute('aria-invalid')).toBe('true')
    await letters.fill('tnd')
    await letters.press('Enter')
    await dialog().getByRole('radio', { name: '3' }).check()
    const budget = dialog().getByRole('textbox', { name: /^Money there is/ })
    await budget.fill('1234.567')
    await budget.press('Enter')
    await expect.poll(() => budget.inputValue()).toBe('1,234.567')
    await dialog().getByText(/TND/).first().waitFor()
    expect(await accessibilityFaults(page)).toEqual([])
  })
})
