import { readFileSync } from 'node:fs'
import path from 'node:path'
import { isDeepStrictEqual } from 'node:util'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parsePlan } from '../../../src/core/plan/parse-plan.ts'
import { crc32 } from '../../../src/device/database/crc32.ts'
import { encodeDocument } from '../../../src/device/database/document-bytes.ts'
import { memoryShelf } from '../../../src/device/database/memory-shelf.ts'
import { documentFromOutside, documentOf, readPlan } from '../../../src/device/database/plan-document.ts'
import { beginSession, type PlanSession } from '../../../src/device/database/plan-session.ts'
import { collectFrames, framesOf } from '../../../src/device/sharing/frames.ts'
import { fromFragment, packHandOver, toFragment, unpackHandOver } from '../../../src/device/sharing/hand-over.ts'
import { EVERYTHING } from '../../../src/device/sharing/chosen.ts'
import { readPlanFile, writeChangesFile, writePlanFile } from '../../../src/device/sharing/plan-file.ts'
import { tellFault } from '../../faults.ts'
import { fromOffice } from './hostile-office.ts'
import { mutatedBytes, mutatedText } from './mutations.ts'

/** Mutants of all routes together; MUTANTS=100000 asks for more. */
const MUTANTS = Number(process.env['MUTANTS'] ?? 1600)
const ROUTES = 4
const numRuns = Math.ceil(MUTANTS / ROUTES)
/** What a phone may be held up by one mutant, ms, and by how much all of them may swell the memory, bytes. */
const MOST_MS = 1000
const MOST_BYTES = 600 * 1024 * 1024
const timeout = 3_600_000

const found = parsePlan(
  JSON.parse(readFileSync(path.join(import.meta.dirname, '../../../shared/examples/two-chambers.json'), 'utf8')),
)
if (!found.ok) throw new Error('no example')
const plan = found.value
const document = encodeDocument(documentOf(plan))
const session = (): PlanSession =>
  beginSession(plan, { phone: () => '', shelf: memoryShelf(), tabs: { tell: () => {} }, onChange: () => {} })

/** What a phone does with a document from outside, up to the plan on its screen: refused whole, or a plan that passes every check. */
async function takeIn(bytes: Uint8Array): Promise<void> {
  const doc = documentFromOutside(bytes)
  if (doc.ok) {
    const read = readPlan(doc.value)
    if (read.ok && !parsePlan(read.value).ok) throw new Error('a plan that fails its checks')
    doc.value.destroy()
  }
  const target = session()
  const before = target.document()
  const outcome = await target.merge(bytes)
  if (!parsePlan(target.plan()).ok || target.trouble() !== null) throw new Error('a plan at work was broken')
  if (!outcome.ok && !isDeepStrictEqual(target.document(), before)) throw new Error('refused, and yet changed')
  target.end()
}

/** Runs one route against its mutants, each timed; gives and tells how long the slowest held the phone up, ms. */
async function tried<T>(name: string, mutants: fc.Arbitrary<T>, take: (mutant: T) => Promise<void>): Promise<number> {
  let slowestMs = 0
  let mostBytes = 0
  const startBytes = process.memoryUsage().rss
  await fc.assert(
    fc.asyncProperty(mutants, async (mutant) => {
      const [startMs, startCpu] = [performance.now(), process.cpuUsage()]
      await take(mutant)
      const { user, system } = process.cpuUsage(startCpu)
      // What holds a phone up takes both; time alone also passes when the machine does something else.
      slowestMs = Math.max(slowestMs, Math.min(performance.now() - startMs, (user + system) / 1000))
      mostBytes = Math.max(mostBytes, process.memoryUsage.rss() - startBytes)
    }),
    { numRuns, endOnFailure: true },
  )
  expect(mostBytes).toBeLessThan(MOST_BYTES)
  expect(({} as Record<string, unknown>)['polluted']).toBeUndefined()
  console.log(
    `${name}: ${String(numRuns)} mutants, the slowest ${slowestMs.toFixed(1)} ms, memory at most ${(mostBytes / 2 ** 20).toFixed(0)} MB more`,
  )
  if (slowestMs < MOST_MS) tellFault(name, numRuns, slowestMs)
  return slowestMs
}

