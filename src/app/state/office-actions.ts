import { isRecord } from '../../device/database/json.ts'
import { officeUrl, type AddressProblem } from '../../device/sharing/office/office-address.ts'
import type { Office } from '../../device/sharing/office/office.ts'
import type { PlanSession } from '../../device/database/plan-session.ts'
import type { OfficeState } from '../../device/sharing/office/office-state.ts'
import { documents } from './documents-later.ts'
import { forget, keeper, onceAtEnd, onSessionChange, sessionOf, takeUp, type Keeper } from './keeper.ts'
import { keepDifferences } from './kept-differences.ts'
import { notify } from './notices.ts'
import { store } from './store.ts'

export type { OfficeState }

/** What was typed in to join an office; kept on this phone and nowhere else. */
export interface OfficeWish {
  readonly address: string
  readonly key: string
  readonly programme: string
  readonly names: boolean
}
interface OfficeNote extends OfficeWish {
  readonly plans: readonly string[]
}

const NOTE = 'office'
const textIn = (note: Record<string, unknown>, key: string): string => (typeof note[key] === 'string' ? note[key] : '')

/** What was typed in last; null where this phone never joined an office. */
export async function officeNote(): Promise<OfficeNote | null> {
  const { shelf } = await keeper()
  const note = await shelf.note(NOTE)
  if (!isRecord(note)) return null
  const plans = Array.isArray(note['plans']) ? note['plans'].filter((id) => typeof id === 'string') : []
  return {
    address: textIn(note, 'address'),
    key: textIn(note, 'key'),
    programme: textIn(note, 'programme'),
    names: note['names'] === true,
    plans,
  }
}

let office: Office | null = null
let stopListening = () => {}

/** Joins an office and stays joined, also after a restart, until `leaveOffice`. */
export async function joinOffice(wish: OfficeWish): Promise<AddressProblem | null> {
  const url = officeUrl(wish.address)
  if (!(url instanceof URL)) return url
  stopOffice()
  const made = await keeper()
  const before = await officeNote()
  const isSame = before?.programme === wish.programme && before.address === wish.address
  await made.shelf.putNote(NOTE, { ...wish, plans: isSame ? before.plans : [] })
  await resumeOffice()
  return null
}

/** Goes on where this phone left off, if it had joined an office. The office's code is fetched from the phone's own store only now. */
export async function resumeOffice(): Promise<void> {
  const note = await officeNote()
  const url = officeUrl(note?.address ?? '')
  if (note === null || !(url instanceof URL) || office !== null) return
  const made = await keeper()
  const code = await import('../../device/sharing/office/office.ts')
  const joined = code.joinOffice({
    url,
    key: note.key,
    programme: note.programme,
    chosen: { names: note.names, receipts: false },
    documentOf: (planId) => documentOf(made, planId),
    take: (planId, document) => take(made, planId, document),
    found: async (planId) => {
      if (await isPutAway(made, planId)) return false
      await remember(planId)
      return true
    },
    onState: (state) => {
      store.setState({ office: state })
    },
  })
  office = joined
  onceAtEnd(stopOffice)
  stopListening = onSessionChange(({ id }: PlanSession) => {
    joined.changed(id)
  })
  for (const planId of note.plans) if (!(await isPutAway(made, planId))) joined.share(planId)
}

/** Puts a plan into the programme of the office that this phone has joined. */
export async function shareWithOffice(planId: string): Promise<void> {
  await remember(planId)
  office?.share(planId)
}

/** Leaves the office; what is there stays there, and the plans stay on this phone. */
export async function leaveOffice(): Promise<void> {
  stopOffice()
  const { shelf } = await keeper()
  await shelf.putNote(NOTE, null)
}

function stopOffice(): void {
  stopListening()
  stopListening = () => {}
  office?.leave()
  office = null
  store.setState({ office: null })
}

async function remember(planId: string): Promise<void> {
  const note = await officeNote()
  if (note === null || note.plans.includes(planId)) return
  const { shelf } = await keeper()
  await shelf.putNote(NOTE, { ...note, plans: [...note.plans, planId] })
}

async function isPutAway({ shelf }: Keeper, planId: string): Promise<boolean> {
  const row = (await shelf.rows()).find(({ id }) => id === planId)
  return row !== undefined && row.deletedAtMs !== null
}

const isOnShelf = async ({ shelf, sessions }: Keeper, planId: string): Promise<boolean> =>
  sessions.has(planId) || (await shelf.rows()).some(({ id }) => id === planId)

async function documentOf(made: Keeper, planId: string): Promise<Uint8Array | null> {
  if (!(await isOnShelf(made, planId)) || (await isPutAway(made, planId))) return null
  const session = await sessionOf(made, planId)
  if (!session.ok) return null
  const bytes = session.value.document()
  forget(made, session.value)
  return bytes
}

async function take(made: Keeper, planId: string, document: Uint8Array): Promise<void> {
  if (await isPutAway(made, planId)) return
  if (await isOnShelf(made, planId)) {
    const session = await sessionOf(made, planId)
    if (!session.ok) return
    const merged = await session.value.merge(document, 'steadily')
    if (merged.ok) await keepDifferences(planId, merged.value.differences)
    await session.value.settled()
    forget(made, session.value)
    return
  }
  const { adoptDocument, documentFromOutside, readPlan } = await documents()
  const doc = documentFromOutside(document)
  if (!doc.ok) return
  const plan = readPlan(doc.value)
  if (!plan.ok || plan.value.id !== planId) return
  takeUp(made, adoptDocument(doc.value, plan.value, made.around))
  notify({ key: 'keeping.taken', args: { name: plan.value.name } })
}
