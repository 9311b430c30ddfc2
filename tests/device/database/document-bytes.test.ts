import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import * as Y from 'yjs'
import { parsePlan } from '../../../src/core/plan/parse-plan.ts'
import {
  applyUpdate,
  encodeDocument,
  isUpdate,
  isWaiting,
  stateOf,
} from '../../../src/device/database/document-bytes.ts'
import { documentFromOutside, documentOf, readPlan } from '../../../src/device/database/plan-document.ts'
import { planOf } from '../plans.ts'

const bytes = encodeDocument(documentOf(planOf()))

describe('bytes of a document', () => {
  it('are what Yjs itself reads and writes', () => {
    const doc = new Y.Doc()
    Y.applyUpdateV2(doc, bytes)
    expect(readPlan(doc)).toEqual({ ok: true, value: planOf() })
    expect(encodeDocument(doc)).toEqual(Y.encodeStateAsUpdateV2(doc))
  })

  it('of what another phone lacks are enough for it, and without their forerunners they wait', () => {
    const doc = documentOf(planOf())
    const other = documentFromOutside(bytes)
    if (!other.ok) throw new Error('not read')
    const state = stateOf(other.value)
    doc.getMap('plan').set('name', 'Changed')
    const changes = encodeDocument(doc, state)
    expect(changes.length).toBeLessThan(120)
    applyUpdate(other.value, changes, 'test')
    expect(isWaiting(other.value)).toBe(false)
    expect(readPlan(other.value)).toEqual(readPlan(doc))
    const without = new Y.Doc()
    applyUpdate(without, changes, 'test')
    expect(isWaiting(without)).toBe(true)
  })

  it('that promise more parts than any plan has are given up at once', () => {
    // One author with 34 thousand million parts, all alike: one run of "collected", one run of lengths.
    const promise = [255, 255, 255, 255, 127]
    const bomb = Uint8Array.from([0, 0, 0, 0, 0, 1, 0, 2, 0, 0, 0, 0, 6, 65, ...promise, 1, ...promise, 1, 0, 0])
    const before = performance.now()
    expect(isUpdate(bomb)).toBe(false)
    expect(performance.now() - before).toBeLessThan(1000)
  })

  it(
    'mutated at random never throw out of the door, hang, or leave a plan that fails its checks',
    { timeout: 300_000 },
    () => {
      let slowestMs = 0
      fc.assert(
        fc.property(
          fc.array(fc.tuple(fc.nat(bytes.length - 1), fc.integer({ min: 0, max: 255 })), {
            minLength: 1,
            maxLength: 8,
          }),
          (flips) => {
            const mutated = Uint8Array.from(bytes)
            for (const [index, value] of flips) mutated[index] = value
            const before = performance.now()
            const outside = documentFromOutside(mutated)
            const read = outside.ok ? readPlan(outside.value) : outside
            slowestMs = Math.max(slowestMs, performance.now() - before)
            expect(!read.ok || parsePlan(read.value).ok).toBe(true)
          },
        ),
        { numRuns: Number(process.env['MUTANTS'] ?? 2000) },
      )
      expect(slowestMs).toBeLessThan(1000)
    },
  )

  it('of noise are no document', () => {
    fc.assert(
      fc.property(fc.uint8Array({ minLength: 1, maxLength: 400 }), (noise) => {
        const outside = documentFromOutside(noise)
        expect(outside.ok && readPlan(outside.value).ok).toBe(false)
      }),
      { numRuns: 1000 },
    )
  })
})
