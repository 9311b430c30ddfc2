import { readFileSync } from 'node:fs'
import path from 'node:path'
import { parse } from 'csv-parse/sync'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { plainCell, readCsv, safeCell, writeCsv, type Separator } from '../../../src/core/documents/csv.ts'
import { LIST_COLUMNS, materialsTable } from '../../../src/core/documents/materials-table.ts'
import { priceTable } from '../../../src/core/documents/price-table.ts'
import { parsePriceBook } from '../../../src/core/plan/price-book.ts'
import { workOut } from '../../../src/core/work-out.ts'
import { examplePlan } from '../costs/plans.ts'

/** A table as a CSV library of general use reads it: strictly, every row as long as the first. */
const readOutside = (text: string, delimiter: Separator = ','): string[][] => parse(text, { delimiter })

const cell = fc.oneof(
  fc.string({ maxLength: 12, unit: 'grapheme' }),
  fc.string({ maxLength: 8, unit: fc.constantFrom('"', ',', ';', '\t', '\n', '\r', ' ', '=', "'", '+', 'a', '1') }),
  fc.constantFrom('', '=1+1', '@SUM(A1)', '-2', '+3', "'=x", 'Corner, the "old" one', 'two\nlines'),
)
const table = fc
  .integer({ min: 1, max: 5 })
  .chain((columns) =>
    fc.array(fc.array(cell, { minLength: columns, maxLength: columns }), { minLength: 1, maxLength: 6 }),
  )
  // A row with nothing in it is no row, here as there.
  .map((rows) => rows.map(([first, ...rest]) => [first === '' || first?.trim() === '' ? 'x' : (first ?? 'x'), ...rest]))

describe('tables, read by a CSV library of general use', () => {
  it.each([',', ';', '\t'] as const)(
    'have every cell as it was, parted by %j, and none that runs as a formula',
    (separator) => {
      fc.assert(
        fc.property(table, (rows) => {
          const text = writeCsv(rows, separator)
          const outside = readOutside(text, separator)
          expect(outside).toEqual(rows.map((row) => row.map(safeCell)))
          expect(outside.map((row) => row.map(plainCell))).toEqual(rows)
          expect(outside.flat().filter((one) => /^[=+\-@\t\r]/.test(one))).toEqual([])
          expect(readCsv(text, separator).rows.map(({ cells }) => cells)).toEqual(outside)
        }),
        { numRuns: 400 },
      )
    },
  )

  it('hold the example prices, line by line', () => {
    const file = path.resolve(import.meta.dirname, '../../../shared/example-prices.json')
    const found = parsePriceBook(JSON.parse(readFileSync(file, 'utf8')))
    if (!found.ok) throw new Error('the example prices are no price book')
    const rows: Record<string, string>[] = parse(priceTable(found.value), { columns: true })
    const offers = Object.values(found.value.offers)
    expect(rows).toHaveLength(offers.length)
    for (const offer of offers) {
      const twins = rows.filter(
        (row) =>
          row['item'] === offer.item &&
          row['variant'] === (offer.variant ?? '') &&
          row['seller_name'] === offer.sellerName &&
          Number(row['lot_size']) === offer.lotSize &&
          Number(row['width_m']) === offer.widthM,
      )
      expect([offer, twins.length]).toEqual([offer, 1])
      const priceMinor = Number(twins[0]?.['price']) * 10 ** found.value.currency.digits
      expect(priceMinor).toBeCloseTo(offer.priceMinor ?? Number.NaN, 6)
      expect(twins[0]?.['currency']).toBe(found.value.currency.code)
    }
  })

  it.each(['one-chamber', 'two-chambers', 'three-chambers'] as const)('hold the whole list to buy of %s', (name) => {
    const plan = examplePlan(name)
    const { list, purchase } = workOut(plan)
    const text = materialsTable(list, plan.currency, (key) => key)
    const outside = readOutside(text)
    expect(outside.every((row) => row.length === LIST_COLUMNS.length)).toBe(true)
    expect(outside).toHaveLength(1 + purchase.lines.length + purchase.free.length + 2)
    // By item: the table stands in the order of sellers.
    const at = (column: (typeof LIST_COLUMNS)[number]) => LIST_COLUMNS.indexOf(column)
    const written = outside
      .slice(1, 1 + purchase.lines.length)
      .map(
        (row) => `${row[at('item')] ?? ''} ${String(Math.round(Number(row[at('cost')]) * 10 ** plan.currency.digits))}`,
      )
    const lines = purchase.lines.map(({ item, cost }) => `item.${item} ${String(cost?.value)}`)
    expect(written.toSorted()).toEqual(lines.toSorted())
  })
})
