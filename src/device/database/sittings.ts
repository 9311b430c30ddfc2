import type * as Y from 'yjs'

/** Who changed something and when, as far as the document knows: the name that a phone was given, and the hour its owner sat down to it. */
export interface Author {
  readonly phone: string
  readonly atMs: number
}

const MINUTE_MS = 60_000
const SITTING_MS = 60 * MINUTE_MS
const sittingsOf = (doc: Y.Doc): Y.Map<unknown> => doc.getMap('sittings')

/**
 * Every change in a document carries the number of its author, a number of this tab only. This notes once an hour whose number it is, which costs
 * a few bytes a sitting instead of a few with every change.
 */
export function startSittings(doc: Y.Doc, phone: () => string): { readonly sitDown: () => void } {
  let sinceMs: number | null = null
  return {
    sitDown: () => {
      const nowMs = Date.now()
      if (sinceMs !== null && Math.abs(nowMs - sinceMs) < SITTING_MS) return
      if (sinceMs !== null) doc.clientID = crypto.getRandomValues(new Uint32Array(1))[0] ?? doc.clientID
      sinceMs = nowMs
      sittingsOf(doc).set(String(doc.clientID), [phone(), Math.floor(nowMs / MINUTE_MS)])
    },
  }
}

/** Whose number it is; null for what a document began with, and for changes without a note. */
export function authorOf(doc: Y.Doc, client: number): Author | null {
  const note = sittingsOf(doc).get(String(client))
  if (!Array.isArray(note)) return null
  const [phone, minutes] = note as unknown[]
  return typeof phone === 'string' && typeof minutes === 'number' && Number.isFinite(minutes)
    ? { phone: phone.slice(0, 80), atMs: minutes * MINUTE_MS }
    : null
}
