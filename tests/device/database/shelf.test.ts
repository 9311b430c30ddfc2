import 'fake-indexeddb/auto'
import { IDBFactory } from 'fake-indexeddb'
import { openDB } from 'idb'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import * as Y from 'yjs'
import { compacted } from '../../../src/device/database/compact.ts'
import { connect, DATABASE_NAME, troubleOf, type StoredRow } from '../../../src/device/database/connection.ts'
import { databaseShelf, MOST_UPDATES } from '../../../src/device/database/database-shelf.ts'
import { memoryShelf } from '../../../src/device/database/memory-shelf.ts'
import { openShelf } from '../../../src/device/database/open-shelf.ts'
import { applyUpdate, encodeDocument, onUpdate } from '../../../src/device/database/document-bytes.ts'
import { documentFrom, documentOf, readPlan } from '../../../src/device/database/plan-document.ts'
import { MOST_COPIES, type Shelf } from '../../../src/device/database/shelf.ts'
import { planOf } from '../plans.ts'

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory()
})

const rowOf = (id: string, savedAtMs = 1): StoredRow => ({
  id,
  name: `Plan ${id}`,
  savedAtMs,
  plan: planOf(id),
  deletedAtMs: null,
})
const whole = (id: string) => () => encodeDocument(documentOf(planOf(id)))
const saveNew = (shelf: Shelf, id: string) => shelf.save({ row: rowOf(id), update: new Uint8Array(), whole: whole(id) })

describe.each([
  ['database', () => databaseShelf(connect())],
  ['memory', memoryShelf],
])('a shelf in %s', (_name, shelfOf) => {
  it('gives back what was put on it, plan by plan', async () => {
    const shelf = shelfOf()
    expect(await saveNew(shelf, 'a')).toBe('saved')
    expect(await saveNew(shelf, 'b')).toBe('saved')
    expect(await shelf.rows()).toEqual([rowOf('a'), rowOf('b')])
    expect(readPlan(documentFrom(await shelf.updates('b')).doc)).toEqual({ ok: true, value: planOf('b') })
    expect(await shelf.updates('c')).toEqual([])
  })

  it('keeps prices and receipts one by one, and a plan’s receipts go with it', async () => {
    const shelf = shelfOf()
    const receipt = (id: string, planId: string) => ({ id, planId, atMs: 5, bytes: Uint8Array.of(1, 2) })
    await saveNew(shelf, 'a')
    for (const one of [receipt('r1', 'a'), receipt('r2', 'a'), receipt('r3', 'b')])
      expect(await shelf.putReceipt(one)).toBe('saved')
    expect(await shelf.putPrices(['p1', 'p2'].map((id) => ({ id, price: { id } })))).toBe('saved')
    await shelf.putPrices([{ id: 'p2', price: 'newer' }])
    await shelf.removePrices(['p1', 'never there'])
    expect(await shelf.prices()).toEqual([{ id: 'p2', price: 'newer' }])
    await shelf.removeReceipts(['r1'])
    expect(await shelf.receipts('a')).toEqual([receipt('r2', 'a')])
    await shelf.remove(['a'])
    expect([await shelf.receipts('a'), await shelf.receipts('b')]).toEqual([[], [receipt('r3', 'b')]])
  })

  it('takes a plan away with all its copies, and no other', async () => {
    const shelf = shelfOf()
    await saveNew(shelf, 'a')
    await saveNew(shelf, 'b')
    const bytes = whole('a')()
    await shelf.keepCopy({ planId: 'a', atMs: 1, why: 'day', bytes })
    await shelf.keepCopy({ planId: 'b', atMs: 1, why: 'day', bytes })
    await shelf.remove(['a'])
    expect((await shelf.rows()).map(({ id }) => id)).toEqual(['b'])
    expect(await shelf.updates('a')).toEqual([])
    expect(await shelf.copies('a')).toEqual([])
    expect(await shelf.copies('b')).toHaveLength(1)
  })

  it('keeps the newest copies', async () => {
    const shelf = shelfOf()
    for (let atMs = 1; atMs <= MOST_COPIES + 3; atMs++)
      await shelf.keepCopy({ planId: 'a', atMs, why: 'day', bytes: Uint8Array.of(atMs) })
    const kept = await shelf.copies('a')
    expect(kept.map(({ atMs }) => atMs)).toEqual(Array.from({ length: MOST_COPIES }, (_, age) => MOST_COPIES + 3 - age))
  })

  it('puts no row right that was deleted meanwhile', async () => {
    const shelf = shelfOf()
    await saveNew(shelf, 'a')
    await shelf.putRow({ ...rowOf('a'), deletedAtMs: 5 })
    await shelf.freshenRow(rowOf('a', 9))
    expect(await shelf.rows()).toEqual([{ ...rowOf('a'), deletedAtMs: 5 }])
  })
})

