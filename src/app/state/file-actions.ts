import { bad, good, type Result } from '../../core/basics/result.ts'
import { parsePlan } from '../../core/plan/parse-plan.ts'
import { newId } from '../../device/database/new-id.ts'
import type { FilePlan, FileProblem, PlanFile } from '../../device/sharing/plan-file.ts'
import { EVERYTHING, type Private } from '../../device/sharing/chosen.ts'
import { addPlan, openPlan } from './actions.ts'
import { documents } from './documents-later.ts'
import { keeper, sessionOf } from './keeper.ts'
import { notify } from './notices.ts'
import { store } from './store.ts'
import { isHere, takeDocument } from './take-document.ts'

export type { FileProblem, PlanFile, Private }

/**
 * A plan as a file: all of it, to keep; or with what was not chosen left out, to hand on. Works for a plan that cannot be read too: then it is what is stored,
 * untouched.
 */
export async function exportPlan(planId: string, chosen: Private = EVERYTHING): Promise<PlanFile> {
  const made = await keeper()
  const session = await sessionOf(made, planId)
  const { documentFrom, encodeDocument, forOthers, readPlan, readRaw, writePlanFile } = await documents()
  if (session.ok) {
    const doc = forOthers(session.value.document(), chosen)
    const plan = readPlan(doc)
    if (!plan.ok) throw new Error('a plan at work is no plan')
    return writePlanFile(plan.value.name, plan.value, encodeDocument(doc))
  }
  const stored = await made.shelf.updates(planId)
  const { doc } = documentFrom(stored)
  const name = store.getState().rows.find(({ id }) => id === planId)?.name ?? planId
  return writePlanFile(name, readRaw(doc), encodeDocument(doc), stored)
}

/**
 * Opens a file that someone chose and brings its plan, the last of several, to the screen. A plan that is here already is merged with the file's document, so that
 * neither phone's work is lost, and so are changes; a bare plan without its document cannot be merged and becomes a plan of its own. A plan with a problem changes nothing.
 */
export async function openFile(file: Blob): Promise<Result<string, FileProblem>> {
  const { readChosenFile } = await documents()
  const { plans, changes, problems } = await readChosenFile(file)
  let taken: Result<string, FileProblem> | null = null
  let failed = problems.length
  for (const plan of plans) {
    const result = await takeIn(plan)
    if (!result.ok) failed++
    if (taken?.ok !== true || result.ok) taken = result
  }
  for (const bytes of changes) {
    const { takeHandOver } = await import('./hand-over-actions.ts')
    taken = await takeHandOver(bytes)
  }
  if (taken === null) return bad(...problems)
  if (plans.length + problems.length > 1)
    notify({ key: 'keeping.several', args: { count: plans.length + problems.length - failed, failed } })
  return taken
}

async function takeIn({ plan, document }: FilePlan): Promise<Result<string, FileProblem>> {
  if (document !== null) return takeDocument(plan.id, document, plan)
  return good(await addPlan((await isHere(plan.id)) ? { ...plan, id: newId() } : plan))
}

const EXAMPLES = import.meta.glob<() => Promise<Uint8Array>>('../../../shared/examples/*.json', {
  query: '?packed',
  import: 'open',
})
const exampleName = (file: string): string => file.replace(/^.*\/|\.json.*$/g, '')

/** Names of the example plans that come with the app. */
export const EXAMPLE_KEYS: readonly string[] = Object.keys(EXAMPLES).map(exampleName).sort()

/** Opens an example plan; the one that is on this phone already, with whatever was tried on it, if there is one. */
export async function openExample(key: string): Promise<string> {
  const [, load] = Object.entries(EXAMPLES).find(([file]) => exampleName(file) === key) ?? []
  const open = await load?.()
  if (open === undefined) throw new Error(`not an example plan: ${key}`)
  const example = parsePlan(JSON.parse(new TextDecoder().decode(await open())))
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
