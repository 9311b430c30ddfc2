import 'fake-indexeddb/auto'
import { isDeepStrictEqual } from 'node:util'
import { IDBFactory } from 'fake-indexeddb'
import * as fc from 'fast-check'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { parsePlan } from '../../../src/core/plan/parse-plan.ts'
import type { Plan } from '../../../src/core/plan/schema.ts'
import { connect, type Connection } from '../../../src/device/database/connection.ts'
import { databaseShelf } from '../../../src/device/database/database-shelf.ts'
import { memoryShelf } from '../../../src/device/database/memory-shelf.ts'
import { encodeDocument } from '../../../src/device/database/document-bytes.ts'
import { documentFrom, documentOf, readPlan, withoutCollections } from '../../../src/device/database/plan-document.ts'
import { beginSession, openSession, type PlanSession } from '../../../src/device/database/plan-session.ts'
import type { SaveOutcome, Shelf } from '../../../src/device/database/shelf.ts'
import { joinTabs, type Tabs } from '../../../src/device/database/tabs.ts'
import { deedsOf, offerOf, planOf } from '../plans.ts'

const noTabs = { tell: () => {} }
const onChange = () => {}
const phone = () => 'Treasurer (example)'
const ended: (() => void)[] = []

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory()
})
afterEach(() => {
  for (const end of ended.splice(0)) end()
})

const begin = (shelf: Shelf, plan = planOf()): PlanSession => {
  const session = beginSession(plan, { shelf, tabs: noTabs, onChange, phone })
  ended.push(session.end)
  return session
}
const open = async (shelf: Shelf, planId = 'plan-1', tabs: Pick<Tabs, 'tell'> = noTabs): Promise<PlanSession> => {
  const opened = await openSession(planId, 0, { shelf, tabs, onChange, phone })
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems))
  ended.push(opened.value.end)
  return opened.value
}
const rename = (session: PlanSession, name: string) => session.edit({ ...session.plan(), name })

describe('a plan at work', () => {
  it('is on the shelf once it says saved, also through another connection', async () => {
    const session = begin(databaseShelf(connect()))
    expect(session.saving()).toEqual({ kind: 'saving' })
    rename(session, 'Landing kiln')
    expect(await session.settled()).toBe('saved')
    expect(session.saving().kind).toBe('saved')
    const again = await open(databaseShelf(connect()))
    expect(again.plan()).toEqual({ ...planOf(), name: 'Landing kiln' })
  })

  it('refuses what breaks a limit, names the field, and changes nothing', async () => {
    const session = begin(memoryShelf())
    const refused = session.edit({ ...session.plan(), chambers: { count: 99, clearSideM: 0.7 } })
    expect(refused).toEqual({ ok: false, problems: [{ kind: 'damaged', field: 'chambers.count', reason: 'too_big' }] })
    expect(session.plan()).toEqual(planOf())
    expect(session.canUndo()).toBe(false)
  })

  it('says memory only where nothing outlives the tab', () => {
    const session = begin(memoryShelf())
    rename(session, 'In a private window')
    expect(session.saving()).toEqual({ kind: 'memory-only' })
  })

  it('keeps the parts that an edit does not touch as the same objects', () => {
    const session = begin(memoryShelf())
    const before = session.plan()
    rename(session, 'Another name')
    expect(session.plan().walls).toBe(before.walls)
    expect(session.plan()).not.toBe(before)
    rename(session, 'Another name')
    const now = session.plan()
    session.edit({ ...now })
    expect(session.plan()).toBe(now)
  })
})

