import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { encodeDocument } from '../../../src/device/database/document-bytes.ts'
import { documentOf } from '../../../src/device/database/plan-document.ts'
import { pictureSize } from '../../../src/device/receipts/picture-size.ts'
import { MOST_RECEIPT_BYTES, receiptType } from '../../../src/device/receipts/receipt.ts'
import { MOST_FILE_BYTES, readPlanFile, writePlanFile } from '../../../src/device/sharing/plan-file.ts'
import { withReceipts } from '../../../src/device/sharing/receipt-files.ts'
import { planOf, spendingOf } from '../plans.ts'
import { jpegOf, WEBP, webpOf } from './pictures.ts'

describe('what bytes say of themselves', () => {
  it.each(Object.entries(WEBP))('a WebP picture of one pixel, %s', (_kind, bytes) => {
    expect(pictureSize(bytes)).toEqual({ type: 'image/webp', widthPx: 1, heightPx: 1 })
    expect(receiptType(bytes)).toBe('image/webp')
  })

  it('any size that the formats can say', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 65_535 }),
        fc.integer({ min: 1, max: 65_535 }),
        fc.constantFrom(0xc0, 0xc1, 0xc2),
        (widthPx, heightPx, frame) => {
          expect(pictureSize(jpegOf(widthPx, heightPx, frame))).toEqual({ type: 'image/jpeg', widthPx, heightPx })
          expect(pictureSize(webpOf(widthPx, heightPx))).toEqual({ type: 'image/webp', widthPx, heightPx })
        },
      ),
    )
  })

  it('nothing, where they are no picture, end early or are any bytes at all', () => {
    for (const whole of [jpegOf(9, 9), ...Object.values(WEBP)])
      for (let length = 0; length < 25; length++) expect(receiptType(whole.subarray(0, length))).toBeNull()
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 60 }), (bytes) => {
        expect(receiptType(bytes)).toBeNull()
        expect(receiptType(Uint8Array.from([0xff, 0xd8, ...bytes.map((byte) => byte & 0x7f)]))).toBeNull()
      }),
    )
  })

  it('too large a side, no side, or too heavy is no receipt', () => {
    expect(receiptType(jpegOf(1280, 1280))).toBe('image/jpeg')
    for (const bytes of [jpegOf(1281, 1), jpegOf(1, 65_535), jpegOf(0, 9), webpOf(1, 16_000)])
      expect(receiptType(bytes)).toBeNull()
    const heavy = new Uint8Array(MOST_RECEIPT_BYTES + 1)
    heavy.set(jpegOf(9, 9))
    expect(receiptType(heavy)).toBeNull()
  })
})

const plan = {
  ...planOf(),
  spending: {
    a: spendingOf({ receipt: 'ra' }),
    b: spendingOf({ receipt: 'rb' }),
    c: spendingOf({ receipt: null }),
  },
}
const file = writePlanFile(plan.name, plan, encodeDocument(documentOf(plan)))
const base64 = (bytes: Uint8Array) => Buffer.from(bytes).toString('base64')
const opened = (receipts: unknown) => {
  const { plans, problems } = readPlanFile(JSON.stringify({ ...(JSON.parse(file.text) as object), receipts }))
  expect(problems).toEqual([])
  expect(plans[0]?.plan).toEqual(plan)
  return plans[0]?.pictures
}

describe('receipts in a file', () => {
  it('come out as they went in, in as many files as a phone can open', () => {
    const heavy = Uint8Array.from({ length: MOST_RECEIPT_BYTES }, (_, at) => jpegOf(1000, 700)[at] ?? at % 251)
    const records = Array.from({ length: 45 }, (_, at) => `r${String(at)}`)
    const many = {
      ...plan,
      spending: Object.fromEntries(records.map((receipt) => [receipt, spendingOf({ receipt })])),
    }
    const parts = withReceipts(
      writePlanFile(many.name, many, encodeDocument(documentOf(many))),
      records.map((id) => ({ id, bytes: heavy })),
    )
    expect(new Set(parts.map(({ fileName }) => fileName)).size).toBe(parts.length)
    expect(parts.every(({ text }) => text.length < MOST_FILE_BYTES)).toBe(true)
    const came = parts.flatMap(({ text }) =>
      readPlanFile(text).plans.flatMap(({ pictures }) => pictures?.receipts ?? []),
    )
    expect(came.map(({ id }) => id)).toEqual(records)
    expect(came.every(({ bytes }) => Buffer.compare(bytes, heavy) === 0)).toBe(true)
  })

  it('leave a file without any as it is', () => {
    expect(withReceipts(file, [])).toEqual([file])
    expect(readPlanFile(file.text).plans[0]).not.toHaveProperty('pictures')
  })

  it('are refused one by one where they are none, and the plan is whole', () => {
    const good = { id: 'ra', picture: base64(WEBP.lossy) }
    expect(opened([good])).toEqual({ receipts: [{ id: 'ra', bytes: WEBP.lossy }], refused: 0 })
    const hostile: unknown[] = [
      { id: 'rb', picture: base64(new TextEncoder().encode('<svg onload="alert(1)"/>')) },
      { id: 'rb', picture: 'not base64 at all!' },
      { id: 'rb', picture: base64(jpegOf(65_535, 65_535)) },
      { id: 'rb', picture: 'A'.repeat(400_000) },
      { id: 'of-no-record', picture: base64(WEBP.lossy) },
      { id: '../../plans', picture: base64(WEBP.lossy) },
      { id: 7, picture: base64(WEBP.lossy) },
      { id: 'rb', picture: null },
      null,
      'rb',
      [],
      good,
    ]
    expect(opened([good, ...hostile])).toEqual({
      receipts: [{ id: 'ra', bytes: WEBP.lossy }],
      refused: hostile.length,
    })
    for (const raw of [7, 'text', {}, true]) expect(opened(raw)).toEqual({ receipts: [], refused: 1 })
    expect(opened(Array.from({ length: 10_000 }, () => good))?.receipts).toHaveLength(1)
  })
})
