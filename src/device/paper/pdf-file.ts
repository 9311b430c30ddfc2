import { zlibSync } from 'fflate'
import type { PdfPage, Weight } from './pdf-pen.ts'
import type { Face } from './true-type.ts'

const latin = (text: string): Uint8Array => Uint8Array.from(text, (sign) => sign.charCodeAt(0) & 0xff)
const hex4 = (code: number): string => code.toString(16).padStart(4, '0')
const hexText = (text: string): string =>
  Array.from({ length: text.length }, (_, at) => hex4(text.charCodeAt(at))).join('')

/** One numbered thing of the file: its dictionary, and its packed bytes where it has some. */
interface PdfObject {
  readonly head: string
  readonly stream?: Uint8Array
}

/** Pages and the faces they use as the bytes of a PDF 1.7 file (ISO 32000-1), text kept as text that can be searched and copied. */
export function pdfBytes(
  pages: readonly PdfPage[],
  faces: Readonly<Record<Weight, Face>>,
  used: Readonly<Record<Weight, ReadonlyMap<number, string>>>,
  about: { readonly title: string; readonly language: string },
): Uint8Array {
  const objects: PdfObject[] = []
  const add = (head: string, stream?: Uint8Array): number => {
    objects.push({ head, ...(stream !== undefined && { stream: zlibSync(stream) }) })
    return objects.length
  }
  const catalogue = add('')
  const tree = add('')
  const fonts = (['regular', 'bold'] as const).map((weight) => addFace(faces[weight], used[weight], weight, add))
  const kids = pages.map(({ widthPt, heightPt, marks }) => {
    const content = add('', latin(marks.join('\n')))
    return add(
      `<</Type/Page/Parent ${tree} 0 R/MediaBox[0 0 ${widthPt.toFixed(2)} ${heightPt.toFixed(2)}]` +
        `/Resources<</Font<</R ${fonts[0] ?? 0} 0 R/B ${fonts[1] ?? 0} 0 R>>>>/Contents ${content} 0 R>>`,
    )
  })
  objects[catalogue - 1] = {
    head: `<</Type/Catalog/Pages ${tree} 0 R/Lang(${about.language})/ViewerPreferences<</DisplayDocTitle true>>>>`,
  }
  objects[tree - 1] = {
    head: `<</Type/Pages/Count ${kids.length}/Kids[${kids.map((kid) => `${kid} 0 R`).join(' ')}]>>`,
  }
  const info = add(`<</Title<feff${hexText(about.title)}>/Producer(Kilnwright)>>`)
  return written(objects, catalogue, info)
}

function addFace(
  face: Face,
  used: ReadonlyMap<number, string>,
  weight: Weight,
  add: (head: string, stream?: Uint8Array) => number,
): number {
  const name = weight === 'bold' ? 'SheetBold' : 'Sheet'
  const file = add(`/Length1 ${face.bytes.length}`, face.bytes)
  const descriptor = add(
    `<</Type/FontDescriptor/FontName/${name}/Flags 4/FontBBox[${face.box.join(' ')}]/ItalicAngle 0/Ascent ${face.ascent}` +
      `/Descent ${face.descent}/CapHeight ${face.ascent}/StemV ${weight === 'bold' ? 140 : 80}/FontFile2 ${file} 0 R>>`,
  )
  const glyphs = [...used.keys()].toSorted((a, b) => a - b)
  const inside = add(
    `<</Type/Font/Subtype/CIDFontType2/BaseFont/${name}/CIDSystemInfo<</Registry(Adobe)/Ordering(Identity)/Supplement 0>>` +
      `/FontDescriptor ${descriptor} 0 R/CIDToGIDMap/Identity/W[${glyphs.map((glyph) => `${glyph}[${face.widthOf(glyph)}]`).join('')}]>>`,
  )
  const toUnicode = add('', latin(unicodeMap(glyphs.flatMap((glyph) => [[glyph, used.get(glyph) ?? ''] as const]))))
  return add(
    `<</Type/Font/Subtype/Type0/BaseFont/${name}/Encoding/Identity-H/DescendantFonts[${inside} 0 R]/ToUnicode ${toUnicode} 0 R>>`,
  )
}

/** Which letters the glyphs stand for, a hundred a block as the format wants. */
function unicodeMap(letters: readonly (readonly [number, string])[]): string {
  const lines = letters
    .filter(([glyph]) => glyph !== 0)
    .map(([glyph, letter]) => `<${hex4(glyph)}> <${hexText(letter)}>`)
  let blocks = ''
  for (let at = 0; at < lines.length; at += 100) {
    const block = lines.slice(at, at + 100)
    blocks += `${block.length} beginbfchar\n${block.join('\n')}\nendbfchar\n`
  }
  return (
    '/CIDInit /ProcSet findresource begin 12 dict begin begincmap /CMapName /Letters def /CMapType 2 def\n' +
    `1 begincodespacerange <0000> <ffff> endcodespacerange\n${blocks}endcmap end end`
  )
}

function written(objects: readonly PdfObject[], root: number, info: number): Uint8Array {
  const parts: Uint8Array[] = []
  const offsets: number[] = []
  let length = 0
  const put = (bytes: Uint8Array) => {
    parts.push(bytes)
    length += bytes.length
  }
  put(latin('%PDF-1.7\n%\u00e2\u00e3\u00cf\u00d3\n'))
  for (const [index, { head, stream }] of objects.entries()) {
    offsets.push(length)
    if (stream === undefined) put(latin(`${index + 1} 0 obj\n${head}\nendobj\n`))
    else {
      put(latin(`${index + 1} 0 obj\n<<${head}/Filter/FlateDecode/Length ${stream.length}>>\nstream\n`))
      put(stream)
      put(latin('\nendstream\nendobj\n'))
    }
  }
  const table = offsets.map((offset) => `${String(offset).padStart(10, '0')} 00000 n \n`).join('')
  const start = length
  put(
    latin(
      `xref\n0 ${objects.length + 1}\n0000000000 65535 f \n${table}` +
        `trailer\n<</Size ${objects.length + 1}/Root ${root} 0 R/Info ${info} 0 R>>\nstartxref\n${start}\n%%EOF\n`,
    ),
  )
  const bytes = new Uint8Array(length)
  let at = 0
  for (const part of parts) {
    bytes.set(part, at)
    at += part.length
  }
  return bytes
}
