import * as Y from 'yjs'
import { CATALOGUE_SOILS, CATALOGUE_UNITS } from '../../core/plan/catalogue.ts'
import { newPlan } from '../../core/plan/defaults.ts'
import { parsePlan, type PlanProblem } from '../../core/plan/parse-plan.ts'
import { PLAN_VERSION, type Plan } from '../../core/plan/schema.ts'
import { bad, good, type Result } from '../../core/basics/result.ts'
import { crc32 } from './crc32.ts'
import { applyUpdate, isUpdate } from './document-bytes.ts'
import { isRecord, isUnsafeKey, sameJson, valueAt, withValueAt } from './json.ts'
import { PLAN_SHAPE } from './plan-shape.ts'

/** Origin of what the person at this phone changes, and the only one that undo takes back. */
export const BY_HAND = 'by-hand'

/**
 * A plan as a replicated document. Fields lie in one map under their paths, so that two phones that write the first value of the same new field still meet in
 * one place (a nested map made twice would keep only one of the two). Collections lie in a map of their own, each entry a map.
 */
const fieldsOf = (doc: Y.Doc): Y.Map<unknown> => doc.getMap('plan')
const RECORD = 'record:'
const recordOf = (doc: Y.Doc, path: string): Y.Map<unknown> => doc.getMap(RECORD + path)

/** The maps that a plan's fields live in: what undo watches. */
export const planMaps = (doc: Y.Doc): Y.Map<unknown>[] => [
  fieldsOf(doc),
  ...PLAN_SHAPE.records.map(({ path }) => recordOf(doc, path)),
]

const LEAVES: ReadonlySet<string> = new Set([...PLAN_SHAPE.leaves, ...PLAN_SHAPE.records.map(({ path }) => path)])
const BY_FIELD: ReadonlySet<string> = new Set(
  PLAN_SHAPE.records.filter(({ isByField }) => isByField).map(({ path }) => path),
)

const byName = ([a]: readonly [string, unknown], [b]: readonly [string, unknown]): number => (a < b ? -1 : 1)

/** What the document holds, as plain data that nobody has checked yet. */
export function readRaw(doc: Y.Doc): Record<string, unknown> {
  const fields = fieldsOf(doc)
  // A phone with an older version may have written to a field that this version no longer has: it stays in the document, out of the plan.
  const isOurs = fields.get('version') === PLAN_VERSION
  let raw: Record<string, unknown> = {}
  for (const [path, value] of fields.entries()) {
    if ((isOurs && !LEAVES.has(path)) || value instanceof Y.AbstractType || path.split('.').some(isUnsafeKey)) continue
    raw = withValueAt(raw, path, value)
  }
  for (const name of doc.share.keys()) {
    const path = name.slice(RECORD.length)
    if (!name.startsWith(RECORD) || path.split('.').some(isUnsafeKey) || (isOurs && !LEAVES.has(path))) continue
    const entries = [...recordOf(doc, path).entries()]
      .filter(([id]) => !isUnsafeKey(id))
      .sort(byName)
      .map(([id, entry]) => [id, entry instanceof Y.Map ? (entry.toJSON() as unknown) : entry])
    raw = withValueAt(raw, path, Object.fromEntries(entries))
  }
  return raw
}

/** The parts of the document that hold the plan's values, by their paths: fields, entries of collections, and fields of entries. */
export function planFields(doc: Y.Doc): Map<string, Y.Item> {
  const found = new Map<string, Y.Item>()
  const gather = (map: Y.Map<unknown>, prefix: string, isPlace: (key: string) => boolean) => {
    for (const [key, item] of map._map) {
      if (!isPlace(key)) continue
      const { content } = item
      if (content instanceof Y.ContentType && content.type instanceof Y.Map) {
        if (!item.deleted) gather(content.type, `${prefix}${key}.`, () => true)
      } else found.set(prefix + key, item)
    }
  }
  const records = new Set(PLAN_SHAPE.records.map(({ path }) => path))
  gather(fieldsOf(doc), '', (key) => LEAVES.has(key) && !records.has(key))
  for (const path of records) gather(recordOf(doc, path), `${path}.`, () => true)
  return found
}

/** What holds the entries of the collections, by their paths; entries taken away too, as long as the document remembers them. */
export function planEntries(doc: Y.Doc): Map<string, Y.Item> {
  const found = new Map<string, Y.Item>()
  for (const { path } of PLAN_SHAPE.records)
    for (const [entry, item] of recordOf(doc, path)._map) found.set(`${path}.${entry}`, item)
  return found
}

/** The plan with its collections empty: enough to draw it, and small however many firings it has seen. */
export function withoutCollections(plan: Plan): Plan {
  let short: Record<string, unknown> = plan
  for (const { path } of PLAN_SHAPE.records) short = withValueAt(short, path, {})
  return short as Plan
}

/** The plan in the document, lifted to this version and checked. */
export function readPlan(doc: Y.Doc): Result<Plan, PlanProblem> {
  const raw = readRaw(doc)
  const parsed = parsePlan(raw)
  if (parsed.ok) return parsed
  const mended = mend(raw, parsed.problems)
  return mended === null ? parsed : parsePlan(mended)
}

