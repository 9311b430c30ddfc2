import { Buffer } from 'node:buffer'
import { isDeepStrictEqual } from 'node:util'
import { crc32 as zlibCrc32 } from 'node:zlib'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { crc32 } from '../../../src/device/database/crc32.ts'
import { encodeDocument } from '../../../src/device/database/document-bytes.ts'
import { documentFrom, documentOf, readPlan } from '../../../src/device/database/plan-document.ts'
import { fromBase64, fromBase64Url, toBase64, toBase64Url } from '../../../src/device/sharing/bytes-text.ts'
import {
  MOST_FILE_BYTES,
  readChosenFile,
  readPlanFile,
  writeBackups,
  writePlanFile,
} from '../../../src/device/sharing/plan-file.ts'
import { readJson } from '../../../src/device/sharing/safe-json.ts'
import { offerOf, planOf } from '../plans.ts'

/** `MUTANTS=34000 npx vitest run --project core tests/device` is the long run: a hundred thousand in all. */
const MUTANTS = Number(process.env['MUTANTS'] ?? 2000)
const plan = { ...planOf(), offers: { o: offerOf('cement', 1250) } }
const document = encodeDocument(documentOf(plan))
const { text, fileName } = writePlanFile(plan.name, plan, document)
const kindOf = (content: string) => {
  const { plans, problems } = readPlanFile(content)
  return plans.length === 1 ? 'opened' : problems[0]
}
const changed = (change: Record<string, unknown>) =>
  JSON.stringify({ ...(JSON.parse(text) as Record<string, unknown>), ...change })

describe('bytes as text', () => {
  it('is what Node’s Buffer makes of them (RFC 4648), both ways, and in an address', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(toBase64(bytes)).toBe(Buffer.from(bytes).toString('base64'))
        expect(toBase64Url(bytes)).toBe(Buffer.from(bytes).toString('base64url'))
        expect(fromBase64(toBase64(bytes))).toEqual(bytes)
        expect(fromBase64Url(toBase64Url(bytes))).toEqual(bytes)
      }),
    )
    expect(fromBase64('not*base64')).toBeNull()
    expect(fromBase64Url('a+b/')).toBeNull()
  })

  it('has the checksum that zlib gives it', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(crc32(bytes)).toBe(zlibCrc32(bytes))
      }),
    )
    // The check value of CRC-32/ISO-HDLC in the catalogue of parametrised CRC algorithms (G. Cook).
    expect(crc32(new TextEncoder().encode('123456789'))).toBe(0xcbf43926)
  })
})

