import { trustedWorkerUrl } from '../../offline/trusted-worker-url.ts'
import type { PipeAsk, PipeNews } from './pipe-worker.ts'
// The bundler makes this export; the linter reads the file itself.
// oxlint-disable-next-line import/default
import workerUrl from './pipe-worker.ts?worker&url'

type Listener = (event: object) => void

/** The most that one message of an office may weigh: as much as a plan's file. */
const MOST_BYTES = 5 * 1024 * 1024

/**
 * A socket that runs in a worker of its own, as far as the office's provider uses one. The page's policy lets the page itself talk to nobody but its own server,
 * and stays that way: the worker's one file is all that can open a way out, and only to a secured address.
 */
export class PipeSocket {
  readyState: number = WebSocket.CONNECTING
  /** Asked for by the provider; the worker gives nothing else. */
  binaryType = 'arraybuffer'
  readonly #worker: Worker
  readonly #listeners = new Map<string, Set<Listener>>()

  constructor(url: string) {
    this.#worker = new Worker(trustedWorkerUrl(workerUrl))
    this.#worker.addEventListener('message', ({ data }: MessageEvent<PipeNews>) => {
      this.#hear(data)
    })
    this.#worker.addEventListener('error', () => {
      this.#hear({ kind: 'close', code: 1006, reason: 'worker' })
    })
    this.#ask({ kind: 'open', url })
  }

  addEventListener(name: string, listener: Listener): void {
    const listeners = this.#listeners.get(name) ?? new Set()
    this.#listeners.set(name, listeners.add(listener))
  }

  removeEventListener(name: string, listener: Listener): void {
    this.#listeners.get(name)?.delete(listener)
  }

  send(bytes: Uint8Array): void {
    this.#ask({ kind: 'send', bytes })
  }

  close(): void {
    if (this.readyState >= WebSocket.CLOSING) return
    this.readyState = WebSocket.CLOSING
    this.#ask({ kind: 'close' })
  }

  #ask(ask: PipeAsk): void {
    this.#worker.postMessage(ask)
  }

  #hear(news: PipeNews): void {
    if (news.kind === 'open') this.readyState = WebSocket.OPEN
    if (news.kind === 'message' && news.data.byteLength > MOST_BYTES) {
      this.close()
      return
    }
    if (news.kind === 'close') {
      if (this.readyState === WebSocket.CLOSED) return
      this.readyState = WebSocket.CLOSED
      this.#worker.terminate()
    }
    for (const listener of Array.from(this.#listeners.get(news.kind) ?? [])) {
      try {
        listener(news)
      } catch {
        // A message that makes no sense ends the connection and touches nothing: the provider begins again.
        this.close()
      }
    }
  }
}
