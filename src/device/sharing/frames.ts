import { crc32 } from '../database/crc32.ts'
import { fromBase45, toBase45 } from './base45.ts'

/**
 * A hand-over too big for one code on the screen goes as many, shown in turn. The first show its blocks one by one; all later ones show blocks added together
 * (exclusive or), chosen by a fixed rule from the frame's number. Any frames will do, in any order: about as many as there are blocks, whichever were missed.
 */
const FRAME_VERSION = 1
const HEADER_BYTES = 10
/** One code of up to this many bytes is still read at arm's length (QR version 25, level M: 1 451 characters). */
const MOST_ALONE = 957
const BLOCK_BYTES = 380
/** Longest hand-over by camera: at five frames a second a quarter of a minute. */
export const MOST_SHOWN_BYTES = 28_000
const FRAMES = 0x10000

const blocksIn = (length: number): number => (length <= MOST_ALONE ? 1 : Math.ceil(length / BLOCK_BYTES))

/**
 * A number whose bits depend on all bits of another (the finalizer of MurmurHash3, A. Appleby, public domain). It multiplies: a generator of shifts and exclusive
 * ors alone would make frames that depend on one another.
 */
function mixed(value: number): number {
  let bits = value | 0
  bits = Math.imul(bits ^ (bits >>> 16), 0x85ebca6b)
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35)
  return (bits ^ (bits >>> 16)) >>> 0
}

/** Which blocks a frame holds, as bits: one of the first frames holds one, each later one about half of them. */
function blocksOf(frame: number, count: number, id: number): bigint {
  if (frame < count) return 1n << BigInt(frame)
  let bits = 0n
  for (let made = 0; made < count; made += 32) bits = (bits << 32n) | BigInt(mixed(id ^ mixed(frame * 8 + made / 32)))
  return bits & ((1n << BigInt(count)) - 1n) || 1n << BigInt(frame % count)
}

function add(to: Uint8Array, other: Uint8Array): void {
  for (let index = 0; index < to.length; index++) to[index] = (to[index] ?? 0) ^ (other[index] ?? 0)
}

export interface Frames {
  /** Frames after which everything has been shown once; 1: a single code that need not change. */
  readonly count: number
  /** The text of a frame; any number from 0 on, for as long as it takes. */
  readonly text: (frame: number) => string
}

/** A hand-over as texts of codes; null where it is too big for a camera. */
export function framesOf(bytes: Uint8Array): Frames | null {
  if (bytes.length === 0 || bytes.length > MOST_SHOWN_BYTES) return null
  const count = blocksIn(bytes.length)
  const blockBytes = count === 1 ? bytes.length : BLOCK_BYTES
  const id = crc32(bytes)
  const text = (number: number): string => {
    const frame = number % FRAMES
    const out = new Uint8Array(HEADER_BYTES + blockBytes)
    const header = new DataView(out.buffer)
    header.setUint8(0, FRAME_VERSION)
    header.setUint16(1, bytes.length)
    header.setUint32(3, id)
    header.setUint16(7, frame)
    const block = out.subarray(HEADER_BYTES)
    const bits = blocksOf(frame, count, id)
    for (let index = 0; index < count; index++)
      if ((bits >> BigInt(index)) & 1n) add(block, bytes.subarray(index * blockBytes, (index + 1) * blockBytes))
    header.setUint8(9, crc32(block) & 255)
    return toBase45(out)
  }
  return { count, text }
}

export interface Collected {
  readonly have: number
  readonly need: number
  /** The hand-over, once all of it is there. */
  readonly bytes: Uint8Array | null
}

export interface Collector {
  /** Takes what a camera read; null where it is no frame of ours. A frame of another hand-over starts anew. */
  readonly take: (text: string) => Collected | null
}

interface Row {
  bits: bigint
  readonly block: Uint8Array
}

/** Gathers frames until the hand-over is whole (Gaussian elimination over two elements, row by row as they come). */
export function collectFrames(): Collector {
  let id = -1
  let length = 0
  let rows = new Map<number, Row>()

  const whole = (count: number): Uint8Array | null => {
    if (rows.size < count) return null
    const bytes = new Uint8Array(count * (rows.get(0)?.block.length ?? 0))
    for (let index = count - 1; index >= 0; index--) {
      const row = rows.get(index)
      if (row === undefined) return null
      for (let lower = 0; lower < index; lower++) {
        const other = rows.get(lower)
        if (other !== undefined && (other.bits >> BigInt(index)) & 1n) {
          other.bits ^= row.bits
          add(other.block, row.block)
        }
      }
      bytes.set(row.block, index * row.block.length)
    }
    const result = bytes.slice(0, length)
    return crc32(result) === id ? result : null
  }

  return {
    take: (text) => {
      const frame = readFrame(text)
      if (frame === null) return null
      if (frame.id !== id || frame.length !== length) {
        id = frame.id
        length = frame.length
        rows = new Map()
      }
      const { count, row } = frame
      // Lowest block first: each row is cleared of the blocks that have a row of their own.
      for (let index = 0; index < count && row.bits !== 0n; index++) {
        if (((row.bits >> BigInt(index)) & 1n) === 0n) continue
        const known = rows.get(index)
        if (known === undefined) {
          rows.set(index, row)
          break
        }
        row.bits ^= known.bits
        add(row.block, known.block)
      }
      const bytes = whole(count)
      const have = rows.size
      // Every block there and still not the whole: some code was misread. Better once more than wrong.
      if (have === count && bytes === null) rows = new Map()
      return { have, need: count, bytes }
    },
  }
}

function readFrame(text: string): { id: number; length: number; count: number; row: Row } | null {
  const bytes = fromBase45(text)
  if (bytes === null || bytes.length <= HEADER_BYTES || bytes[0] !== FRAME_VERSION) return null
  const header = new DataView(bytes.buffer, bytes.byteOffset)
  const length = header.getUint16(1)
  const id = header.getUint32(3)
  const count = blocksIn(length)
  const block = bytes.slice(HEADER_BYTES)
  const isWhole = block.length === (count === 1 ? length : BLOCK_BYTES) && (crc32(block) & 255) === header.getUint8(9)
  if (!isWhole || length > MOST_SHOWN_BYTES) return null
  return { id, length, count, row: { bits: blocksOf(header.getUint16(7), count, id), block } }
}
