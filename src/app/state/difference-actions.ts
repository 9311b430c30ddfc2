import { setField } from './actions.ts'
import { putDifferences } from './kept-differences.ts'
import { store } from './store.ts'

/** Takes one of the two answers to a decision: as a new change, which undo takes back. */
export async function chooseAnswer(path: string, side: 'mine' | 'theirs'): Promise<void> {
  const { open, differences } = store.getState()
  const difference = differences.find((one) => one.path === path)
  if (open === null || difference === undefined || !setField(path, difference[side].value).ok) return
  await putDifferences(
    open.id,
    differences.filter((one) => one !== difference),
  )
}
