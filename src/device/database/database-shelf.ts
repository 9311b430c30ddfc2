import { both, troubleOf, type Connection, type Database, type StoredRow } from './connection.ts'
import { MOST_COPIES, type MoneyShelf, type SaveOutcome, type Shelf } from './shelf.ts'

/** Stored changes of one plan beyond which they are joined into one. */
export const MOST_UPDATES = 200

/** Acknowledged means on the disk: a phone that loses power after "saved" has lost nothing. */
const ON_DISK = { durability: 'strict' } as const

async function outcomeOf(work: Promise<unknown>): Promise<SaveOutcome> {
  try {
    await work
    return 'saved'
  } catch (error) {
    return troubleOf(error)
  }
}

/** Where the browser cannot read one of the rows it gives none of them: then each is asked for alone, and that one stands there by its id. */
async function rowByRow(database: Database): Promise<StoredRow[]> {
  const ids = await database.getAllKeys('plans')
  const unread = (id: string): StoredRow => ({ id, name: id, savedAtMs: 0, plan: null, deletedAtMs: null })
  return Promise.all(
    ids.map((id) =>
      database.get('plans', id).then(
        (row) => row ?? unread(id),
        () => unread(id),
      ),
    ),
  )
}

/** Plans in the phone's database. */
export function databaseShelf(connection: Connection): Shelf {
  const { ask } = connection
  return {
    ...databaseMoney(connection),
    isLasting: true,
    rows: () => ask((database) => database.getAll('plans').catch(() => rowByRow(database))),
    updates: (planId) =>
      ask(async (database) =>
        (await database.getAllFromIndex('updates', 'planId', planId)).map((stored) => stored.bytes),
      ),
    save: ({ row, update, whole }) =>
      outcomeOf(
        ask(async (database) => {
          // Before the transaction: inside it nothing but the store may be waited for. Saving goes on without it where it cannot be had.
          const compacted = await import('./compact.ts').then(
            (code) => code.compacted,
            () => null,
          )
          const tx = database.transaction(['plans', 'updates'], 'readwrite', ON_DISK)
          const plans = tx.objectStore('plans')
          const updates = tx.objectStore('updates')
          const write = async () => {
            const isNew = (await plans.getKey(row.id)) === undefined
            await Promise.all([plans.put(row), updates.add({ planId: row.id, bytes: isNew ? whole() : update })])
            const keys = await updates.index('planId').getAllKeys(row.id)
            if (compacted === null || keys.length <= MOST_UPDATES) return
            const one = compacted((await updates.index('planId').getAll(row.id)).map((stored) => stored.bytes))
            if (one === null) return
            await Promise.all([...keys.map((key) => updates.delete(key)), updates.add({ planId: row.id, bytes: one })])
          }
          await both(write(), tx.done)
        }),
      ),
    putRow: (row) => outcomeOf(ask((database) => database.put('plans', row))),
    freshenRow: (row) =>
      outcomeOf(
        ask(async (database) => {
          const { store, done } = database.transaction('plans', 'readwrite')
          const write = async () => {
            const stored = await store.get(row.id)
            if (stored?.deletedAtMs === null) await store.put(row)
          }
          await both(write(), done)
        }),
      ),
    remove: (planIds) =>
      outcomeOf(
        ask(async (database) => {
          const tx = database.transaction(['plans', 'updates', 'copies', 'receipts'], 'readwrite')
          const write = async (planId: string) => {
            const [updates, copies, receipts] = await Promise.all([
              tx.objectStore('updates').index('planId').getAllKeys(planId),
              tx.objectStore('copies').index('planId').getAllKeys(planId),
              tx.objectStore('receipts').index('planId').getAllKeys(planId),
            ])
            await Promise.all([
              tx.objectStore('plans').delete(planId),
              ...updates.map((key) => tx.objectStore('updates').delete(key)),
              ...copies.map((key) => tx.objectStore('copies').delete(key)),
              ...receipts.map((key) => tx.objectStore('receipts').delete(key)),
            ])
          }
          await both(Promise.all(planIds.map(write)), tx.done)
        }),
      ),
    keepCopy: (copy) =>
      outcomeOf(
        ask(async (database) => {
          const { store, done } = database.transaction('copies', 'readwrite')
          const write = async () => {
            await store.add(copy)
            const keys = await store.index('planId').getAllKeys(copy.planId)
            await Promise.all(keys.slice(0, -MOST_COPIES).map((key) => store.delete(key)))
          }
          await both(write(), done)
        }),
      ),
    copies: (planId) => ask(async (database) => (await database.getAllFromIndex('copies', 'planId', planId)).reverse()),
    note: (name) => ask((database) => database.get('phone', name)),
    putNote: (name, value) => outcomeOf(ask((database) => database.put('phone', value, name))),
    close: connection.close,
  }
}

/** The phone's price book and its receipts, in the same database. */
function databaseMoney({ ask }: Connection): MoneyShelf {
  const removeFrom = (name: 'prices' | 'receipts', ids: readonly string[]) =>
    outcomeOf(
      ask(async (database) => {
        const { store, done } = database.transaction(name, 'readwrite')
        await both(Promise.all(ids.map((id) => store.delete(id))), done)
      }),
    )
  return {
    prices: () => ask((database) => database.getAll('prices')),
    putPrices: (prices) =>
      outcomeOf(
        ask(async (database) => {
          const { store, done } = database.transaction('prices', 'readwrite', ON_DISK)
          await both(Promise.all(prices.map((price) => store.put(price))), done)
        }),
      ),
    removePrices: (ids) => removeFrom('prices', ids),
    receipts: (planId) => ask((database) => database.getAllFromIndex('receipts', 'planId', planId)),
    receipt: (id) => ask((database) => database.get('receipts', id)),
    putReceipt: (receipt) => outcomeOf(ask((database) => database.put('receipts', receipt))),
    removeReceipts: (ids) => removeFrom('receipts', ids),
  }
}
