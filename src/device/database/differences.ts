import * as Y from 'yjs'
import { applyUpdate, stateOf } from './document-bytes.ts'
import { sameJson } from './json.ts'
import type { Difference, Side } from './difference.ts'
import { entryDifferences } from './entry-differences.ts'
import { planEntries, planFields } from './plan-document.ts'
import { authorOf } from './sittings.ts'

export interface Trial {
  /** What the two documents are together; nothing in it is collected, so that the values that lost can still be read. */
  readonly doc: Y.Doc
  readonly differences: readonly Difference[]
}

/**
 * Two documents brought together on trial, with the decisions that were answered on both sides since they last met. A later answer of someone who had seen
 * the former is no difference: every value in a document knows which value it was put in the place of. Null where `theirs` makes no sense.
 */
export function tryTogether(ours: Uint8Array, theirs: Uint8Array): Trial | null {
  const doc = new Y.Doc({ gc: false })
  applyUpdate(doc, ours, 'ours')
  const before = planFields(doc)
  const present = new Set([...planEntries(doc)].filter(([, item]) => !item.deleted).map(([path]) => path))
  const known = Y.decodeStateVector(stateOf(doc))
  try {
    applyUpdate(doc, theirs, 'theirs')
  } catch {
    return null
  }
  const isNew = (item: Y.Item) => item.id.clock >= (known.get(item.id.client) ?? 0)

  const differences: Difference[] = []
  for (const [path, held] of planFields(doc)) {
    const mine = before.get(path)
    const other = mine && (held === mine ? lastNew(held.left, isNew) : held)
    if (mine === undefined || !other || !isNew(other) || standsOn(doc, other, mine)) continue
    const sides = { mine: sideOf(doc, mine), theirs: sideOf(doc, other) }
    if (!sameJson(sides.mine.value, sides.theirs.value))
      differences.push({ path, ...sides, kept: held === mine ? 'mine' : 'theirs' })
  }
  return { doc, differences: [...differences, ...entryDifferences(doc, present, theirs, isNew)] }
}

/** Every value that a field ever had, in a document where nothing was collected. */
export function valuesOf(doc: Y.Doc, path: string): unknown[] {
  const values: unknown[] = []
  for (let item = planFields(doc).get(path) ?? null; item; item = item.left)
    values.push(...(item.content.getContent() as unknown[]))
  return values
}

/** The nearest value to the left that came with the other document. */
function lastNew(from: Y.Item | null, isNew: (item: Y.Item) => boolean): Y.Item | null {
  for (let item = from; item; item = item.left) if (isNew(item)) return item
  return null
}

/** Whether a value was put in the place of another, or in the place of one that was. */
function standsOn(doc: Y.Doc, item: Y.Item, other: Y.Item): boolean {
  for (let at = item; at.origin !== null;) {
    const under = Y.getItem(doc.store, at.origin)
    if (under === other) return true
    if (!(under instanceof Y.Item)) return false
    at = under
  }
  return false
}

function sideOf(doc: Y.Doc, item: Y.Item): Side {
  const value: unknown = item.content.getContent().at(-1)
  return { value: value instanceof Y.AbstractType ? value.toJSON() : value, author: authorOf(doc, item.id.client) }
}
