import { drawingSize, inkDrawing } from './pdf-drawing.ts'
import { MM_PER_POINT } from './pdf-pen.ts'
import { inFace, LINE, type Page } from './pdf-page.ts'
import type { PaperBlock, PaperRow, PaperTable } from './paper-sheet.ts'

/** A heading stands at the foot of a page only with something under it. */
const HEADING_ROOM_MM = 36

const GROUP_ROOM_MM = 14

/** Adds one block where the pen is. */
export function addBlock(page: Page, block: PaperBlock): void {
  switch (block.kind) {
    case 'heading':
      page.room(HEADING_ROOM_MM)
      page.font(true, page.size.body + 3)
      paragraph(page, block.text, page.size.body + 3, 4)
      return
    case 'text':
      page.font(block.strong === true)
      paragraph(page, block.text, page.size.body, 1)
      return
    case 'caution':
      caution(page, block.text)
      return
    case 'drawing':
      drawing(page, block.markup, block.caption, block.mostHighMm ?? page.bottom - page.top - 8)
      return
    case 'drawings':
      drawings(page, block)
      return
    case 'table':
      inkTable(page, block)
      return
    case 'rod':
      rod(page, block.marksMm, block.joinText)
      return
    default:
      block satisfies never
  }
}

function paragraph(page: Page, text: string, points: number, spaceMm: number): void {
  const high = points * LINE * MM_PER_POINT
  page.yMm += page.yMm > page.top ? spaceMm : 0
  const lines = page.lines(text, page.width)
  // A short paragraph is read in one piece.
  if (lines.length <= 8) page.room(lines.length * high)
  for (const line of lines) {
    page.room(high)
    page.pen.text(line, page.left, page.yMm + high * 0.78)
    page.yMm += high
  }
  page.yMm += 1
}

function caution(page: Page, text: string): void {
  page.font(false)
  const high = page.size.body * LINE * MM_PER_POINT
  const lines = page.lines(text, page.width - 14)
  const box = lines.length * high + 4
  page.room(box + 2)
  page.yMm += 2
  const [x, y] = [page.left, page.yMm]
  page.pen.lineStyle(0.5)
  page.pen.rect(x, y, page.width, box)
  page.pen.polygon([
    [x + 5, y + 2.2],
    [x + 8.2, y + 7.6],
    [x + 1.8, y + 7.6],
  ])
  page.pen.line(x + 5, y + 4, x + 5, y + 5.8)
  page.pen.line(x + 5, y + 6.5, x + 5, y + 6.9)
  for (const [index, line] of lines.entries()) page.pen.text(line, x + 11, y + 2 + high * (index + 0.78))
  page.yMm += box + 2
}

function drawing(page: Page, markup: string, caption: string | undefined, mostHighMm: number): void {
  const { widthMm, heightMm } = drawingSize(markup, page.width, mostHighMm)
  const below = caption === undefined ? 0 : 6
  page.room(heightMm + below + 3)
  inkDrawing(page.pen, markup, page.left + (page.width - widthMm) / 2, page.yMm + 2, widthMm)
  page.yMm += heightMm + 3
  if (caption === undefined) return
  page.font(false)
  page.pen.text(inFace(caption), page.left + page.width / 2, page.yMm + 3, 'middle')
  page.yMm += below
}

function drawings(page: Page, { across, each, mostHighMm }: Extract<PaperBlock, { kind: 'drawings' }>): void {
  const gap = 6
  const wide = (page.width - gap * (across - 1)) / across
  const line = page.size.body * LINE * MM_PER_POINT
  const most = Math.min(mostHighMm ?? Number.POSITIVE_INFINITY, page.bottom - page.top - 12)
  for (let from = 0; from < each.length; from += across) {
    const row = each.slice(from, from + across).map(({ markup, caption, text }) => {
      page.font(true)
      const strong = page.lines(caption, wide)
      page.font(false)
      return {
        markup,
        strong,
        plain: text === undefined ? [] : page.lines(text, wide),
        ...drawingSize(markup, wide, most),
      }
    })
    const wordsMm = Math.max(...row.map(({ strong, plain }) => strong.length + plain.length)) * line
    const high = Math.max(...row.map(({ heightMm }) => heightMm))
    page.room(high + wordsMm + 5)
    for (const [index, { markup, strong, plain, widthMm }] of row.entries()) {
      const x = page.left + index * (wide + gap)
      for (const [at, text] of [...strong, ...plain].entries()) {
        page.font(at < strong.length)
        page.pen.text(text, x, page.yMm + line * (at + 0.78))
      }
      inkDrawing(page.pen, markup, x + (wide - widthMm) / 2, page.yMm + wordsMm + 1, widthMm)
    }
    page.yMm += high + wordsMm + 5
  }
}

