import * as Y from 'yjs'
import { applyUpdate } from '../database/document-bytes.ts'
import type { Private } from './chosen.ts'

/** Fields that say something about a person: collection, field, and what stands in their place. */
const FIELDS = [
  { choice: 'names', record: 'record:members', field: 'name', blank: '' },
  { choice: 'receipts', record: 'record:spending', field: 'receipt', blank: null },
] as const

/**
 * A copy of a document to hand on, with what was not chosen blanked inside, former values too. The other phone can merge it and hand its changes back;
 * here the real values stay, because a blank is no change.
 */
export function forOthers(document: Uint8Array, chosen: Private): Y.Doc {
  const doc = new Y.Doc()
  applyUpdate(doc, document, 'stored')
  for (const { choice, record, field, blank } of FIELDS) {
    if (chosen[choice]) continue
    for (const entry of doc.getMap(record).values()) {
      if (!(entry instanceof Y.Map)) continue
      // What was overwritten hangs to the left of what holds; collected values hold nothing any more.
      for (let item: Y.Item | null | undefined = entry._map.get(field); item; item = item.left)
        if (item.content instanceof Y.ContentAny) item.content.arr = item.content.arr.map(() => blank)
    }
  }
  return doc
}
