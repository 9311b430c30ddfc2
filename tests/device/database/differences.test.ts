import { describe, expect, it, vi } from 'vitest'
import type * as Y from 'yjs'
import type { Plan } from '../../../src/core/plan/schema.ts'
import { tryTogether } from '../../../src/device/database/differences.ts'
import { applyUpdate, encodeDocument, stateOf } from '../../../src/device/database/document-bytes.ts'
import { historyOf } from '../../../src/device/database/history.ts'
import { memoryShelf } from '../../../src/device/database/memory-shelf.ts'
import {
  BY_HAND,
  changesTo,
  documentFrom,
  documentOf,
  readPlan,
  write,
} from '../../../src/device/database/plan-document.ts'
import { adoptDocument } from '../../../src/device/database/plan-session.ts'
import { startSittings } from '../../../src/device/database/sittings.ts'
import { offerOf, planOf, type Deed } from '../plans.ts'

const differencesBetween = (ours: Uint8Array, theirs: Uint8Array) => tryTogether(ours, theirs)?.differences ?? []
const NOW = Date.UTC(2026, 4, 12, 8, 30)

/** A phone with a name, its clock standing at a moment. */
const phoneOf = (bytes: Uint8Array, name: string, atMs = NOW) => {
  const { doc } = documentFrom([bytes])
  const sittings = startSittings(doc, () => name)
  const does = (deed: Deed) => {
    const plan = readPlan(doc)
    if (!plan.ok) throw new Error('no plan')
    const clock = vi.spyOn(Date, 'now').mockReturnValue(atMs)
    doc.transact(() => {
      sittings.sitDown()
      write(doc, changesTo(doc, deed(plan.value)), BY_HAND)
    })
    clock.mockRestore()
  }
  return { doc, does, bytes: () => encodeDocument(doc) }
}
const meet = (a: Y.Doc, b: Y.Doc) => {
  applyUpdate(b, encodeDocument(a, stateOf(b)), 'test')
  applyUpdate(a, encodeDocument(b, stateOf(a)), 'test')
}
const soil =
  (key: string): Deed =>
  (plan) => ({ ...plan, ground: { ...plan.ground, soil: key } })
const price =
  (priceMinor: number): Deed =>
  (plan) => ({ ...plan, offers: { o1: offerOf('cement', priceMinor) } })
const start = encodeDocument(documentOf({ ...planOf(), offers: { o1: offerOf('cement', 100) } }))

describe('a decision answered on two phones', () => {
  it('is shown from either side with both answers, who gave them and when, and which stands', () => {
    const mason = phoneOf(start, 'Mason (example)')
    const treasurer = phoneOf(start, 'Treasurer (example)', NOW + 90 * 60_000)
    mason.does(soil('laterite'))
    treasurer.does(soil('sand-dense'))
    const [seen] = differencesBetween(mason.bytes(), treasurer.bytes())
    const masons = { value: 'laterite', author: { phone: 'Mason (example)', atMs: NOW } }
    const treasurers = {
      value: 'sand-dense',
      author: { phone: 'Treasurer (example)', atMs: NOW + 90 * 60_000 },
    }
    expect(seen).toMatchObject({ path: 'ground.soil', mine: masons, theirs: treasurers })
    const [other] = differencesBetween(treasurer.bytes(), mason.bytes())
    expect(other).toMatchObject({ path: 'ground.soil', mine: treasurers, theirs: masons })
    meet(mason.doc, treasurer.doc)
    const plan = readPlan(mason.doc)
    const standing = seen?.kept === 'mine' ? 'laterite' : 'sand-dense'
    expect(plan.ok && plan.value.ground.soil).toBe(standing)
    expect(other?.kept).not.toBe(seen?.kept)
  })

  it('is found among changes alone, after many answers on each side, and the last of each is shown', () => {
    const mason = phoneOf(start, 'Mason (example)')
    const treasurer = phoneOf(start, 'Treasurer (example)')
    const since = stateOf(mason.doc)
    for (const key of ['laterite', 'clay-soft', 'rock-soft']) mason.does(soil(key))
    for (const key of ['sand-loose', 'sand-dense', 'gravel-sandy']) treasurer.does(soil(key))
    const found = differencesBetween(mason.bytes(), encodeDocument(treasurer.doc, since))
    expect(found).toHaveLength(1)
    expect([found[0]?.mine.value, found[0]?.theirs.value]).toEqual(['rock-soft', 'gravel-sandy'])
  })

  it('is found in a field of an entry too', () => {
    const mason = phoneOf(start, 'Mason (example)')
    const treasurer = phoneOf(start, 'Treasurer (example)')
    mason.does(price(120))
    treasurer.does(price(90))
    expect(differencesBetween(mason.bytes(), treasurer.bytes())).toMatchObject([
      { path: 'offers.o1.priceMinor', mine: { value: 120 }, theirs: { value: 90 } },
    ])
  })

  it('is found where one took an entry away that the other changed, and the entry can be put back whole', () => {
    const mason = phoneOf(start, 'Mason (example)')
    const treasurer = phoneOf(start, 'Treasurer (example)')
    treasurer.does(price(90))
    mason.does((plan) => ({ ...plan, offers: {} }))
    const entry = { value: offerOf('cement', 90), author: { phone: 'Treasurer (example)', atMs: NOW } }
    const gone = { value: undefined, author: null }
    expect(differencesBetween(mason.bytes(), treasurer.bytes())).toEqual([
      { path: 'offers.o1', mine: gone, theirs: entry, kept: 'mine' },
    ])
    expect(differencesBetween(treasurer.bytes(), mason.bytes())).toEqual([
      { path: 'offers.o1', mine: entry, theirs: gone, kept: 'theirs' },
    ])
    meet(mason.doc, treasurer.doc)
    const plan = readPlan(treasurer.doc)
    expect(plan.ok && plan.value.offers).toEqual({})
    expect(differencesBetween(treasurer.bytes(), mason.bytes())).toEqual([])
  })

  it('is none where an entry was taken away by someone who had seen the last of it', () => {
    const mason = phoneOf(start, 'Mason (example)')
    const treasurer = phoneOf(start, 'Treasurer (example)')
    treasurer.does(price(90))
    meet(mason.doc, treasurer.doc)
    mason.does((plan) => ({ ...plan, offers: {} }))
    expect(differencesBetween(treasurer.bytes(), mason.bytes())).toEqual([])
    expect(differencesBetween(mason.bytes(), treasurer.bytes())).toEqual([])
  })

  it('is none where one had seen the other’s answer, where both said the same, or where only one spoke', () => {
    const mason = phoneOf(start, 'Mason (example)')
    const treasurer = phoneOf(start, 'Treasurer (example)')
    mason.does(soil('laterite'))
    expect(differencesBetween(treasurer.bytes(), mason.bytes())).toEqual([])
    meet(mason.doc, treasurer.doc)
    treasurer.does(soil('sand-dense'))
    expect(differencesBetween(mason.bytes(), treasurer.bytes())).toEqual([])
    expect(differencesBetween(treasurer.bytes(), mason.bytes())).toEqual([])
    meet(mason.doc, treasurer.doc)
    mason.does(price(120))
    treasurer.does(price(120))
    mason.does((plan) => ({ ...plan, name: 'Mason’s name' }))
    expect(differencesBetween(mason.bytes(), treasurer.bytes())).toEqual([])
  })
})

