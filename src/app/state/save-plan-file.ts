import { canShareFiles, download, planFileOf, share } from '../../device/sharing/deliver.ts'
import type { Private } from '../../device/sharing/chosen.ts'
import { documents } from './documents-later.ts'
import { exportFiles, type PlanFile } from './file-actions.ts'
import { keeper } from './keeper.ts'
import { store } from './store.ts'

export { canShareFiles }

/** Puts a copy of a plan among the phone's downloads, whether or not this version can read it. */
export async function savePlanFile(planId: string, chosen?: Private): Promise<void> {
  for (const file of await exportFiles(planId, chosen)) download(planFileOf(file))
  await noteBackup()
}

/** Hands a plan as a file to another app of the phone. */
export async function sharePlan(planId: string, chosen: Private): Promise<'shared' | 'cancelled' | 'failed'> {
  const outcome = await share((await exportFiles(planId, chosen)).map(planFileOf))
  if (outcome === 'shared') await noteBackup()
  return outcome
}

/** Hands changes on as a file, among the downloads where this phone can do no better; they are no back-up of the plan. */
export async function handOnFile(file: PlanFile): Promise<'shared' | 'saved' | 'cancelled' | 'failed'> {
  if (canShareFiles()) return share([planFileOf(file)])
  download(planFileOf(file))
  return 'saved'
}

/** Puts a copy of every plan on this phone among its downloads, as one file; only where they are very many as more. Gives the number of plans. */
export async function savePlansFile(stem: string): Promise<number> {
  const { rows } = store.getState()
  const files = []
  for (const { id } of rows) files.push(...(await exportFiles(id)))
  const { writeBackups } = await documents()
  for (const file of writeBackups(files, stem)) download(planFileOf(file))
  await noteBackup()
  return rows.length
}

async function noteBackup(): Promise<void> {
  const { shelf } = await keeper()
  const backedUpAtMs = Date.now()
  await shelf.putNote('backed-up', backedUpAtMs)
  store.setState({ backedUpAtMs })
}