describe('undo', () => {
  it('takes back steps and brings them again, through any deeds', { timeout: 30_000 }, () => {
    fc.assert(
      fc.property(fc.array(deedsOf('a'), { maxLength: 10 }), (deeds) => {
        const session = begin(memoryShelf())
        const states: Plan[] = [session.plan()]
        for (const deed of deeds) {
          session.edit(deed(session.plan()))
          if (session.plan() === states.at(-1)) continue
          // Two deeds to the same field at once would be one step of typing: another field between them parts them.
          states.push(session.plan())
          session.edit({ ...session.plan(), trays: { ...session.plan().trays, spares: states.length % 30 } })
          states.push(session.plan())
        }
        for (const state of states.slice(0, -1).reverse()) {
          session.undo()
          expect(session.plan()).toEqual(state)
        }
        expect(session.canUndo()).toBe(false)
        for (const state of states.slice(1)) {
          session.redo()
          expect(session.plan()).toEqual(state)
        }
        expect(session.canRedo()).toBe(false)
        session.end()
      }),
      { numRuns: 60 },
    )
  })

  it('takes typing in one field as one step, and another field as another', () => {
    const session = begin(memoryShelf())
    for (const name of ['L', 'La', 'Landing']) rename(session, name)
    session.edit({ ...session.plan(), chambers: { count: 3, clearSideM: 0.68 } })
    session.undo()
    expect(session.plan()).toEqual({ ...planOf(), name: 'Landing' })
    session.undo()
    expect(session.plan()).toEqual(planOf())
  })

  it('parts typing by a pause', async () => {
    const session = begin(memoryShelf())
    rename(session, 'Before')
    await new Promise((resolve) => {
      setTimeout(resolve, 550)
    })
    rename(session, 'After')
    session.undo()
    expect(session.plan().name).toBe('Before')
  })

  it('never takes back what another phone did, and brings a deleted offer back whole', async () => {
    const session = begin(memoryShelf(), { ...planOf(), offers: { o: offerOf('cement', 100) } })
    const other = documentFrom([session.document()]).doc
    session.edit({ ...session.plan(), offers: {} })
    other.getMap('plan').set('chambers.count', 5)
    expect((await session.merge(encodeDocument(other))).ok).toBe(true)
    session.undo()
    expect(session.plan()).toEqual({
      ...planOf(),
      offers: { o: offerOf('cement', 100) },
      chambers: { ...planOf().chambers, count: 5 },
    })
    expect(session.canUndo()).toBe(false)
  })
})

describe('what the phone does not write down', () => {
  const failing = (outcomes: SaveOutcome[]): Shelf & { readonly saves: Uint8Array[] } => {
    const shelf = databaseShelf(connect())
    const saves: Uint8Array[] = []
    return {
      ...shelf,
      saves,
      save: (save) => {
        const outcome = outcomes.shift()
        if (outcome !== undefined && outcome !== 'saved') return Promise.resolve(outcome)
        saves.push(save.update)
        return shelf.save(save)
      },
    }
  }

  it.each(['full', 'blocked', 'failed'] as const)(
    'is told (%s), kept in hand and saved with the next change',
    async (reason) => {
      const shelf = failing([reason])
      const session = begin(shelf)
      expect(await session.settled()).toBe(reason)
      expect(session.saving()).toEqual({ kind: 'not-saved', reason })
      expect(session.isIdle()).toBe(false)
      rename(session, 'Second try')
      expect(await session.settled()).toBe('saved')
      expect((await open(shelf)).plan().name).toBe('Second try')
    },
  )

  it('is tried again after a while by itself', async () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] })
    const shelf = failing(['full', 'full'])
    const session = begin(shelf)
    await session.settled()
    vi.advanceTimersByTime(1000)
    expect(await session.settled()).toBe('full')
    vi.advanceTimersByTime(2000)
    vi.useRealTimers()
    await vi.waitUntil(() => session.saving().kind === 'saved')
    expect((await open(shelf)).plan()).toEqual(planOf())
  })

  it('goes to the disk in one piece while a save is under way', async () => {
    const shelf = failing([])
    const session = begin(shelf)
    for (const name of ['a', 'b', 'c', 'd']) rename(session, name)
    await session.settled()
    expect(shelf.saves.length).toBeLessThanOrEqual(2)
    expect((await open(shelf)).plan().name).toBe('d')
  })
})

