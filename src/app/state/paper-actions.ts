import { open as openBold } from '../../device/paper/fonts/noto-sans-bold.ttf?packed'
import { open as openRegular } from '../../device/paper/fonts/noto-sans-regular.ttf?packed'
import { canShareFiles, download, share, shareText } from '../../device/sharing/deliver.ts'
import { printPage } from '../../device/paper/print-page.ts'
import type { PaperFonts } from '../../device/paper/pdf.ts'
import type { PaperHead, PaperSheet, PaperSize } from '../../device/paper/paper-sheet.ts'

export type {
  PaperBlock,
  PaperDrawing,
  PaperHead,
  PaperRow,
  PaperSheet,
  PaperSize,
} from '../../device/paper/paper-sheet.ts'

async function paperFonts(): Promise<PaperFonts> {
  const [regular, bold] = await Promise.all([openRegular(), openBold()])
  return { regular, bold }
}

/** Sheets as one PDF file; null where `goOn` said no. The writer and its faces are fetched from the phone's own store only now. */
export async function pdfFile(
  name: string,
  sheets: readonly PaperSheet[],
  head: PaperHead,
  size: PaperSize,
  goOn: (done: number) => Promise<boolean>,
): Promise<File | null> {
  const [{ makePdf }, fonts] = await Promise.all([import('../../device/paper/pdf.ts'), paperFonts()])
  const bytes = await makePdf(sheets, head, size, fonts, goOn)
  return bytes === null ? null : new File([bytes.slice().buffer], `${fileName(name)}.pdf`, { type: 'application/pdf' })
}

/** A name that every phone and every disk takes. */
export const fileName = (name: string): string =>
  name
    .normalize('NFC')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60) || 'kilnwright'

export { canShareFiles, printPage, shareText as sendText }

/** Puts a file among the phone's downloads. */
export const saveFile = (file: File): void => {
  download(file)
}

/** Hands a file to another app of the phone. */
export const sendFile = (file: File): Promise<'shared' | 'cancelled' | 'failed'> => share([file])

/** Rows for a spreadsheet, numbers as numbers; the writer is fetched only now. */
export async function spreadsheetFile(
  name: string,
  sheet: string,
  rows: readonly (readonly (string | number | null)[])[],
): Promise<File> {
  const { spreadsheet } = await import('../../device/paper/spreadsheet.ts')
  const bytes = spreadsheet(sheet, rows)
  return new File([bytes.slice().buffer], `${fileName(name)}.xlsx`, {
    type: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  })
}
