import { readFileSync } from 'node:fs'
import path from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { plainCell, readCsv, safeCell, writeCsv } from '../../../src/core/documents/csv.ts'
import { majorText, priceTable, readDecimal, readPriceTable } from '../../../src/core/documents/price-table.ts'
import { parsePriceBook, withPrices, type PriceBook } from '../../../src/core/plan/price-book.ts'
import { newPlan } from '../../../src/core/plan/defaults.ts'

const xts = { code: 'XTS', digits: 2 }
const read = (text: string, currency = xts) =>
  readPriceTable(text, 'Market', currency, (line) => `line-${String(line)}`)
const kinds = (text: string) => read(text).problems.map(({ kind }) => kind)
const head = 'item,lot_size,lot,price,currency,seller,seller_name,seen\n'

const examplePrices = (): PriceBook => {
  const file = path.resolve(import.meta.dirname, '../../../shared/example-prices.json')
  const found = parsePriceBook(JSON.parse(readFileSync(file, 'utf8')))
  if (!found.ok) throw new Error('the example prices are no price book')
  return found.value
}

describe('a table of prices', () => {
  it('comes back as it went out: the example prices', () => {
    const book = examplePrices()
    const back = read(priceTable(book), book.currency)
    expect(back.problems).toEqual([])
    const sorted = (offers: PriceBook['offers']) =>
      Object.values(offers)
        .map((offer) => JSON.stringify(sortedKeys(offer)))
        .toSorted()
    expect(sorted(back.book.offers)).toEqual(sorted(book.offers))
  })

  it('reads what spreadsheets of other lands write: semicolons, decimal commas, tabs, marks of byte order', () => {
    const rows = [
      ['item', 'lot_size', 'price'],
      ['sand', '0,5', '12,50'],
    ]
    for (const separator of [';', '\t']) {
      const { book, problems } = read(`\uFEFF${rows.map((row) => row.join(separator)).join('\r\n')}\r\n`)
      expect(problems).toEqual([])
      expect(book.offers['line-2']).toMatchObject({ item: 'sand', lotSize: 0.5, priceMinor: 1250 })
    }
  })

  it('names each wrong line and keeps the good ones', () => {
    const { book, problems } = read(
      `${head}cement,50,bag,52.00,XTS,hardware,Corner,2026-03-02
gold,1,kg,1,XTS,hardware,,
sand,-1,m3,3,XTS,sand-stone,,
sand,much,m3,3,XTS,sand-stone,,
stone,1,m3,-3,XTS,sand-stone,,
stone,1,m3,3.005,XTS,sand-stone,,
stone,1,shovel,3,XTS,sand-stone,,
stone,1,m3,3,EUR,sand-stone,,
stone,1,m3,3,XTS,thief,,
stone,1,m3,3,XTS,sand-stone,,2026-02-30
cement,50,bag,53.00,XTS,hardware,Corner,2026-03-09
stone,1,m3,3,XTS,sand-stone,,2026-02-28,one,cell,too,many
stone,1,m3,=1+1,XTS,sand-stone,,
nails,0.5,kg,99999999999999,XTS,hardware,,
stone,0.5,m3,3,xts,sand-stone,,
`,
    )
    expect(problems.map(({ kind, ...rest }) => [kind, 'line' in rest ? rest.line : null])).toEqual([
      ['unknown-item', 3],
      ['out-of-range', 4],
      ['not-a-number', 5],
      ['out-of-range', 6],
      ['too-fine', 7],
      ['unknown-lot', 8],
      ['mixed-currency', 9],
      ['unknown-seller', 10],
      ['not-a-date', 11],
      ['duplicate', 12],
      ['cells', 13],
      ['formula', 14],
      ['out-of-range', 15],
    ])
    expect(Object.keys(book.offers)).toEqual(['line-2', 'line-16'])
  })

  it('says what is wrong with a whole file', () => {
    expect(kinds('')).toEqual(['empty'])
    expect(kinds('  \n \r\n')).toEqual(['empty'])
    expect(kinds('a photo of a cat')).toEqual(['no-header'])
    expect(kinds('item|lot_size|price\nsand|1|2\n')).toEqual(['no-header'])
    expect(kinds('item,price\nsand,2\n')).toEqual(['column-missing'])
    const open = read(`${head}sand,1,m3,3,XTS,sand-stone,,\nstone,1,m3,3,XTS,sand-stone,"never closed\nclay,1,m3,3\n`)
    expect(open.problems).toEqual([{ kind: 'quote-open', line: 3 }])
    expect(Object.keys(open.book.offers)).toEqual(['line-2'])
  })

  it('refuses a number that could be a thousand or a fraction', () => {
    expect(readDecimal('1,500')).toBeNull()
    expect(readDecimal('1,50')).toBe(1.5)
    expect(readDecimal('1 500.25')).toBe(1500.25)
    expect(readDecimal('1\u202F500')).toBe(1500)
    expect(readDecimal('1e5')).toBeNull()
    expect(readDecimal('Infinity')).toBeNull()
    expect(readDecimal('0x10')).toBeNull()
  })

  it('writes whole money without dividing, for currencies of 0, 2 and 3 digits', () => {
    expect(majorText(1050, 0)).toBe('1050')
    expect(majorText(1050, 2)).toBe('10.50')
    expect(majorText(5, 2)).toBe('0.05')
    expect(majorText(1050, 3)).toBe('1.050')
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e12 }), fc.constantFrom(0, 2, 3), (minor, digits) => {
        const book = read(`item,lot_size,price\nsand,1,${majorText(minor, digits)}\n`, { code: 'XTS', digits }).book
        expect(book.offers['line-2']?.priceMinor).toBe(minor)
      }),
    )
  })
})

