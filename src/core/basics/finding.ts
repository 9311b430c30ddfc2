/**
 * Something the user should know about the plan: what is wrong and by how much, as numbers, never as words (wording is in `app/words`, key `finding.<kind>`).
 *
 * `problem` keeps the kiln from working or being safe; `caution` is to be known or weighed; `good` says that a check was made and holds.
 */
export interface Finding {
  readonly level: 'problem' | 'caution' | 'good'
  readonly kind: string
  readonly args: Readonly<Record<string, FindingArg>>
  /** Where it stands on the drawings, in plan coordinates. */
  readonly at?: { readonly xM: number; readonly yM: number; readonly zM: number }
  /** The decision card it belongs to. */
  readonly card: FindingCard
  /** Changes that mend it, best first: each sets fields of the plan; wording key `remedy.<kind>`. */
  readonly remedies: readonly Remedy[]
}

export type FindingCard = 'catch' | 'chambers' | 'walls' | 'openings' | 'ground' | 'trays' | 'place' | 'money' | 'build'

/** Findings of one decision card, made from level, kind, numbers and what mends them. */
export const findingsOn =
  (card: FindingCard) =>
  (level: Finding['level'], kind: string, args: Finding['args'] = {}, remedies: readonly Remedy[] = []): Finding => ({
    level,
    kind,
    args,
    card,
    remedies,
  })

/** A number with its unit is formatted for the reader; a plain string is a message key or a proper value. */
export type FindingArg =
  | string
  | number
  | { readonly value: number; readonly unit: 'm' | 'kg' | 'money' | 'day' | 'deg' }

export interface Remedy {
  readonly kind: string
  readonly args: Readonly<Record<string, FindingArg>>
  /** New values by field path (`trays.setbackM`), to be written together as one undoable change. */
  readonly set: Readonly<Record<string, unknown>>
}
