/** A name that no other phone gives: 128 random bits. Also where the page has no `crypto.randomUUID` (served without https). */
export const newId = (): string =>
  [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => byte.toString(16).padStart(2, '0')).join('')
