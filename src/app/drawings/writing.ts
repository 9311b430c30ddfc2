import type { Figure } from '../../core/documents/drawings/drawing.ts'

/** How figures and words are written for this reader; drawings know no store. */
export interface Writing {
  /** A length in the reader's unit, bare: the unit stands once in the corner of the frame. */
  readonly figure: (lengthM: number) => string
  /** A length with its unit. */
  readonly alone: (lengthM: number) => string
  readonly say: (key: string, args?: Readonly<Record<string, string | number>>) => string
}

export const written = (value: Figure | number | string, writing: Writing): string | number =>
  typeof value !== 'object'
    ? value
    : value.alone === true
      ? writing.alone(value.lengthM)
      : writing.figure(value.lengthM)

export const writtenArgs = (args: Readonly<Record<string, Figure | number | string>> | undefined, writing: Writing) =>
  Object.fromEntries(Object.entries(args ?? {}).map(([name, value]) => [name, written(value, writing)]))

/** A signed level: +600, ±0, −340. */
export const writtenLevel = (valueM: number, writing: Writing): string =>
  Math.abs(valueM) < 5e-4 ? '±0' : `${valueM > 0 ? '+' : '−'}${writing.figure(Math.abs(valueM))}`

/** A coordinate of the paper, short enough for thousands of them. */
export const r = (value: number): string => String(Math.round(value * 100) / 100)
