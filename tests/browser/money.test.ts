import { readFile } from 'node:fs/promises'
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

/** A photo as a phone's camera takes it, of noise that packs badly: what was ever harder to make small is no receipt. */
async function noisyPhoto(widthPx: number, heightPx: number): Promise<Buffer> {
  const base64 = await page.evaluate(
    async ([width, height]) => {
      const canvas = new OffscreenCanvas(width, height)
      const pen = canvas.getContext('2d')
      for (let at = 0; at < 4000 && pen !== null; at++) {
        pen.fillStyle = `hsl(${String((at * 47) % 360)} 80% ${String((at * 31) % 100)}%)`
        pen.fillRect((at * 7919) % width, (at * 104_729) % height, 60, 40)
      }
      const made = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.95 })
      const bytes = new Uint8Array(await made.arrayBuffer())
      return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''))
    },
    [widthPx, heightPx] as const,
  )
  return Buffer.from(base64, 'base64')
}
const photoBox = () => page.locator('input[type=file][accept="image/*"]')
/** The size of a picture that is drawn, px; nothing while it is not. */
const drawnSize = (name: RegExp | string) =>
  page
    .getByRole('img', { name })
    .evaluate((one) => (one instanceof HTMLImageElement ? [one.naturalWidth, one.naturalHeight] : []))

describe('the treasurer, offline', () => {
  it('photographs a receipt, sees it small and large after a reload, and hands it over in a file only', async () => {
    await page.getByRole('link', { name: /^Record what was paid: Wire staples/ }).click()
    await photoBox().setInputFiles({ name: 'list.txt', mimeType: 'text/plain', buffer: Buffer.from('not a picture') })
    await page.getByText('This phone cannot read that as a picture.').waitFor()
    const photo = await noisyPhoto(3000, 4000)
    expect(photo.length).toBeGreaterThan(1_000_000)
    await photoBox().setInputFiles({ name: 'receipt.jpg', mimeType: 'image/jpeg', buffer: photo })
    await page.getByRole('button', { name: 'Take the photo away' }).waitFor()
    await type('Paid in all', '1750')
    await page.getByRole('button', { name: /^Record .*1,750/ }).click()
    await gone()
    await saved()
    await page.reload()
    await page.getByRole('link', { name: 'Planned and paid' }).click()
    await page.getByRole('button', { name: 'Show the receipt large: Wire staples' }).click()
    await expect.poll(() => drawnSize('Receipt: Wire staples')).toEqual([960, 1280])
    await page.getByRole('button', { name: 'Close' }).last().click()
    await page.goto(page.url().replace(/#\/plan\/([^/]*)\/.*/, '#/hand-over/$1'))
    await page.getByRole('button', { name: 'Photos of receipts go along in the file' }).click()
    const told = await page
      .getByText(/^One photo adds .* kB to the file\. Codes and links never carry photos\.$/)
      .innerText()
    expect(Number(/[\d.]+/.exec(told)?.[0])).toBeLessThan(201)
    const download = page.waitForEvent('download')
    await page.getByRole('button', { name: 'As a file' }).click()
    const file = JSON.parse(await readFile(await (await download).path(), 'utf8')) as {
      readonly receipts: readonly { readonly picture: string }[]
    }
    const [{ picture } = { picture: '' }] = file.receipts
    const bytes = Buffer.from(picture, 'base64')
    expect(bytes.length).toBeLessThanOrEqual(150_000)
    // Of the camera's file nothing is left but what is seen: WebP's own beginning, RFC 9649, and no Exif.
    expect([bytes.toString('latin1', 0, 4), bytes.toString('latin1', 8, 12)]).toEqual(['RIFF', 'WEBP'])
    expect(bytes.includes('EXIF')).toBe(false)
  })

  it('finds what was half typed after closing the sheet and after the tab died; and can begin anew', async () => {
    const pay = () => page.getByRole('link', { name: /^Record what was paid: Wire staples/ }).click()
    const paid = () => page.getByRole('textbox', { name: 'Paid in all', exact: true })
    await pay()
    const planned = await paid().inputValue()
    await page.getByRole('textbox', { name: 'Note', exact: true }).fill('second shop on the left')
    await page.getByRole('button', { name: 'Close' }).first().click()
    await gone()
    await pay()
    await page.getByText('Typed before and not recorded yet').waitFor()
    expect(await page.getByRole('textbox', { name: 'Note', exact: true }).inputValue()).toBe('second shop on the left')
    await paid().fill('1234')
    const address = page.url()
    await page.goto('about:blank')
    await page.goto(address)
    await page.getByText('Typed before and not recorded yet').waitFor()
    expect(await paid().inputValue()).toBe('1,234')
    expect(await page.getByRole('textbox', { name: 'Note', exact: true }).inputValue()).toBe('second shop on the left')
    await page.getByRole('button', { name: 'Begin anew' }).click()
    expect(await paid().inputValue()).toBe(planned)
    await page.reload()
    await paid().waitFor()
    expect(await page.getByText('Typed before and not recorded yet').count()).toBe(0)
  })

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
