import type { jsPDF } from 'jspdf'
import type { PaperHead, PaperSize } from './paper-sheet.ts'

export const MM_PER_POINT = 25.4 / 72
const SIZES: Readonly<Record<PaperSize, { width: number; height: number; margin: number; body: number }>> = {
  a4: { width: 210, height: 297, margin: 14, body: 10.5 },
  a5: { width: 148, height: 210, margin: 10, body: 9.5 },
}
const HEAD_MM = 17
const FOOT_MM = 9
export const LINE = 1.3

/** The face has every letter of our languages but no minus of its own: the dash of the same width and height stands for it. */
export const inFace = (text: string): string => text.replaceAll('\u2212', '\u2013')

/** One page after another, filled from the top: where the pen is and how much room is left. */
export class Page {
  readonly doc: jsPDF
  readonly size: (typeof SIZES)[PaperSize]
  yMm: number

  constructor(doc: jsPDF, size: PaperSize) {
    this.doc = doc
    this.size = SIZES[size]
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
    this.doc.addPage()
    this.yMm = this.top
  }

  /** A new page, unless so much is still free on this one. */
  room(heightMm: number): void {
    if (this.yMm + heightMm > this.bottom && this.yMm > this.top) this.next()
  }

  font(bold: boolean, points = this.size.body): void {
    this.doc.setFont('sheet', bold ? 'bold' : 'normal')
    this.doc.setFontSize(points)
    this.doc.setTextColor(0)
  }

  lines(text: string, widthMm: number): string[] {
    return this.doc.splitTextToSize(inFace(text), widthMm) as string[]
  }

  /** Ruled block at the head of every page, and the foot. */
  titleBlock(head: PaperHead, title: string, pageText: string): void {
    const [x, y] = [this.left, this.size.margin]
    const right = x + this.width
    this.doc.setDrawColor(0).setLineDashPattern([], 0)
    this.doc.setLineWidth(0.3).rect(x, y, this.width, HEAD_MM - 5)
    this.doc.setLineWidth(0.8).line(x - 2, y + HEAD_MM - 5, right + 2, y + HEAD_MM - 5)
    const split = x + this.width * 0.6
    this.doc.setLineWidth(0.3).line(split, y, split, y + HEAD_MM - 5)
    this.font(true, this.size.body + 2)
    this.doc.text(this.#fitted(title, split - x - 4), x + 2, y + 5)
    this.font(false)
    this.doc.text(this.#fitted(head.plan, split - x - 4), x + 2, y + 10)
    this.doc.text(this.#fitted(head.date, right - split - 4), split + 2, y + 5)
    this.doc.text(this.#fitted(`${head.revision}  ${pageText}`, right - split - 4), split + 2, y + 10)
    this.font(false, this.size.body - 2)
    const foot = this.lines(head.foot, this.width)
    for (const [index, line] of foot.slice(0, 2).entries())
      this.doc.text(line, x, this.size.height - this.size.margin - 3 + index * 3.6)
  }

  /** One line, its end left off where it does not fit the title block. */
  #fitted(text: string, widthMm: number): string {
    return this.lines(text, widthMm)[0] ?? ''
  }
}
