import type { Difference } from '../../device/database/difference.ts'
import { keeper } from './keeper.ts'
import { store } from './store.ts'

const noteOf = (planId: string): string => `differences:${planId}`

/** Differences kept on this phone for a plan; nothing else is ever written under their name. */
async function keptDifferences(planId: string): Promise<readonly Difference[]> {
  const { shelf } = await keeper()
  const note = await shelf.note(noteOf(planId))
  return Array.isArray(note) ? (note as readonly Difference[]) : []
}

/** Keeps these and no others. */
export async function putDifferences(planId: string, differences: readonly Difference[]): Promise<void> {
  const { shelf } = await keeper()
  await shelf.putNote(noteOf(planId), differences)
  if (store.getState().open?.id === planId) store.setState({ differences })
}

/** Adds what a merge found; a new difference about a decision takes the place of the one before. */
export async function keepDifferences(planId: string, found: readonly Difference[]): Promise<void> {
  if (found.length === 0) return
  const paths = new Set(found.map(({ path }) => path))
  await putDifferences(planId, [...(await keptDifferences(planId)).filter(({ path }) => !paths.has(path)), ...found])
}

/** Shows the differences of the plan that has come to the screen. */
export async function showDifferences(planId: string): Promise<void> {
  const differences = await keptDifferences(planId)
  if (store.getState().open?.id === planId) store.setState({ differences })
}
