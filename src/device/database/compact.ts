import * as Y from 'yjs'
import { applyUpdate, encodeDocument, isUpdate } from './document-bytes.ts'

/**
 * Many changes as one, without what was overwritten long ago. Changes that wait for others that have not come yet are kept waiting inside.
 * Null where a change cannot be read: then nothing may be thrown away.
 */
export function compacted(updates: readonly Uint8Array[]): Uint8Array | null {
  if (!updates.every(isUpdate)) return null
  const doc = new Y.Doc()
  try {
    for (const update of updates) applyUpdate(doc, update, 'stored')
    return encodeDocument(doc)
  } catch {
    return null
  } finally {
    doc.destroy()
  }
}
