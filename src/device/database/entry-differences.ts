import * as Y from 'yjs'
import type { Difference, Side } from './difference.ts'
import { documentFromOutside, planEntries, planFields } from './plan-document.ts'
import { authorOf } from './sittings.ts'

/**
 * Entries that one side took away while the other changed them. The document lets the taking away stand; here the entry is shown as it was on the other side, to
 * be put back. Only a whole document tells what its phone had seen: changes alone give no such difference.
 *
 * `present` are the entries that were here before the two came together in `doc`.
 */
export function entryDifferences(
  doc: Y.Doc,
  present: ReadonlySet<string>,
  theirs: Uint8Array,
  isNew: (item: Y.Item) => boolean,
): Difference[] {
  const seen = Y.decodeStateVector(Y.encodeStateVectorFromUpdateV2(theirs))
  const isUnseen = (item: Y.Item) => item.id.clock >= (seen.get(item.id.client) ?? 0)
  const beginning = planFields(doc).get('format')
  if (beginning === undefined || isUnseen(beginning)) return []

  const gone: Side = { value: undefined, author: null }
  const away = [...planEntries(doc)].filter(([, item]) => item.deleted)
  const takenByThem = away.flatMap(([path, item]): Difference[] => {
    const unseen = present.has(path) ? partsOf(item).filter(isUnseen) : []
    if (unseen.length === 0) return []
    return [{ path, mine: { value: valueOf(item), author: lastAuthor(doc, unseen) }, theirs: gone, kept: 'theirs' }]
  })

  // What was taken away here is collected: only their document still says what they made of it.
  const takenByMe = away.filter(([path]) => !present.has(path))
  const alone = takenByMe.length > 0 ? documentFromOutside(theirs) : null
  if (!alone?.ok) return takenByThem
  const entries = planEntries(alone.value)
  const changedByThem = takenByMe.flatMap(([path]): Difference[] => {
    const item = entries.get(path)
    const came = item === undefined || item.deleted ? [] : partsOf(item).filter(isNew)
    if (item === undefined || came.length === 0) return []
    const author = lastAuthor(alone.value, came)
    return [{ path, mine: gone, theirs: { value: valueOf(item), author }, kept: 'mine' }]
  })
  return [...takenByThem, ...changedByThem]
}

/** What holds an entry's values: its fields, or itself where it is one value. */
function partsOf(item: Y.Item): Y.Item[] {
  const { content } = item
  return content instanceof Y.ContentType ? [...content.type._map.values()] : [item]
}

/** An entry as it was, although it is marked as taken away: on trial nothing is collected. */
function valueOf(item: Y.Item): unknown {
  const { content } = item
  const last = (part: Y.Item): unknown => part.content.getContent().at(-1)
  if (!(content instanceof Y.ContentType)) return last(item)
  return Object.fromEntries([...content.type._map].map(([field, part]) => [field, last(part)]))
}

const lastAuthor = (doc: Y.Doc, parts: readonly Y.Item[]) =>
  parts.map((part) => authorOf(doc, part.id.client)).sort((a, b) => (b?.atMs ?? 0) - (a?.atMs ?? 0))[0] ?? null
