/** Rows of a text with separated values, after RFC 4180: quotes around cells, doubled inside; any of the usual line ends. */
export interface CsvText {
  readonly rows: readonly { readonly line: number; readonly cells: readonly string[] }[]
  /** Line where a quote opens that is never closed; what follows could not be told apart. */
  readonly openQuote: number | null
}

export type Separator = ',' | ';' | '\t'

/**
 * A text table as rows of cells, with the number of the line that each begins on (RFC 4180: quotes may hold
 * separators, line ends and doubled quotes).
 */
export function readCsv(text: string, separator: Separator): CsvText {
  const rows: { line: number; cells: string[] }[] = []
  let cells: string[] = []
  let cell = ''
  let quoted = false
  let line = 1
  let rowLine = 1
  let quoteLine = 1
  const endCell = () => {
    cells.push(cell)
    cell = ''
  }
  const endRow = () => {
    endCell()
    if (cells.some((one) => one.trim() !== '')) rows.push({ line: rowLine, cells })
    cells = []
    rowLine = line
  }
  const clean = text.startsWith('\uFEFF') ? text.slice(1) : text
  for (let at = 0; at < clean.length; at++) {
    const sign = clean.charAt(at)
    if (sign === '\n' || (sign === '\r' && clean.charAt(at + 1) !== '\n')) line++
    if (quoted) {
      if (sign !== '"') cell += sign
      else if (clean.charAt(at + 1) === '"') {
        cell += '"'
        at++
      } else quoted = false
    } else if (sign === '"' && cell === '') {
      quoted = true
      quoteLine = line
    } else if (sign === separator) endCell()
    else if (sign === '\n' || (sign === '\r' && clean.charAt(at + 1) !== '\n')) endRow()
    else if (sign !== '\r') cell += sign
  }
  endRow()
  return { rows, openQuote: quoted ? quoteLine : null }
}

/** Signs that make a spreadsheet take a cell for a formula; a text that has been made safe before counts too, or it would not come back whole. */
const FORMULA_START = /^'*[=+\-@\t\r]/

/** A cell that no spreadsheet runs: a text that looks like a formula is written with an apostrophe before it, as spreadsheets do themselves. */
export const safeCell = (text: string): string => (FORMULA_START.test(text) ? `'${text}` : text)

/** Takes that apostrophe off again. */
export const plainCell = (text: string): string =>
  text.startsWith("'") && FORMULA_START.test(text) ? text.slice(1) : text

/** Rows to text: cells with separators, quotes or line ends are quoted. */
export const writeCsv = (rows: readonly (readonly string[])[], separator: Separator): string =>
  rows
    .map((cells) => cells.map((cell) => quotedCell(safeCell(cell), separator)).join(separator))
    .map((row) => `${row}\r\n`)
    .join('')

const quotedCell = (cell: string, separator: Separator): string =>
  cell.includes(separator) || /["\n\r]/.test(cell) || cell !== cell.trim() ? `"${cell.replaceAll('"', '""')}"` : cell