describe('a document from outside', () => {
  it('is merged, with an earlier copy kept', async () => {
    const shelf = databaseShelf(connect())
    const session = begin(shelf)
    await session.settled()
    const other = documentFrom([session.document()]).doc
    other.getMap('plan').set('ground.soil', 'laterite')
    rename(session, 'Changed here')
    const merged = await session.merge(encodeDocument(other))
    expect(merged.ok && [merged.value.plan.name, merged.value.plan.ground.soil]).toEqual(['Changed here', 'laterite'])
    await session.settled()
    const [copy] = await shelf.copies('plan-1')
    expect(copy?.why).toBe('before-merge')
    const before = readPlan(documentFrom([copy?.bytes ?? new Uint8Array()]).doc)
    expect(before.ok && before.value.ground.soil).toBe('clay-firm')
    expect((await open(shelf)).plan()).toEqual(session.plan())
  })

  it('changes nothing where it is of another plan, newer, damaged, or would leave no sound plan', async () => {
    const session = begin(memoryShelf())
    const before = session.document()
    const newer = documentFrom([before]).doc
    newer.getMap('plan').set('version', 99)
    const unsound = documentFrom([before]).doc
    unsound.getMap('plan').set('chambers.count', 'many')
    const problems = []
    for (const bytes of [
      encodeDocument(documentOf(planOf('plan-2'))),
      encodeDocument(newer),
      encodeDocument(unsound),
      before.subarray(0, 40),
    ]) {
      const merged = await session.merge(bytes)
      problems.push(merged.ok ? 'merged' : merged.problems[0]?.kind)
    }
    expect(problems).toEqual(['damaged', 'newer', 'damaged', 'damaged'])
    expect(session.document()).toEqual(before)
  })
})

describe('a mutated document of the same plan', () => {
  it('is refused whole, or merged into a plan that passes every check', { timeout: 300_000 }, async () => {
    const session = begin(memoryShelf())
    const away = documentFrom([session.document()]).doc
    for (let count = 1; count <= 8; count++) away.getMap('plan').set('chambers.count', count)
    const good = encodeDocument(away)
    let merged = 0
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(fc.nat(good.length - 1), fc.integer({ min: 0, max: 255 })), { minLength: 1, maxLength: 6 }),
        async (flips) => {
          const bytes = Uint8Array.from(good)
          for (const [index, value] of flips) bytes[index] = value
          const target = begin(memoryShelf())
          const before = target.document()
          const outcome = await target.merge(bytes)
          expect(parsePlan(target.plan()).ok && target.trouble() === null).toBe(true)
          if (outcome.ok) merged++
          else if (!isDeepStrictEqual(target.document(), before)) throw new Error('refused, and yet changed')
          target.end()
        },
      ),
      { numRuns: Number(process.env['MUTANTS'] ?? 500) },
    )
    expect(merged).toBeGreaterThan(0)
  })
})

describe('two tabs', () => {
  /** Two sessions of one phone, each with its own connection, joined as tabs are. */
  const twoTabs = async () => {
    const name = `test-${String(Math.random())}`
    const first = begin(databaseShelf(connect()))
    await first.settled()
    first.end()
    const sessions: PlanSession[] = []
    for (const index of [0, 1]) {
      const tabs = joinTabs((message) => sessions[index]?.hear(message), name)
      ended.push(tabs.close)
      sessions.push(await open(databaseShelf(connect()), 'plan-1', tabs))
    }
    const [a, b] = sessions
    if (a === undefined || b === undefined) throw new Error('two sessions')
    return { a, b }
  }

  it('stay in step, and what one saved the other does not save again', async () => {
    const { a, b } = await twoTabs()
    rename(a, 'From the first tab')
    await a.settled()
    await vi.waitUntil(() => b.plan().name === 'From the first tab')
    expect(b.isIdle()).toBe(true)
    b.edit({ ...b.plan(), chambers: { ...b.plan().chambers, count: 6 } })
    await vi.waitUntil(() => a.plan().chambers.count === 6)
    expect(await databaseShelf(connect()).updates('plan-1')).toHaveLength(3)
    expect(a.plan()).toEqual(b.plan())
  })

  it('that type at the same time end with the same plan, and so does the disk', async () => {
    const { a, b } = await twoTabs()
    for (let turn = 0; turn < 20; turn++) {
      a.edit({ ...a.plan(), chambers: { ...a.plan().chambers, count: (turn % 8) + 1 } })
      rename(b, `Turn ${String(turn)}`)
      if (turn % 3 === 0) await Promise.all([a.settled(), b.settled()])
    }
    await Promise.all([a.settled(), b.settled()])
    await vi.waitUntil(() => JSON.stringify(a.plan()) === JSON.stringify(b.plan()))
    expect(a.plan()).toMatchObject({ name: 'Turn 19', chambers: { count: 4 } })
    expect((await open(databaseShelf(connect()))).plan()).toEqual(a.plan())
  })

  it('meet again after one of them slept', async () => {
    const { a, b } = await twoTabs()
    const asleep = await open(databaseShelf(connect()))
    rename(a, 'While it slept')
    await a.settled()
    expect(asleep.plan().name).not.toBe('While it slept')
    await asleep.catchUp()
    expect(asleep.plan().name).toBe('While it slept')
    expect(asleep.isIdle()).toBe(true)
    b.end()
  })
})