describe('a plan file', () => {
  it('can be read by a person and comes back as plan and document', () => {
    expect(text).toContain('"name": "Three chambers by the landing"')
    const [read] = readPlanFile(text).plans
    expect(read?.plan).toEqual(plan)
    expect(readPlan(documentFrom([read?.document ?? new Uint8Array()]).doc)).toEqual({ ok: true, value: plan })
  })

  it('has a name that every phone can keep', () => {
    expect(fileName).toBe('Three-chambers-by-the-landing.kilnwright.json')
    expect(writePlanFile('../..\\C:*?"<>|', plan, document).fileName).toBe('C.kilnwright.json')
    expect(writePlanFile('Fumoir nº 2 — Ɛdwumam', plan, document).fileName).toBe('Fumoir-nº-2-Ɛdwumam.kilnwright.json')
    expect(writePlanFile('…', plan, document).fileName).toBe('plan.kilnwright.json')
  })

  it('may be a bare plan', () => {
    expect(readPlanFile(JSON.stringify(plan))).toEqual({ plans: [{ plan, document: null }], changes: [], problems: [] })
  })

  it('may hold every plan of a phone, and one that is damaged hides no other', () => {
    const others = ['p2', 'p3'].map((id) => ({ ...plan, id, name: `Plan ${id}` }))
    const files = [plan, ...others].map((one) => writePlanFile(one.name, one, encodeDocument(documentOf(one))))
    const [backup, ...rest] = writeBackups(files, 'all')
    expect(rest).toEqual([])
    expect(backup?.fileName).toBe('all.kilnwright.json')
    const names = (content: string) => readPlanFile(content).plans.map((one) => one.plan.name)
    expect(names(backup?.text ?? '')).toEqual([plan.name, 'Plan p2', 'Plan p3'])
    const hurt = backup?.text.replace('"name": "Plan p2"', '"name": ""') ?? ''
    expect(names(hurt)).toEqual([plan.name, 'Plan p3'])
    expect(readPlanFile(hurt).problems).toEqual([{ kind: 'damaged', field: 'name' }])
  })

  it('is written as several where one would be too big to open again', async () => {
    const many = Array.from({ length: 300 }, () => ({ fileName, text }))
    const parts = writeBackups(many, 'all')
    expect(parts.length).toBeGreaterThan(1)
    expect(parts.map((part) => part.fileName).slice(0, 2)).toEqual(['all-1.kilnwright.json', 'all-2.kilnwright.json'])
    let count = 0
    for (const part of parts) count += (await readChosenFile(new Blob([part.text]))).plans.length
    expect(count).toBe(300)
  })

  it.each([
    ['nothing', '', { kind: 'not-ours' }],
    ['a letter', 'Dear treasurer', { kind: 'not-ours' }],
    ['another program’s data', '{"type":"FeatureCollection","features":[]}', { kind: 'not-ours' }],
    ['a list', '[1,2,3]', { kind: 'not-ours' }],
    ['the first half of a file', text.slice(0, text.length / 2), { kind: 'damaged', field: 'file' }],
    ['no document', changed({ document: undefined }), { kind: 'damaged', field: 'document' }],
    ['a document of another kind', changed({ document: 'AAAA' }), { kind: 'damaged', field: 'document' }],
    [
      'a letter of the document changed',
      changed({ document: toBase64(document.map((byte, index) => (index === 200 ? byte ^ 1 : byte))) }),
      { kind: 'damaged', field: 'document' },
    ],
    [
      'a figure of the plan changed',
      text.replace('"priceMinor": 1250', '"priceMinor": 1260'),
      { kind: 'damaged', field: 'document' },
    ],
    ['a field out of its limits', JSON.stringify({ ...plan, name: '' }), { kind: 'damaged', field: 'name' }],
    ['no plan in it', changed({ plan: 7 }), { kind: 'damaged', field: 'plan' }],
    ['no version', changed({ version: 'one' }), { kind: 'damaged', field: 'version' }],
    ['a newer file', changed({ version: 2 }), { kind: 'newer', theirVersion: 2, ourVersion: 1 }],
    [
      'a newer plan',
      changed({ plan: { ...plan, version: 5 } }),
      { kind: 'newer', theirVersion: 5, ourVersion: plan.version },
    ],
    [
      'a key that reaches a prototype',
      text.replace('"plan": {', '"plan": {"__proto__": {"a": 1},'),
      { kind: 'damaged', field: 'file' },
    ],
  ])('with %s is refused by its name', (_what, content, problem) => {
    expect(kindOf(content)).toEqual(problem)
  })

  it('that is too big is refused before it is read', async () => {
    const file = { size: MOST_FILE_BYTES + 1, text: () => Promise.reject(new Error('read')) } as unknown as Blob
    expect(await readChosenFile(file)).toEqual({
      plans: [],
      changes: [],
      problems: [{ kind: 'too-big', sizeBytes: 5_242_881, mostBytes: 5_242_880 }],
    })
  })

  it('nested to do harm is refused at once', () => {
    const deep = `${'['.repeat(2_000_000)}${']'.repeat(2_000_000)}`
    const before = performance.now()
    expect(readJson(deep)).toEqual({ ok: false, problems: ['too-deep'] })
    expect(readJson(`{"kilnwright":${'{"a":'.repeat(100)}1${'}'.repeat(100)}}`).ok).toBe(false)
    expect(performance.now() - before).toBeLessThan(1000)
    expect(readJson(JSON.stringify(['[[[[{{{{'.repeat(20), '\\"[['.repeat(20)])).ok).toBe(true)
  })

  it('mutated at random never throws, and opens only where it still says the same', { timeout: 300_000 }, () => {
    const at = fc.nat(text.length - 1)
    const mutation = fc.oneof(
      fc.tuple(at, fc.string({ maxLength: 4 })).map(
        ([index, put]) =>
          (content: string) =>
            content.slice(0, index) + put + content.slice(index + put.length),
      ),
      fc.tuple(at, fc.nat(80)).map(
        ([index, count]) =>
          (content: string) =>
            content.slice(0, index) + content.slice(index + count),
      ),
      fc.tuple(at, at).map(
        ([from, to]) =>
          (content: string) =>
            content.slice(0, to) + content.slice(from, from + 200) + content.slice(to),
      ),
    )
    fc.assert(
      fc.property(fc.array(mutation, { minLength: 1, maxLength: 4 }), (mutations) => {
        const mutated = mutations.reduce((content, mutate) => mutate(content), text)
        expect(readPlanFile(mutated).plans.every((read) => isDeepStrictEqual(read.plan, plan))).toBe(true)
      }),
      { numRuns: MUTANTS },
    )
    expect(({} as Record<string, unknown>)['a']).toBeUndefined()
  })
})
