/** What a page needs of a TrueType face: which glyph a letter has, and how wide it is. After the OpenType specification (ISO/IEC 14496-22): head, hhea, maxp, hmtx, cmap 4 and 12. */
export interface Face {
  readonly bytes: Uint8Array
  /** 0 where the face has no such letter. */
  readonly glyphOf: (codePoint: number) => number
  /** Advance in thousandths of the type size. */
  readonly widthOf: (glyph: number) => number
  readonly box: readonly number[]
  readonly ascent: number
  readonly descent: number
}

export function readFace(bytes: Uint8Array): Face {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const tables = new Map<string, number>()
  for (let index = 0; index < view.getUint16(4); index++) {
    const at = 12 + index * 16
    tables.set(String.fromCharCode(...bytes.subarray(at, at + 4)), view.getUint32(at + 8))
  }
  const table = (name: string): number => {
    const at = tables.get(name)
    if (at === undefined) throw new Error(`the face has no ${name} table`)
    return at
  }
  const perThousand = 1000 / view.getUint16(table('head') + 18)
  const scaled = (units: number) => Math.round(units * perThousand)
  const metrics = view.getUint16(table('hhea') + 34)
  const glyphs = glyphMap(view, table('cmap'))
  return {
    bytes,
    glyphOf: (codePoint) => glyphs.get(codePoint) ?? 0,
    widthOf: (glyph) => scaled(view.getUint16(table('hmtx') + 4 * Math.min(glyph, metrics - 1))),
    box: [0, 1, 2, 3].map((side) => scaled(view.getInt16(table('head') + 36 + 2 * side))),
    ascent: scaled(view.getInt16(table('hhea') + 4)),
    descent: scaled(view.getInt16(table('hhea') + 6)),
  }
}

function glyphMap(view: DataView, cmap: number): Map<number, number> {
  const map = new Map<number, number>()
  for (let index = 0; index < view.getUint16(cmap + 2); index++) {
    const at = cmap + view.getUint32(cmap + 8 + index * 8)
    const format = view.getUint16(at)
    if (format === 4) addSegments(view, at, map)
    else if (format === 12) addGroups(view, at, map)
  }
  return map
}

function addSegments(view: DataView, at: number, map: Map<number, number>): void {
  const size = view.getUint16(at + 6)
  for (let k = 0; k < size; k += 2) {
    const end = view.getUint16(at + 14 + k)
    const start = view.getUint16(at + 16 + size + k)
    const delta = view.getInt16(at + 16 + 2 * size + k)
    const offsetAt = at + 16 + 3 * size + k
    const offset = view.getUint16(offsetAt)
    for (let code = start; code <= end && code < 0xffff; code++) {
      const listed = offset === 0 ? code : view.getUint16(offsetAt + offset + 2 * (code - start))
      const glyph = offset === 0 || listed !== 0 ? (listed + delta) & 0xffff : 0
      if (glyph !== 0) map.set(code, glyph)
    }
  }
}

function addGroups(view: DataView, at: number, map: Map<number, number>): void {
  for (let k = 0; k < view.getUint32(at + 12); k++) {
    const [start, end, glyph] = [16, 20, 24].map((part) => view.getUint32(at + part + 12 * k))
    if (start === undefined || end === undefined || glyph === undefined) return
    for (let code = start; code <= end; code++) map.set(code, glyph + code - start)
  }
}
