import { readFile } from 'node:fs/promises'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import readXlsx from 'read-excel-file/node'
import { beforeEach, describe, expect, it } from 'vitest'
import { itemName } from '../../src/app/screens/buy/line-text.ts'
import { listCsv, listRows } from '../../src/app/screens/sheets/list-rows.ts'
import { resultData } from '../../src/app/screens/sheets/result-data.ts'
import { handFor } from '../app/screens/sheet-hand.tsx'
import { context, goOffline, openExample, page, takeInHand } from './in-hand.ts'

takeInHand({ hasTouch: true, acceptDownloads: true })
let base: string
beforeEach(async () => {
  await openExample(/One chamber/)
  base = page.url().replace(/plan$/, '')
  await goOffline()
})

const { worked, words } = handFor('one-chamber')
const lines = worked.list.groups.flatMap(({ rows }) => rows)
const squeeze = (text: string): string => text.normalize('NFKC').replace(/\s+/g, '')

/** Text of a PDF page by page, as an independent reader finds it. */
async function textOf(bytes: Uint8Array): Promise<string[]> {
  const file = await getDocument({ data: new Uint8Array(bytes), useSystemFonts: false, verbosity: 0 }).promise
  const pages: string[] = []
  for (let number = 1; number <= file.numPages; number++) {
    const { items } = await (await file.getPage(number)).getTextContent()
    pages.push(squeeze(items.map((item) => ('str' in item ? item.str : '')).join('')))
  }
  await file.destroy()
  return pages
}

/** Every line of the list, in its order. */
function expectList(text: string): void {
  let at = 0
  for (const line of lines) {
    const name = squeeze(itemName(line.item, worked.plan, words))
    const found = text.indexOf(name, at)
    expect(found, `${name} after sign ${String(at)}`).toBeGreaterThanOrEqual(at)
    at = found
  }
  expect(text).toContain(squeeze(words.number(worked.list.total.value / 10 ** worked.plan.currency.digits)))
}

async function download(button: string | RegExp): Promise<{ name: string; bytes: Buffer }> {
  const [file] = await Promise.all([
    page.waitForEvent('download', { timeout: 30_000 }),
    page.getByRole('button', { name: button }).click(),
  ])
  return { name: file.suggestedFilename(), bytes: await readFile(await file.path()) }
}

/** What the app says, within the time that making sheets takes. */
const hears = async (text: string | RegExp, nth = 0): Promise<boolean> => {
  await page.getByText(text).nth(nth).waitFor({ timeout: 30_000 })
  return true
}

const open = async (at: string) => {
  await page.goto(base + at)
  if (at.includes('/')) await page.getByRole('dialog').waitFor()
}

/** A phone that answers a wish to share as it is told. */
const shareAnswers = (outcome: 'AbortError' | 'NotAllowedError' | null) =>
  page.evaluate((name) => {
    const share = () => (name === null ? Promise.resolve() : Promise.reject(new DOMException('', name)))
    Object.defineProperty(navigator, 'share', { value: share, configurable: true })
    Object.defineProperty(navigator, 'canShare', { value: () => true, configurable: true })
  }, outcome)

