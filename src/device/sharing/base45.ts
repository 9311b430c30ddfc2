/** Bytes as the characters that a QR code holds most densely (RFC 9285): two bytes in three. */
const ALPHABET = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:'
const BASE = ALPHABET.length
const VALUE_OF = new Map(ALPHABET.split('').map((char, value) => [char, value]))

const digits = (value: number, count: number): string => {
  let text = ''
  for (let rest = value; text.length < count; rest = Math.floor(rest / BASE)) text += ALPHABET[rest % BASE] ?? ''
  return text
}

export function toBase45(bytes: Uint8Array): string {
  let text = ''
  for (let index = 0; index < bytes.length; index += 2) {
    const [first = 0, second] = bytes.subarray(index, index + 2)
    text += second === undefined ? digits(first, 2) : digits(first * 256 + second, 3)
  }
  return text
}

const valueAt = (text: string, index: number): number => VALUE_OF.get(text.charAt(index)) ?? NaN

/** The bytes, or null where the text is none of ours. */
export function fromBase45(text: string): Uint8Array | null {
  if (text.length % 3 === 1) return null
  const bytes: number[] = []
  for (let index = 0; index < text.length; index += 3) {
    const group = Array.from({ length: Math.min(3, text.length - index) }, (_, digit) => valueAt(text, index + digit))
    const value = group.reduceRight((sum, digit) => sum * BASE + digit, 0)
    if (!(value < (group.length === 3 ? 65_536 : 256))) return null
    if (group.length === 3) bytes.push(value >>> 8)
    bytes.push(value & 255)
  }
  return Uint8Array.from(bytes)
}
