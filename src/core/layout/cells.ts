import type { WallUnit } from './contract.ts'
import { toMicro } from './micrometres.ts'
import type { CellsThrough, PlanPiece } from './stamping.ts'

interface Rectangle {
  readonly x: number
  readonly y: number
  readonly dx: number
  readonly dy: number
}

interface Cell {
  readonly from: number
  readonly length: number
  readonly width: number
}

/** Side of the squares the plan is sorted into: no unit is longer. */
const SQUARE = 600_000

const overlap = (a: Rectangle, b: Rectangle): number => {
  const dx = Math.min(a.x + a.dx, b.x + b.dx) - Math.max(a.x, b.x)
  const dy = Math.min(a.y + a.dy, b.y + b.dy) - Math.max(a.y, b.y)
  return dx > 0 && dy > 0 ? dx * dy : 0
}

/** Where a cell of a piece lies; null where the cut took it or opened it. */
function cellIn(piece: PlanPiece, cell: Cell): Rectangle | null {
  if (piece.kind === 'closer') return null
  if (piece.cut !== null && cell.from + cell.length > piece.cut) return null
  const from = piece.mirrored ? piece.dx - cell.from - cell.length : cell.from
  return piece.turn === 0
    ? { x: piece.x + from, y: piece.y + (piece.dy - cell.width) / 2, dx: cell.length, dy: cell.width }
    : { x: piece.x + (piece.dx - cell.width) / 2, y: piece.y + cell.from, dx: cell.width, dy: cell.length }
}

/** A cell lets fill through where half of it or more stands on cells of the course below; on the footing, always. Where the footing is stepped, a course stands on both. */
const THROUGH = 0.5

/** Works out, once per pair of patterns, which cells stand on cells. */
export function cellsThroughOf(unit: WallUnit): CellsThrough {
  const cells: Cell[] = unit.cells.map((cell) => ({
    from: toMicro(cell.fromM),
    length: toMicro(cell.lengthM),
    width: toMicro(cell.widthM),
  }))
  const none: readonly boolean[] = []
  return (pattern, below, stepped) => {
    if (cells.length === 0) return pattern.map(() => none)
    if (below === null) return pattern.map((piece) => cells.map((cell) => cellIn(piece, cell) !== null))
    const squares = new Map<number, Rectangle[]>()
    const squareOf = (x: number, y: number): number => Math.trunc(x / SQUARE) * 1000 + Math.trunc(y / SQUARE)
    for (const piece of below)
      for (const cell of cells) {
        const place = cellIn(piece, cell)
        if (place === null) continue
        const key = squareOf(place.x, place.y)
        const list = squares.get(key)
        if (list === undefined) squares.set(key, [place])
        else list.push(place)
      }
    return pattern.map((piece) =>
      cells.map((cell) => {
        const place = cellIn(piece, cell)
        if (place === null) return false
        let covered = 0
        const home = squareOf(place.x, place.y)
        for (const step of [-1001, -1000, -999, -1, 0, 1, 999, 1000, 1001])
          for (const other of squares.get(home + step) ?? []) covered += overlap(place, other)
        if (covered >= THROUGH * place.dx * place.dy) return true
        return stepped && !below.some((under) => overlap(place, under) > 0)
      }),
    )
  }
}