describe('a tab killed at any moment', () => {
  /** A connection whose tab can be killed: open transactions are cut short, and nothing is heard of it again. */
  const mortal = (inner: Connection) => {
    let isDead = false
    const open = new Set<IDBTransaction>()
    const connection: Connection = {
      close: inner.close,
      ask: (work) =>
        isDead
          ? new Promise(() => {})
          : inner.ask((database) =>
              work(
                new Proxy(database, {
                  get: (target, key) => {
                    const value: unknown = Reflect.get(target, key)
                    if (key !== 'transaction' || typeof value !== 'function') return value
                    return (...args: unknown[]) => {
                      const tx = Reflect.apply(value, target, args) as IDBTransaction & { readonly done: Promise<void> }
                      open.add(tx)
                      tx.done.then(
                        () => open.delete(tx),
                        () => open.delete(tx),
                      )
                      return tx
                    }
                  },
                }),
              ),
            ),
    }
    const kill = () => {
      isDead = true
      for (const tx of open) {
        try {
          tx.abort()
        } catch {
          // It had just been finished.
        }
      }
    }
    return { connection, kill }
  }

  it('loses no edit that was acknowledged and leaves no half-written plan', { timeout: 60_000 }, async () => {
    const pause = (turns: number) =>
      new Promise<void>((resolve) => {
        const step = (left: number) => {
          if (left === 0) resolve()
          else setImmediate(step, left - 1)
        }
        step(turns)
      })
    let killedMidSave = 0
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(deedsOf('a'), fc.nat(6)), { minLength: 1, maxLength: 12 }),
        fc.nat(8),
        async (deeds, lastTurns) => {
          globalThis.indexedDB = new IDBFactory()
          const first = begin(databaseShelf(connect()))
          await first.settled()
          first.end()
          const { connection, kill } = mortal(connect())
          const session = await open(databaseShelf(connection))
          const states = [session.plan()]
          let acknowledged = 0
          const look = () => {
            if (session.saving().kind === 'saved') acknowledged = states.length - 1
          }
          for (const [deed, turns] of deeds) {
            session.edit(deed(session.plan()))
            states.push(session.plan())
            await pause(turns)
            look()
          }
          await pause(lastTurns)
          look()
          if (!session.isIdle()) killedMidSave++
          kill()
          session.end()
          await pause(3)
          const after = await open(databaseShelf(connect()))
          expect(parsePlan(after.plan()).ok).toBe(true)
          expect(states.slice(acknowledged)).toContainEqual(after.plan())
          const [row] = await databaseShelf(connect()).rows()
          expect(row?.plan).toEqual(withoutCollections(after.plan()))
          after.end()
        },
      ),
      { numRuns: 200 },
    )
    expect(killedMidSave).toBeGreaterThan(20)
  })
})
