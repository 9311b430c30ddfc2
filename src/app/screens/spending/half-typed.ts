import { spendingSchema, type Spending } from '../../../core/plan/money-records.ts'

/** A record as far as it was typed. */
export interface HalfTyped {
  readonly draft: Spending
  readonly paid: number | null
  readonly isPaidTyped: boolean
}

/** One place on the phone for each record: it outlives the sheet and the tab. */
const keptAs = (planId: string, record: string): string => `kilnwright.half.${planId}.${record}`

/** The record as text, whichever order its fields stand in. */
const asText = (kept: Spending | undefined): string =>
  JSON.stringify(Object.entries(kept ?? {}).toSorted(([a], [b]) => (a < b ? -1 : 1)))

/**
 * What was typed into a record and not kept yet; null where there is nothing, or where the record has changed under it since (another phone, an
 * undo): then it would put back what is out of date.
 */
export function halfTyped(planId: string, record: string, kept: Spending | undefined): HalfTyped | null {
  try {
    const found = JSON.parse(localStorage.getItem(keptAs(planId, record)) ?? 'null') as Record<string, unknown> | null
    const draft = spendingSchema.safeParse(found?.['draft'])
    if (!draft.success || found?.['kept'] !== asText(kept)) return null
    const { paid } = found
    return {
      draft: draft.data,
      paid: typeof paid === 'number' && Number.isSafeInteger(paid) ? paid : null,
      isPaidTyped: found['isPaidTyped'] === true,
    }
  } catch {
    return null
  }
}

export function keepHalfTyped(planId: string, record: string, kept: Spending | undefined, half: HalfTyped): void {
  try {
    localStorage.setItem(keptAs(planId, record), JSON.stringify({ ...half, kept: asText(kept) }))
  } catch {
    // A private window or a full phone: it lasts as long as the sheet.
  }
}

export function dropHalfTyped(planId: string, record: string): void {
  try {
    localStorage.removeItem(keptAs(planId, record))
  } catch {
    // There is nothing where nothing can be kept.
  }
}
