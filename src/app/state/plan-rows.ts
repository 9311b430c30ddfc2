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

/** A row that nobody has looked into yet. */
export const unreadRow = ({ id, name, savedAtMs }: StoredRow): PlanRow => ({
  id,
  name: textOr(name, id),
  savedAtMs: Number.isFinite(savedAtMs) ? savedAtMs : 0,
  plan: null,
  trouble: null,
})

export const isUnread = ({ plan, trouble }: PlanRow): boolean => plan === null && trouble === null

/** A row as the front page shows it; one that cannot be read never hides the others. */
export async function planRow(stored: StoredRow, shelf: Pick<Shelf, 'updates'>): Promise<PlanRow> {
  const row = unreadRow(stored)
  const read = parsePlan(stored.plan)
  if (read.ok && read.value.id === stored.id) return { ...row, plan: read.value }
  // The row is only a short form: the document decides.
  const { documentFrom, readPlan } = await documents()
  const kept = readPlan(documentFrom(await shelf.updates(stored.id)).doc)
  if (kept.ok && kept.value.id === stored.id) return { ...row, name: kept.value.name, plan: kept.value }
  const seen = read.ok || read.problems[0]?.kind !== 'newer' ? kept : read
  return { ...row, trouble: troubleFrom(seen.ok ? undefined : seen.problems[0]) }
}

const PART = 40

/** The rest of a long list, looked into in parts between which the phone answers taps; all of them at the end, since a list that grows by jerks is hard to hit. */
export async function rowsInParts(stored: readonly StoredRow[], shelf: Pick<Shelf, 'updates'>): Promise<PlanRow[]> {
  const rows: PlanRow[] = []
  for (let from = 0; from < stored.length; from += PART) {
    await new Promise((resolve) => {
      setTimeout(resolve)
    })
    const part = stored
      .slice(from, from + PART)
      .map((one) => planRow(one, shelf).catch(() => ({ ...unreadRow(one), trouble: troubleFrom(undefined) })))
    rows.push(...(await Promise.all(part)))
  }
  return rows
}
