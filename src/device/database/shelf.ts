import type { KeepingTrouble, StoredCopy, StoredPrice, StoredReceipt, StoredRow } from './connection.ts'

/** What became of a wish to keep something; every outcome has a name. */
export type SaveOutcome = 'saved' | KeepingTrouble

export interface Save {
  readonly row: StoredRow
  readonly update: Uint8Array
  /** The whole document, for the case that what the update builds on is not there (a new plan, or storage wiped under us). */
  readonly whole: () => Uint8Array
}

/** What money brings that belongs into no plan's document: the phone's price book, and photos of receipts. */
export interface MoneyShelf {
  readonly prices: () => Promise<readonly StoredPrice[]>
  /** All of them or none. */
  readonly putPrices: (prices: readonly StoredPrice[]) => Promise<SaveOutcome>
  readonly removePrices: (ids: readonly string[]) => Promise<SaveOutcome>
  /** Receipts of one plan. */
  readonly receipts: (planId: string) => Promise<readonly StoredReceipt[]>
  /** One receipt by its key; undefined where this phone does not have it. */
  readonly receipt: (id: string) => Promise<StoredReceipt | undefined>
  readonly putReceipt: (receipt: StoredReceipt) => Promise<SaveOutcome>
  readonly removeReceipts: (ids: readonly string[]) => Promise<SaveOutcome>
}

/** Where plans stand: in the phone's database, or in memory only. Reading rejects when the shelf cannot be reached. */
export interface Shelf extends MoneyShelf {
  /** False where nothing outlives this tab. */
  readonly isLasting: boolean
  readonly rows: () => Promise<readonly StoredRow[]>
  readonly updates: (planId: string) => Promise<readonly Uint8Array[]>
  readonly save: (save: Save) => Promise<SaveOutcome>
  /** The row alone: the document is saved already, or only the row's own truth changes. */
  readonly putRow: (row: StoredRow) => Promise<SaveOutcome>
  /** The row of a plan whose document another tab saved; nothing where the plan is gone or deleted. */
  readonly freshenRow: (row: StoredRow) => Promise<SaveOutcome>
  /** Takes plans away for good, copies too. */
  readonly remove: (planIds: readonly string[]) => Promise<SaveOutcome>
  readonly keepCopy: (copy: StoredCopy) => Promise<SaveOutcome>
  /** Earlier copies, newest first. */
  readonly copies: (planId: string) => Promise<readonly StoredCopy[]>
  /** What belongs to this phone and to no plan, by name; undefined where there is nothing. */
  readonly note: (name: string) => Promise<unknown>
  readonly putNote: (name: string, value: unknown) => Promise<SaveOutcome>
  readonly close: () => Promise<void>
}

/** Copies kept of each plan; the oldest goes first. */
export const MOST_COPIES = 10
