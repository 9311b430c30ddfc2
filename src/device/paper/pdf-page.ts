import { MM_PER_POINT, PdfPen } from './pdf-pen.ts'
import type { Face } from './true-type.ts'
import type { PaperHead, PaperSize } from './paper-sheet.ts'

const SIZES: Readonly<Record<PaperSize, { width: number; height: number; margin: number; body: number }>> = {
  a4: { width: 210, height: 297, margin: 14, body: 10.5 },
  a5: { width: 148, height: 210, margin: 10, body: 9.5 },
}
const HEAD_MM = 17
const FOOT_MM = 9
export const LINE = 1.3

/**
 * The face has every letter of our languages but no minus of its own: the dash of the same width and height stands for it. The taka's sign is
 * of another script: its letters stand for it.
 */
export const inFace = (text: string): string => text.replaceAll('\u2212', '\u2013').replaceAll('৳', 'Tk\u00a0')

/** One page after another, filled from the top: where the pen is and how much room is left. */
export class Page {
  readonly pen: PdfPen
  readonly size: (typeof SIZES)[PaperSize]
  yMm: number

  constructor(faces: { readonly regular: Face; readonly bold: Face }, size: PaperSize) {
    this.size = SIZES[size]
    this.pen = new PdfPen(faces, this.size)
    this.yMm = this.top
  }

  get top(): number {
    return this.size.margin + HEAD_MM
  }
  get left(): number {
    return this.size.margin
  }
  get width(): number {
    return this.size.width - 2 * this.size.margin
  }
  get bottom(): number {
    return this.size.height - this.size.margin - FOOT_MM
  }
  get lineMm(): number {
    return this.size.body * LINE * MM_PER_POINT
  }

  next(): void {
    this.pen.addPage()
    this.yMm = this.top
  }

  /** A new page, unless so much is still free on this one. */
  room(heightMm: number): void {
    if (this.yMm + heightMm > this.bottom && this.yMm > this.top) this.next()
  }

  font(bold: boolean, points = this.size.body): void {
    this.pen.type(bold ? 'bold' : 'regular', points)
  }

  lines(text: string, widthMm: number): string[] {
    return this.pen.linesOf(inFace(text), widthMm)
  }

  /** Ruled block at the head of every page, and the foot. */
  titleBlock(head: PaperHead, title: string, pageText: string): void {
    const [x, y] = [this.left, this.size.margin]
    const right = x + this.width
    this.pen.lineStyle(0.3)
    this.pen.rect(x, y, this.width, HEAD_MM - 5)
    this.pen.lineStyle(0.8)
    this.pen.line(x - 2, y + HEAD_MM - 5, right + 2, y + HEAD_MM - 5)
    const split = x + this.width * 0.6
    this.pen.lineStyle(0.3)
    this.pen.line(split, y, split, y + HEAD_MM - 5)
    this.font(true, this.size.body + 2)
    this.pen.text(this.#fitted(title, split - x - 4), x + 2, y + 5)
    this.font(false)
    this.pen.text(this.#fitted(head.plan, split - x - 4), x + 2, y + 10)
    this.pen.text(this.#fitted(head.date, right - split - 4), split + 2, y + 5)
    this.pen.text(this.#fitted(`${head.revision}  ${pageText}`, right - split - 4), split + 2, y + 10)
    this.font(false, this.size.body - 2)
    const foot = this.lines(head.foot, this.width)
    for (const [index, line] of foot.slice(0, 2).entries())
      this.pen.text(line, x, this.size.height - this.size.margin - 3 + index * 3.6)
  }

  /** One line, its end left off where it does not fit the title block. */
  #fitted(text: string, widthMm: number): string {
    return this.lines(text, widthMm)[0] ?? ''
  }
}
