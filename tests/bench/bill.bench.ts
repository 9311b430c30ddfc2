import { createRequire } from 'node:module'
import { bench, describe } from 'vitest'
import { totals } from '../../src/core/costs/totals.ts'
import { purchase } from '../../src/core/purchase/purchase.ts'
import { workOut, type WorkedOut } from '../../src/core/work-out.ts'
import { examplePlan } from '../core/costs/plans.ts'

/**
 * The bill of one example against a general spreadsheet engine that recalculates a comparable sheet, a formula for each figure.
 * The engine is under the GPL and no part of the product: `npm i --no-save hyperformula@3.5.0` puts it here for the time of the bench.
 */
interface Sheet {
  batch: (change: () => void) => void
  setCellContents: (at: { sheet: number; row: number; col: number }, value: unknown) => void
  getCellValue: (at: { sheet: number; row: number; col: number }) => unknown
}
interface Engine {
  HyperFormula: { buildFromArray: (rows: readonly (readonly (string | number)[])[], set: object) => Sheet }
}

function engine(): Engine | null {
  try {
    return createRequire(import.meta.url)('hyperformula') as Engine
  } catch {
    return null
  }
}

/** Needs with waste, whole lots, surplus and cost of each line, sum, contingency and total. */
function rowsOf({ plan, needs, purchase: bought }: WorkedOut): (string | number)[][] {
  const rows: (string | number)[][] = []
  const gross = new Map<string, string[]>()
  for (const { item, net, waste } of needs) {
    const row = String(rows.length + 1)
    rows.push([net.value, waste.value, `=A${row}*(1+B${row})`])
    gross.set(item, [...(gross.get(item) ?? []), `C${row}`])
  }
  const costs: string[] = []
  for (const { item, lotSize, price } of bought.lines) {
    const row = String(rows.length + 1)
    costs.push(`F${row}`)
    rows.push([
      `=${(gross.get(item) ?? []).join('+')}`,
      lotSize.value,
      `=ROUNDUP(A${row}/B${row},0)`,
      `=C${row}*B${row}`,
      price?.value ?? 0,
      `=C${row}*E${row}`,
      `=D${row}-A${row}`,
    ])
  }
  const row = String(rows.length + 1)
  rows.push([`=${costs.join('+')}`, plan.money.contingency, `=ROUND(A${row}*B${row},0)`, `=A${row}+C${row}`])
  return rows
}

const found = engine()
const worked = workOut(examplePlan('three-chambers'))

describe('the bill of three chambers, every need changed', () => {
  bench('this core, cuts laid out at proven least cost and every figure with its working', () => {
    totals(worked.plan, purchase(worked.plan, worked.needs, { tidyNodes: 0 }).lines)
  })
  if (found !== null) {
    const rows = rowsOf(worked)
    const sheet = found.HyperFormula.buildFromArray(rows, { licenseKey: 'gpl-v3' })
    let turn = 0
    bench('spreadsheet engine', () => {
      turn++
      sheet.batch(() => {
        for (const [row, { net }] of worked.needs.entries())
          sheet.setCellContents({ sheet: 0, row, col: 0 }, [[net.value * (1 + (turn % 7) / 100)]])
      })
      sheet.getCellValue({ sheet: 0, row: rows.length - 1, col: 3 })
    })
  }
})