describe('a row that the browser itself cannot read', () => {
  afterEach(() => {
    vi.restoreAllMocks()
  })

  it('hides no other, and stands in the list by its id', async () => {
    const shelf = databaseShelf(connect())
    for (const id of ['a', 'b', 'c']) await saveNew(shelf, id)
    const fault = (): never => {
      throw new DOMException('Failed to read large IndexedDB value', 'DataError')
    }
    vi.spyOn(IDBObjectStore.prototype, 'getAll').mockImplementation(fault)
    type Get = (this: IDBObjectStore, key: IDBValidKey | IDBKeyRange) => IDBRequest<unknown>
    const get = Reflect.get(IDBObjectStore.prototype, 'get') as Get
    vi.spyOn(IDBObjectStore.prototype, 'get').mockImplementation(function (this: IDBObjectStore, key) {
      return key === 'b' ? fault() : get.call(this, key)
    })
    expect(await shelf.rows()).toEqual([
      rowOf('a'),
      { id: 'b', name: 'b', savedAtMs: 0, plan: null, deletedAtMs: null },
      rowOf('c'),
    ])
  })
})

describe('many small changes', () => {
  it('are joined into few, and say the same', async () => {
    const shelf = databaseShelf(connect())
    const doc = documentOf(planOf('a'))
    await saveNew(shelf, 'a')
    applyUpdate(doc, (await shelf.updates('a'))[0] ?? new Uint8Array(), 'test')
    const updates: Uint8Array[] = []
    onUpdate(doc, (bytes) => updates.push(bytes))
    for (let count = 0; count < MOST_UPDATES + 40; count++) {
      doc.getMap('plan').set('chambers.count', (count % 8) + 1)
      const update = updates.at(-1) ?? new Uint8Array()
      expect(await shelf.save({ row: rowOf('a'), update, whole: () => encodeDocument(doc) })).toBe('saved')
    }
    const stored = await shelf.updates('a')
    expect(stored.length).toBeLessThan(MOST_UPDATES)
    expect(readPlan(documentFrom(stored).doc)).toEqual(readPlan(doc))
  })

  it('are left alone where one of them cannot be read', () => {
    expect(compacted([whole('a')(), Uint8Array.of(200, 200)])).toBeNull()
  })

  it('keep a change waiting whose forerunner has not come yet', () => {
    const doc = new Y.Doc()
    const updates: Uint8Array[] = []
    onUpdate(doc, (bytes) => updates.push(bytes))
    doc.getMap('plan').set('name', 'first')
    doc.getMap('plan').set('name', 'second')
    const [first, second] = updates
    const late = compacted([second ?? new Uint8Array()])
    const joined = documentFrom([late ?? new Uint8Array(), first ?? new Uint8Array()]).doc
    expect(joined.getMap('plan').get('name')).toBe('second')
  })
})

