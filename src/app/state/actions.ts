import { good, type Result } from '../../core/basics/result.ts'
import type { FirstAnswers } from '../../core/plan/defaults.ts'
import type { PlanProblem } from '../../core/plan/parse-plan.ts'
import type { Plan } from '../../core/plan/schema.ts'
import { isRecord, withValuesAt } from '../../device/database/json.ts'
import { newId } from '../../device/database/new-id.ts'
import type { PlanSession } from '../../device/database/plan-session.ts'
import { receiptOf, storedReceipt } from '../../device/receipts/receipt-key.ts'
import { askToPersist } from '../../device/offline/storage.ts'
import { documents } from './documents-later.ts'
import {
  forget,
  hasNothingUnsaved,
  keeper,
  keeperNow,
  listRows,
  sessionOf,
  showOpen,
  stopKeeper,
  takeUp,
} from './keeper.ts'
import { showDifferences } from './kept-differences.ts'
import { notify } from './notices.ts'
import { followOffline } from './offline-actions.ts'
import { store } from './store.ts'

/** Opens the phone's database and fills the list; nothing can be written before it has answered. */
export async function startApp(): Promise<void> {
  followOffline(isSafeToReload)
  await keeper().catch((fault: unknown) => {
    store.setState({ phase: 'failed' })
    throw fault
  })
  window.addEventListener('beforeunload', warnOfLoss)
  document.addEventListener('visibilitychange', wakeUp)
  await goOnWithOffice()
}

/** Off until someone joins one: then, and only then, its code is fetched. */
async function goOnWithOffice(): Promise<void> {
  const { shelf } = await keeper()
  if (!isRecord(await shelf.note('office'))) return
  const { resumeOffice } = await import('./office-actions.ts')
  await resumeOffice()
}

/** Lets go of everything: for tests, and for a page that starts over. */
export async function stopApp(): Promise<void> {
  window.removeEventListener('beforeunload', warnOfLoss)
  document.removeEventListener('visibilitychange', wakeUp)
  await stopKeeper()
}

/** True while no work would be lost with the page, on the screen or behind it. */
export const isSafeToReload = (): boolean => {
  const { storage, rows } = store.getState()
  return storage === 'lasting' ? hasNothingUnsaved() : rows.length === 0
}

function warnOfLoss(event: BeforeUnloadEvent): void {
  if (!isSafeToReload()) event.preventDefault()
}

/** A tab that slept may have missed what another saved. */
function wakeUp(): void {
  if (document.visibilityState !== 'visible') return
  const wake = async () => {
    const made = await keeper()
    for (const session of made.sessions.values()) await session.catchUp()
    await listRows(made)
  }
  wake().catch(() => {})
}

/** The plan at work on the screen. */
function openSessionHere(): PlanSession | undefined {
  const { open } = store.getState()
  return open === null ? undefined : keeperNow().sessions.get(open.id)
}

let lastAsked = ''

/** Brings a plan to the screen. One that cannot be read stays where it is, with its problem told. */
export async function openPlan(planId: string): Promise<Result<Plan, PlanProblem>> {
  lastAsked = planId
  const made = await keeper()
  const session = await sessionOf(made, planId)
  if (!session.ok) return session
  if (lastAsked === planId) show(session.value)
  return good(session.value.plan())
}

function show(session: PlanSession): void {
  if (store.getState().open?.id === session.id) return
  closePlan()
  lastAsked = session.id
  showOpen(session)
  // Without them the plan is still whole; the shelf that fails here is named by the next save.
  showDifferences(session.id).catch(() => {})
}

/** Takes the plan off the screen; what is not saved yet goes on being saved. */
export function closePlan(): void {
  lastAsked = ''
  const { open } = store.getState()
  if (open === null) return
  store.setState({ open: null, differences: [] })
  const made = keeperNow()
  const session = made.sessions.get(open.id)
  if (session !== undefined) forget(made, session)
}

/** A new plan from three answers, with as many chambers as the catch needs; it comes to the screen. */
export async function createPlan(first: Omit<FirstAnswers, 'id'>): Promise<string> {
  const [{ newPlan }, { chambersFor }] = await Promise.all([
    import('../../core/plan/defaults.ts'),
    import('../../core/fish/load.ts'),
  ])
  const plan = newPlan({ ...first, id: newId() })
  return addPlan({ ...plan, chambers: { ...plan.chambers, count: chambersFor(plan).count } })
}

