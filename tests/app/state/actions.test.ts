import { describe, expect, it, vi } from 'vitest'
import { chambersFor } from '../../../src/core/fish/load.ts'
import {
  applySet,
  closePlan,
  createPlan,
  deletePlan,
  duplicatePlan,
  editPlan,
  isSafeToReload,
  openPlan,
  redo,
  renamePlan,
  restorePlan,
  setField,
  startApp,
  stopApp,
  undo,
} from '../../../src/app/state/actions.ts'
import { EXAMPLE_KEYS, exportPlan, openExample, openFile } from '../../../src/app/state/file-actions.ts'
import { store } from '../../../src/app/state/store.ts'
import { workedOut } from '../../../src/app/state/use-worked-out.ts'
import { connect, type StoredRow } from '../../../src/device/database/connection.ts'
import { encodeDocument } from '../../../src/device/database/document-bytes.ts'
import { documentOf } from '../../../src/device/database/plan-document.ts'
import { FIRST } from './first-answers.ts'
import { open, phonesInNode, saved } from './phones.ts'
import { offerOf, planOf } from '../../device/plans.ts'
import { PLAN_VERSION } from '../../../src/core/plan/schema.ts'

phonesInNode()

/** The page goes and comes again: the same phone, a new run of the app. */
const restart = async () => {
  await stopApp()
  await startApp()
}
const names = () => store.getState().rows.map(({ name }) => name)
const fileOf = (text: string) => new Blob([text])
/** Writes to the phone's database behind the app's back. */
const putRow = async (row: StoredRow, ...updates: Uint8Array[]) => {
  const connection = connect()
  await connection.ask(async (database) => {
    await database.put('plans', row)
    for (const bytes of updates) await database.add('updates', { planId: row.id, bytes })
  })
  await connection.close()
}