describe('a database that goes away', () => {
  it('is opened anew after its connection was lost', async () => {
    const connection = connect()
    const shelf = databaseShelf(connection)
    await saveNew(shelf, 'a')
    await connection.ask(async (database) => {
      database.close()
    })
    expect(await saveNew(shelf, 'b')).toBe('saved')
    expect(await shelf.rows()).toHaveLength(2)
  })

  it('gets the whole document again when it was wiped under us', async () => {
    const shelf = databaseShelf(connect())
    await saveNew(shelf, 'a')
    globalThis.indexedDB = new IDBFactory()
    await shelf.close()
    const doc = documentOf(planOf('a'))
    const updates: Uint8Array[] = []
    onUpdate(doc, (bytes) => updates.push(bytes))
    doc.getMap('plan').set('name', 'After the wipe')
    await shelf.save({ row: rowOf('a'), update: updates[0] ?? new Uint8Array(), whole: () => encodeDocument(doc) })
    const read = readPlan(documentFrom(await shelf.updates('a')).doc)
    expect(read).toEqual({ ok: true, value: { ...planOf('a'), name: 'After the wipe' } })
  })

  it('lets a newer version upgrade it, and says from then on that it is blocked', async () => {
    const shelf = databaseShelf(connect())
    await saveNew(shelf, 'a')
    const newer = await openDB(DATABASE_NAME, 3)
    expect(await saveNew(shelf, 'b')).toBe('blocked')
    expect(await newer.count('plans')).toBe(1)
    newer.close()
  })

  it('is waited for while an older tab does not let go', async () => {
    const old = await openDB(DATABASE_NAME, 1)
    const connection = connect(DATABASE_NAME, 2)
    const trouble = await connection.ask((database) => database.count('plans')).catch(troubleOf)
    expect(trouble).toBe('blocked')
    old.close()
    expect(await connection.ask(async ({ version }) => version)).toBe(2)
    await connection.close()
  })

  it('names a full disk, whether the request or the transaction tells', () => {
    expect(troubleOf(new DOMException('', 'QuotaExceededError'))).toBe('full')
    expect(troubleOf(new DOMException('', 'UnknownError'))).toBe('failed')
    expect(troubleOf(undefined)).toBe('failed')
  })
})

describe('opening', () => {
  it('falls back to memory where there is no database, and says so', async () => {
    vi.stubGlobal('indexedDB', undefined)
    const { shelf, storage } = await openShelf(() => {})
    vi.unstubAllGlobals()
    expect([storage, shelf.isLasting]).toEqual(['memory-only', false])
  })

  it('falls back to memory where the database refuses to open', async () => {
    vi.spyOn(indexedDB, 'open').mockImplementation(() => {
      throw new DOMException('', 'SecurityError')
    })
    expect((await openShelf(() => {})).storage).toBe('memory-only')
  })

  it('lifts a database of version 1 with all that is in it', async () => {
    const old = await openDB(DATABASE_NAME, 1, {
      upgrade: (database) => {
        database.createObjectStore('plans', { keyPath: 'id' })
        database.createObjectStore('updates', { autoIncrement: true }).createIndex('planId', 'planId')
        database.createObjectStore('copies', { autoIncrement: true }).createIndex('planId', 'planId')
        database.createObjectStore('phone')
      },
    })
    await old.put('plans', rowOf('a'))
    await old.put('phone', 'Treasurer’s phone', 'name')
    old.close()
    const { shelf, storage } = await openShelf(() => {})
    expect(storage).toBe('lasting')
    expect(await shelf.rows()).toEqual([rowOf('a')])
    expect(await shelf.note('name')).toBe('Treasurer’s phone')
    expect([await shelf.prices(), await shelf.receipts('a')]).toEqual([[], []])
    await shelf.close()
  })

  it('touches nothing of a newer version', async () => {
    const newer = await openDB(DATABASE_NAME, 7, {
      upgrade: (database) => database.createObjectStore('plans'),
    })
    await newer.put('plans', { untouched: true }, 'x')
    newer.close()
    expect((await openShelf(() => {})).storage).toBe('newer')
    const again = await openDB(DATABASE_NAME)
    expect([again.version, await again.getAll('plans')]).toEqual([7, [{ untouched: true }]])
    again.close()
  })
})
