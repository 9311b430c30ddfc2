import { receiptType } from '../receipts/receipt.ts'
import { isRecord } from '../database/json.ts'
import { fromBase64, toBase64 } from './bytes-text.ts'
import type { PlanFile } from './plan-file.ts'

/** A receipt's picture on its way: the id that a record of the plan names, and the picture. */
export interface FileReceipt {
  readonly id: string
  readonly bytes: Uint8Array
}

/** What pictures may take of one file, so that plan and pictures stay well below what a phone opens. */
const MOST_CHARS = 2 * 1024 * 1024

/** The plan's file with pictures of its receipts; as many files as it takes, each with the plan, so that each can be opened by itself and in any order. */
export function withReceipts(file: PlanFile, receipts: readonly FileReceipt[]): PlanFile[] {
  const parts: { readonly id: string; readonly picture: string }[][] = [[]]
  let chars = 0
  for (const { id, bytes } of receipts) {
    const picture = toBase64(bytes)
    if (chars > 0 && chars + picture.length > MOST_CHARS) {
      parts.push([])
      chars = 0
    }
    parts.at(-1)?.push({ id, picture })
    chars += picture.length
  }
  if (receipts.length === 0) return [file]
  const envelope = JSON.parse(file.text) as object
  return parts.map((part, index) => ({
    fileName: index === 0 ? file.fileName : file.fileName.replace('.', `-${String(index + 1)}.`),
    text: `${JSON.stringify({ ...envelope, receipts: part }, null, 1)}\n`,
  }))
}

export interface ReceiptsRead {
  readonly receipts: readonly FileReceipt[]
  /** How many were no pictures of receipts, too big, or belong to no record. */
  readonly refused: number
}

/** Pictures of a file that a record of its plan names, each once. Whatever else stands there is left out and counted. */
export function readReceipts(raw: unknown, named: ReadonlySet<string>): ReceiptsRead {
  if (raw === undefined) return { receipts: [], refused: 0 }
  if (!Array.isArray(raw)) return { receipts: [], refused: 1 }
  const wanted = new Set(named)
  const receipts = raw.flatMap((one: unknown): FileReceipt[] => {
    const { id, picture } = isRecord(one) ? one : {}
    if (typeof id !== 'string' || typeof picture !== 'string' || !wanted.delete(id)) return []
    const bytes = fromBase64(picture)
    return bytes === null || receiptType(bytes) === null ? [] : [{ id, bytes }]
  })
  return { receipts, refused: raw.length - receipts.length }
}