/** A whole plan that is not on this phone yet comes to the shelf and to the screen. */
export async function addPlan(plan: Plan): Promise<string> {
  const made = await keeper()
  const { beginSession } = await documents()
  const session = beginSession(plan, made.around)
  takeUp(made, session)
  show(session)
  if (!plan.example) promiseOnce()
  return session.id
}

let hasAsked = false

/** Asks the browser to keep what is here: after the first real work, when there is something to lose. */
function promiseOnce(): void {
  if (hasAsked) return
  hasAsked = true
  void askToPersist()
}

/** Changes the plan on the screen as one step. What breaks a limit is refused, and nothing changes. */
export function editPlan(change: (plan: Plan) => Plan): Result<Plan, PlanProblem> {
  const session = openSessionHere()
  if (session === undefined) throw new Error('no plan is open')
  promiseOnce()
  return session.edit(change(session.plan()))
}

/** Sets one field by its path with dots; undefined takes an entry away. */
export const setField = (path: string, value: unknown): Result<Plan, PlanProblem> => applySet({ [path]: value })

/** The same for what may come late, as a notice's way back does: nothing where another plan has come to the screen. */
export function setOpenField(planId: string, path: string, value: unknown): void {
  if (store.getState().open?.id === planId) setField(path, value)
}

/** Sets several fields as one step, as a finding's remedy asks. */
export const applySet = (set: Readonly<Record<string, unknown>>): Result<Plan, PlanProblem> =>
  editPlan((plan) => withValuesAt(plan, set) as Plan)

export function undo(): void {
  openSessionHere()?.undo()
}

export function redo(): void {
  openSessionHere()?.redo()
}

/** Does something to a plan whether or not it is on the screen; comes back when it is saved or cannot be. */
async function withSession<T>(planId: string, work: (session: PlanSession) => T): Promise<Result<T, PlanProblem>> {
  const made = await keeper()
  const session = await sessionOf(made, planId)
  if (!session.ok) return session
  const done = work(session.value)
  await session.value.settled()
  forget(made, session.value)
  return good(done)
}

export async function renamePlan(planId: string, name: string): Promise<Result<Plan, PlanProblem>> {
  const renamed = await withSession(planId, (session) => session.edit({ ...session.plan(), name: name.trim() }))
  return renamed.ok ? renamed.value : renamed
}

/** A plan of its own with the same answers; it comes to the screen. */
export async function duplicatePlan(planId: string): Promise<Result<string, PlanProblem>> {
  const source = await withSession(planId, (session) => session.plan())
  if (!source.ok) return source
  const id = newId()
  await copyReceipts(planId, id)
  return good(await addPlan({ ...source.value, id, name: freeName(source.value.name), example: false }))
}

/** The copy has pictures of its own; those for which there is no room stay with the first plan alone. */
async function copyReceipts(from: string, to: string): Promise<void> {
  const { shelf } = await keeper()
  for (const { id, bytes, atMs } of await shelf.receipts(from))
    await shelf.putReceipt(storedReceipt(to, receiptOf(from, id), bytes, atMs))
}

/** The name with the first number that no other plan has. */
function freeName(name: string): string {
  const taken = new Set(store.getState().rows.map((row) => row.name))
  const stem = name.replace(/ \d+$/, '').slice(0, 74)
  let number = 2
  while (taken.has(`${stem} ${String(number)}`)) number++
  return `${stem} ${String(number)}`
}

/** Takes a plan off the list. It can be brought back at once from the notice, and its data stay for thirty days. */
export async function deletePlan(planId: string): Promise<void> {
  const made = await keeper()
  const name = store.getState().rows.find((row) => row.id === planId)?.name ?? ''
  const session = made.sessions.get(planId)
  await session?.settled()
  const row = session?.row() ?? (await made.shelf.rows()).find(({ id }) => id === planId)
  if (row === undefined) return
  const outcome = await made.shelf.putRow({ ...row, deletedAtMs: Date.now() })
  if (outcome !== 'saved') {
    notify({ key: 'keeping.not-deleted', args: { name } })
    return
  }
  if (store.getState().open?.id === planId) closePlan()
  if (session !== undefined) forget(made, session)
  await listRows(made)
  made.tabs.tell({ kind: 'rows' })
  notify({ key: 'keeping.deleted', args: { name }, undo: () => void restorePlan(planId) })
}

/** Brings a deleted plan back to the list. */
export async function restorePlan(planId: string): Promise<void> {
  const made = await keeper()
  const row = (await made.shelf.rows()).find(({ id }) => id === planId)
  if (row === undefined || row.deletedAtMs === null) return
  await made.shelf.putRow({ ...row, deletedAtMs: null })
  await listRows(made)
  made.tabs.tell({ kind: 'rows' })
}