describe('the plans on this phone', () => {
  it('begin with none, and say so only when the database has answered', async () => {
    expect(store.getState()).toMatchObject({ phase: 'loading', storage: 'asking', rows: [] })
    expect(() => editPlan((plan) => plan)).toThrow('no plan is open')
    await startApp()
    expect(store.getState()).toMatchObject({ phase: 'ready', storage: 'lasting', rows: [], open: null })
  })

  it('are made from three answers, with the chambers that the catch needs, and are there after a restart', async () => {
    await startApp()
    const id = await createPlan(FIRST)
    await saved()
    expect(open().plan.chambers.count).toBe(chambersFor(open().plan).count)
    const before = open().plan
    await restart()
    expect(store.getState().open).toBeNull()
    expect(store.getState().rows).toEqual([
      { id, name: FIRST.name, plan: before, savedAtMs: expect.any(Number) as number, trouble: null },
    ])
    expect(await openPlan(id)).toEqual({ ok: true, value: before })
    expect(open().saving).toEqual({ kind: 'saved', atMs: store.getState().rows[0]?.savedAtMs })
  })

  it('change field by field, undo and redo, and refuse what breaks a limit', async () => {
    await startApp()
    await createPlan(FIRST)
    expect(setField('chambers.clearSideM', 0.9).ok).toBe(true)
    expect(applySet({ 'trays.spares': 2, 'trays.setbackM': 0.05 }).ok).toBe(true)
    expect(setField('chambers.clearSideM', 12).ok).toBe(false)
    expect(open().plan).toMatchObject({ chambers: { clearSideM: 0.9 }, trays: { spares: 2, setbackM: 0.05 } })
    undo()
    expect(open().plan.trays.spares).toBe(0)
    expect(open()).toMatchObject({ canUndo: true, canRedo: true })
    redo()
    expect(open().plan.trays).toMatchObject({ spares: 2, setbackM: 0.05 })
    setField('offers.o1', offerOf('cement', 1250))
    setField('offers.o1.priceMinor', 1300)
    expect(open().plan.offers['o1']?.priceMinor).toBe(1300)
    setField('offers.o1', undefined)
    expect(open().plan.offers).toEqual({})
    expect(() => setField('__proto__.polluted', 1)).toThrow('not a field')
  })

  it('are renamed and duplicated, open or not', async () => {
    await startApp()
    const id = await createPlan(FIRST)
    setField('chambers.clearSideM', 0.9)
    closePlan()
    await renamePlan(id, '  Upper landing ')
    expect(names()).toEqual(['Upper landing'])
    const copy = await duplicatePlan(id)
    if (!copy.ok) throw new Error('not duplicated')
    expect(open()).toMatchObject({ id: copy.value, plan: { name: 'Upper landing 2', chambers: { clearSideM: 0.9 } } })
    await saved()
    setField('chambers.clearSideM', 0.7)
    await saved()
    await restart()
    expect(names().sort()).toEqual(['Upper landing', 'Upper landing 2'])
    await openPlan(id)
    expect(open().plan.chambers.clearSideM).toBe(0.9)
    expect((await renamePlan(id, '')).ok).toBe(false)
    expect(open().plan.name).toBe('Upper landing')
  })

  it('can be deleted and brought back', async () => {
    await startApp()
    const id = await createPlan(FIRST)
    await saved()
    const { plan } = open()
    await deletePlan(id)
    expect(store.getState()).toMatchObject({ rows: [], open: null, notice: { key: 'keeping.deleted' } })
    store.getState().notice?.undo?.()
    await vi.waitUntil(() => names().length === 1)
    expect(store.getState().notice).toBeNull()
    await restart()
    await openPlan(id)
    expect(open().plan).toEqual(plan)
    await deletePlan(id)
    await restart()
    expect(names()).toEqual([])
  })

  it('stay thirty days after they were deleted, then go for good', async () => {
    const row = (id: string, deletedAtMs: number): StoredRow => ({
      id,
      name: id,
      savedAtMs: 1,
      plan: planOf(id),
      deletedAtMs,
    })
    const dayMs = 86_400_000
    await putRow(row('lately', Date.now() - 29 * dayMs), encodeDocument(documentOf(planOf('lately'))))
    await putRow(row('long-ago', Date.now() - 31 * dayMs), encodeDocument(documentOf(planOf('long-ago'))))
    await startApp()
    expect(names()).toEqual([])
    await restorePlan('long-ago')
    expect(names()).toEqual([])
    await restorePlan('lately')
    expect(names()).toEqual(['lately'])
    expect((await openPlan('lately')).ok).toBe(true)
  })

  it('begin with an example as often as one likes, and keep what was tried on it', async () => {
    await startApp()
    expect(EXAMPLE_KEYS).toEqual(['one-chamber', 'three-chambers', 'two-chambers'])
    const id = await openExample('one-chamber')
    setField('trays.spares', 3)
    closePlan()
    expect(await openExample('one-chamber')).toBe(id)
    expect(open().plan.trays.spares).toBe(3)
    await deletePlan(id)
    const fresh = await openExample('one-chamber')
    expect(fresh).not.toBe(id)
    expect(open().plan).toMatchObject({ example: true, trays: { spares: 0 } })
    expect(store.getState().rows).toHaveLength(1)
  })

  it('show the plan asked for last, however fast they are asked for', async () => {
    await startApp()
    const a = await createPlan(FIRST)
    const b = await createPlan({ ...FIRST, name: 'The other' })
    await saved()
    await restart()
    await Promise.all([openPlan(a), openPlan(b), openPlan(a)])
    expect(open().id).toBe(a)
  })

  it('of a long list are all there by name at once, the newest looked into first, and a damaged one hides none', async () => {
    for (let number = 0; number < 60; number++) {
      const id = `plan-${String(number)}`
      const plan: unknown = number % 25 === 7 ? { format: 'rubbish' } : planOf(id)
      await putRow({ id, name: id, savedAtMs: number + 1, plan, deletedAtMs: null })
    }
    await startApp()
    const first = store.getState().rows
    expect(first.map(({ id }) => id)).toEqual(Array.from({ length: 60 }, (_, at) => `plan-${String(59 - at)}`))
    expect(first.slice(0, 12).every(({ plan, trouble }) => plan !== null || trouble !== null)).toBe(true)
    await renamePlan('plan-59', 'Renamed meanwhile')
    await vi.waitUntil(() => store.getState().rows.every(({ plan, trouble }) => plan !== null || trouble !== null))
    const { rows } = store.getState()
    expect(rows).toHaveLength(60)
    expect(rows.filter(({ trouble }) => trouble !== null).map(({ id }) => id)).toEqual(['plan-57', 'plan-32', 'plan-7'])
    expect(rows.find(({ id }) => id === 'plan-5')?.plan).toEqual(planOf('plan-5'))
  })

  it('are never hidden by one that cannot be read, and that one is kept and handed on as it is', async () => {
    const plan = planOf('good')
    const row = (id: string, raw: unknown): StoredRow => ({ id, name: id, savedAtMs: 1, plan: raw, deletedAtMs: null })
    const newer = documentOf(planOf('newer'))
    newer.getMap('plan').set('version', 7)
    newer.getMap('plan').set('roof.pitchDeg', 20)
    await putRow(row('good', plan), encodeDocument(documentOf(plan)))
    await putRow(row('bad', 'rubbish'), Uint8Array.of(1, 2, 3))
    await putRow(row('row-only-bad', null), encodeDocument(documentOf(planOf('row-only-bad'))))
    await putRow(row('newer', { ...planOf('newer'), version: 7 }), encodeDocument(newer))
    await startApp()
    const rows = Object.fromEntries(store.getState().rows.map((one) => [one.id, one]))
    expect(rows['good']?.plan).toEqual(plan)
    expect(rows['row-only-bad']).toMatchObject({ plan: planOf('row-only-bad'), trouble: null })
    expect(rows['bad']).toMatchObject({ plan: null, trouble: { kind: 'damaged' } })
    expect(rows['newer']).toMatchObject({ plan: null, trouble: { kind: 'newer', theirVersion: 7 } })
    expect(await openPlan('newer')).toEqual({
      ok: false,
      problems: [{ kind: 'newer', theirVersion: 7, ourVersion: PLAN_VERSION }],
    })
    expect((await openPlan('bad')).ok).toBe(false)
    expect(JSON.parse((await exportPlan('newer')).text)).toMatchObject({ plan: { version: 7, roof: { pitchDeg: 20 } } })
    expect(JSON.parse((await exportPlan('bad')).text)).toMatchObject({ stored: ['AQID'] })
    const kept = await connect().ask((database) => database.getAllFromIndex('updates', 'planId', 'newer'))
    expect(kept[0]?.bytes).toEqual(encodeDocument(newer))
  })
})

