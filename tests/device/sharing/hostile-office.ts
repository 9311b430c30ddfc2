import { EventEmitter } from 'node:events'
import type { IncomingMessage } from 'node:http'
import { Hocuspocus } from '@hocuspocus/server'
import { vi } from 'vitest'
import type { Plan } from '../../../src/core/plan/schema.ts'
import { EVERYTHING } from '../../../src/device/sharing/chosen.ts'
import { joinOffice, type Office } from '../../../src/device/sharing/office/office.ts'
import type { PipeAsk, PipeNews } from '../../../src/device/sharing/office/pipe-worker.ts'

/** Longer than the phone waits before it takes in what came. */
const QUIET_MS = 1000

/** What the phone's socket does, carried by hand in place of the network: the phone's code is its own, from the socket inwards. */
type Wire = (ask: PipeAsk, tell: (news: PipeNews) => void) => void
let wire: Wire = () => {}

class WireWorker extends EventTarget {
  #isOver = false
  postMessage(ask: PipeAsk): void {
    wire(ask, (news) => {
      if (!this.#isOver) this.dispatchEvent(Object.assign(new Event('message'), { data: news }))
    })
  }
  terminate(): void {
    this.#isOver = true
  }
}

/** A socket as the server knows them, without a network. */
class ServerSocket extends EventEmitter {
  binaryType = 'nodebuffer'
  readyState = 1
  readonly #tell: (bytes: Uint8Array) => void
  constructor(tell: (bytes: Uint8Array) => void) {
    super()
    this.#tell = tell
  }
  send(bytes: Uint8Array, done?: () => void): void {
    this.#tell(Uint8Array.from(bytes))
    done?.()
  }
  ping(): void {
    this.emit('pong')
  }
  close(code = 1000, reason = ''): void {
    this.readyState = 3
    this.emit('close', code, reason)
  }
}

export interface OfficeMessages {
  /** What the server sent to a phone that joined and was given a plan, in order. */
  readonly messages: readonly Uint8Array[]
  /** A phone joins and hears these; what it would take in goes to `take`. */
  readonly play: (messages: readonly Uint8Array[], take: (document: Uint8Array) => Promise<void>) => Promise<void>
  /** How often something was taken in. */
  readonly taken: () => number
  readonly end: () => void
}

const programme = 'landing sites'
const copied = (bytes: Uint8Array): ArrayBuffer => Uint8Array.from(bytes).buffer

/** The real server's messages to a phone, and a phone to play them to, changed or not. */
export async function fromOffice(plan: Plan, document: Uint8Array): Promise<OfficeMessages> {
  vi.stubGlobal('Worker', WireWorker)
  vi.stubGlobal('WebSocket', { CONNECTING: 0, OPEN: 1, CLOSING: 2, CLOSED: 3 })
  vi.stubGlobal('window', { trustedTypes: { createPolicy: () => ({ createScriptURL: (url: string) => url }) } })
  let taken = 0
  const join = (take: (document: Uint8Array) => Promise<void>, hasPlan: boolean): Office =>
    joinOffice({
      url: new URL('wss://office.invalid'),
      key: 'a key for the test, invented',
      programme,
      chosen: EVERYTHING,
      documentOf: async () => (hasPlan ? document : null),
      take: async (_planId, bytes) => {
        taken++
        await take(bytes)
      },
      found: async () => true,
      onState: () => {},
    })

  const server = new Hocuspocus({ quiet: true })
  const sent: Uint8Array[] = []
  const connected = (heard: (bytes: Uint8Array) => void) => {
    let socket: ServerSocket | undefined
    const toServer: Wire = (ask, tell) => {
      if (ask.kind === 'open') {
        socket = new ServerSocket((bytes) => {
          heard(bytes)
          tell({ kind: 'message', data: copied(bytes) })
        })
        const request = { url: '/', headers: {} } as IncomingMessage
        server.handleConnection(socket as unknown as Parameters<Hocuspocus['handleConnection']>[0], request)
        setTimeout(() => {
          tell({ kind: 'open' })
        })
      } else if (ask.kind === 'send') socket?.emit('message', Buffer.from(ask.bytes))
      else socket?.close()
    }
    return toServer
  }
  const quiet = () => new Promise((resolve) => setTimeout(resolve, QUIET_MS))
  wire = connected(() => {})
  const first = join(async () => {}, true)
  first.share(plan.id)
  await quiet()
  wire = connected((bytes) => sent.push(bytes))
  const second = join(async () => {}, false)
  await quiet()
  await quiet()
  first.leave()
  second.leave()
  taken = 0

  // Yjs remarks on every message that it throws away.
  const remarks = vi.spyOn(console, 'error').mockImplementation(() => {})
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'setInterval', 'clearInterval'] })
  return {
    messages: sent,
    play: async (messages, take) => {
      let hear: (news: PipeNews) => void = () => {}
      wire = (ask, tell) => {
        if (ask.kind === 'open') hear = tell
        if (ask.kind === 'close') tell({ kind: 'close', code: 1000, reason: '' })
      }
      let fault: unknown
      const office = join(async (bytes) => {
        await take(bytes).catch((error: unknown) => {
          fault = error
        })
      }, false)
      await vi.advanceTimersByTimeAsync(1)
      hear({ kind: 'open' })
      for (const message of messages) {
        hear({ kind: 'message', data: copied(message) })
        await vi.advanceTimersByTimeAsync(1)
      }
      await vi.advanceTimersByTimeAsync(QUIET_MS)
      office.leave()
      if (fault !== undefined) throw fault
    },
    taken: () => taken,
    end: () => {
      vi.useRealTimers()
      remarks.mockRestore()
      vi.unstubAllGlobals()
    },
  }
}
