import readXlsx from 'read-excel-file/node'
import { describe, expect, it } from 'vitest'
import { listCsv, listRows } from '../../../src/app/screens/sheets/list-rows.ts'
import { officeBulk, officePlan } from '../../../src/app/screens/sheets/office.tsx'
import { resultData } from '../../../src/app/screens/sheets/result-data.ts'
import { spreadsheet } from '../../../src/device/paper/spreadsheet.ts'
import { bulkOrder } from '../../../src/core/choosing/bulk-order.ts'
import { EXAMPLES, handFor } from './sheet-hand.tsx'

describe.each(EXAMPLES)('tables of %s', (example) => {
  const { worked, words } = handFor(example)

  it('give numbers as numbers that add up to the total on the screen', () => {
    const rows = listRows(worked, words)
    const costAt = rows[0]?.indexOf(words.named('list-column.cost')) ?? -1
    expect(costAt).toBeGreaterThan(0)
    const costs = rows.slice(1).flatMap((row) => (typeof row[costAt] === 'number' ? [row[costAt]] : []))
    const total = costs.at(-1) ?? 0
    const lines = costs.slice(0, -1).reduce((sum, cost) => sum + cost, 0)
    expect(lines).toBeCloseTo(total, 6)
    expect(total * 10 ** worked.plan.currency.digits).toBeCloseTo(worked.costs.total.value, 6)
  })

  it('come back from a spreadsheet as they went in', async () => {
    const rows = listRows(worked, words)
    const read = await readXlsx(Buffer.from(spreadsheet('list', rows)))
    const first =
      Array.isArray(read) && 'data' in (read[0] ?? {}) ? (read[0] as unknown as { data: unknown[][] }).data : read
    expect(first).toEqual(rows)
  })

  it('as data say what the results say', () => {
    const data = resultData(worked)
    expect(data.costs.totalMinor).toBe(worked.costs.total.value)
    expect(data.layout.units).toHaveLength(worked.layout.counts.laid)
    const summed = data.list.reduce((sum, { costMinor }) => sum + (costMinor ?? 0), 0)
    expect(summed).toBe(data.costs.subtotalMinor)
    expect(JSON.parse(JSON.stringify(data))).toEqual(data)
  })
})

it('an office reads a file or a bare plan and says what is wrong with anything else', () => {
  const { worked } = handFor('one-chamber')
  const bare = officePlan(worked.plan)
  const filed = officePlan({ plan: worked.plan })
  if ('problems' in bare || 'problems' in filed) throw new Error('the example is a plan')
  expect(bare.csv()).toBe(listCsv(worked, handFor('one-chamber').words))
  expect(filed.json()).toEqual(bare.json())
  expect(officePlan({ plan: { ...worked.plan, chambers: { count: 99, clearSideM: 0.7 } } })).toHaveProperty('problems')
  expect(officePlan(null)).toHaveProperty('problems')
})

it('kilns that buy together never need more lots than apart, and never less than one fewer would hold', () => {
  const kilns = EXAMPLES.map((example) => handFor(example).worked)
  const lines = bulkOrder([...kilns, ...kilns])
  for (const { item, gross, lotSize, lotsApart, lotsTogether, widthM } of lines) {
    expect([item, lotsTogether <= lotsApart]).toEqual([item, true])
    // A roll's need is an area and its lot a length.
    expect([item, widthM > 0 || lotsTogether * lotSize >= gross - 1e-6]).toEqual([item, true])
  }
  expect(lines.some(({ lotsTogether, lotsApart }) => lotsTogether < lotsApart)).toBe(true)
  const plans = kilns.map((worked) => officePlan(worked.plan)).flatMap((plan) => ('problems' in plan ? [] : [plan]))
  expect(officeBulk(plans).split('\r\n').length).toBe(bulkOrder(kilns).length + 2)
})
