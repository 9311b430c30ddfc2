import type { ReactElement } from 'react'
import type { WorkedOut } from '../../../core/work-out.ts'
import type { Words } from '../../words/words.ts'

/** The sheets there are, in the order of the job. */
export const SHEET_KINDS = [
  'materials',
  'materials-blank',
  'setting-out',
  'courses',
  'gauge-rod',
  'trays',
  'costs',
  'schedule',
  'first-fire',
] as const

export type SheetKind = (typeof SHEET_KINDS)[number]

/** What a sheet is written from: the plan worked out, the reader's words, and a hand that inks a drawing. */
export interface SheetHand {
  readonly worked: WorkedOut
  readonly words: Words
  /** A drawing component → SVG markup: by a hidden corner of the page on a phone, by the server's renderer in the office. */
  readonly ink: (drawing: ReactElement) => string
}
