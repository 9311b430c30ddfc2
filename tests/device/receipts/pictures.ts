const bytesOf = (base64: string) => Uint8Array.from(atob(base64), (char) => char.charCodeAt(0))

/** Pictures of one pixel that a browser opens: WebP with losses, without, and with see-through (an extended file). */
export const WEBP = {
  lossy: bytesOf('UklGRiIAAABXRUJQVlA4IBYAAAAwAQCdASoBAAEADsD+JaQAA3AAAAAA'),
  lossless: bytesOf('UklGRhoAAABXRUJQVlA4TA0AAAAvAAAAEAcQERGIiP4HAA=='),
  extended: bytesOf(
    'UklGRkoAAABXRUJQVlA4WAoAAAAQAAAAAAAAAAAAQUxQSAwAAAARBxAR/Q9ERP8DAABWUDggGAAAABQBAJ0BKgEAAQAAAP4AAA3AAP7mtQAAAA==',
  ),
}

const pair = (value: number) => [value >> 8, value & 255]

/** The beginning of a JPEG as ITU-T T.81 (annex B.2) lays it down: SOI, an application segment, a table, then the frame with its size. */
export const jpegOf = (widthPx: number, heightPx: number, frame = 0xc0): Uint8Array =>
  Uint8Array.from(
    [
      [0xff, 0xd8],
      [0xff, 0xe0, ...pair(6), 1, 2, 3, 4],
      [0xff, 0xc4, ...pair(3), 0],
      [0xff, 0xff, frame, ...pair(17), 8, ...pair(heightPx), ...pair(widthPx), 3, ...Array<number>(9).fill(0)],
    ].flat(),
  )

/** An extended WebP file (RFC 9649, section 2.7) that says so large a canvas: 24 bits each, one less than the size. */
export function webpOf(widthPx: number, heightPx: number): Uint8Array {
  const bytes = WEBP.extended.slice()
  const put = (at: number, value: number) => {
    bytes.set([value & 255, (value >> 8) & 255, (value >> 16) & 255], at)
  }
  put(24, widthPx - 1)
  put(27, heightPx - 1)
  return bytes
}
