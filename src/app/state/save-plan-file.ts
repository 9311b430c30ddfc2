import { download } from '../../device/sharing/deliver.ts'
import { exportPlan } from './file-actions.ts'

/** Puts a copy of a plan among the phone's downloads, whether or not this version can read it. */
export async function savePlanFile(planId: string): Promise<void> {
  download(await exportPlan(planId))
}
