import { jsPDF } from 'jspdf'
import { Page } from './pdf-page.ts'
import { addBlock } from './pdf-blocks.ts'
import type { PaperHead, PaperSheet, PaperSize } from './paper-sheet.ts'

/** The two faces of a sheet, as bytes of a TrueType file. */
export interface PaperFonts {
  readonly regular: Uint8Array
  readonly bold: Uint8Array
}

/** Bytes to the text in which the PDF library takes a font. */
const base64 = (bytes: Uint8Array): string => {
  let binary = ''
  for (let index = 0; index < bytes.length; index += 8192)
    binary += String.fromCharCode(...bytes.subarray(index, index + 8192))
  return btoa(binary)
}

/**
 * Sheets of paper as one PDF. Nothing is cut at a page's edge: a row, a drawing or a boxed caution that does not fit goes whole to the next page,
 * and a table writes its headings again. Between blocks it asks `goOn`, so that long work can be shown and stopped: null where it was.
 */
export async function makePdf(
  sheets: readonly PaperSheet[],
  head: PaperHead,
  size: PaperSize,
  fonts: PaperFonts,
  goOn: (done: number) => Promise<boolean> | boolean = () => true,
): Promise<Uint8Array | null> {
  const doc = new jsPDF({ unit: 'mm', format: size, compress: true, putOnlyUsedFonts: true })
  for (const [file, bytes, style] of [
    ['regular.ttf', fonts.regular, 'normal'],
    ['bold.ttf', fonts.bold, 'bold'],
  ] as const) {
    doc.addFileToVFS(file, base64(bytes))
    doc.addFont(file, 'sheet', style)
  }
  doc.setProperties({ title: head.plan })
  const page = new Page(doc, size)
  const titles: string[] = []
  const blocks = sheets.reduce((sum, sheet) => sum + sheet.blocks.length, 0)
  let done = 0
  for (const [index, sheet] of sheets.entries()) {
    if (index > 0) page.next()
    const first = doc.getNumberOfPages()
    for (const block of sheet.blocks) {
      if (!(await goOn(done / blocks))) return null
      addBlock(page, block)
      done += 1
    }
    for (let at = first; at <= doc.getNumberOfPages(); at++) titles[at] = sheet.title
  }
  const count = doc.getNumberOfPages()
  for (let at = 1; at <= count; at++) {
    doc.setPage(at)
    page.titleBlock(head, titles[at] ?? '', head.page(at, count))
  }
  return new Uint8Array(doc.output('arraybuffer'))
}
