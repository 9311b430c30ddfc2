import type { Face } from './true-type.ts'

export const MM_PER_POINT = 25.4 / 72
const POINTS_PER_MM = 1 / MM_PER_POINT

export type Weight = 'regular' | 'bold'

/** Marks of one page as PDF operators, and its size in points. */
export interface PdfPage {
  readonly widthPt: number
  readonly heightPt: number
  readonly marks: string[]
}

const n = (value: number): string => String(Math.round(value * 1000) / 1000)

/** Draws on pages in millimetres from the upper left corner. Names of the operators: ISO 32000-1, annex A. */
export class PdfPen {
  readonly pages: PdfPage[] = []
  readonly used: Readonly<Record<Weight, Map<number, string>>> = { regular: new Map(), bold: new Map() }
  readonly #faces: Readonly<Record<Weight, Face>>
  readonly #sizeMm: { readonly width: number; readonly height: number }
  #page: PdfPage
  #weight: Weight = 'regular'
  #points = 10
  #grey = 0

  constructor(faces: Readonly<Record<Weight, Face>>, sizeMm: { readonly width: number; readonly height: number }) {
    this.#faces = faces
    this.#sizeMm = sizeMm
    this.#page = this.addPage()
  }

  addPage(): PdfPage {
    const { width, height } = this.#sizeMm
    this.#page = { widthPt: width * POINTS_PER_MM, heightPt: height * POINTS_PER_MM, marks: [] }
    this.pages.push(this.#page)
    return this.#page
  }

  /** Goes back to a page, counted from 0. */
  turnTo(index: number): void {
    const page = this.pages[index]
    if (page !== undefined) this.#page = page
  }

  #put(...marks: string[]): void {
    this.#page.marks.push(...marks)
  }
  #at(xMm: number, yMm: number): string {
    return `${n(xMm * POINTS_PER_MM)} ${n(this.#page.heightPt - yMm * POINTS_PER_MM)}`
  }

  /** Face, size in points and grey (0 black, 1 white) of the text that follows. */
  type(weight: Weight, points: number, grey = 0): void {
    this.#weight = weight
    this.#points = points
    this.#grey = grey
  }

  widthOf(text: string): number {
    const face = this.#faces[this.#weight]
    let width = 0
    for (const letter of text) width += face.widthOf(face.glyphOf(letter.codePointAt(0) ?? 0))
    return ((width * this.#points) / 1000) * MM_PER_POINT
  }

  /** Lines no wider than a width, broken at spaces; a word that is wider by itself is broken between letters. */
  linesOf(text: string, widthMm: number): string[] {
    const lines: string[] = []
    for (const paragraph of text.split('\n')) {
      let line = ''
      for (const word of paragraph.split(' ')) {
        const longer = line === '' ? word : `${line} ${word}`
        if (this.widthOf(longer) <= widthMm) {
          line = longer
          continue
        }
        if (line !== '') lines.push(line)
        line = word
        while (this.widthOf(line) > widthMm && line.length > 1) {
          let cut = line.length - 1
          while (cut > 1 && this.widthOf(line.slice(0, cut)) > widthMm) cut--
          lines.push(line.slice(0, cut))
          line = line.slice(cut)
        }
      }
      lines.push(line)
    }
    return lines
  }

  /** One line of text, its baseline at y; `turnDeg` clockwise about the anchor. */
  text(text: string, xMm: number, yMm: number, align: 'left' | 'middle' | 'right' = 'left', turnDeg = 0): void {
    const turn = (turnDeg * Math.PI) / 180
    const back = align === 'left' ? 0 : this.widthOf(text) / (align === 'middle' ? 2 : 1)
    const [x, y] = [xMm - back * Math.cos(turn), yMm - back * Math.sin(turn)]
    const face = this.#faces[this.#weight]
    let hex = ''
    for (const letter of text) {
      const glyph = face.glyphOf(letter.codePointAt(0) ?? 0)
      this.used[this.#weight].set(glyph, letter)
      hex += glyph.toString(16).padStart(4, '0')
    }
    const [cos, sin] = [n(Math.cos(turn)), n(Math.sin(turn))]
    const font = this.#weight === 'bold' ? '/B' : '/R'
    this.#put(
      `BT ${n(this.#grey)} g ${font} ${n(this.#points)} Tf ${cos} ${n(-Math.sin(turn))} ${sin} ${cos} ${this.#at(x, y)} Tm <${hex}> Tj ET`,
    )
  }

  /** Width in mm, dashes in mm. */
  lineStyle(widthMm: number, dashMm: readonly number[] = []): void {
    this.#put(`0 G ${n(widthMm * POINTS_PER_MM)} w [${dashMm.map((dash) => n(dash * POINTS_PER_MM)).join(' ')}] 0 d`)
  }
  /** 0 black, 1 white. */
  fillGrey(grey: number): void {
    this.#put(`${n(grey)} g`)
  }
  moveTo(xMm: number, yMm: number): void {
    this.#put(`${this.#at(xMm, yMm)} m`)
  }
  lineTo(xMm: number, yMm: number): void {
    this.#put(`${this.#at(xMm, yMm)} l`)
  }
  curveTo(x1Mm: number, y1Mm: number, x2Mm: number, y2Mm: number, xMm: number, yMm: number): void {
    this.#put(`${this.#at(x1Mm, y1Mm)} ${this.#at(x2Mm, y2Mm)} ${this.#at(xMm, yMm)} c`)
  }
  close(): void {
    this.#put('h')
  }
  /** What is done with the outline just traced; holes by the even-odd rule. */
  paint(how: 'stroke' | 'fill' | 'both'): void {
    this.#put({ stroke: 'S', fill: 'f*', both: 'B*' }[how])
  }
  /** Runs `draw` with the outline just traced as the edge of the paper. */
  inside(draw: () => void): void {
    this.#put('W* n')
    draw()
  }
  /** Keeps line, fill and edge as they are and puts them back afterwards. */
  apart(draw: () => void): void {
    this.#put('q')
    draw()
    this.#put('Q')
  }
  line(x1Mm: number, y1Mm: number, x2Mm: number, y2Mm: number): void {
    this.moveTo(x1Mm, y1Mm)
    this.lineTo(x2Mm, y2Mm)
    this.paint('stroke')
  }
  rect(xMm: number, yMm: number, widthMm: number, heightMm: number): void {
    this.polygon([
      [xMm, yMm],
      [xMm + widthMm, yMm],
      [xMm + widthMm, yMm + heightMm],
      [xMm, yMm + heightMm],
    ])
  }
  polygon(points: readonly (readonly [number, number])[], how: 'stroke' | 'fill' = 'stroke'): void {
    for (const [index, [xMm, yMm]] of points.entries())
      if (index === 0) this.moveTo(xMm, yMm)
      else this.lineTo(xMm, yMm)
    this.close()
    this.paint(how)
  }
  circle(xMm: number, yMm: number, radiusMm: number, how: 'stroke' | 'fill' | 'both'): void {
    // Four cubic curves; 0.5523 brings each within 0.03 % of the arc.
    const k = radiusMm * 0.5523
    this.moveTo(xMm + radiusMm, yMm)
    this.curveTo(xMm + radiusMm, yMm + k, xMm + k, yMm + radiusMm, xMm, yMm + radiusMm)
    this.curveTo(xMm - k, yMm + radiusMm, xMm - radiusMm, yMm + k, xMm - radiusMm, yMm)
    this.curveTo(xMm - radiusMm, yMm - k, xMm - k, yMm - radiusMm, xMm, yMm - radiusMm)
    this.curveTo(xMm + k, yMm - radiusMm, xMm + radiusMm, yMm - k, xMm + radiusMm, yMm)
    this.paint(how)
  }
}
