import type { StoredRow } from '../../device/database/connection.ts'
import { openShelf } from '../../device/database/open-shelf.ts'
import type { Around, PlanSession } from '../../device/database/plan-session.ts'
import type { Shelf } from '../../device/database/shelf.ts'
import { joinTabs, type TabMessage, type Tabs } from '../../device/database/tabs.ts'
import type { PlanProblem } from '../../core/plan/parse-plan.ts'
import type { Result } from '../../core/basics/result.ts'
import type { OpenPlan, PlanRow } from './app-state.ts'
import { documents } from './documents-later.ts'
import { notify } from './notices.ts'
import { isUnread, newestFirst, planRow, rowsInParts, unreadRow } from './plan-rows.ts'
import { store } from './store.ts'

const DELETED_KEPT_MS = 30 * 86_400_000
const TAB_PAUSE_MS = 300

/** What stands behind the store: the shelf, the other tabs, and the plans at work. */
export interface Keeper {
  readonly shelf: Shelf
  readonly tabs: Tabs
  readonly around: Around
  readonly sessions: Map<string, PlanSession>
}

let starting: Promise<Keeper> | null = null
let started: Keeper | null = null

const heeding = new Set<(session: PlanSession) => void>()

/** Tells of every change of a plan at work, wherever it came from; gives back what ends it. */
export function onSessionChange(heed: (session: PlanSession) => void): () => void {
  heeding.add(heed)
  return () => heeding.delete(heed)
}

const ending = new Set<() => void>()

/** Does something once when everything ends. */
export function onceAtEnd(work: () => void): void {
  ending.add(work)
}

/** Opens the database once; everyone who asks earlier or later gets the same. */
export const keeper = (): Promise<Keeper> => (starting ??= start())

/** What `keeper` gave, for what must answer at once; there is nothing to change before it has. */
export function keeperNow(): Keeper {
  if (started === null) throw new Error('the database has not answered yet')
  return started
}

/** Whether everything at work is on the shelf. */
export const hasNothingUnsaved = (): boolean =>
  [...(started?.sessions.values() ?? [])].every((session) => session.isIdle())

async function start(): Promise<Keeper> {
  const { shelf, storage } = await openShelf(() => {
    store.setState({ storage: 'blocked' })
  })
  const sessions = new Map<string, PlanSession>()
  const tabs = joinTabs((message) => {
    hear(made, message)
  })
  const made: Keeper = { shelf, tabs, sessions, around: { shelf, tabs, onChange: publish, phone } }
  const [stored] = await Promise.all([shelf.rows(), readNotes(shelf)])
  store.setState({ storage })
  const [first, others] = inTwo(stored.filter(({ deletedAtMs }) => deletedAtMs === null))
  const seen = await Promise.all(first.map((row) => planRow(row, shelf)))
  store.setState({ rows: newestFirst([...seen, ...others.map(unreadRow)]) })
  started = made
  store.setState({ phase: 'ready' })
  void readOthers(others)
  // Nobody waits for it, and what it could not take away it finds again at the next start.
  removeLongDeleted(shelf, stored).catch(() => {})
  return made

  async function readOthers(others: readonly StoredRow[]) {
    if (others.length === 0) return
    const read = new Map((await rowsInParts(others, shelf)).map((row) => [row.id, row]))
    if (started !== made) return
    const rows = store.getState().rows.map((row) => (isUnread(row) ? (read.get(row.id) ?? row) : row))
    store.setState({ rows })
  }

  function publish(session: PlanSession) {
    for (const heed of heeding) heed(session)
    const { open } = store.getState()
    if (open?.id === session.id) showOpen(session)
    if (sessions.get(session.id) === session) showRow(session)
    if (open?.id !== session.id && session.isIdle()) forget(made, session)
  }
}

/** Ends everything, for a page that goes away or a test that starts anew. */
export async function stopKeeper(): Promise<void> {
  const running = await starting?.catch(() => null)
  starting = null
  started = null
  clearTimeout(pause)
  if (!running) return
  for (const work of ending) work()
  ending.clear()
  running.tabs.close()
  for (const session of running.sessions.values()) session.end()
  running.sessions.clear()
  await running.shelf.close()
  store.setState(store.getInitialState(), true)
}

export function showOpen(session: PlanSession): void {
  const open: OpenPlan = {
    id: session.id,
    plan: session.plan(),
    saving: session.saving(),
    canUndo: session.canUndo(),
    canRedo: session.canRedo(),
  }
  store.setState({ open })
  const trouble = session.trouble()
  if (trouble === null) return
  store.setState({ open: null })
  notify(trouble.kind === 'newer' ? newerNotice(trouble) : { key: 'keeping.became-unreadable' })
}

const newerNotice = ({ theirVersion, ourVersion }: { theirVersion: number; ourVersion: number }) => ({
  key: 'keeping.newer',
  args: { theirVersion, ourVersion },
})

