import * as Y from 'yjs'
import { applyUpdate, stateOf } from './document-bytes.ts'
import { sameJson } from './json.ts'
import { planFields } from './plan-document.ts'
import { authorOf, type Author } from './sittings.ts'

/** One answer to a decision: undefined where the answer was to take it away. */
export interface Side {
  readonly value: unknown
  readonly author: Author | null
}

/** A decision that two phones answered without knowing of each other. Both answers are shown; `kept` stands in the plan until someone chooses. */
export interface Difference {
  readonly path: string
  readonly mine: Side
  readonly theirs: Side
  readonly kept: 'mine' | 'theirs'
}

/**
 * Decisions that were answered on both sides since the two documents last met. A later answer of someone who had seen the former is no difference:
 * every value in the document knows which value it was put in the place of.
 */
export function differencesBetween(ours: Uint8Array, theirs: Uint8Array): Difference[] {
  // Nothing is collected, so that the value that loses can still be read.
  const doc = new Y.Doc({ gc: false })
  applyUpdate(doc, ours, 'ours')
  const before = planFields(doc)
  const known = Y.decodeStateVector(stateOf(doc))
  applyUpdate(doc, theirs, 'theirs')
  const isNew = (item: Y.Item) => item.id.clock >= (known.get(item.id.client) ?? 0)

  const found: Difference[] = []
  for (const [path, held] of planFields(doc)) {
    const mine = before.get(path)
    const other = mine && (held === mine ? lastNew(held.left, isNew) : held)
    if (mine === undefined || !other || !isNew(other) || standsOn(doc, other, mine)) continue
    const sides = { mine: sideOf(doc, mine), theirs: sideOf(doc, other) }
    if (!sameJson(sides.mine.value, sides.theirs.value))
      found.push({ path, ...sides, kept: held === mine ? 'mine' : 'theirs' })
  }
  doc.destroy()
  return found
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
