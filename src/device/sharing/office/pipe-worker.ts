import { officeUrl } from './office-address.ts'

/** What the page asks of this worker, and what it hears from it. */
export type PipeAsk =
  | { readonly kind: 'open'; readonly url: string }
  | { readonly kind: 'send'; readonly bytes: Uint8Array }
  | { readonly kind: 'close' }
export type PipeNews =
  | { readonly kind: 'open' | 'error' }
  | { readonly kind: 'message'; readonly data: ArrayBuffer }
  | { readonly kind: 'close'; readonly code: number; readonly reason: string }

interface WorkerScope {
  onmessage: ((event: { readonly data: PipeAsk }) => void) | null
  postMessage(news: PipeNews, moved?: readonly ArrayBuffer[]): void
}
const scope = globalThis as unknown as WorkerScope
let socket: WebSocket | undefined

function open(typed: string): void {
  const url = officeUrl(typed)
  if (!(url instanceof URL)) {
    scope.postMessage({ kind: 'close', code: 1008, reason: url })
    return
  }
  const opened = new WebSocket(url)
  socket = opened
  opened.binaryType = 'arraybuffer'
  opened.addEventListener('open', () => {
    scope.postMessage({ kind: 'open' })
  })
  opened.addEventListener('error', () => {
    scope.postMessage({ kind: 'error' })
  })
  opened.addEventListener('close', ({ code, reason }) => {
    scope.postMessage({ kind: 'close', code, reason })
  })
  opened.addEventListener('message', ({ data }) => {
    if (data instanceof ArrayBuffer) scope.postMessage({ kind: 'message', data }, [data])
  })
}

scope.onmessage = ({ data }) => {
  if (data.kind === 'open') open(data.url)
  else if (data.kind === 'close') socket?.close()
  else if (socket?.readyState === WebSocket.OPEN) socket.send(data.bytes.slice())
}
