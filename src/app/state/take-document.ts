import { bad, good, type Result } from '../../core/basics/result.ts'
import type { Plan } from '../../core/plan/schema.ts'
import { countChanges } from '../../device/database/json.ts'
import { newId } from '../../device/database/new-id.ts'
import type { MergeProblem } from '../../device/database/plan-session.ts'
import type { FileProblem } from '../../device/sharing/plan-file.ts'
import { addPlan, openPlan, restorePlan } from './actions.ts'
import { documents } from './documents-later.ts'
import { keeper, sessionOf, takeUp } from './keeper.ts'
import { keepDifferences } from './kept-differences.ts'
import { notify } from './notices.ts'

/** Whether a plan of this identity is on this phone, deleted ones too. */
export async function isHere(planId: string): Promise<boolean> {
  const made = await keeper()
  return made.sessions.has(planId) || (await made.shelf.rows()).some(({ id }) => id === planId)
}

/**
 * Brings in a document from a file or another phone, and its plan to the screen. A plan that is here already is merged with it, so that neither phone's work is lost.
 * Nothing changes where there is a problem. `plan` is what the whole document says; changes alone say no plan.
 */
export async function takeDocument(
  planId: string,
  document: Uint8Array,
  plan?: Plan,
): Promise<Result<string, FileProblem>> {
  const made = await keeper()
  if (!(await isHere(planId))) {
    const { adoptDocument, documentFromOutside } = await documents()
    const doc = documentFromOutside(document)
    if (plan === undefined || !doc.ok) return bad({ kind: 'gap' })
    const session = adoptDocument(doc.value, plan, made.around)
    takeUp(made, session)
    await openPlan(session.id)
    notify({ key: 'keeping.taken', args: { name: plan.name } })
    return good(session.id)
  }
  const session = await sessionOf(made, planId)
  // What is here cannot be read: it stays untouched, and the plan that came stands beside it.
  if (!session.ok) return plan ? good(await addPlan({ ...plan, id: newId() })) : bad({ kind: 'gap' })
  const before = session.value.plan()
  const merged = await session.value.merge(document)
  if (!merged.ok) return bad(asFileProblem(merged.problems[0]))
  await restorePlan(planId)
  await keepDifferences(planId, merged.value.differences)
  await openPlan(planId)
  const { plan: after } = merged.value
  notify({ key: 'keeping.merged', args: { name: after.name, changes: countChanges(before, after) } })
  return good(planId)
}

const asFileProblem = (problem: MergeProblem | undefined): FileProblem =>
  problem?.kind === 'newer' || problem?.kind === 'gap' ? problem : { kind: 'damaged', field: 'document' }
