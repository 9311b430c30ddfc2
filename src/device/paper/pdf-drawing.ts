import type { jsPDF } from 'jspdf'
import { paperInk, paperText, type PaperInk } from './ink-styles.ts'
import { inFace, MM_PER_POINT } from './pdf-page.ts'
import { readSvg, type InkOp, type Segment } from './svg-markup.ts'

const GREY = 232

/** Size on paper of a drawing as wide as `widthMm` and no higher than `mostHighMm`. */
export function drawingSize(
  markup: string,
  widthMm: number,
  mostHighMm: number,
): { readonly widthMm: number; readonly heightMm: number } {
  const { width, height } = readSvg(markup)
  const scale = Math.min(widthMm / width, mostHighMm / height)
  return { widthMm: width * scale, heightMm: height * scale }
}

/** Inks a drawing on a page, its upper left corner at a place in millimetres: vector lines and real text. */
export function inkDrawing(doc: jsPDF, markup: string, xMm: number, yMm: number, widthMm: number): void {
  const drawing = readSvg(markup)
  const scale = widthMm / drawing.width
  const x = (u: number) => xMm + (u - drawing.x0) * scale
  const y = (u: number) => yMm + (u - drawing.y0) * scale
  for (const op of drawing.ops) inkOp(doc, op, x, y, scale)
  doc.setLineDashPattern([], 0)
  doc.setTextColor(0)
}

type Place = (u: number) => number

function inkOp(doc: jsPDF, op: InkOp, x: Place, y: Place, scale: number): void {
  switch (op.kind) {
    case 'path': {
      const ink = paperInk(op.ink)
      const draw = () => trace(doc, op.segments, x, y)
      paint(doc, ink, draw, boundsOf(op.segments, x, y))
      return
    }
    case 'circle': {
      const ink = paperInk(op.ink)
      const [cx, cy, radius] = [x(op.x), y(op.y), op.radius * scale]
      setInk(doc, ink)
      const style = styleOf(ink)
      if (style !== null) doc.circle(cx, cy, radius, style)
      return
    }
    case 'text': {
      const { height, bold, white } = paperText(op.ink)
      doc.setFont('sheet', bold ? 'bold' : 'normal')
      doc.setFontSize((height * scale) / MM_PER_POINT)
      doc.setTextColor(white ? 255 : 0)
      const turn = (op.turnDeg * Math.PI) / 180
      // A turned text is anchored by hand: the library turns about the start of the line only.
      const text = inFace(op.text)
      const width = doc.getTextWidth(text)
      const back = op.anchor === 'middle' ? width / 2 : op.anchor === 'end' ? width : 0
      doc.text(text, x(op.x) - back * Math.cos(turn), y(op.y) - back * Math.sin(turn), { angle: -op.turnDeg })
      return
    }
    default:
      op satisfies never
  }
}

function trace(doc: jsPDF, segments: readonly Segment[], x: Place, y: Place): void {
  for (const segment of segments) {
    switch (segment.to) {
      case 'move':
        doc.moveTo(x(segment.x), y(segment.y))
        break
      case 'line':
        doc.lineTo(x(segment.x), y(segment.y))
        break
      case 'curve':
        doc.curveTo(x(segment.x1), y(segment.y1), x(segment.x2), y(segment.y2), x(segment.x), y(segment.y))
        break
      case 'close':
        doc.close()
        break
      default:
        segment satisfies never
    }
  }
}

const styleOf = ({ line, fill }: PaperInk): 'S' | 'F' | 'FD' | null =>
  fill === undefined ? (line === undefined ? null : 'S') : line === undefined ? 'F' : 'FD'

function setInk(doc: jsPDF, { line, dash, fill }: PaperInk): void {
  doc.setDrawColor(0)
  doc.setLineWidth(line ?? 0.1)
  doc.setLineDashPattern(dash === undefined ? [] : [...dash], 0)
  const grey = fill === 'black' ? 0 : fill === 'grey' ? GREY : 255
  doc.setFillColor(grey, grey, grey)
}

interface Bounds {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

function boundsOf(segments: readonly Segment[], x: Place, y: Place): Bounds {
  const points = segments.flatMap((segment) => (segment.to === 'close' ? [] : [segment]))
  const xs = points.map((point) => x(point.x))
  const ys = points.map((point) => y(point.y))
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) }
}

function paint(doc: jsPDF, ink: PaperInk, draw: () => void, bounds: Bounds): void {
  const { pattern, ...plain } = ink
  if (pattern !== undefined) {
    if (ink.fill !== undefined) {
      setInk(doc, { fill: ink.fill })
      draw()
      doc.fillEvenOdd()
    }
    doc.saveGraphicsState()
    draw()
    doc.clipEvenOdd()
    doc.discardPath()
    hatch(doc, pattern, bounds)
    doc.restoreGraphicsState()
    if (ink.line === undefined) return
    setInk(doc, { ...plain })
    draw()
    doc.stroke()
    return
  }
  setInk(doc, ink)
  const style = styleOf(ink)
  if (style === null) return
  draw()
  if (style === 'S') doc.stroke()
  else if (style === 'F') doc.fillEvenOdd()
  else doc.fillStrokeEvenOdd()
}

/** Fills as a draughtsman's hand makes them, laid on one grid over the page so that neighbours match. */
function hatch(doc: jsPDF, pattern: NonNullable<PaperInk['pattern']>, { left, top, right, bottom }: Bounds): void {
  setInk(doc, { line: 0.12, fill: 'black' })
  switch (pattern) {
    case 'hatch':
    case 'wide-hatch': {
      const step = pattern === 'hatch' ? 1.4 : 2
      const down = bottom - top
      const first = Math.floor((left - down) / step) * step
      for (let from = first; from <= right; from += step) {
        if (pattern === 'hatch') doc.line(from, bottom, from + down, top)
        else doc.line(from, top, from + down, bottom)
      }
      return
    }
    case 'dots':
    case 'stones':
      for (let row = Math.floor(top / 1.5); row * 1.5 <= bottom; row++)
        for (let column = Math.floor(left / 1.5); column * 1.5 <= right; column++) {
          const x = column * 1.5 + (row % 2 === 0 ? 0 : 0.75)
          if (pattern === 'stones' && (row * 7 + column * 3) % 5 === 0) {
            doc.lines(
              [
                [0.8, 0.2],
                [-0.5, 0.5],
                [-0.3, -0.7],
              ],
              x,
              row * 1.5,
              [1, 1],
              'S',
              true,
            )
          } else doc.circle(x, row * 1.5, 0.14, 'F')
        }
      return
    case 'earth':
      for (let x = Math.floor(left / 3) * 3; x <= right; x += 3)
        for (let y = top + 0.4; y < bottom; y += 2) doc.line(x, y + 1.4, x + 1, y)
      return
    default:
      pattern satisfies never
  }
}