describe('saving', () => {
  it('tells when the phone is full, keeps the work, and is safe again afterwards', async () => {
    await startApp()
    const id = await createPlan(FIRST)
    await saved()
    const full = vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(() => {
      throw new DOMException('full', 'QuotaExceededError')
    })
    setField('name', 'Kept in hand')
    await vi.waitUntil(() => open().saving.kind === 'not-saved')
    expect(open().saving).toEqual({ kind: 'not-saved', reason: 'full' })
    expect(isSafeToReload()).toBe(false)
    const leaving = new Event('beforeunload', { cancelable: true })
    window.dispatchEvent(leaving)
    expect(leaving.defaultPrevented).toBe(true)
    closePlan()
    await openPlan(id)
    expect(open()).toMatchObject({ plan: { name: 'Kept in hand' }, saving: { kind: 'not-saved' } })
    expect(JSON.parse((await exportPlan(id)).text)).toMatchObject({ plan: { name: 'Kept in hand' } })
    full.mockRestore()
    setField('trays.spares', 1)
    await saved()
    expect(isSafeToReload()).toBe(true)
    await restart()
    expect(names()).toEqual(['Kept in hand'])
  })

  it('goes on in memory where there is no database, says so, and still exports', async () => {
    vi.stubGlobal('indexedDB', undefined)
    await startApp()
    expect(store.getState().storage).toBe('memory-only')
    const id = await createPlan(FIRST)
    setField('name', 'Private')
    expect(open().saving).toEqual({ kind: 'memory-only' })
    expect(isSafeToReload()).toBe(false)
    closePlan()
    await openPlan(id)
    expect(open().plan.name).toBe('Private')
    expect((await exportPlan(id)).text).toContain('Private')
    globalThis.indexedDB = new IDBFactory()
  })
})