describe('history', () => {
  it('tells what changed from copy to copy, who did it and when, newest first', () => {
    const mason = phoneOf(start, 'Mason (example)')
    const moments = [{ atMs: 1, bytes: start }]
    mason.does(soil('laterite'))
    moments.push({ atMs: 2, bytes: mason.bytes() })
    moments.push({ atMs: 3, bytes: mason.bytes() })
    mason.does(price(150))
    mason.does((plan) => ({ ...plan, offers: { ...plan.offers, o2: offerOf('sand', 40) } }))
    moments.push({ atMs: 4, bytes: mason.bytes() }, { atMs: 5, bytes: Uint8Array.of(1) })
    const author = { phone: 'Mason (example)', atMs: NOW }
    const steps = historyOf(moments)
    expect(steps.map(({ fromMs, toMs }) => [fromMs, toMs])).toEqual([
      [3, 4],
      [1, 2],
    ])
    expect(steps[1]?.changes).toEqual([{ path: 'ground.soil', before: 'clay-firm', after: 'laterite', author }])
    expect(steps[0]?.changes).toContainEqual({ path: 'offers.o1.priceMinor', before: 100, after: 150, author })
    expect(steps[0]?.changes).toContainEqual({ path: 'offers.o2.item', before: undefined, after: 'sand', author })
  })

  it('notes a sitting, not every change, and a new one after an hour', () => {
    const doc = documentOf(planOf())
    const parsed = readPlan(doc)
    if (!parsed.ok) throw new Error('no plan')
    const clock = vi.spyOn(Date, 'now').mockReturnValue(NOW)
    const session = adoptDocument(doc, parsed.value, {
      shelf: memoryShelf(),
      tabs: { tell: () => {} },
      onChange: () => {},
      phone: () => 'Mason (example)',
    })
    const edit = (change: (plan: Plan) => Plan) => session.edit(change(session.plan()))
    for (let turn = 1; turn < 30; turn++) edit((plan) => ({ ...plan, trays: { ...plan.trays, spares: turn } }))
    expect(doc.getMap('sittings').size).toBe(1)
    clock.mockReturnValue(NOW + 61 * 60_000)
    edit(soil('laterite'))
    expect(doc.getMap('sittings').size).toBe(2)
    clock.mockReturnValue(NOW - 10 * 365 * 86_400_000)
    edit(soil('clay-soft'))
    clock.mockRestore()
    expect(doc.getMap('sittings').size).toBe(3)
    session.undo()
    expect(doc.getMap('sittings').size).toBe(3)
    session.end()
  })
})