describe('cells', () => {
  it('never begin like a formula once written, and read back as they were', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.array(
            fc.string({
              unit: fc.constantFrom('=', '+', '-', '@', 'a', ',', ';', '"', '\n', '\r', '\t', ' ', "'", '1'),
            }),
            { minLength: 2, maxLength: 4 },
          ),
          {
            minLength: 1,
            maxLength: 5,
          },
        ),
        fc.constantFrom<',' | ';' | '\t'>(',', ';', '\t'),
        (rows, separator) => {
          const text = writeCsv(rows, separator)
          const back = readCsv(text, separator)
          expect(back.openQuote).toBeNull()
          const kept = rows.filter((row) => row.some((cell) => safeCell(cell).trim() !== ''))
          const cells = back.rows.map((row) => row.cells.map(plainCell))
          expect(cells).toEqual(kept)
          for (const { cells: written } of back.rows)
            for (const cell of written) expect(/^[=+\-@\t\r]/.test(cell)).toBe(false)
        },
      ),
      { numRuns: 500 },
    )
  })

  it('know the formulas that spreadsheets run', () => {
    for (const text of ['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1']) {
      expect(safeCell(text)).toBe(`'${text}`)
      expect(plainCell(safeCell(text))).toBe(text)
    }
    expect(safeCell("it's")).toBe("it's")
  })
})

describe('a price book and a plan', () => {
  it('meet only in one currency, and leave what the user chose', () => {
    const book = examplePrices()
    const plan = newPlan({
      id: 'a',
      name: 'A',
      freshKgPerDay: 20,
      unitKey: 'hollow-450-150-225',
      soil: 'sand-dense',
      currency: book.currency,
    })
    const first = withPrices(plan, book)
    const [id = ''] = Object.keys(book.offers)
    expect(first.ok && Object.keys(first.value.offers).length).toBe(Object.keys(book.offers).length)
    const picked = first.ok ? first.value : plan
    const offer = picked.offers[id]
    if (offer === undefined) throw new Error('no offer')
    const second = withPrices(
      { ...picked, offers: { ...picked.offers, [id]: { ...offer, chosen: true, priceMinor: 1 } } },
      book,
    )
    expect(second.ok && second.value.offers[id]).toEqual({ ...offer, chosen: true })
    expect(withPrices({ ...plan, currency: xts }, book)).toEqual({
      ok: false,
      problems: [{ kind: 'other-currency', theirs: book.currency.code, ours: 'XTS' }],
    })
  })
})

const sortedKeys = (of: object): object =>
  Object.fromEntries(Object.entries(of).toSorted(([a], [b]) => (a < b ? -1 : 1)))
