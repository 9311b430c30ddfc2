import * as Y from 'yjs'
import { crc32 } from './crc32.ts'

/** Parts of a document beyond which its bytes are no plan's: a year of daily work makes some thousands. */
const MOST_PARTS = 200_000

/**
 * Yjs's second format is a third of the size of its first, because it counts what repeats. A count costs the writer nothing, so that a few bytes from outside could
 * keep a phone reading for ever: whoever reads here stops after a fixed number of parts.
 */
class FrugalDecoder extends Y.UpdateDecoderV2 {
  #left = MOST_PARTS

  #spend(): void {
    if (this.#left-- === 0) throw new RangeError('too many parts')
  }

  override readInfo(): number {
    this.#spend()
    return super.readInfo()
  }

  override readString(): string {
    this.#spend()
    return super.readString()
  }
}

/** Whether bytes are a document or changes to one; asked before anything is applied, since half an update must never be. */
export function isUpdate(bytes: Uint8Array): boolean {
  try {
    Y.decodeUpdateV2(bytes, FrugalDecoder)
    return true
  } catch {
    return false
  }
}

/** Brings changes into a document. `origin` says where they came from. */
export function applyUpdate(doc: Y.Doc, bytes: Uint8Array, origin: string): void {
  Y.applyUpdateV2(doc, bytes, origin, FrugalDecoder)
}

/** The whole document, or what a phone that has `state` does not have; changes that still wait for their forerunners go with it. */
export const encodeDocument = (doc: Y.Doc, state?: Uint8Array): Uint8Array => Y.encodeStateAsUpdateV2(doc, state)

/** What a document holds, in few bytes: how far it has each author's changes. */
export const stateOf = (doc: Y.Doc): Uint8Array => Y.encodeStateVector(doc)

/** A number that is the same as long as nothing was written or taken away. */
export const markOf = (doc: Y.Doc): number => crc32(Y.encodeSnapshotV2(Y.snapshot(doc)))

/** Several changes as one. */
export const joined = (updates: readonly Uint8Array[]): Uint8Array => Y.mergeUpdatesV2([...updates])

/** Calls back with the bytes of every change, whoever made it. Gives back what ends it. */
export function onUpdate(doc: Y.Doc, hear: (bytes: Uint8Array, origin: unknown) => void): () => void {
  doc.on('updateV2', hear)
  return () => {
    doc.off('updateV2', hear)
  }
}

/** Whether changes wait in the document for others that have not come. */
export const isWaiting = (doc: Y.Doc): boolean => doc.store.pendingStructs !== null || doc.store.pendingDs !== null
