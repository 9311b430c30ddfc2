import type * as Y from 'yjs'
import { sameJson, valueAt } from './json.ts'
import { documentFrom, planFields, readPlan } from './plan-document.ts'
import { authorOf, type Author } from './sittings.ts'

/** One decision that was answered anew; undefined before or after: it was not there. */
export interface HistoryChange {
  readonly path: string
  readonly before: unknown
  readonly after: unknown
  readonly author: Author | null
}

/** What changed from one kept copy to the next. */
export interface HistoryStep {
  readonly fromMs: number
  readonly toMs: number
  readonly changes: readonly HistoryChange[]
}

interface Moment {
  readonly atMs: number
  readonly bytes: Uint8Array
}

/** What changed and when, newest first, from the copies that were kept and the document as it is. */
export function historyOf(moments: readonly Moment[]): HistoryStep[] {
  const steps: HistoryStep[] = []
  let before: { readonly atMs: number; readonly doc: Y.Doc } | null = null
  for (const { atMs, bytes } of moments) {
    const { doc } = documentFrom([bytes])
    if (!readPlan(doc).ok) continue
    if (before !== null) {
      const changes = changesBetween(before.doc, doc)
      if (changes.length > 0) steps.push({ fromMs: before.atMs, toMs: atMs, changes })
    }
    before = { atMs, doc }
  }
  return steps.reverse()
}

function changesBetween(before: Y.Doc, after: Y.Doc): HistoryChange[] {
  const [was, is] = [readPlan(before), readPlan(after)]
  if (!was.ok || !is.ok) return []
  const fields = planFields(after)
  const paths = new Set([...planFields(before).keys(), ...fields.keys()])
  const changes: HistoryChange[] = []
  for (const path of paths) {
    const [from, to] = [valueAt(was.value, path), valueAt(is.value, path)]
    const item = fields.get(path)
    if (!sameJson(from, to))
      changes.push({ path, before: from, after: to, author: item ? authorOf(after, item.id.client) : null })
  }
  return changes
}
