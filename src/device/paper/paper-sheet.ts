/** What a sheet of paper shows, with every word already written: the paper knows neither plans nor languages. */
export interface PaperSheet {
  readonly title: string
  readonly blocks: readonly PaperBlock[]
}

export type PaperBlock =
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'text'; readonly text: string; readonly strong?: boolean }
  /** What can hurt, in a box of its own. */
  | { readonly kind: 'caution'; readonly text: string }
  /** An SVG of ours, as markup: inked again line by line, never as a picture of dots. */
  | { readonly kind: 'drawing'; readonly markup: string; readonly caption?: string; readonly mostHighMm?: number }
  /** Drawings beside each other, as many as fit. */
  | {
      readonly kind: 'drawings'
      readonly across: number
      readonly each: readonly PaperDrawing[]
      readonly mostHighMm?: number
    }
  | PaperTable
  /** Marks at full size down a strip: heights in millimetres from its foot. */
  | {
      readonly kind: 'rod'
      readonly marksMm: readonly { readonly atMm: number; readonly text: string }[]
      readonly joinText: string
    }

/** A drawing under its caption, and under that, perhaps, what to do. */
export interface PaperDrawing {
  readonly markup: string
  readonly caption: string
  readonly text?: string
}

export interface PaperTable {
  readonly kind: 'table'
  readonly columns: readonly PaperColumn[]
  readonly rows: readonly PaperRow[]
}

export interface PaperColumn {
  readonly title: string
  /** Share of the width; the shares of a table add up to 1. */
  readonly share: number
  readonly align?: 'left' | 'right'
}

export interface PaperRow {
  readonly cells: readonly string[]
  /** Second line under the cells, smaller. */
  readonly under?: readonly string[]
  /** A box to tick before the first cell. */
  readonly box?: boolean
  /** Heads a group, or sums one up. */
  readonly look?: 'group' | 'sum' | 'total'
}

/** What stands on every page. `page` writes "page n of m". */
export interface PaperHead {
  readonly plan: string
  /** Language of the words, as BCP 47 has it. */
  readonly language: string
  readonly date: string
  readonly revision: string
  readonly foot: string
  readonly page: (n: number, of: number) => string
}

export type PaperSize = 'a4' | 'a5'
