import { strToU8, zipSync } from 'fflate'

/** What a cell holds: text, a number as a number, or nothing. */
export type Cell = string | number | null

const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships'
const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main'
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006'
const TYPES = 'application/vnd.openxmlformats-officedocument.spreadsheetml'
const DECLARATION = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n'

const MARKS: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' }

/** Text as XML takes it: control characters have no place there at all. */
const escaped = (text: string): string =>
  text
    .replace(/[&<>"]/g, (mark) => MARKS[mark] ?? mark)
    .replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, '')

/** Columns count A to Z, then AA: 0 is A, 26 is AA. */
function columnName(index: number): string {
  const last = String.fromCharCode(65 + (index % 26))
  return index < 26 ? last : columnName((index - (index % 26)) / 26 - 1) + last
}

function cellXml(value: Cell, at: string, isHead: boolean): string {
  if (value === null || (typeof value === 'number' && !Number.isFinite(value))) return ''
  const look = isHead ? ' s="1"' : ''
  return typeof value === 'number'
    ? `<c r="${at}"${look}><v>${String(value)}</v></c>`
    : `<c r="${at}"${look} t="inlineStr"><is><t xml:space="preserve">${escaped(value)}</t></is></c>`
}

const relationships = (target: string, type: string, more = ''): string =>
  `${DECLARATION}<Relationships xmlns="${PACKAGE}/relationships"><Relationship Id="rId1" Type="${OFFICE}/${type}" Target="${target}"/>${more}</Relationships>`

/**
 * One sheet of cells as an Office Open XML workbook (ECMA-376, part 1), the first row bold. Text stands inline, so that nothing typed can be taken for
 * a formula.
 */
export function spreadsheet(name: string, rows: readonly (readonly Cell[])[]): Uint8Array {
  // A sheet's name has at most 31 characters and none of these.
  const title = escaped(
    name
      .replace(/[[\]:*?/\\]/g, ' ')
      .slice(0, 31)
      .trim() || 'Sheet',
  )
  const body = rows
    .map((cells, row) => {
      const at = String(row + 1)
      return `<row r="${at}">${cells.map((value, column) => cellXml(value, columnName(column) + at, row === 0)).join('')}</row>`
    })
    .join('')
  const styles = `<Relationship Id="rId2" Type="${OFFICE}/styles" Target="styles.xml"/>`
  const one = (tag: string, inner: string) => `<${tag} count="1">${inner}</${tag}>`
  const files = {
    '[Content_Types].xml': `${DECLARATION}<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Override PartName="/xl/workbook.xml" ContentType="${TYPES}.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="${TYPES}.worksheet+xml"/><Override PartName="/xl/styles.xml" ContentType="${TYPES}.styles+xml"/></Types>`,
    '_rels/.rels': relationships('xl/workbook.xml', 'officeDocument'),
    'xl/workbook.xml': `${DECLARATION}<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets><sheet name="${title}" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': relationships('worksheets/sheet1.xml', 'worksheet', styles),
    'xl/styles.xml': `${DECLARATION}<styleSheet xmlns="${MAIN}"><fonts count="2"><font><sz val="11"/><name val="Calibri"/></font><font><b/><sz val="11"/><name val="Calibri"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>${one('borders', '<border/>')}${one('cellStyleXfs', '<xf/>')}<cellXfs count="2"><xf xfId="0"/><xf xfId="0" fontId="1" applyFont="1"/></cellXfs></styleSheet>`,
    'xl/worksheets/sheet1.xml': `${DECLARATION}<worksheet xmlns="${MAIN}"><sheetData>${body}</sheetData></worksheet>`,
  }
  return zipSync(Object.fromEntries(Object.entries(files).map(([file, xml]) => [file, strToU8(xml)])))
}
