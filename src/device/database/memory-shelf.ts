import type { StoredCopy, StoredPrice, StoredReceipt, StoredRow } from './connection.ts'
import { MOST_COPIES, type MoneyShelf, type Shelf } from './shelf.ts'

/** Plans in this tab only: for a phone whose browser gives no database (private window, storage switched off). */
export function memoryShelf(): Shelf {
  const rows = new Map<string, StoredRow>()
  const updates = new Map<string, Uint8Array[]>()
  const copies = new Map<string, StoredCopy[]>()
  const notes = new Map<string, unknown>()
  const money = memoryMoney()
  return {
    ...money,
    isLasting: false,
    rows: async () => [...rows.values()],
    updates: async (planId) => updates.get(planId) ?? [],
    save: async ({ row, whole }) => {
      rows.set(row.id, row)
      updates.set(row.id, [whole()])
      return 'saved'
    },
    putRow: async (row) => {
      rows.set(row.id, row)
      return 'saved'
    },
    freshenRow: async (row) => {
      if (rows.get(row.id)?.deletedAtMs === null) rows.set(row.id, row)
      return 'saved'
    },
    remove: async (planIds) => {
      for (const planId of planIds) await money.removeReceipts((await money.receipts(planId)).map(({ id }) => id))
      for (const kept of [rows, updates, copies]) for (const planId of planIds) kept.delete(planId)
      return 'saved'
    },
    keepCopy: async (copy) => {
      copies.set(copy.planId, [copy, ...(copies.get(copy.planId) ?? [])].slice(0, MOST_COPIES))
      return 'saved'
    },
    copies: async (planId) => copies.get(planId) ?? [],
    note: async (name) => notes.get(name),
    putNote: async (name, value) => {
      notes.set(name, value)
      return 'saved'
    },
    close: async () => {},
  }
}

function memoryMoney(): MoneyShelf {
  const prices = new Map<string, StoredPrice>()
  const receipts = new Map<string, StoredReceipt>()
  return {
    prices: async () => [...prices.values()],
    putPrices: async (all) => {
      for (const one of all) prices.set(one.id, one)
      return 'saved'
    },
    removePrices: async (ids) => {
      for (const id of ids) prices.delete(id)
      return 'saved'
    },
    receipts: async (planId) => [...receipts.values()].filter((one) => one.planId === planId),
    receipt: async (id) => receipts.get(id),
    putReceipt: async (one) => {
      receipts.set(one.id, one)
      return 'saved'
    },
    removeReceipts: async (ids) => {
      for (const id of ids) receipts.delete(id)
      return 'saved'
    },
  }
}