function inkTable(page: Page, { columns, rows }: PaperTable): void {
  const edges = [0]
  for (const { share } of columns) edges.push((edges.at(-1) ?? 0) + share * page.width)
  if (columns.some(({ title }) => title !== '')) tableHead(page, columns, edges)
  for (const row of rows) inkRow(page, row, columns, edges)
  page.yMm += 2
}

function tableHead(page: Page, columns: PaperTable['columns'], edges: readonly number[]): void {
  inkRow(page, { cells: columns.map(({ title }) => title), look: 'group' }, columns, edges, false)
}

function inkRow(
  page: Page,
  row: PaperRow,
  columns: PaperTable['columns'],
  edges: readonly number[],
  again = true,
): void {
  const isStrong = row.look !== undefined
  const high = page.size.body * LINE * MM_PER_POINT
  const small = page.size.body - 2
  const underHigh = small * LINE * MM_PER_POINT
  const boxMm = row.box === true ? 8 : 0
  const wide = (index: number) => (edges[index + 1] ?? 0) - (edges[index] ?? 0) - 2 - (index === 0 ? boxMm : 0)
  page.font(isStrong)
  const cells = row.cells.map((cell, index) => (cell === '' ? [] : page.lines(cell, wide(index))))
  page.font(false, small)
  const under = (row.under ?? []).map((cell, index) => (cell === '' ? [] : page.lines(cell, wide(index))))
  const tall = Math.max(
    1,
    ...cells.map((lines, index) => lines.length * high + (under[index]?.length ?? 0) * underHigh),
    row.box === true ? 7 : 0,
  )
  // A group's heading never stands alone at the foot of a page.
  const below = row.look === 'group' && again ? GROUP_ROOM_MM : 0
  if (page.yMm + tall + below + 2.4 > page.bottom) {
    page.next()
    if (again && columns.some(({ title }) => title !== '')) tableHead(page, columns, edges)
  }
  const y = page.yMm + 1.2
  if (row.look === 'total') {
    page.pen.lineStyle(0.6)
    page.pen.line(page.left, page.yMm, page.left + page.width, page.yMm)
  }
  if (row.box === true) {
    page.pen.lineStyle(0.5)
    page.pen.rect(page.left + 0.5, y, 5, 5)
  }
  for (const [index, lines] of cells.entries()) {
    const isRight = columns[index]?.align === 'right'
    const x = page.left + (isRight ? (edges[index + 1] ?? 0) - 1 : (edges[index] ?? 0) + (index === 0 ? boxMm : 0))
    page.font(isStrong || (index === 0 && row.under !== undefined))
    for (const [at, line] of lines.entries()) page.pen.text(line, x, y + high * (at + 0.78), isRight ? 'right' : 'left')
    page.font(false, small)
    for (const [at, line] of (under[index] ?? []).entries())
      page.pen.text(line, x, y + lines.length * high + underHigh * (at + 0.78), isRight ? 'right' : 'left')
  }
  page.yMm += tall + 2.4
  page.pen.lineStyle(isStrong ? 0.5 : 0.15)
  page.pen.line(page.left, page.yMm, page.left + page.width, page.yMm)
  page.yMm += 0.6
}

/** A rod at full size: strips from the foot upwards, each as long as a page allows, to be glued end to end at the same mark. */
function rod(page: Page, marksMm: readonly { readonly atMm: number; readonly text: string }[], joinText: string): void {
  const stripMm = Math.floor(page.bottom - page.top - 10)
  const across = Math.max(1, Math.floor(page.width / 60))
  const strips = Math.ceil(Math.max(...marksMm.map(({ atMm }) => atMm)) / stripMm)
  for (let strip = 0; strip < strips; strip++) {
    if (strip % across === 0 && (strip > 0 || page.yMm > page.top)) page.next()
    const x = page.left + (strip % across) * 60
    const foot = page.top + 5 + stripMm
    const from = strip * stripMm
    page.pen.lineStyle(0.4)
    page.pen.rect(x, foot - stripMm, 40, stripMm)
    for (const { atMm, text } of marksMm) {
      if (atMm < from || atMm > from + stripMm) continue
      const y = foot - (atMm - from)
      page.pen.lineStyle(0.7)
      page.pen.line(x, y, x + 14, y)
      page.font(true)
      page.pen.text(inFace(text), x + 15, y - 0.8)
    }
    page.font(false, page.size.body - 2)
    page.pen.text(`${inFace(joinText)} ${String(strip + 1)} / ${String(strips)}`, x + 1, foot + 4)
  }
  page.yMm = page.bottom
}
