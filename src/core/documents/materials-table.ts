import { toStep } from '../basics/count.ts'
import type { Plan } from '../plan/schema.ts'
import { writeCsv } from './csv.ts'
import type { MaterialsList } from './materials-list.ts'
import { majorText } from './price-table.ts'

/** Columns of the materials list as a table for a spreadsheet; their headings are under `list-column.<name>`. */
export const LIST_COLUMNS = [
  'seller',
  'item',
  'for',
  'net',
  'with-waste',
  'unit',
  'lots',
  'lot-size',
  'price',
  'carriage',
  'cost',
  'currency',
] as const

/** Amounts to a thousandth of their unit: finer than any scale on the way. */
const amount = (value: number): string => String(toStep(value, 0.001)).replace(/(\.\d{3})\d+$/, '$1')

/**
 * The list as a table that any spreadsheet opens: numbers with a point, money whole and not in minor units, nothing that runs as a formula.
 * `name` gives the reader's words for message keys. What is fetched for nothing stands at the end without lots; what has no price has empty cells.
 */
export function materialsTable(list: MaterialsList, currency: Plan['currency'], name: (key: string) => string): string {
  const money = (minor: number | undefined) => (minor === undefined ? '' : majorText(minor, currency.digits))
  const rows = list.groups.flatMap(({ seller, sellerName, rows: lines }) =>
    lines.map((line) => [
      sellerName === '' ? name(`seller.${seller}`) : sellerName,
      name(`item.${line.item}`),
      line.needs.map(({ use }) => name(`use.${use}`)).join(', '),
      amount(line.net.value),
      amount(line.gross.value),
      line.gross.unit,
      String(line.lots.value),
      amount(line.lotSize.value),
      money(line.price?.value),
      money(line.carriage?.value),
      money(line.cost?.value),
      line.cost === null ? '' : currency.code,
    ]),
  )
  const free = list.free.map(({ item, needs, net, gross }) => [
    '',
    name(`item.${item}`),
    needs.map(({ use }) => name(`use.${use}`)).join(', '),
    amount(net.value),
    amount(gross.value),
    gross.unit,
    '',
    '',
    '',
    '',
    '',
    '',
  ])
  const foot = (key: string, minor: number) => [
    name(key),
    '',
    '',
    '',
    '',
    '',
    '',
    '',
    '',
    '',
    money(minor),
    currency.code,
  ]
  return writeCsv(
    [
      LIST_COLUMNS.map((column) => name(`list-column.${column}`)),
      ...rows,
      ...free,
      foot('working.cost.contingency', list.contingency.value),
      foot(`working.${list.total.id}`, list.total.value),
    ],
    ',',
  )
}
