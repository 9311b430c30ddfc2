import { bad, good, type Result } from '../../core/basics/result.ts'
import { parsePlan } from '../../core/plan/parse-plan.ts'
import { encodeDocument } from '../../device/database/document-bytes.ts'
import { newId } from '../../device/database/new-id.ts'
import { documentFrom, documentFromOutside, readRaw } from '../../device/database/plan-document.ts'
import { adoptDocument } from '../../device/database/plan-session.ts'
import {
  readChosenFile,
  writePlanFile,
  type FilePlan,
  type FileProblem,
  type PlanFile,
} from '../../device/sharing/plan-file.ts'
import { addPlan, openPlan, restorePlan } from './actions.ts'
import { keeper, sessionOf } from './keeper.ts'
import { notify } from './notices.ts'
import { store } from './store.ts'

export type { FileProblem, PlanFile }

/** A plan as a file to hand on. Works for a plan that cannot be read too: then it is what is stored, untouched. */
export async function exportPlan(planId: string): Promise<PlanFile> {
  const made = await keeper()
  const session = await sessionOf(made, planId)
  if (session.ok) return writePlanFile(session.value.plan().name, session.value.plan(), session.value.document())
  const { doc } = documentFrom(await made.shelf.updates(planId))
  const name = store.getState().rows.find(({ id }) => id === planId)?.name ?? planId
  return writePlanFile(name, readRaw(doc), encodeDocument(doc))
}

/**
 * Opens a file that someone chose and brings its plan to the screen. A plan that is here already is merged with the file's document, so that neither phone's work is
 * lost; a bare plan without its document cannot be merged and becomes a plan of its own. Nothing changes where there is a problem.
 */
export async function openFile(file: Blob): Promise<Result<string, FileProblem>> {
  const read = await readChosenFile(file)
  return read.ok ? takeIn(read.value) : read
}

async function takeIn({ plan, document }: FilePlan): Promise<Result<string, FileProblem>> {
  const made = await keeper()
  const isKnown = made.sessions.has(plan.id) || (await made.shelf.rows()).some(({ id }) => id === plan.id)
  if (document === null) return good(await addPlan(isKnown ? { ...plan, id: newId() } : plan))
  if (!isKnown) {
    const doc = documentFromOutside(document)
    if (!doc.ok) return bad({ kind: 'damaged', field: 'document' })
    const session = adoptDocument(doc.value, plan, made.around)
    made.sessions.set(session.id, session)
    await openPlan(session.id)
    return good(session.id)
  }
  const session = await sessionOf(made, plan.id)
  // What is here cannot be read: it stays untouched, and the file's plan stands beside it.
  if (!session.ok) return good(await addPlan({ ...plan, id: newId() }))
  const merged = await session.value.merge(document)
  if (!merged.ok) return bad({ kind: 'damaged', field: 'document' })
  await restorePlan(plan.id)
  await openPlan(plan.id)
  notify({ key: 'keeping.merged', args: { name: merged.value.name } })
  return good(plan.id)
}

const EXAMPLES = import.meta.glob<unknown>('../../../shared/examples/*.json', { import: 'default' })
const exampleName = (file: string): string => file.replace(/^.*\/|\.json$/g, '')

/** Names of the example plans that come with the app. */
export const EXAMPLE_KEYS: readonly string[] = Object.keys(EXAMPLES).map(exampleName).sort()

/** Opens an example plan; the one that is on this phone already, with whatever was tried on it, if there is one. */
export async function openExample(key: string): Promise<string> {
  const [, load] = Object.entries(EXAMPLES).find(([file]) => exampleName(file) === key) ?? []
  const example = parsePlan(await load?.())
  if (!example.ok) throw new Error(`not an example plan: ${key}`)
  const plan = example.value
  if (store.getState().rows.some(({ id, trouble }) => id === plan.id && trouble === null)) {
    await openPlan(plan.id)
    return plan.id
  }
  const { shelf } = await keeper()
  const isTaken = (await shelf.rows()).some(({ id }) => id === plan.id)
  return addPlan(isTaken ? { ...plan, id: newId() } : plan)
}
