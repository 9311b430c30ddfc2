import { bad, good, type Result } from '../../core/basics/result.ts'
import { parsePlan } from '../../core/plan/parse-plan.ts'
import type { Plan } from '../../core/plan/schema.ts'
import { newId } from '../../device/database/new-id.ts'
import type { FilePlan, FileProblem, PlanFile } from '../../device/sharing/plan-file.ts'
import { receiptOf, receiptsNamed, storedReceipt } from '../../device/receipts/receipt-key.ts'
import type { FileReceipt } from '../../device/sharing/receipt-files.ts'
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

/** The same with the pictures of the plan's receipts where they were chosen: several files where they are many. */
export async function exportFiles(planId: string, chosen: Private = EVERYTHING): Promise<PlanFile[]> {
  const file = await exportPlan(planId, chosen)
  if (!chosen.receipts) return [file]
  const { withReceipts } = await documents()
  return withReceipts(file, await receiptsOf(planId))
}

/** Pictures on this phone that a record of the plan names; all there are where the plan cannot be read. */
export async function receiptsOf(planId: string): Promise<readonly FileReceipt[]> {
  const made = await keeper()
  const session = await sessionOf(made, planId)
  const named = session.ok ? receiptsNamed(session.value.plan()) : null
  const pictures = (await made.shelf.receipts(planId)).map(({ id, bytes }) => ({ id: receiptOf(planId, id), bytes }))
  return pictures.filter(({ id }) => named === null || named.has(id))
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
  let leftOut = 0
  const came = new Set<string>()
  for (const plan of plans) {
    const result = await takeIn(plan)
    if (result.ok) {
      came.add(result.value)
      leftOut += await takeReceipts(result.value, plan)
    } else failed++
    if (taken?.ok !== true || result.ok) taken = result
  }
  for (const bytes of changes) {
    const { takeHandOver } = await import('./hand-over-actions.ts')
    taken = await takeHandOver(bytes)
  }
  if (taken === null) return bad(...problems)
  // A plan with many receipts stands in a file more than once.
  if (came.size + failed > 1) notify({ key: 'keeping.several', args: { count: came.size, failed } })
  if (leftOut > 0) notify({ key: 'keeping.receipts-left-out', args: { count: leftOut } })
  return taken
}

async function takeIn({ plan, document }: FilePlan): Promise<Result<string, FileProblem>> {
  if (document !== null) return takeDocument(plan.id, document, plan)
  return good(await addPlan((await isHere(plan.id)) ? { ...plan, id: newId() } : plan))
}

/** Puts pictures of receipts beside their plan, over none that is here; gives how many were left out. */
async function takeReceipts(planId: string, { plan, pictures }: FilePlan): Promise<number> {
  if (pictures === undefined) return 0
  const made = await keeper()
  const came = new Set<string>()
  let leftOut = pictures.refused
  for (const { id, bytes } of pictures.receipts) {
    const stored = storedReceipt(planId, id, bytes, Date.now())
    if ((await made.shelf.receipt(stored.id)) !== undefined) continue
    if ((await made.shelf.putReceipt(stored)) === 'saved') came.add(id)
    else leftOut++
  }
  // A plan that came earlier without its receipts has blanks where they are named, and joining documents leaves blanks as they are.
  const session = await sessionOf(made, planId)
  if (session.ok) session.value.edit(namingReceipts(session.value.plan(), plan, came))
  return leftOut
}

/** The plan, naming the pictures that came for records that name none. */
const namingReceipts = (ours: Plan, theirs: Plan, came: ReadonlySet<string>): Plan => ({
  ...ours,
  spending: Object.fromEntries(
    Object.entries(ours.spending).map(([key, record]) => {
      const receipt = theirs.spending[key]?.receipt ?? ''
      return [key, record.receipt === null && came.has(receipt) ? { ...record, receipt } : record]
    }),
  ),
})

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
