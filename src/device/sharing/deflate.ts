import { deflateSync, Inflate } from 'fflate'

const PIECE = 512

/** Bytes made small (RFC 1951), with what both sides know already as a dictionary. */
export const deflated = (bytes: Uint8Array, dictionary?: Uint8Array): Uint8Array =>
  deflateSync(bytes, { level: 9, ...(dictionary && { dictionary }) })

/** The bytes again, or null where they are damaged or would grow beyond `most`: a small code must not fill a phone. */
export function inflated(bytes: Uint8Array, most: number, dictionary?: Uint8Array): Uint8Array | null {
  const parts: Uint8Array[] = []
  let length = 0
  const inflate = new Inflate({ ...(dictionary && { dictionary }) }, (part) => {
    length += part.length
    if (length > most) throw new RangeError('too big')
    parts.push(part.slice())
  })
  try {
    for (let from = 0; from < bytes.length || from === 0; from += PIECE)
      inflate.push(bytes.slice(from, from + PIECE), from + PIECE >= bytes.length)
  } catch {
    return null
  }
  const whole = new Uint8Array(length)
  let at = 0
  for (const part of parts) {
    whole.set(part, at)
    at += part.length
  }
  return whole
}
