import { pictureSize } from './picture-size.ts'

/** Longest side of a receipt's picture, px: its print can be read, and it takes little room. */
export const RECEIPT_PX = 1280
/** What a receipt's picture may weigh, bytes. */
export const MOST_RECEIPT_BYTES = 150_000

/** The picture's kind, or null where the bytes are none that this app would have made: too heavy, too large, or no picture. */
export function receiptType(bytes: Uint8Array): string | null {
  if (bytes.length > MOST_RECEIPT_BYTES) return null
  const size = pictureSize(bytes)
  if (size === null || Math.min(size.widthPx, size.heightPx) < 1) return null
  return Math.max(size.widthPx, size.heightPx) > RECEIPT_PX ? null : size.type
}
