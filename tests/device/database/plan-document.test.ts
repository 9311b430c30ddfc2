import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import * as Y from 'yjs'
import { PLAN_VERSION, type Plan } from '../../../src/core/plan/schema.ts'
import { parsePlan } from '../../../src/core/plan/parse-plan.ts'
import { applyUpdate, encodeDocument, stateOf } from '../../../src/device/database/document-bytes.ts'
import {
  BY_HAND,
  changesTo,
  documentFrom,
  documentFromOutside,
  documentOf,
  readPlan,
  readRaw,
  write,
} from '../../../src/device/database/plan-document.ts'
import { deedsOf, offerOf, planOf, type Deed } from '../plans.ts'

const planIn = (doc: Y.Doc): Plan => {
  const read = readPlan(doc)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value
}
const change = (doc: Y.Doc, deed: Deed) => {
  write(doc, changesTo(doc, deed(planIn(doc))), BY_HAND)
}
const copyOf = (doc: Y.Doc): Y.Doc => documentFrom([encodeDocument(doc)]).doc
const exchange = (a: Y.Doc, b: Y.Doc) => {
  applyUpdate(b, encodeDocument(a, stateOf(b)), 'test')
  applyUpdate(a, encodeDocument(b, stateOf(a)), 'test')
}

describe('a plan as a document', () => {
  it('comes back the same after any deeds, also through its bytes', { timeout: 30_000 }, () => {
    fc.assert(
      fc.property(fc.array(deedsOf('a'), { maxLength: 12 }), (deeds) => {
        const doc = documentOf(planOf())
        let plain = planOf()
        for (const deed of deeds) {
          change(doc, deed)
          plain = deed(plain)
        }
        expect(planIn(doc)).toEqual(plain)
        expect(planIn(copyOf(doc))).toEqual(plain)
        expect(changesTo(doc, plain)).toEqual([])
      }),
      { numRuns: 150 },
    )
  })

  it(
    'converges on three phones, in whatever order they meet, to a plan that passes every check',
    { timeout: 30_000 },
    () => {
      const step = fc.oneof(
        ...['a', 'b', 'c'].map((who, phone) => deedsOf(who).map((deed) => ({ phone, deed }))),
        fc.constantFrom([0, 1] as const, [0, 2] as const, [1, 2] as const).map((pair) => ({ pair })),
      )
      fc.assert(
        fc.property(
          fc.array(step, { maxLength: 30 }),
          fc.shuffledSubarray([[0, 1] as const, [0, 2] as const, [1, 2] as const], { minLength: 3 }),
          (steps, lastMeetings) => {
            const first = documentOf(planOf())
            const phones = [first, copyOf(first), copyOf(first)]
            const at = (index: number) => phones[index] ?? first
            for (const one of steps) {
              if ('deed' in one) change(at(one.phone), one.deed)
              else exchange(at(one.pair[0]), at(one.pair[1]))
            }
            for (const [one, other] of [...lastMeetings, ...lastMeetings]) exchange(at(one), at(other))
            const plans = phones.map(planIn)
            expect(plans[1]).toEqual(plans[0])
            expect(plans[2]).toEqual(plans[0])
            expect(parsePlan(plans[0]).ok).toBe(true)
          },
        ),
        { numRuns: 150 },
      )
    },
  )

  it('keeps both answers when two phones answer different questions', () => {
    const a = documentOf({ ...planOf(), offers: { cement: offerOf('cement', null) } })
    const b = copyOf(a)
    change(a, (plan) => ({ ...plan, chambers: { ...plan.chambers, count: 4 } }))
    change(a, (plan) => ({ ...plan, offers: { ...plan.offers, cement: offerOf('cement', 1250) } }))
    change(b, (plan) => ({ ...plan, chambers: { ...plan.chambers, clearSideM: 0.9 } }))
    change(b, (plan) => ({
      ...plan,
      offers: { cement: { ...offerOf('cement', null), sellerName: 'Market (example)' }, sand: offerOf('sand', 900) },
    }))
    exchange(a, b)
    const { chambers, offers } = planIn(a)
    expect(chambers).toEqual({ count: 4, clearSideM: 0.9 })
    expect(offers['cement']).toEqual({ ...offerOf('cement', 1250), sellerName: 'Market (example)' })
    expect(offers['sand']).toEqual(offerOf('sand', 900))
  })

  it('never mixes half of one phone’s mortar with half of the other’s', () => {
    const a = documentOf(planOf())
    const b = copyOf(a)
    const mortarA = { cement: 1, clay: 0, sand: 6, dryFactor: 1.3 }
    const mortarB = { cement: 0, clay: 1, sand: 2, dryFactor: 1.25 }
    change(a, (plan) => ({ ...plan, mixes: { ...plan.mixes, mortar: mortarA } }))
    change(b, (plan) => ({ ...plan, mixes: { ...plan.mixes, mortar: mortarB } }))
    exchange(a, b)
    expect([mortarA, mortarB]).toContainEqual(planIn(a).mixes.mortar)
  })

  it('reads a sound plan where two sound answers do not go together', () => {
    const a = documentOf(planOf())
    const b = copyOf(a)
    change(a, (plan) => ({ ...plan, catch: { ...plan.catch, moistureFresh: 0.4 } }))
    change(b, (plan) => ({ ...plan, catch: { ...plan.catch, moistureFinal: 0.6 } }))
    exchange(a, b)
    expect(planIn(a)).toEqual(planIn(b))
    expect(planIn(a).catch.moistureFresh).toBe(0.4)
    expect(planIn(a).catch.moistureFinal).toBeLessThan(0.4)
  })

  it('merges two phones that each made the document of the same plain plan', () => {
    const a = documentOf(planOf())
    const b = documentOf(planOf())
    change(a, (plan) => ({ ...plan, ground: { ...plan.ground, soil: 'laterite' } }))
    exchange(a, b)
    expect(planIn(a)).toEqual(planIn(b))
    expect(planIn(a).ground.soil).toBe('laterite')
  })

  it('leaves what a newer version wrote untouched, and names both versions', () => {
    const doc = documentOf(planOf())
    doc.getMap('plan').set('version', 99)
    doc.getMap('plan').set('roof.pitchDeg', 20)
    expect(readPlan(doc)).toEqual({
      ok: false,
      problems: [{ kind: 'newer', theirVersion: 99, ourVersion: PLAN_VERSION }],
    })
    expect(readRaw(doc)).toMatchObject({ version: 99, roof: { pitchDeg: 20 } })
  })

  it('is not led astray by a field that this version does not know, or by one that is a document inside', () => {
    const doc = documentOf(planOf())
    doc.getMap('plan').set('roof.pitchDeg', 20)
    doc.getMap('plan').set('__proto__.polluted', true)
    doc.getMap('record:__proto__').set('polluted', true)
    expect(planIn(doc)).toEqual(planOf())
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined()
    doc.getMap('plan').set('name', new Y.XmlElement('script'))
    expect(readPlan(doc).ok).toBe(false)
  })
})

describe('bytes that are no document', () => {
  it('are refused whole', () => {
    const bytes = encodeDocument(documentOf(planOf()))
    expect(documentFromOutside(bytes.subarray(0, bytes.length - 7)).ok).toBe(false)
    expect(documentFromOutside(new TextEncoder().encode('not a document')).ok).toBe(false)
  })

  it('never hide the changes that can be read', () => {
    const doc = documentOf(planOf())
    const rest = documentFrom([Uint8Array.of(9, 9, 9), encodeDocument(doc), new Uint8Array()])
    expect(planIn(rest.doc)).toEqual(planOf())
    expect(rest.unreadable).toBe(2)
  })
})