/**
 * Two phones can each give a sound answer that does not go with the other's (one sets fresh fish drier, one smoked fish wetter).
 * Such a field falls back to common practice, alike on every phone, until someone answers again.
 */
function mend(raw: Record<string, unknown>, problems: readonly PlanProblem[]): Record<string, unknown> | null {
  let mended = raw
  for (const problem of problems) {
    if (problem.kind !== 'damaged' || problem.reason !== 'order') return null
    mended = withValueAt(mended, problem.field, valueAt(COMMON_PRACTICE, problem.field))
  }
  return mended
}

const COMMON_PRACTICE = newPlan({
  id: 'common-practice',
  name: '-',
  freshKgPerDay: 1,
  unitKey: CATALOGUE_UNITS[0]?.key ?? '',
  soil: CATALOGUE_SOILS[0]?.key ?? '',
  currency: { code: 'XXX', digits: 0 },
})

/** One thing to write: a field, or an entry of a collection with its field (none: the whole entry). Undefined takes it away. */
interface Change {
  readonly path: string
  readonly entry?: string
  readonly field?: string
  readonly value: unknown
}

/** The fewest writes that make the document say this plan, so that what another phone changed elsewhere stays. */
export function changesTo(doc: Y.Doc, plan: Plan): Change[] {
  const fields = fieldsOf(doc)
  const changes: Change[] = PLAN_SHAPE.leaves
    .map((path) => ({ path, value: valueAt(plan, path) }))
    .filter(({ path, value }) => !sameJson(fields.get(path), value))
  for (const { path } of PLAN_SHAPE.records) {
    // An empty collection leaves no trace in a document: its field says that it is there.
    if (fields.get(path) === undefined) changes.push({ path, value: {} })
    changes.push(...entryChanges(path, recordOf(doc, path), valueAt(plan, path)))
  }
  return changes
}

function entryChanges(path: string, kept: Y.Map<unknown>, wanted: unknown): Change[] {
  const entries = isRecord(wanted) ? wanted : {}
  const changes: Change[] = [...kept.keys()]
    .filter((entry) => !Object.hasOwn(entries, entry))
    .map((entry) => ({ path, entry, value: undefined }))
  for (const [entry, value] of Object.entries(entries).sort(byName)) {
    const now = kept.get(entry)
    if (!(now instanceof Y.Map) || !isRecord(value)) {
      if (!sameJson(now, value)) changes.push({ path, entry, value })
      continue
    }
    for (const field of new Set([...now.keys(), ...Object.keys(value)]))
      if (!sameJson(now.get(field), value[field])) changes.push({ path, entry, field, value: value[field] })
  }
  return changes
}

const put = (map: Y.Map<unknown>, key: string, value: unknown): void => {
  if (value === undefined) map.delete(key)
  else map.set(key, value)
}

/** Writes changes as one step. */
export function write(doc: Y.Doc, changes: readonly Change[], origin: string): void {
  if (changes.length === 0) return
  doc.transact(() => {
    for (const { path, entry, field, value } of changes) {
      if (entry === undefined) {
        put(fieldsOf(doc), path, value)
        continue
      }
      const record = recordOf(doc, path)
      const now = record.get(entry)
      if (field !== undefined && now instanceof Y.Map) put(now, field, value)
      else
        put(
          record,
          entry,
          isRecord(value) && BY_FIELD.has(path) ? new Y.Map(Object.entries(value).sort(byName)) : value,
        )
    }
  }, origin)
}

/**
 * A new document that says this plan. Two phones that make it from the same plan (an example, a plain file) make the very same document, byte for byte,
 * because its first author is a number taken from what is written: so what they change afterwards can be merged without the first values in the way.
 */
export function documentOf(plan: Plan): Y.Doc {
  const doc = new Y.Doc()
  const own = doc.clientID
  const changes = changesTo(doc, plan)
  doc.clientID = crc32(new TextEncoder().encode(JSON.stringify(changes)))
  write(doc, changes, 'new')
  doc.clientID = own
  return doc
}

/** A document from its stored changes; what cannot be read is left out and counted, never a reason to lose the rest. */
export function documentFrom(updates: readonly Uint8Array[]): { readonly doc: Y.Doc; readonly unreadable: number } {
  const readable = updates.filter(isUpdate)
  const whole = documentOfAll(readable)
  if (whole !== null) return { doc: whole, unreadable: updates.length - readable.length }
  let doc = new Y.Doc()
  const kept: Uint8Array[] = []
  for (const update of readable) {
    const next = documentOfAll([...kept, update])
    if (next === null) continue
    kept.push(update)
    doc = next
  }
  return { doc, unreadable: updates.length - kept.length }
}

/** Null where one of them cannot be applied: bytes can read well and still make no sense. */
function documentOfAll(updates: readonly Uint8Array[]): Y.Doc | null {
  const doc = new Y.Doc()
  try {
    doc.transact(() => {
      for (const update of updates) applyUpdate(doc, update, 'stored')
    }, 'stored')
    return doc
  } catch {
    return null
  }
}

/** A document from a file, a code or another phone: all of it or nothing. */
export function documentFromOutside(bytes: Uint8Array): Result<Y.Doc, { readonly kind: 'damaged' }> {
  const doc = isUpdate(bytes) ? documentOfAll([bytes]) : null
  return doc === null ? bad({ kind: 'damaged' }) : good(doc)
}
