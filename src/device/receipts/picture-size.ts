export interface PictureSize {
  readonly type: 'image/jpeg' | 'image/webp'
  readonly widthPx: number
  readonly heightPx: number
}

const WEBP_KINDS = ['VP8 ', 'VP8L', 'VP8X']

/** What a picture says of itself before anyone unpacks it: kind and size; null where the bytes are no JPEG or WebP picture. */
export function pictureSize(bytes: Uint8Array): PictureSize | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length)
  try {
    return view.getUint16(0) === 0xffd8 ? jpegSize(view) : webpSize(view)
  } catch {
    // The bytes end before their size was said.
    return null
  }
}

/** JPEG (ITU-T T.81, annex B): segments one after another, up to the start of the frame, SOF, which has the size. */
function jpegSize(view: DataView): PictureSize | null {
  for (let at = 2; view.getUint8(at) === 0xff; at += 2 + view.getUint16(at + 2)) {
    while (view.getUint8(at + 1) === 0xff) at++
    const marker = view.getUint8(at + 1)
    const isFrame = marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker)
    if (isFrame) return { type: 'image/jpeg', widthPx: view.getUint16(at + 7), heightPx: view.getUint16(at + 5) }
    if (marker === 0xda || marker === 0xd9) return null
  }
  return null
}

/** WebP (RFC 9649): a RIFF container whose first chunk is lossy, lossless or extended, each with the size at its own place. */
function webpSize(view: DataView): PictureSize | null {
  const letters = (at: number) => String.fromCharCode(...[0, 1, 2, 3].map((offset) => view.getUint8(at + offset)))
  const kind = letters(12)
  if (letters(0) !== 'RIFF' || letters(8) !== 'WEBP' || !WEBP_KINDS.includes(kind)) return null
  const low = (at: number) => view.getUint16(at, true)
  const type = 'image/webp'
  if (kind === 'VP8 ') return { type, widthPx: low(26) & 0x3fff, heightPx: low(28) & 0x3fff }
  if (kind === 'VP8X')
    return { type, widthPx: 1 + low(24) + (view.getUint8(26) << 16), heightPx: 1 + low(27) + (view.getUint8(29) << 16) }
  const packed = view.getUint32(21, true)
  return { type, widthPx: 1 + (packed & 0x3fff), heightPx: 1 + ((packed >>> 14) & 0x3fff) }
}