describe('files', () => {
  it('bring a plan to another phone and its changes back, and lose nothing of either', async () => {
    await startApp()
    const id = await createPlan(FIRST)
    await saved()
    const atHome = globalThis.indexedDB
    const toMarket = await exportPlan(id)
    setField('ground.soil', 'laterite')
    await saved()
    await stopApp()

    globalThis.indexedDB = new IDBFactory()
    await startApp()
    expect(await openFile(fileOf(toMarket.text))).toEqual({ ok: true, value: id })
    setField('offers.o1', offerOf('cement', 1250))
    await saved()
    const fromMarket = await exportPlan(id)
    await stopApp()

    globalThis.indexedDB = atHome
    await startApp()
    expect(await openFile(fileOf(fromMarket.text))).toEqual({ ok: true, value: id })
    expect(open().plan).toMatchObject({ ground: { soil: 'laterite' }, offers: { o1: { priceMinor: 1250 } } })
    expect(store.getState().rows).toHaveLength(1)
    await saved()
    await restart()
    expect(store.getState().rows[0]?.plan).toMatchObject({ ground: { soil: 'laterite' }, offers: {} })
  })

  it('bring a deleted plan back', async () => {
    await startApp()
    const id = await createPlan(FIRST)
    await saved()
    const file = await exportPlan(id)
    await deletePlan(id)
    await openFile(fileOf(file.text))
    expect(open().id).toBe(id)
    await saved()
    await restart()
    expect(names()).toEqual([FIRST.name])
  })

  it('without a document stand beside the plan of the same name, never in its place', async () => {
    await startApp()
    const id = await createPlan(FIRST)
    setField('chambers.clearSideM', 0.9)
    const bare = JSON.stringify({ ...open().plan, chambers: { count: 1, clearSideM: 0.5 } })
    const opened = await openFile(fileOf(bare))
    expect(opened.ok && opened.value !== id).toBe(true)
    expect(open().plan.chambers.clearSideM).toBe(0.5)
    await openPlan(id)
    expect(open().plan.chambers.clearSideM).toBe(0.9)
  })

  it('that are no good change nothing', async () => {
    await startApp()
    await createPlan(FIRST)
    await saved()
    const before = JSON.stringify(store.getState())
    const { text } = await exportPlan(open().id)
    const kinds = []
    for (const content of [
      'a shopping list',
      text.slice(0, 900),
      text.replace('"version": 1', '"version": 9'),
      ' '.repeat(5 * 1024 * 1024 + 1),
    ]) {
      const opened = await openFile(fileOf(content))
      kinds.push(opened.ok ? 'opened' : opened.problems[0]?.kind)
    }
    expect(kinds).toEqual(['not-ours', 'damaged', 'newer', 'too-big'])
    expect(JSON.stringify(store.getState())).toBe(before)
  })
})

describe('what follows from a plan', () => {
  it('is worked out once for each state of it', async () => {
    await startApp()
    await createPlan(FIRST)
    const before = workedOut(open().plan)
    expect(workedOut(open().plan)).toBe(before)
    setField('chambers.count', before.plan.chambers.count + 1)
    expect(workedOut(open().plan)).not.toBe(before)
  })
})
