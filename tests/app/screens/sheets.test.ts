import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import type { TextItem } from 'pdfjs-dist/types/src/display/api.js'
import { describe, expect, it } from 'vitest'
import { itemName } from '../../../src/app/screens/buy/line-text.ts'
import { makeSheet, paperHead } from '../../../src/app/screens/sheets/make-sheets.ts'
import { SHEET_KINDS } from '../../../src/app/screens/sheets/sheet-kind.ts'
import type { PaperBlock, PaperSheet } from '../../../src/device/paper/paper-sheet.ts'
import { makePdf } from '../../../src/device/paper/pdf.ts'
import { EXAMPLES, fonts, handFor } from './sheet-hand.tsx'

interface ReadPage {
  readonly width: number
  readonly height: number
  readonly items: readonly TextItem[]
  /** All text of the page without spaces, so that broken lines and joined runs compare alike. */
  readonly squeezed: string
}

// pdf.js gives back the Greek letter for the micro sign: both are one character to Unicode's compatibility forms.
const squeeze = (text: string): string =>
  text
    .replaceAll('\u2212', '\u2013')
    .normalize('NFKC')
    .replace(/[\s\u00a0]+/g, '')

/** The independent reader of the tests: pdf.js. */
async function read(bytes: Uint8Array): Promise<ReadPage[]> {
  const file = await getDocument({ data: bytes.slice(), useSystemFonts: false, verbosity: 0 }).promise
  const pages: ReadPage[] = []
  for (let number = 1; number <= file.numPages; number++) {
    const page = await file.getPage(number)
    const { width, height } = page.getViewport({ scale: 1 })
    const { items } = await page.getTextContent()
    const texts = items.filter((item): item is TextItem => 'str' in item)
    pages.push({ width, height, items: texts, squeezed: squeeze(texts.map(({ str }) => str).join('')) })
  }
  await file.destroy()
  return pages
}

async function pdfOf(sheets: readonly PaperSheet[], example: (typeof EXAMPLES)[number], size: 'a4' | 'a5') {
  const bytes = await makePdf(sheets, paperHead(handFor(example), '25 November 2026'), size, fonts())
  if (bytes === null) throw new Error('stopped by nobody')
  return read(bytes)
}

/** Every piece of text that a block must put on paper. */
function textsOf(block: PaperBlock): string[] {
  switch (block.kind) {
    case 'heading':
    case 'text':
    case 'caution':
      return [block.text]
    case 'drawing':
      return block.caption === undefined ? [] : [block.caption]
    case 'drawings':
      return block.each.flatMap(({ caption, text = '' }) => [caption, text])
    case 'table':
      return block.rows.flatMap(({ cells, under = [] }) => [...cells, ...under])
    case 'rod':
      return block.marksMm.map(({ text }) => text)
    default:
      return block satisfies never
  }
}

describe.each(EXAMPLES)('sheets of %s', (example) => {
  it.each(['a4', 'a5'] as const)(
    'say on %s all that they should, inside the page, numbered',
    { timeout: 60_000 },
    async (size) => {
      const hand = handFor(example)
      const sheets = SHEET_KINDS.map((kind) => makeSheet(kind, hand))
      const pages = await pdfOf(sheets, example, size)
      // ISO 216: A4 is 210 × 297 mm, A5 148 × 210 mm; a point is 25.4 / 72 mm.
      const [widthMm, heightMm] = size === 'a4' ? [210, 297] : [148, 210]
      const all = pages.map(({ squeezed }) => squeezed).join('')
      for (const [index, page] of pages.entries()) {
        expect((page.width * 25.4) / 72).toBeCloseTo(widthMm, 1)
        expect((page.height * 25.4) / 72).toBeCloseTo(heightMm, 1)
        expect(page.squeezed).toContain(squeeze(`page ${String(index + 1)} of ${String(pages.length)}`))
        expect(page.squeezed).toContain(squeeze(hand.worked.plan.name))
        for (const { str, transform, width } of page.items) {
          const [a = 0, b = 0, , , x = 0, y = 0] = transform as number[]
          const turn = Math.atan2(b, a)
          expect.soft(x, str).toBeGreaterThanOrEqual(0)
          expect.soft(x + width * Math.cos(turn), str).toBeLessThanOrEqual(page.width)
          expect.soft(y, str).toBeGreaterThan(0)
          expect.soft(y + width * Math.sin(turn), str).toBeLessThan(page.height)
        }
      }
      for (const sheet of sheets)
        for (const text of sheet.blocks.flatMap(textsOf).filter((one) => one !== ''))
          expect.soft(all.includes(squeeze(text)), text).toBe(true)
    },
  )
})

it.each(EXAMPLES)('the list of %s on paper is the list on the screen, line by line', async (example) => {
  const hand = handFor(example)
  const { worked, words } = hand
  for (const size of ['a4', 'a5'] as const) {
    const pages = await pdfOf([makeSheet('materials', hand)], example, size)
    const all = pages.map(({ squeezed }) => squeezed).join('')
    let at = 0
    for (const line of worked.list.groups.flatMap(({ rows }) => rows)) {
      const money =
        line.cost === null ? 'no price yet' : words.number(line.cost.value / 10 ** worked.plan.currency.digits)
      for (const text of [itemName(line.item, worked.plan, words), money]) {
        const found = all.indexOf(squeeze(text), at)
        expect(found, `${size} ${line.item}: ${text}`).toBeGreaterThanOrEqual(at)
        at = found
      }
    }
    expect(at).toBeGreaterThan(0)
  }
})

it('letters of every language come back from the paper as they went in', async () => {
  const letters = 'ɛ ɔ ŋ ɓ ɗ ƙ ã ç Ɛ Ɔ Ŋ Ɓ Ɗ Ƙ é ọ ẹ ₵ ₦ € × ½ m² m³'
  const pages = await pdfOf([{ title: letters, blocks: [{ kind: 'text', text: letters }] }], 'one-chamber', 'a4')
  expect(pages[0]?.squeezed).toContain(squeeze(letters))
})

it('stops between blocks where it is asked to', async () => {
  const hand = handFor('one-chamber')
  const sheet = makeSheet('trays', hand)
  let asked = 0
  const stopped = await makePdf([sheet], paperHead(hand, ''), 'a4', fonts(), () => {
    asked += 1
    return asked < 3
  })
  expect(stopped).toBeNull()
  expect(asked).toBe(3)
})

it('strips of the gauge rod are full size', async () => {
  const marksMm = [0, 110, 210.5].map((atMm) => ({ atMm, text: `mark${String(atMm)}` }))
  const rod = { kind: 'rod', marksMm, joinText: 'strip' } as const
  const [page] = await pdfOf([{ title: 'rod', blocks: [rod] }], 'one-chamber', 'a4')
  const heightMm = marksMm.map(({ text }) => {
    const item = page?.items.find(({ str }) => str === text)
    return item === undefined ? Number.NaN : (((item.transform as number[])[5] ?? 0) * 25.4) / 72
  })
  for (const [index, { atMm }] of marksMm.entries())
    expect((heightMm[index] ?? 0) - (heightMm[0] ?? 0)).toBeCloseTo(atMm, 1)
})