/** The checksum made right again, so that what is behind it is reached. */
function resealed(handOver: Uint8Array): Uint8Array {
  if (handOver.length < 6) return handOver
  const sealed = Uint8Array.from(handOver)
  new DataView(sealed.buffer).setUint32(2, crc32(sealed.subarray(6)))
  return sealed
}
const handOver = packHandOver({ planId: plan.id, document, chosen: EVERYTHING })

describe('hostile input', () => {
  it('as a file, its text or its document mutated', { timeout }, async () => {
    const { text } = writePlanFile(plan.name, plan, document)
    const asText = mutatedText.map((mutate) => mutate(text))
    const asDocument = mutatedBytes.map((mutate) => writePlanFile(plan.name, plan, mutate(document)).text)
    const asChanges = mutatedBytes.map((mutate) => writeChangesFile(plan.name, resealed(mutate(handOver))).text)
    const slowestMs = await tried('mutated file', fc.oneof(asText, asDocument, asChanges), async (mutant) => {
      const { plans, changes } = readPlanFile(mutant)
      for (const bytes of changes) {
        const read = unpackHandOver(bytes)
        if (read.ok) await takeIn(read.value.document)
      }
      for (const read of plans) {
        if (!isDeepStrictEqual(read.plan, plan)) throw new Error('another plan than the file says')
        if (read.document !== null) await takeIn(read.document)
      }
    })
    expect(slowestMs).toBeLessThan(MOST_MS)
  })

  it('as a link, its letters or the bytes behind them mutated', { timeout }, async () => {
    const good = toFragment(handOver) ?? ''
    expect(good).not.toBe('')
    const asText = mutatedText.map((mutate) => mutate(good))
    const asBytes = mutatedBytes.map((mutate) => toFragment(resealed(mutate(handOver))) ?? '')
    const slowestMs = await tried('mutated link', fc.oneof(asText, asBytes), async (mutant) => {
      const bytes = fromFragment(mutant)
      const read = bytes && unpackHandOver(bytes)
      if (read?.ok === true) await takeIn(read.value.document)
    })
    expect(slowestMs).toBeLessThan(MOST_MS)
  })

  it('as codes, their letters or the bytes that they carry mutated', { timeout }, async () => {
    const textsOf = (bytes: Uint8Array): string[] => {
      const frames = framesOf(bytes)
      return frames === null ? [] : Array.from({ length: frames.count + 2 }, (_, frame) => frames.text(frame))
    }
    const good = textsOf(handOver)
    const asText = fc
      .tuple(mutatedText, fc.nat(good.length - 1))
      .map(([mutate, which]) => good.map((text, frame) => (frame === which ? mutate(text) : text)))
    const asBytes = mutatedBytes.map((mutate) => textsOf(resealed(mutate(handOver))))
    const slowestMs = await tried('mutated code', fc.oneof(asText, asBytes), async (mutant) => {
      const collector = collectFrames()
      for (const text of mutant) {
        const bytes = collector.take(text)?.bytes
        const read = bytes && unpackHandOver(bytes)
        if (read && read.ok) await takeIn(read.value.document)
      }
    })
    expect(slowestMs).toBeLessThan(MOST_MS)
  })

  it('as messages of an office, of every kind that its server sends', { timeout }, async () => {
    const office = await fromOffice(plan, document)
    expect(office.messages.length).toBeGreaterThanOrEqual(4)
    const mutants = fc.tuple(mutatedBytes, fc.nat(office.messages.length - 1))
    const slowestMs = await tried('mutated message of an office', mutants, ([mutate, which]) =>
      office.play(
        office.messages.map((message, index) => (index === which ? mutate(message) : message)),
        takeIn,
      ),
    )
    expect(slowestMs).toBeLessThan(MOST_MS)
    expect(office.taken()).toBeGreaterThan(0)
    office.end()
  })
})
