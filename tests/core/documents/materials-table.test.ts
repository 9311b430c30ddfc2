import Big from 'big.js'
import { describe, expect, it } from 'vitest'
import { readCsv } from '../../../src/core/documents/csv.ts'
import { LIST_COLUMNS, materialsTable } from '../../../src/core/documents/materials-table.ts'
import { workOut } from '../../../src/core/work-out.ts'
import { examplePlan } from '../costs/plans.ts'

const tableOf = (name: Parameters<typeof examplePlan>[0], change = (plan: ReturnType<typeof examplePlan>) => plan) => {
  const plan = change(examplePlan(name))
  const { list, purchase } = workOut(plan)
  const text = materialsTable(list, plan.currency, (key) => key)
  return { plan, list, purchase, text, rows: readCsv(text, ',').rows.map(({ cells }) => cells) }
}
const at = (column: (typeof LIST_COLUMNS)[number]) => LIST_COLUMNS.indexOf(column)

describe('the materials list as a table', () => {
  it.each(['one-chamber', 'two-chambers', 'three-chambers'] as const)(
    'has every line once, whole rows, and adds up by a decimal library: %s',
    (name) => {
      const { plan, list, purchase, rows } = tableOf(name)
      const [head, ...body] = rows
      expect(head).toEqual(LIST_COLUMNS.map((column) => `list-column.${column}`))
      expect(body.every((row) => row.length === LIST_COLUMNS.length)).toBe(true)
      expect(body).toHaveLength(purchase.lines.length + purchase.free.length + 2)
      const lines = body.slice(0, purchase.lines.length)
      const cost = lines.reduce((sum, row) => sum.plus(row[at('cost')] ?? Number.NaN), new Big(0))
      const toMinor = new Big(10).pow(plan.currency.digits)
      expect(cost.times(toMinor).eq(list.subtotal.value)).toBe(true)
      const [setAside, total] = body.slice(-2)
      expect(cost.plus(setAside?.[at('cost')] ?? Number.NaN).eq(total?.[at('cost')] ?? Number.NaN)).toBe(true)
      expect(total?.[0]).toBe('working.cost.total')
    },
  )

  it('leaves the price of an unpriced line empty, and a seller’s name can do no harm', () => {
    const { rows, text } = tableOf('one-chamber', (plan) => {
      const { block, 'cement-corner': cement, ...offers } = plan.offers
      if (block === undefined || cement === undefined) throw new Error('the example has both')
      return {
        ...plan,
        offers: {
          ...offers,
          block: { ...block, priceMinor: null },
          'cement-corner': { ...cement, sellerName: '=HYPERLINK("http://x")', priceMinor: 1 },
        },
      }
    })
    const blocks = rows.find((row) => row[at('item')] === 'item.wall-unit')
    expect(blocks?.[at('price')]).toBe('')
    expect(blocks?.[at('cost')]).toBe('')
    expect(blocks?.[at('currency')]).toBe('')
    expect(rows.at(-1)?.[0]).toBe('working.cost.priced-so-far')
    expect(text).toContain(`"'=HYPERLINK(""http://x"")"`)
    expect(text.split('\r\n').some((row) => row.startsWith('='))).toBe(false)
  })
})
