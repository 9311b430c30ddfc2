import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { pathToFileURL } from 'node:url'
import { bench, describe } from 'vitest'
import { totals } from '../../src/core/costs/totals.ts'
import { purchase } from '../../src/core/purchase/purchase.ts'
import { workOut, type WorkedOut } from '../../src/core/work-out.ts'
import { examplePlan } from '../core/costs/plans.ts'

/** The bill of one example against a general spreadsheet engine (IronCalc) that works out a comparable sheet, a formula for each figure. */
interface Sheet {
  setUserInput: (sheet: number, row: number, column: number, input: string) => void
  pauseEvaluation: () => void
  evaluate: () => void
  getFormattedCellValue: (sheet: number, row: number, column: number) => string
}
interface Engine {
  initSync: (wasm: { module: Uint8Array }) => unknown
  Model: new (name: string, locale: string, timezone: string, language: string) => Sheet
}

async function sheetOf(rows: readonly (readonly (string | number)[])[]): Promise<Sheet> {
  const { resolve } = createRequire(import.meta.url)
  const engine = (await import(/* @vite-ignore */ pathToFileURL(resolve('@ironcalc/wasm')).href)) as Engine
  engine.initSync({ module: readFileSync(resolve('@ironcalc/wasm/wasm_bg.wasm')) })
  const sheet = new engine.Model('bill', 'en', 'UTC', 'en')
  sheet.pauseEvaluation()
  for (const [row, cells] of rows.entries())
    for (const [column, cell] of cells.entries()) sheet.setUserInput(0, row + 1, column + 1, String(cell))
  sheet.evaluate()
  return sheet
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

const worked = workOut(examplePlan('three-chambers'))
const rows = rowsOf(worked)
const sheet = await sheetOf(rows)

describe('the bill of three chambers, every need changed', () => {
  bench('this core, cuts laid out at proven least cost and every figure with its working', () => {
    totals(worked.plan, purchase(worked.plan, worked.needs, { tidyNodes: 0 }).lines)
  })
  let turn = 0
  bench('spreadsheet engine, lots of one size', () => {
    turn++
    for (const [row, { net }] of worked.needs.entries())
      sheet.setUserInput(0, row + 1, 1, String(net.value * (1 + (turn % 7) / 100)))
    sheet.evaluate()
    if (!/\d/.test(sheet.getFormattedCellValue(0, rows.length, 4))) throw new Error('the sheet has no total')
  })
})
