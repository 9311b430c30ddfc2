import { LIST_COLUMNS, materialsTable } from '../../../core/documents/materials-table.ts'
import { plainCell, readCsv } from '../../../core/documents/csv.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import type { Words } from '../../words/words.ts'

/** Columns whose cells are amounts. */
const AMOUNTS = new Set<string>(['net', 'with-waste', 'lots', 'lot-size', 'price', 'carriage', 'cost'])

/** The list as separated values for any spreadsheet. */
export const listCsv = ({ list, plan }: WorkedOut, words: Words): string =>
  materialsTable(list, plan.currency, (key) => words.named(key))

/** The same table as rows of a spreadsheet, amounts as numbers. */
export function listRows(worked: WorkedOut, words: Words): (string | number | null)[][] {
  return readCsv(listCsv(worked, words), ',').rows.map(({ cells }, row) =>
    cells.map((cell, column) => {
      if (cell === '') return null
      return row > 0 && AMOUNTS.has(LIST_COLUMNS[column] ?? '') ? Number(cell) : plainCell(cell)
    }),
  )
}
