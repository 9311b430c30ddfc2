import { parsePlan, type PlanProblem } from '../../core/plan/parse-plan.ts'
import type { StoredRow } from '../../device/database/connection.ts'
import type { Shelf } from '../../device/database/shelf.ts'
import type { PlanRow } from './app-state.ts'
import { documents } from './documents-later.ts'

export const newestFirst = (rows: readonly PlanRow[]): PlanRow[] =>
  [...rows].sort((a, b) => b.savedAtMs - a.savedAtMs || (a.id < b.id ? -1 : 1))

const troubleFrom = (problem: PlanProblem | undefined): PlanRow['trouble'] =>
  problem?.kind === 'newer' ? { kind: 'newer', theirVersion: problem.theirVersion } : { kind: 'damaged' }

const textOr = (value: unknown, otherwise: string): string =>
  typeof value === 'string' && value !== '' ? value : otherwise

/** A row as the front page shows it; one that cannot be read never hides the others. */
export async function planRow(stored: StoredRow, shelf: Pick<Shelf, 'updates'>): Promise<PlanRow> {
  const row = {
    id: stored.id,
    name: textOr(stored.name, stored.id),
    savedAtMs: Number.isFinite(stored.savedAtMs) ? stored.savedAtMs : 0,
  }
  const read = parsePlan(stored.plan)
  if (read.ok && read.value.id === stored.id) return { ...row, plan: read.value, trouble: null }
  // The row is only a short form: the document decides.
  const { documentFrom, readPlan } = await documents()
  const kept = readPlan(documentFrom(await shelf.updates(stored.id)).doc)
  if (kept.ok && kept.value.id === stored.id) return { ...row, plan: kept.value, trouble: null }
  const seen = read.ok || read.problems[0]?.kind !== 'newer' ? kept : read
  return { ...row, plan: null, trouble: troubleFrom(seen.ok ? undefined : seen.problems[0]) }
}
