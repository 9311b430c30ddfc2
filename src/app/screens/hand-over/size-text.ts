import type { Words } from '../../words/words.ts'

/** How much is handed over: bytes while they are few, else kilobytes. */
export const sizeText = (bytes: number, { say, number }: Words): string =>
  bytes < 1000 ? say('hand-over.bytes', { bytes }) : say('hand-over.kilobytes', { size: number(bytes / 1000, 1) })
