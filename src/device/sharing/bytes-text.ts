const CHUNK = 0x8000

/** How long base64 text of so many bytes is: four characters for every three (RFC 4648 §4). */
export const base64Chars = (bytes: number): number => 4 * Math.ceil(bytes / 3)

/** Bytes as base64 text (RFC 4648 §4). */
export function toBase64(bytes: Uint8Array): string {
  let binary = ''
  for (let start = 0; start < bytes.length; start += CHUNK)
    binary += String.fromCharCode(...bytes.subarray(start, start + CHUNK))
  return btoa(binary)
}

/** The bytes of base64 text, or null where it is none. */
export function fromBase64(text: string): Uint8Array<ArrayBuffer> | null {
  try {
    return Uint8Array.from(atob(text), (char) => char.charCodeAt(0))
  } catch {
    return null
  }
}

/** Base64 for an address (RFC 4648 §5), without padding. */
export const toBase64Url = (bytes: Uint8Array): string =>
  toBase64(bytes).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '')

export const fromBase64Url = (text: string): Uint8Array<ArrayBuffer> | null =>
  /^[\w-]*$/.test(text) ? fromBase64(text.replaceAll('-', '+').replaceAll('_', '/')) : null
