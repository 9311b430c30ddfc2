import { at, type Vector } from './vector.ts'

/**
 * A covering problem: take whole numbers of columns so that every row is covered, at least cost.
 *
 *   minimise Σ cost · x   with   Σ a · x ≥ need,   x whole and not negative
 *
 * Rows are piece lengths (need = pieces asked for) and then stocks of which only so many exist
 * (a = −1, need = −available). Column i, for every piece row i, is "this piece is left out" at a forbidding cost, so
 * that a plan always exists and what cannot be cut shows itself.
 */
export interface Columns {
  readonly pieceRows: number
  readonly rows: number
  readonly count: number
  readonly cost: Vector
  /** Column p's entries are start[p] … start[p + 1] − 1 of `row` and `value`. */
  readonly start: Vector
  readonly row: Vector
  readonly value: Vector
}

/** Gathers columns; the piece rows' "left out" columns come first. */
export class ColumnList {
  private readonly costs: number[] = []
  private readonly starts: number[] = [0]
  private readonly entryRows: number[] = []
  private readonly entries: number[] = []

  private readonly pieceRows: number
  private readonly rows: number

  constructor(pieceRows: number, rows: number, costOfLeavingOut: readonly number[]) {
    this.pieceRows = pieceRows
    this.rows = rows
    costOfLeavingOut.forEach((cost, row) => {
      this.entryRows.push(row)
      this.entries.push(1)
      this.close(cost)
    })
  }

  /** Adds a column: counts by piece row, and what else it enters as row and value. */
  add(piece: Vector, cost: number, ...others: readonly (readonly [row: number, value: number])[]): void {
    for (let i = 0; i < piece.length; i++) {
      const n = at(piece, i)
      if (n === 0) continue
      this.entryRows.push(i)
      this.entries.push(n)
    }
    for (const [row, value] of others) {
      this.entryRows.push(row)
      this.entries.push(value)
    }
    this.close(cost)
  }

  private close(cost: number): void {
    this.costs.push(cost)
    this.starts.push(this.entryRows.length)
  }

  get count(): number {
    return this.costs.length
  }

  columns(): Columns {
    return {
      pieceRows: this.pieceRows,
      rows: this.rows,
      count: this.costs.length,
      cost: Float64Array.from(this.costs),
      start: Float64Array.from(this.starts),
      row: Float64Array.from(this.entryRows),
      value: Float64Array.from(this.entries),
    }
  }
}

/** Takes `times` of a column from what is still needed. */
export function takeColumn(columns: Columns, column: number, times: number, need: Vector): void {
  const { start, row, value } = columns
  const end = at(start, column + 1)
  for (let k = at(start, column); k < end; k++) {
    const i = at(row, k)
    need[i] = at(need, i) - times * at(value, k)
  }
}