describe('the treasurer, offline', () => {
  it('prints the list from Buy: every line on paper, in its order, with the total', async () => {
    await open('buy')
    await page.getByRole('button', { name: 'Print the list' }).waitFor()
    const text = (await textOf(await page.pdf({ format: 'A4' }))).join('')
    expectList(text)
    expect(text).toContain(squeeze('Materials list'))
    expect(text).not.toContain(squeeze('Print the list'))
  })

  it.each(['A4', 'A5'])('saves the list on %s as a PDF that says the same', async (size) => {
    await open('buy/sheets')
    await page.getByRole('radio', { name: size }).check()
    const { name, bytes } = await download('Save the PDF')
    expect(name).toMatch(/\.pdf$/)
    const pages = await textOf(bytes)
    expectList(pages.join(''))
    for (const [index, text] of pages.entries())
      expect(text).toContain(`page${String(index + 1)}of${String(pages.length)}`)
    expect(await hears(`Saved as ${name}.`)).toBe(true)
  })

  it('saves tables that other programs read back: values, spreadsheet, data, drawings', async () => {
    await open('buy/sheets')
    const csv = await download('List as CSV')
    expect(csv.bytes.toString('utf8').replace('\uFEFF', '')).toBe(listCsv(worked, words))
    const xlsx = await download('List as spreadsheet')
    const read: unknown = await readXlsx(xlsx.bytes)
    const [first] = read as { data?: unknown[][] }[]
    expect(first?.data ?? read).toEqual(listRows(worked, words))
    const json = await download('All results as JSON')
    expect(JSON.parse(json.bytes.toString('utf8'))).toEqual(JSON.parse(JSON.stringify(resultData(worked))))
    const svg = await download('Drawings as SVG')
    expect(svg.bytes.toString('utf8')).toMatch(/<svg[^>]* width="[\d.]+mm"/)
  })

  it('hears apart that sending was closed, refused and done, and has the sheets still', async () => {
    await open('buy')
    await shareAnswers('AbortError')
    await open('buy/sheets')
    const send = page.getByRole('button', { name: 'Send the PDF' })
    await send.click()
    expect(await hears(/the choice was closed/)).toBe(true)
    await shareAnswers('NotAllowedError')
    await page.getByRole('button', { name: 'Send now' }).click()
    expect(await hears(/refused to send it/)).toBe(true)
    expect((await download('Save now')).name).toMatch(/\.pdf$/)
    await shareAnswers(null)
    await send.click()
    expect(await hears('Handed to the phone.')).toBe(true)
  })

  it('hears that the storage took no file, and that a part of the app is missing', async () => {
    await open('buy/sheets')
    await page.evaluate(() => {
      URL.createObjectURL = () => {
        throw new DOMException('', 'QuotaExceededError')
      }
    })
    await page.getByRole('button', { name: 'List as CSV' }).click()
    expect(await hears(/storage may be full/)).toBe(true)
    await page.getByRole('button', { name: 'Save the PDF' }).click()
    await page
      .getByText(/storage may be full/)
      .nth(1)
      .waitFor({ timeout: 30_000 })
    await page.evaluate(() => {
      window.fetch = () => Promise.reject(new TypeError('Failed to fetch'))
    })
    await page.getByRole('button', { name: 'Save the PDF' }).click()
    expect(await hears(/part of the app is not on this phone/)).toBe(true)
  })

  it('sends the list as text, and pastes it where the phone refuses to send', async () => {
    await open('buy')
    await context.grantPermissions(['clipboard-read', 'clipboard-write'])
    await shareAnswers('NotAllowedError')
    const send = page.getByRole('button', { name: 'Send as text' })
    await send.click()
    expect(await hears(/The list is copied/)).toBe(true)
    const text = await page.evaluate(() => navigator.clipboard.readText())
    expect(text.split('\n').filter((line) => line.startsWith('- '))).toHaveLength(lines.length)
    await shareAnswers('AbortError')
    await send.click()
    expect(await hears(/The list is still here/)).toBe(true)
  })

  it('hears that no print window came', async () => {
    await open('buy')
    await page.evaluate(() => {
      window.print = () => {}
    })
    await page.getByRole('button', { name: 'Print the list' }).click()
    expect(await hears(/No print window came/)).toBe(true)
  })

  it('prints nothing but a word where no plan is open', async () => {
    await page.goto(base.replace(/#.*/, '#/'))
    await page.getByRole('heading', { name: 'Plans on this phone' }).waitFor()
    const text = (await textOf(await page.pdf({ format: 'A4' }))).join('')
    expect(text).toContain(squeeze('Nothing to print here'))
  })
})

describe('the mason, offline', () => {
  it('sees how far the sheets are and stops them; then saves those of the work', async () => {
    await open('build/sheets')
    const slow = await context.newCDPSession(page)
    await slow.send('Emulation.setCPUThrottlingRate', { rate: 20 })
    await page.getByRole('button', { name: 'Save the PDF' }).click({ timeout: 40_000 })
    expect(await hears(/Making the sheets \d+ %/)).toBe(true)
    await page.getByRole('button', { name: 'Stop' }).click()
    await slow.send('Emulation.setCPUThrottlingRate', { rate: 1 })
    expect(await hears('Stopped. Nothing was saved.')).toBe(true)
    const { bytes } = await download('Save the PDF')
    const text = (await textOf(bytes)).join('')
    for (const title of ['Setting out', 'Courses', 'Gauge rod', 'Square the corner', 'Mark the walls'])
      expect(text).toContain(squeeze(title))
    for (const { index } of worked.layout.courses) expect(text).toContain(squeeze(`Course ${String(index)}, top at`))
  })
})
