import { bad, good, type Result } from '../../core/basics/result.ts'
import { crc32 } from '../database/crc32.ts'
import { encodeDocument, isUpdate } from '../database/document-bytes.ts'
import { fromBase64Url, toBase64Url } from './bytes-text.ts'
import { deflated, inflated } from './deflate.ts'
import { dictionary } from './dictionary.ts'
import type { FileProblem } from './plan-file.ts'
import type { Private } from './chosen.ts'
import { forOthers } from './privacy.ts'

/**
 * A plan, or what changed in it, as the fewest bytes: version, kind, checksum, then the plan's id and its document's bytes, deflated with a dictionary.
 * The same bytes go as a link, as a code or as several.
 */
const VERSION = 1
const HEADER_BYTES = 6
const MOST_BYTES = 5 * 1024 * 1024
/** Longest link that messengers and browsers carry without cutting it. */
const MOST_LINK_CHARS = 16_000

export interface HandOver {
  readonly planId: string
  /** False for changes only: they need the plan they belong to. */
  readonly isWhole: boolean
  readonly document: Uint8Array
}

export interface HandOverWish {
  readonly planId: string
  readonly document: Uint8Array
  readonly chosen: Private
  /** What the other phone has; everything where nothing is known of it. */
  readonly since?: Uint8Array
}

export function packHandOver({ planId, document, chosen, since }: HandOverWish): Uint8Array {
  const id = new TextEncoder().encode(planId)
  const copy = forOthers(document, chosen)
  const update = encodeDocument(copy, since)
  copy.destroy()
  const body = new Uint8Array(1 + id.length + update.length)
  body[0] = id.length
  body.set(id, 1)
  body.set(update, 1 + id.length)
  const packed = deflated(body, dictionary())
  const bytes = new Uint8Array(HEADER_BYTES + packed.length)
  const header = new DataView(bytes.buffer)
  header.setUint8(0, VERSION)
  header.setUint8(1, since === undefined ? 0 : 1)
  header.setUint32(2, crc32(packed))
  bytes.set(packed, HEADER_BYTES)
  return bytes
}

const DAMAGED: FileProblem = { kind: 'damaged', field: 'code' }

export function unpackHandOver(bytes: Uint8Array): Result<HandOver, FileProblem> {
  if (bytes.length <= HEADER_BYTES || bytes[0] === 0) return bad({ kind: 'not-ours' })
  const header = new DataView(bytes.buffer, bytes.byteOffset, bytes.length)
  const version = header.getUint8(0)
  const packed = bytes.subarray(HEADER_BYTES)
  if (crc32(packed) !== header.getUint32(2)) return bad(DAMAGED)
  if (version > VERSION) return bad({ kind: 'newer', theirVersion: version, ourVersion: VERSION })
  const body = inflated(packed, MOST_BYTES, dictionary())
  if (body === null || body.length < 2) return bad(DAMAGED)
  const idEnd = 1 + (body[0] ?? 0)
  const planId = new TextDecoder().decode(body.subarray(1, idEnd))
  const document = body.slice(idEnd)
  return isUpdate(document) ? good({ planId, isWhole: header.getUint8(1) === 0, document }) : bad(DAMAGED)
}

const LINK = 'take/'

/** The hand-over as the part of an address after #, which no browser ever sends anywhere; null where it is too long for a link. */
export function toFragment(bytes: Uint8Array): string | null {
  const fragment = `#/${LINK}${toBase64Url(bytes)}`
  return fragment.length > MOST_LINK_CHARS ? null : fragment
}

/** The bytes in such a part of an address; null where it is none. */
export function fromFragment(fragment: string): Uint8Array | null {
  const text = fragment.replace(/^#?\/?/, '')
  if (!text.startsWith(LINK) || text.length > MOST_LINK_CHARS) return null
  return fromBase64Url(text.slice(LINK.length))
}
