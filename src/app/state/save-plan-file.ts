import { canShareFiles, download, planFileOf, share } from '../../device/sharing/deliver.ts'
import type { Private } from '../../device/sharing/chosen.ts'
import { exportPlan } from './file-actions.ts'
import { keeper } from './keeper.ts'
import { store } from './store.ts'

export { canShareFiles }

/** Puts a copy of a plan among the phone's downloads, whether or not this version can read it. */
export async function savePlanFile(planId: string): Promise<void> {
  download(planFileOf(await exportPlan(planId)))
  await noteBackup()
}

/** Hands a plan as a file to another app of the phone. */
export async function sharePlan(planId: string, chosen: Private): Promise<'shared' | 'cancelled' | 'failed'> {
  const outcome = await share(planFileOf(await exportPlan(planId, chosen)))
  if (outcome === 'shared') await noteBackup()
  return outcome
}

async function noteBackup(): Promise<void> {
  const { shelf } = await keeper()
  const backedUpAtMs = Date.now()
  await shelf.putNote('backed-up', backedUpAtMs)
  store.setState({ backedUpAtMs })
}
