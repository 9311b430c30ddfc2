import { readFileSync } from 'node:fs'
import path from 'node:path'
import { deflateRawSync } from 'node:zlib'
import * as fc from 'fast-check'
import { decodeQR } from 'qr/decode.js'
import { describe, expect, it } from 'vitest'
import { parsePlan } from '../../../src/core/plan/parse-plan.ts'
import type { Plan } from '../../../src/core/plan/schema.ts'
import { applyUpdate, encodeDocument, stateOf } from '../../../src/device/database/document-bytes.ts'
import { changesTo, documentFrom, documentOf, readPlan, write } from '../../../src/device/database/plan-document.ts'
import { fromBase45, toBase45 } from '../../../src/device/sharing/base45.ts'
import { codeOf } from '../../../src/device/sharing/codes.ts'
import { deflated, inflated } from '../../../src/device/sharing/deflate.ts'
import { collectFrames, framesOf, MOST_SHOWN_BYTES, type Frames } from '../../../src/device/sharing/frames.ts'
import { fromFragment, packHandOver, toFragment, unpackHandOver } from '../../../src/device/sharing/hand-over.ts'
import { EVERYTHING } from '../../../src/device/sharing/chosen.ts'
import { forOthers } from '../../../src/device/sharing/privacy.ts'
import { planOf } from '../plans.ts'

const NOTHING_PRIVATE = { names: false, receipts: false }
const EXAMPLES = ['one-chamber', 'two-chambers', 'three-chambers'].map((name) => {
  const parsed = parsePlan(
    JSON.parse(readFileSync(path.join(import.meta.dirname, `../../../shared/examples/${name}.json`), 'utf8')),
  )
  if (!parsed.ok) throw new Error(name)
  return { name, plan: parsed.value }
})
const bytesOf = (plan: Plan) =>
  packHandOver({ planId: plan.id, document: encodeDocument(documentOf(plan)), chosen: EVERYTHING })
const planFrom = (bytes: Uint8Array) => {
  const read = unpackHandOver(bytes)
  return read.ok ? readPlan(documentFrom([read.value.document]).doc) : read
}
const framesFrom = (bytes: Uint8Array): Frames => {
  const frames = framesOf(bytes)
  if (frames === null) throw new Error('too big')
  return frames
}

describe('Base45', () => {
  it.each([
    // The encoding examples of RFC 9285 §4.3.
    ['AB', 'BB8'],
    ['Hello!!', '%69 VD92EX0'],
    ['base-45', 'UJCLQE7W581'],
    ['ietf!', 'QED8WEX0'],
  ])('writes %s as RFC 9285 does', (text, code) => {
    expect(toBase45(new TextEncoder().encode(text))).toBe(code)
    expect(fromBase45(code)).toEqual(new TextEncoder().encode(text))
  })

  it('refuses what RFC 9285 §6 says cannot be', () => {
    expect(['GGW', ':::', 'A', 'ab8', '!', ':Z'].map(fromBase45)).toEqual([null, null, null, null, null, null])
  })
})

describe('deflating', () => {
  it('is undone, with a dictionary and without, and reads what zlib wrote (RFC 1951)', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 3000 }), fc.uint8Array({ maxLength: 300 }), (bytes, dictionary) => {
        expect(inflated(deflated(bytes), 10_000)).toEqual(bytes)
        expect(inflated(deflated(bytes, dictionary), 10_000, dictionary)).toEqual(bytes)
        expect(inflated(Uint8Array.from(deflateRawSync(bytes)), 10_000)).toEqual(bytes)
      }),
      { numRuns: 200 },
    )
  })

  it('stops a bomb before it fills the phone', () => {
    const bomb = Uint8Array.from(deflateRawSync(new Uint8Array(200 * 1024 * 1024), { level: 9 }))
    expect(bomb.length).toBeLessThan(250_000)
    const before = performance.now()
    expect(inflated(bomb, 5 * 1024 * 1024)).toBeNull()
    expect(performance.now() - before).toBeLessThan(1000)
  })
})

