import * as Y from 'yjs'
import { bad, good, type Result } from '../../core/basics/result.ts'
import { parsePlan, type PlanProblem } from '../../core/plan/parse-plan.ts'
import type { Plan } from '../../core/plan/schema.ts'
import type { StoredRow } from './connection.ts'
import type { Difference } from './difference.ts'
import { tryTogether, valuesOf } from './differences.ts'
import { applyUpdate, encodeDocument, isUpdate, isWaiting, onUpdate } from './document-bytes.ts'
import { sharing } from './json.ts'
import {
  BY_HAND,
  changesTo,
  documentFrom,
  documentOf,
  planMaps,
  readPlan,
  readRaw,
  withoutCollections,
  write,
} from './plan-document.ts'
import { startSaver, type Saving } from './saver.ts'
import { startSittings } from './sittings.ts'
import type { SaveOutcome, Shelf } from './shelf.ts'
import type { TabMessage, Tabs } from './tabs.ts'

const TYPING_MS = 500
const DAY_MS = 86_400_000
/** Where a change came from when it is not to be saved again by this tab. */
const KEPT_ELSEWHERE: ReadonlySet<unknown> = new Set(['stored', 'tab'])

/** A plan at work: its document in memory, every change saved and told to the other tabs. */
export interface PlanSession {
  readonly id: string
  readonly plan: () => Plan
  /** Set when another tab or phone brought something that this version cannot read; then nothing more is written. */
  readonly trouble: () => PlanProblem | null
  readonly saving: () => Saving
  readonly canUndo: () => boolean
  readonly canRedo: () => boolean
  /** Makes the plan this one: one step of undo, unless the same fields are still being typed in. */
  readonly edit: (next: Plan) => Result<Plan, PlanProblem>
  readonly undo: () => void
  readonly redo: () => void
  /**
   * Brings in a document of the same plan from outside, or changes to it. An earlier copy is kept first: of each meeting by itself, of changes that come `steadily`
   * (an office) one a day, or they would push out every other copy.
   */
  readonly merge: (bytes: Uint8Array, how?: 'once' | 'steadily') => Promise<Result<Merged, MergeProblem>>
  /** The whole document. */
  readonly document: () => Uint8Array
  readonly row: () => StoredRow
  readonly hear: (message: TabMessage) => void
  /** Reads what other tabs saved while this one slept. */
  readonly catchUp: () => Promise<void>
  readonly isIdle: () => boolean
  readonly settled: () => Promise<SaveOutcome>
  readonly end: () => void
}

/** The plan after a merge, and the decisions that both sides had answered. */
export interface Merged {
  readonly plan: Plan
  readonly differences: readonly Difference[]
}

/** 'gap': changes that build on others which this phone never got; the whole plan is needed. */
export type MergeProblem = PlanProblem | { readonly kind: 'gap' }

export interface Around {
  /** The name of this phone, as its owner gave it. */
  readonly phone: () => string
  readonly shelf: Shelf
  readonly tabs: Pick<Tabs, 'tell'>
  readonly onChange: (session: PlanSession) => void
}

/** A plan that is not on the shelf yet. */
export const beginSession = (plan: Plan, around: Around): PlanSession =>
  startSession(documentOf(plan), plan, 0, around, true)

/** A plan whose document came from outside and is not on the shelf yet. */
export const adoptDocument = (doc: Y.Doc, plan: Plan, around: Around): PlanSession =>
  startSession(doc, plan, 0, around, true)

/** A plan from the shelf. Nothing is written before it has been read. */
export async function openSession(
  planId: string,
  savedAtMs: number,
  around: Around,
): Promise<Result<PlanSession, PlanProblem>> {
  const { doc } = documentFrom(await around.shelf.updates(planId))
  const plan = readPlan(doc)
  if (!plan.ok) return plan
  if (plan.value.id !== planId) return bad({ kind: 'damaged', field: 'id', reason: 'other' })
  return good(startSession(doc, plan.value, savedAtMs, around, false))
}

