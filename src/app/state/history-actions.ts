import type { Result } from '../../core/basics/result.ts'
import type { PlanProblem } from '../../core/plan/parse-plan.ts'
import type { Plan } from '../../core/plan/schema.ts'
import { historyOf, type HistoryStep } from '../../device/database/history.ts'
import { documentFrom, readPlan } from '../../device/database/plan-document.ts'
import { openPlan, undo } from './actions.ts'
import { keeper, sessionOf } from './keeper.ts'
import { notify } from './notices.ts'

export interface PlanHistory {
  /** What changed, newest first. */
  readonly steps: readonly HistoryStep[]
  /** Moments that can be brought back, newest first. */
  readonly copies: readonly { readonly atMs: number; readonly why: 'day' | 'before-merge' }[]
}

/** What happened to a plan, from the copies that this phone kept of it. */
export async function planHistory(planId: string): Promise<PlanHistory> {
  const made = await keeper()
  const [session, copies] = await Promise.all([sessionOf(made, planId), made.shelf.copies(planId)])
  const moments = [...copies].reverse()
  const now = session.ok ? [{ atMs: Date.now(), bytes: session.value.document() }] : []
  return {
    steps: historyOf([...moments, ...now]),
    copies: copies.map(({ atMs, why }) => ({ atMs, why })),
  }
}

/** Makes a plan what it was at a kept moment (`when`, in words): as a new change, which undo takes back and which overwrites nobody's history. */
export async function restoreCopy(planId: string, atMs: number, when: string): Promise<Result<Plan, PlanProblem>> {
  const made = await keeper()
  const session = await sessionOf(made, planId)
  if (!session.ok) return session
  const copy = (await made.shelf.copies(planId)).find((one) => one.atMs === atMs)
  if (copy === undefined) throw new Error('no copy of that moment')
  const { doc } = documentFrom([copy.bytes])
  const plan = readPlan(doc)
  doc.destroy()
  if (!plan.ok) return plan
  const restored = session.value.edit(plan.value)
  await openPlan(planId)
  if (restored.ok) notify({ key: 'history.restored', args: { when }, undo })
  return restored
}
