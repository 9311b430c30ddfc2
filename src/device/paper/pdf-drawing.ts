import { paperInk, paperText, type PaperInk } from './ink-styles.ts'
import { inFace } from './pdf-page.ts'
import { MM_PER_POINT, type PdfPen } from './pdf-pen.ts'
import { readSvg, type InkOp, type Segment } from './svg-markup.ts'

const GREY = 0.91

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
export function inkDrawing(pen: PdfPen, markup: string, xMm: number, yMm: number, widthMm: number): void {
  const drawing = readSvg(markup)
  const scale = widthMm / drawing.width
  const x = (u: number) => xMm + (u - drawing.x0) * scale
  const y = (u: number) => yMm + (u - drawing.y0) * scale
  for (const op of drawing.ops) inkOp(pen, op, x, y, scale)
}

type Place = (u: number) => number

function inkOp(pen: PdfPen, op: InkOp, x: Place, y: Place, scale: number): void {
  switch (op.kind) {
    case 'path': {
      const ink = paperInk(op.ink)
      const draw = () => trace(pen, op.segments, x, y)
      paint(pen, ink, draw, boundsOf(op.segments, x, y))
      return
    }
    case 'circle': {
      const ink = paperInk(op.ink)
      const [cx, cy, radius] = [x(op.x), y(op.y), op.radius * scale]
      setInk(pen, ink)
      const style = styleOf(ink)
      if (style !== null) pen.circle(cx, cy, radius, style)
      return
    }
    case 'text': {
      const { height, bold, white } = paperText(op.ink)
      pen.type(bold ? 'bold' : 'regular', (height * scale) / MM_PER_POINT, white ? 1 : 0)
      const align = op.anchor === 'middle' ? 'middle' : op.anchor === 'end' ? 'right' : 'left'
      const text = inFace(op.text)
      if (op.ink.includes('halo')) clear(pen, text, x(op.x), y(op.y), align, op.turnDeg, height * scale)
      pen.text(text, x(op.x), y(op.y), align, op.turnDeg)
      return
    }
    default:
      op satisfies never
  }
}

/** White under a figure that stands on a line, as the halo is on the screen. */
function clear(
  pen: PdfPen,
  text: string,
  xMm: number,
  yMm: number,
  align: 'left' | 'middle' | 'right',
  turnDeg: number,
  highMm: number,
): void {
  const wide = pen.widthOf(text)
  const left = align === 'left' ? 0 : align === 'middle' ? -wide / 2 : -wide
  const turn = (turnDeg * Math.PI) / 180
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)]
  const corner = (along: number, up: number): [number, number] => [
    xMm + along * cos + up * sin,
    yMm + along * sin - up * cos,
  ]
  const [near, far] = [left - 0.1 * highMm, left + wide + 0.1 * highMm]
  pen.fillGrey(1)
  pen.polygon([corner(near, 0), corner(far, 0), corner(far, 0.72 * highMm), corner(near, 0.72 * highMm)], 'fill')
}

function trace(pen: PdfPen, segments: readonly Segment[], x: Place, y: Place): void {
  for (const segment of segments) {
    switch (segment.to) {
      case 'move':
        pen.moveTo(x(segment.x), y(segment.y))
        break
      case 'line':
        pen.lineTo(x(segment.x), y(segment.y))
        break
      case 'curve':
        pen.curveTo(x(segment.x1), y(segment.y1), x(segment.x2), y(segment.y2), x(segment.x), y(segment.y))
        break
      case 'close':
        pen.close()
        break
      default:
        segment satisfies never
    }
  }
}

const styleOf = ({ line, fill }: PaperInk): 'stroke' | 'fill' | 'both' | null =>
  fill === undefined ? (line === undefined ? null : 'stroke') : line === undefined ? 'fill' : 'both'

function setInk(pen: PdfPen, { line, dash, fill }: PaperInk): void {
  pen.lineStyle(line ?? 0.1, dash)
  pen.fillGrey(fill === 'black' ? 0 : fill === 'grey' ? GREY : 1)
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

function paint(pen: PdfPen, ink: PaperInk, draw: () => void, bounds: Bounds): void {
  const { pattern, ...plain } = ink
  if (pattern !== undefined) {
    if (ink.fill !== undefined) {
      setInk(pen, { fill: ink.fill })
      draw()
      pen.paint('fill')
    }
    pen.apart(() => {
      draw()
      pen.inside(() => {
        hatch(pen, pattern, bounds)
      })
    })
    if (ink.line === undefined) return
    setInk(pen, { ...plain })
    draw()
    pen.paint('stroke')
    return
  }
  setInk(pen, ink)
  const style = styleOf(ink)
  if (style === null) return
  draw()
  pen.paint(style)
}

/** Fills as a draughtsman's hand makes them, laid on one grid over the page so that neighbours match. */
function hatch(pen: PdfPen, pattern: NonNullable<PaperInk['pattern']>, { left, top, right, bottom }: Bounds): void {
  setInk(pen, { line: 0.12, fill: 'black' })
  switch (pattern) {
    case 'hatch':
    case 'wide-hatch': {
      const step = pattern === 'hatch' ? 1.4 : 2
      const down = bottom - top
      const first = Math.floor((left - down) / step) * step
      for (let from = first; from <= right; from += step) {
        if (pattern === 'hatch') pen.line(from, bottom, from + down, top)
        else pen.line(from, top, from + down, bottom)
      }
      return
    }
    case 'dots':
    case 'stones':
      for (let row = Math.floor(top / 1.5); row * 1.5 <= bottom; row++)
        for (let column = Math.floor(left / 1.5); column * 1.5 <= right; column++) {
          const x = column * 1.5 + (row % 2 === 0 ? 0 : 0.75)
          if (pattern === 'stones' && (row * 7 + column * 3) % 5 === 0) {
            const y = row * 1.5
            pen.polygon([
              [x, y],
              [x + 0.8, y + 0.2],
              [x + 0.3, y + 0.7],
            ])
          } else pen.circle(x, row * 1.5, 0.14, 'fill')
        }
      return
    case 'earth':
      for (let x = Math.floor(left / 3) * 3; x <= right; x += 3)
        for (let y = top + 0.4; y < bottom; y += 2) pen.line(x, y + 1.4, x + 1, y)
      return
    default:
      pattern satisfies never
  }
}