function startSession(doc: Y.Doc, first: Plan, savedAtMs: number, around: Around, isNew: boolean): PlanSession {
  const { shelf, tabs } = around
  const planId = first.id
  let plan = first
  let trouble: PlanProblem | null = null
  let lastTouched = ''
  /** Set by the first change that this tab makes. */
  let dayCopy: Promise<void> | null = null
  /** Counts what was written; while it stands still, what was read before is still true. */
  let edition = 0
  let known: Plan | null = null

  const undoing = new Y.UndoManager(planMaps(doc), { trackedOrigins: new Set([BY_HAND]), captureTimeout: TYPING_MS })
  const sittings = startSittings(doc, around.phone)
  const document = () => encodeDocument(doc)
  const row = (): StoredRow => ({
    id: planId,
    name: plan.name,
    savedAtMs: Date.now(),
    plan: trouble === null ? withoutCollections(plan) : readRaw(doc),
    deletedAtMs: null,
  })
  const saver = startSaver({
    savedAtMs,
    isLasting: shelf.isLasting,
    save: (update) => shelf.save({ row: row(), update, whole: document }),
    onAttempt: (bytes, isSaved) => {
      tabs.tell({ kind: 'update', planId, bytes, isSaved })
    },
    onChange: () => {
      around.onChange(session)
    },
  })

  /** The plan as the document says it now. */
  const reread = () => {
    const read = known === null ? readPlan(doc) : good(known)
    if (read.ok) plan = sharing(plan, read.value)
    trouble = read.ok ? null : (read.problems[0] ?? null)
  }
  const heed = (update: Uint8Array, origin: unknown) => {
    edition++
    // What was changed by hand here was checked before it was written.
    if (origin !== BY_HAND) reread()
    if (!KEPT_ELSEWHERE.has(origin)) saver.add(update)
    around.onChange(session)
  }
  const stopHeeding = onUpdate(doc, heed)

  /** Once a day, what there was before the first change is put aside. */
  const keepDayCopy = () => {
    if (dayCopy !== null) return
    const copy = { planId, atMs: Date.now(), why: 'day', bytes: document() } as const
    const keep = async () => {
      const [last] = await shelf.copies(planId)
      if (last === undefined || Math.abs(copy.atMs - last.atMs) > DAY_MS) await shelf.keepCopy(copy)
    }
    // A shelf that cannot be read now shows in the saving of the change itself.
    dayCopy = keep().catch(() => {})
  }
  const takeIn = (bytes: Uint8Array, origin: string) => {
    applyUpdate(doc, bytes, origin)
  }

  const session: PlanSession = {
    id: planId,
    plan: () => plan,
    trouble: () => trouble,
    saving: saver.saving,
    canUndo: undoing.canUndo.bind(undoing),
    canRedo: undoing.canRedo.bind(undoing),
    edit: (next) => {
      if (trouble !== null) return bad(trouble)
      const checked = parsePlan({ ...next, id: planId })
      if (!checked.ok) return checked
      const changes = changesTo(doc, checked.value)
      if (changes.length === 0) return checked
      keepDayCopy()
      const touched = changes.map(({ path, entry, field }) => [path, entry, field].join('\n')).join('\n\n')
      if (touched !== lastTouched) undoing.stopCapturing()
      lastTouched = touched
      plan = sharing(plan, checked.value)
      doc.transact(() => {
        sittings.sitDown()
        write(doc, changes, BY_HAND)
      }, BY_HAND)
      return good(plan)
    },
    undo: () => {
      if (trouble === null) undoing.undo()
    },
    redo: () => {
      if (trouble === null) undoing.redo()
    },
    merge: async (bytes, how = 'once') => {
      const ours = document()
      const trial = tryMerge(planId, ours, bytes)
      if (!trial.ok) return trial
      const tried = edition
      if (how === 'steadily') keepDayCopy()
      else {
        await dayCopy
        await shelf.keepCopy({ planId, atMs: Date.now(), why: 'before-merge', bytes: ours })
      }
      if (edition === tried) known = trial.value.plan
      takeIn(bytes, 'merged')
      known = null
      return good({ plan, differences: trial.value.differences })
    },
    document,
    row,
    hear: (message) => {
      if (message.kind !== 'update' || message.planId !== planId || !isUpdate(message.bytes)) return
      takeIn(message.bytes, message.isSaved ? 'tab' : 'tab-unsaved')
    },
    catchUp: async () => {
      const { doc: stored } = documentFrom(await shelf.updates(planId))
      takeIn(encodeDocument(stored), 'stored')
      stored.destroy()
    },
    isIdle: saver.isIdle,
    settled: saver.settled,
    end: () => {
      saver.end()
      stopHeeding()
      undoing.destroy()
      doc.destroy()
    },
  }
  if (isNew) saver.add(document())
  return session
}

/** Merges copies first: a document that would leave no sound plan changes nothing. Gives back the plan, and the decisions that both sides answered. */
function tryMerge(planId: string, ours: Uint8Array, theirs: Uint8Array): Result<Merged, MergeProblem> {
  const trial = tryTogether(ours, theirs)
  if (trial === null) return bad({ kind: 'damaged', field: 'document', reason: 'unreadable' })
  const { doc, differences } = trial
  if (valuesOf(doc, 'id').some((id) => id !== planId)) return bad({ kind: 'damaged', field: 'id', reason: 'other' })
  if (isWaiting(doc)) return bad({ kind: 'gap' })
  const merged = readPlan(doc)
  return merged.ok ? good({ plan: merged.value, differences }) : merged
}
