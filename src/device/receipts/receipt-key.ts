import type { Plan } from '../../core/plan/schema.ts'
import type { StoredReceipt } from '../database/connection.ts'

/** Where a receipt's picture stands on this phone: a copy of a plan has pictures of its own. */
export const receiptKey = (planId: string, receipt: string): string => `${planId}/${receipt}`

/** The record's name for a picture, from its key. */
export const receiptOf = (planId: string, id: string): string => id.slice(planId.length + 1)

/** A receipt ready for the shelf. */
export const storedReceipt = (planId: string, receipt: string, bytes: Uint8Array, atMs: number): StoredReceipt => ({
  id: receiptKey(planId, receipt),
  planId,
  atMs,
  bytes,
})

/** The ids by which a plan's records name pictures of receipts. */
export const receiptsNamed = ({ spending }: Pick<Plan, 'spending'>): ReadonlySet<string> =>
  new Set(Object.values(spending).flatMap(({ receipt }) => receipt ?? []))
