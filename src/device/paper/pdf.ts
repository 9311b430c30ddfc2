import { addBlock } from './pdf-blocks.ts'
import { pdfBytes } from './pdf-file.ts'
import { Page } from './pdf-page.ts'
import type { PaperHead, PaperSheet, PaperSize } from './paper-sheet.ts'
import { readFace } from './true-type.ts'

/** The two faces of a sheet, as bytes of a TrueType file. */
export interface PaperFonts {
  readonly regular: Uint8Array
  readonly bold: Uint8Array
}

/**
 * Sheets of paper as one PDF. Nothing is cut at a page's edge: a row, a drawing or a boxed caution that does not fit goes whole to the next page,
 * and a table writes its headings again. Between blocks it asks `goOn`, so that long work can be shown and stopped: null where it was.
 *
 * Written by ourselves because the usual library weighs 340 kB, a fifth of all that a phone keeps, for lines and text alone.
 */
export async function makePdf(
  sheets: readonly PaperSheet[],
  head: PaperHead,
  size: PaperSize,
  fonts: PaperFonts,
  goOn: (done: number) => Promise<boolean> | boolean = () => true,
): Promise<Uint8Array | null> {
  const faces = { regular: readFace(fonts.regular), bold: readFace(fonts.bold) }
  const page = new Page(faces, size)
  const titles: string[] = []
  const blocks = sheets.reduce((sum, sheet) => sum + sheet.blocks.length, 0)
  let done = 0
  for (const [index, sheet] of sheets.entries()) {
    if (index > 0) page.next()
    const first = page.pen.pages.length - 1
    for (const block of sheet.blocks) {
      if (!(await goOn(done / blocks))) return null
      addBlock(page, block)
      done += 1
    }
    for (let at = first; at < page.pen.pages.length; at++) titles[at] = sheet.title
  }
  const count = page.pen.pages.length
  for (let at = 0; at < count; at++) {
    page.pen.turnTo(at)
    page.titleBlock(head, titles[at] ?? '', head.page(at + 1, count))
  }
  return pdfBytes(page.pen.pages, faces, page.pen.used, { title: head.plan, language: head.language })
}
