import { bad, good, type Result } from '../../core/basics/result.ts'
import type { Plan } from '../../core/plan/schema.ts'
import { newId } from '../../device/database/new-id.ts'
import { receiptKey, receiptOf, receiptsNamed, storedReceipt } from '../../device/receipts/receipt-key.ts'
import { base64Chars } from '../../device/sharing/bytes-text.ts'
import { receiptType } from '../../device/receipts/receipt.ts'
import type { PhotoProblem } from '../../device/receipts/shrink-photo.ts'
import { receiptsOf } from './file-actions.ts'
import { keeper } from './keeper.ts'

export type ReceiptProblem = PhotoProblem | 'full' | 'failed'

/** A picture that no record names any more waits so long for an undo, as a deleted plan does. */
const UNNAMED_KEPT_MS = 30 * 86_400_000

/** Makes a photo small and keeps it on this phone; gives the id by which a record can name it. */
export async function keepReceipt(planId: string, photo: Blob): Promise<Result<string, ReceiptProblem>> {
  const [{ shrunkPhoto }, { shelf }] = await Promise.all([import('../../device/receipts/shrink-photo.ts'), keeper()])
  const bytes = await shrunkPhoto(photo)
  if (typeof bytes === 'string') return bad(bytes)
  const id = newId()
  const outcome = await shelf.putReceipt(storedReceipt(planId, id, bytes, Date.now()))
  return outcome === 'saved' ? good(id) : bad(outcome === 'full' ? 'full' : 'failed')
}

/** A receipt's picture, or null where this phone does not have it. */
export async function receiptPicture(planId: string, receipt: string): Promise<Blob | null> {
  const { shelf } = await keeper()
  const bytes = (await shelf.receipt(receiptKey(planId, receipt)))?.bytes
  const type = bytes && receiptType(bytes)
  return bytes && type ? new Blob([bytes.slice()], { type }) : null
}

/** Takes pictures off this phone that no record of the plan has named for a month. */
export async function dropUnnamedReceipts({ id: planId, spending }: Pick<Plan, 'id' | 'spending'>): Promise<void> {
  const { shelf } = await keeper()
  const named = receiptsNamed({ spending })
  const limitMs = Date.now() - UNNAMED_KEPT_MS
  const gone = (await shelf.receipts(planId)).filter(
    ({ id, atMs }) => atMs < limitMs && !named.has(receiptOf(planId, id)),
  )
  if (gone.length > 0) await shelf.removeReceipts(gone.map(({ id }) => id))
}

/** How much the pictures of a plan's receipts add to its file. */
export async function receiptLoad(planId: string): Promise<{ readonly count: number; readonly sizeBytes: number }> {
  const pictures = await receiptsOf(planId)
  return {
    count: pictures.length,
    sizeBytes: pictures.reduce((sum, { bytes }) => sum + base64Chars(bytes.length), 0),
  }
}