describe('a hand-over', () => {
  it.each(EXAMPLES)('brings example $name whole, as bytes, link and codes', ({ plan }) => {
    const bytes = bytesOf(plan)
    expect(planFrom(bytes)).toEqual({ ok: true, value: plan })
    expect(fromFragment(toFragment(bytes) ?? '')).toEqual(bytes)
    const collector = collectFrames()
    const frames = framesFrom(bytes)
    let got: Uint8Array | null = null
    for (let frame = 0; got === null; frame++) got = collector.take(frames.text(frame))?.bytes ?? null
    expect(got).toEqual(bytes)
    console.log(
      `${plan.name}: ${String(bytes.length)} bytes, ${String(frames.count)} code(s), ` +
        `link of ${String(toFragment(bytes)?.length)} characters`,
    )
  })

  it('of changes is small, and joins what both phones did', () => {
    const home = documentOf(EXAMPLES[1]?.plan ?? planOf())
    const away = documentFrom([encodeDocument(home)]).doc
    const since = stateOf(home)
    const plan = readPlan(home)
    if (!plan.ok) throw new Error('no plan')
    write(home, changesTo(home, { ...plan.value, name: 'Changed at home' }), 'by-hand')
    write(away, changesTo(away, { ...plan.value, ground: { ...plan.value.ground, soil: 'laterite' } }), 'by-hand')
    const bytes = packHandOver({ planId: plan.value.id, document: encodeDocument(home), chosen: EVERYTHING, since })
    expect(bytes.length).toBeLessThan(150)
    const read = unpackHandOver(bytes)
    if (!read.ok) throw new Error('not read')
    expect(read.value).toMatchObject({ planId: plan.value.id, isWhole: false })
    applyUpdate(away, read.value.document, 'test')
    const joined = readPlan(away)
    expect(joined.ok && [joined.value.name, joined.value.ground.soil]).toEqual(['Changed at home', 'laterite'])
  })

  it('damaged, foreign, newer or cut short is refused by its name', () => {
    const bytes = bytesOf(planOf())
    const kind = (code: Uint8Array) => {
      const read = unpackHandOver(code)
      return read.ok ? 'taken' : read.problems[0]?.kind
    }
    expect(kind(bytes)).toBe('taken')
    expect(kind(bytes.subarray(0, bytes.length - 1))).toBe('damaged')
    expect(kind(bytes.map((byte, index) => (index === 30 ? byte ^ 4 : byte)))).toBe('damaged')
    expect(kind(bytes.map((byte, index) => (index === 0 ? 9 : byte)))).toBe('newer')
    expect(kind(Uint8Array.of())).toBe('not-ours')
    expect(fromFragment('#/plan/abc')).toBeNull()
    expect(fromFragment('#/take/%%%')).toBeNull()
  })

  it('mutated at random, its checksum made right again, never throws and never gives a plan that fails its checks', () => {
    const bytes = bytesOf(planOf())
    const crc = (part: Uint8Array) => {
      let rest = 0xffffffff
      for (const byte of part) {
        rest ^= byte
        for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? 0xedb88320 ^ (rest >>> 1) : rest >>> 1
      }
      return ~rest >>> 0
    }
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 6, max: bytes.length - 1 }), fc.integer({ min: 0, max: 255 })), {
          minLength: 1,
          maxLength: 5,
        }),
        (flips) => {
          const mutated = Uint8Array.from(bytes)
          for (const [index, value] of flips) mutated[index] = value
          new DataView(mutated.buffer).setUint32(2, crc(mutated.subarray(6)))
          const read = planFrom(mutated)
          expect(!read.ok || parsePlan(read.value).ok).toBe(true)
        },
      ),
      { numRuns: Number(process.env['MUTANTS'] ?? 1000) },
    )
  }, 300_000)
})

