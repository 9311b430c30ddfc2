import { deleteDB, openDB, type DBSchema, type IDBPDatabase } from 'idb'

export const DATABASE_NAME = 'kilnwright'
const DATABASE_VERSION = 2

/**
 * What the front page needs of a plan without opening its document. `plan` is the plan with its collections empty, as it was written: whoever reads it
 * checks it.
 */
export interface StoredRow {
  readonly id: string
  readonly name: string
  readonly savedAtMs: number
  readonly plan: unknown
  readonly deletedAtMs: number | null
}

/** A whole document as it was at a moment, kept so that nobody's work is ever out of reach. */
export interface StoredCopy {
  readonly planId: string
  readonly atMs: number
  readonly why: 'day' | 'before-merge'
  readonly bytes: Uint8Array
}

/** A price of the phone's own price book; whoever reads it checks it. */
export interface StoredPrice {
  readonly id: string
  readonly price: unknown
}

/** A receipt as a small picture; a plan handed on does not carry it by itself. */
export interface StoredReceipt {
  /** The plan's id and the one by which a record of the plan names it, joined by `receiptKey`. */
  readonly id: string
  readonly planId: string
  readonly atMs: number
  readonly bytes: Uint8Array
}

export interface Stores extends DBSchema {
  plans: { key: string; value: StoredRow }
  /** Changes in the order in which they were acknowledged; together they are the documents. */
  updates: { key: number; value: { readonly planId: string; readonly bytes: Uint8Array }; indexes: { planId: string } }
  copies: { key: number; value: StoredCopy; indexes: { planId: string } }
  /** What belongs to this phone and to no plan. */
  phone: { key: string; value: unknown }
  prices: { key: string; value: StoredPrice }
  receipts: { key: string; value: StoredReceipt; indexes: { planId: string } }
}

export type Database = IDBPDatabase<Stores>

/** Why the database did not do what was asked. 'blocked': another tab with another version of the app holds it. */
export type KeepingTrouble = 'full' | 'blocked' | 'failed'

const nameOf = (error: unknown): string =>
  typeof error === 'object' && error !== null && 'name' in error ? String(error.name) : ''

export function troubleOf(error: unknown): KeepingTrouble {
  const name = nameOf(error)
  if (name === 'QuotaExceededError') return 'full'
  return name === 'VersionError' || name === 'BlockedError' ? 'blocked' : 'failed'
}

/** The connection went away (storage wiped, browser short of memory, a newer version took over): worth asking once more on a new one. */
const isLostConnection = (error: unknown): boolean => ['InvalidStateError', 'AbortError'].includes(nameOf(error))

/** Waits for the writing and for its transaction. Where both fail, the transaction knows why: a full disk first shows as requests cut short. */
export async function both(writing: Promise<unknown>, done: Promise<unknown>): Promise<void> {
  const [wrote, closed] = await Promise.allSettled([writing, done])
  if (closed.status === 'rejected' && nameOf(closed.reason) !== 'AbortError') throw closed.reason
  if (wrote.status === 'rejected') throw wrote.reason
  if (closed.status === 'rejected') throw closed.reason
}

export class BlockedError extends Error {
  override readonly name = 'BlockedError'
}

export interface Connection {
  /** Runs work on the one connection of this tab, opened anew if it was lost. Rejects with what `troubleOf` can name. */
  readonly ask: <T>(work: (database: Database) => Promise<T>) => Promise<T>
  readonly close: () => Promise<void>
}

const closeIt = (database: Database): void => {
  database.close()
}

/** One connection, opened when first needed. It lets go at once when another tab wants to upgrade the database. */
export function connect(name = DATABASE_NAME, version = DATABASE_VERSION): Connection {
  let opening: Promise<Database> | null = null
  const drop = () => {
    opening = null
  }
  const open = async (): Promise<Database> => {
    let giveUp: (error: BlockedError) => void = () => {}
    const blocked = new Promise<never>((_resolve, reject) => {
      giveUp = reject
    })
    const opened = openDB<Stores>(name, version, {
      upgrade: makeStores,
      blocked: () => {
        giveUp(new BlockedError())
        // Opened after all, when the other tab has let go: by then someone has asked anew.
        opened.then(closeIt, () => {})
      },
      blocking: (_current, _blocked, event) => {
        drop()
        ;(event.target as IDBDatabase).close()
      },
      terminated: drop,
    })
    try {
      return await Promise.race([opened, blocked])
    } catch (error) {
      drop()
      throw error
    }
  }
  const current = (): Promise<Database> => (opening ??= open())
  return {
    ask: async (work) => {
      try {
        return await work(await current())
      } catch (error) {
        if (!isLostConnection(error)) throw error
        drop()
        return work(await current())
      }
    },
    close: async () => {
      const closing = opening
      drop()
      await closing?.then(closeIt, () => {})
    },
  }
}

/** Takes the whole database off the phone. */
export const eraseDatabase = (): Promise<void> => deleteDB(DATABASE_NAME)

/** Steps from every version that ever shipped; append only. */
function makeStores(database: Database, from: number): void {
  if (from < 1) {
    database.createObjectStore('plans', { keyPath: 'id' })
    database.createObjectStore('updates', { autoIncrement: true }).createIndex('planId', 'planId')
    database.createObjectStore('copies', { autoIncrement: true }).createIndex('planId', 'planId')
    database.createObjectStore('phone')
  }
  if (from < 2) {
    database.createObjectStore('prices', { keyPath: 'id' })
    database.createObjectStore('receipts', { keyPath: 'id' }).createIndex('planId', 'planId')
  }
}