/** The plan's row as it is now, without reading all the others. */
function showRow(session: PlanSession): void {
  const plan = session.plan()
  const saving = session.saving()
  const { rows } = store.getState()
  const before = rows.find((row) => row.id === session.id)
  const savedAtMs = saving.kind === 'saved' ? saving.atMs : (before?.savedAtMs ?? Date.now())
  if (before !== undefined && before.plan === plan && before.savedAtMs === savedAtMs) return
  const row: PlanRow = { id: session.id, name: plan.name, plan, savedAtMs, trouble: null }
  store.setState({ rows: newestFirst([...rows.filter(({ id }) => id !== session.id), row]) })
}

/** As many as the largest screen shows at first are looked into before anything is shown. */
const FIRST = 12

/** The newest rows, and the others. */
function inTwo(stored: readonly StoredRow[]): readonly [readonly StoredRow[], readonly StoredRow[]] {
  const order = new Map(newestFirst(stored.map(unreadRow)).map(({ id }, index) => [id, index]))
  const isFirst = ({ id }: StoredRow) => (order.get(id) ?? 0) < FIRST
  return [stored.filter(isFirst), stored.filter((row) => !isFirst(row))]
}

/** Reads the list of plans from the shelf again; plans at work stand in it as they are now, saved or not. */
export async function listRows({ shelf, sessions }: Keeper): Promise<void> {
  const stored = await shelf.rows()
  const kept = await Promise.all(
    stored.filter(({ deletedAtMs }) => deletedAtMs === null).map((row) => planRow(row, shelf)),
  )
  const deleted = new Set(stored.filter(({ deletedAtMs }) => deletedAtMs !== null).map(({ id }) => id))
  store.setState({ rows: newestFirst(kept) })
  for (const session of sessions.values()) if (!deleted.has(session.id)) showRow(session)
  const { open } = store.getState()
  if (open === null || !deleted.has(open.id)) return
  store.setState({ open: null })
  notify({ key: 'keeping.deleted-elsewhere', args: { name: open.plan.name } })
}

const phone = (): string => store.getState().phoneName

async function readNotes(shelf: Shelf): Promise<void> {
  const [phoneName, backedUpAtMs] = await Promise.all([shelf.note('name'), shelf.note('backed-up')])
  if (typeof phoneName === 'string') store.setState({ phoneName })
  if (typeof backedUpAtMs === 'number') store.setState({ backedUpAtMs })
}

async function removeLongDeleted(shelf: Shelf, stored: readonly StoredRow[]): Promise<void> {
  const limitMs = Date.now() - DELETED_KEPT_MS
  const gone = (row: StoredRow) => row.deletedAtMs !== null && row.deletedAtMs < limitMs
  const ids = stored.filter(gone).map(({ id }) => id)
  if (ids.length > 0) await shelf.remove(ids)
}

let pause: ReturnType<typeof setTimeout> | undefined

/** After a burst of news from other tabs, the list and the rows of plans that both tabs work on are put right once. */
function hear(made: Keeper, message: TabMessage): void {
  if (message.kind === 'erased') {
    void stopKeeper().then(() => {
      store.setState({ erased: { plans: 0, copies: 0, files: 0 } })
    })
    return
  }
  if (message.kind === 'update') made.sessions.get(message.planId)?.hear(message)
  clearTimeout(pause)
  const settle = async () => {
    for (const session of made.sessions.values()) if (session.isIdle()) await made.shelf.freshenRow(session.row())
    await listRows(made)
  }
  // A shelf that cannot be read now is named by the next save.
  pause = setTimeout(() => void settle().catch(() => {}), TAB_PAUSE_MS)
}

/** A plan at work, or brought to work from the shelf. */
export async function sessionOf(made: Keeper, planId: string): Promise<Result<PlanSession, PlanProblem>> {
  const working = made.sessions.get(planId)
  if (working !== undefined) return { ok: true, value: working }
  const savedAtMs = store.getState().rows.find(({ id }) => id === planId)?.savedAtMs ?? 0
  const { openSession } = await documents()
  const opened = await openSession(planId, savedAtMs, made.around)
  if (!opened.ok) return opened
  // Someone else may have opened it meanwhile: one plan, one session.
  const first = made.sessions.get(planId)
  if (first !== undefined) {
    opened.value.end()
    return { ok: true, value: first }
  }
  made.sessions.set(planId, opened.value)
  return opened
}

/** Takes up a plan that is new on this phone: it stands in the list at once, saved or not. */
export function takeUp({ sessions }: Keeper, session: PlanSession): void {
  sessions.set(session.id, session)
  showRow(session)
}

/** Lets go of a plan that is saved and not on the screen. */
export function forget({ sessions }: Keeper, session: PlanSession): void {
  if (sessions.get(session.id) !== session || !session.isIdle() || store.getState().open?.id === session.id) return
  sessions.delete(session.id)
  session.end()
}