describe('what stays private', () => {
  const named: Plan = {
    ...planOf(),
    members: { m1: { name: 'Abena (example)', weight: 1 } },
    spending: {
      s1: {
        kind: 'purchase',
        item: 'cement',
        quantity: 50,
        paidMinor: 900,
        seller: 'hardware',
        sellerName: '',
        instead: '',
        day: null,
        paidBy: 'm1',
        receipt: 'photo-77',
      },
    },
  }
  const home = documentOf({ ...named, members: { m1: { name: 'Former name', weight: 1 } } })
  write(home, changesTo(home, named), 'by-hand')
  const contains = (bytes: Uint8Array, text: string) => new TextDecoder('latin1').decode(bytes).includes(text)

  it('is not in what leaves the phone, former values neither, and the sums still are', () => {
    const bytes = encodeDocument(forOthers(encodeDocument(home), NOTHING_PRIVATE))
    expect(['Abena', 'Former name', 'photo-77'].map((text) => contains(bytes, text))).toEqual([false, false, false])
    expect(contains(encodeDocument(forOthers(encodeDocument(home), EVERYTHING)), 'Abena')).toBe(true)
    const plan = readPlan(documentFrom([bytes]).doc)
    expect(plan.ok && plan.value.members).toEqual({ m1: { name: '', weight: 1 } })
    expect(plan.ok && plan.value.spending['s1']).toMatchObject({ paidMinor: 900, receipt: null })
  })

  it('is still here when the other phone’s changes come back', () => {
    const away = forOthers(encodeDocument(home), NOTHING_PRIVATE)
    const plan = readPlan(away)
    if (!plan.ok) throw new Error('no plan')
    write(away, changesTo(away, { ...plan.value, name: 'Changed away' }), 'by-hand')
    const back = documentFrom([encodeDocument(home), encodeDocument(away)]).doc
    expect(readPlan(back)).toEqual({ ok: true, value: { ...named, name: 'Changed away' } })
  })
})

describe('codes in turn', () => {
  const payload = (length: number) =>
    Uint8Array.from({ length }, (_, index) => (Math.imul(index + 1, 2_654_435_761) >>> 13) & 255)

  it('bring the whole through, whichever were missed and in whatever order, with hardly more than needed', () => {
    let extra = 0
    let runs = 0
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 9000 }),
        fc.double({ min: 0, max: 0.6, noNaN: true }),
        fc.nat(60_000),
        fc.nat(2 ** 31 - 3),
        (length, missed, start, seed) => {
          // MINSTD (Park and Miller, Commun. ACM 31(10), 1988).
          let luck = seed + 1
          const bytes = payload(length)
          const frames = framesFrom(bytes)
          const collector = collectFrames()
          let got: Uint8Array | null = null
          let seen = 0
          for (let frame = start; got === null && frame < start + 2000; frame++) {
            luck = (luck * 48_271) % (2 ** 31 - 1)
            if (luck / 2 ** 31 < missed) continue
            seen++
            got = collector.take(frames.text(frame))?.bytes ?? null
          }
          expect(got).toEqual(bytes)
          extra += seen - frames.count
          runs++
        },
      ),
      { numRuns: 150 },
    )
    console.log(`frames beyond the fewest possible, mean of ${String(runs)} runs: ${(extra / runs).toFixed(2)}`)
    expect(extra / runs).toBeLessThan(4)
  }, 60_000)

  it('that are no codes of ours are passed over, and those of another plan start anew', () => {
    const [one, two] = [framesFrom(payload(2000)), framesFrom(payload(2500))]
    const collector = collectFrames()
    expect(collector.take('https://example.org/')).toBeNull()
    expect(collector.take('')).toBeNull()
    expect(collector.take(one.text(0))).toMatchObject({ have: 1, need: 6, bytes: null })
    expect(collector.take(one.text(0))).toMatchObject({ have: 1 })
    expect(collector.take(two.text(1))).toMatchObject({ have: 1, need: 7 })
    expect(collector.take(two.text(1).replace(/^..../, '0000'))).toBeNull()
  })

  it('refuse what would take too long to show', () => {
    expect(framesOf(payload(MOST_SHOWN_BYTES))?.count).toBe(74)
    expect(framesOf(payload(MOST_SHOWN_BYTES + 1))).toBeNull()
  })

  it('are read back from their picture, with specks on it', () => {
    for (const text of [framesFrom(payload(950)).text(0), framesFrom(payload(5000)).text(3)]) {
      const rows = codeOf(text)
      const scale = 5
      const size = rows.length * scale
      const data = new Uint8ClampedArray(size * size * 4)
      for (let y = 0; y < size; y++)
        for (let x = 0; x < size; x++) {
          const dark = rows[Math.floor(y / scale)]?.[Math.floor(x / scale)] === true
          const speck = Math.imul(x * 7919 + y, 2_654_435_761) >>> 22 === 0
          const level = dark === speck ? 235 : 20
          data.set([level, level, level, 255], (y * size + x) * 4)
        }
      expect(decodeQR({ width: size, height: size, data })).toBe(text)
    }
  })
})
