import { createServer, type IncomingMessage, type RequestListener, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import type { Duplex } from 'node:stream'
import { answer } from '../../.ci/serve.mjs'

/** Listens on a port of this machine; can be killed, and opened again on the same port. */
class Listener {
  #server: Server | undefined
  #port = 0
  readonly #respond: RequestListener
  /** What was asked for, in order. */
  readonly requests: string[] = []

  constructor(respond: RequestListener) {
    this.#respond = respond
  }

  /** Starts, if it is not running, and gives the origin. */
  async open(): Promise<string> {
    if (this.#server !== undefined) return `http://localhost:${String(this.#port)}`
    const server = createServer(this.#respond)
    server.on('connect', (request: IncomingMessage, socket: Duplex) => {
      this.requests.push(request.url ?? '')
      socket.end('HTTP/1.1 403 Forbidden\r\n\r\n')
    })
    await new Promise<void>((resolve, reject) => {
      server.once('error', reject)
      server.listen(this.#port, '127.0.0.1', resolve)
    })
    this.#server = server
    this.#port = (server.address() as AddressInfo).port
    return `http://localhost:${String(this.#port)}`
  }

  /** Stops at once, answering nobody. */
  async close(): Promise<void> {
    const server = this.#server
    if (server === undefined) return
    this.#server = undefined
    server.closeAllConnections()
    await new Promise((resolve) => server.close(resolve))
  }
}

/** The server of `npm start` over a folder that can be swapped for another, at the top or below a path. */
export class AppServer extends Listener {
  dir: string
  /** A path that this server has lost. */
  missing: string | undefined

  constructor(dir: string, below = '') {
    super((request, response) => {
      const url = request.url ?? '/'
      this.requests.push(url)
      const isHere = url !== this.missing && url.startsWith(`${below}/`)
      request.url = isHere ? url.slice(below.length) : '/not-here'
      void answer(this.dir, request, response)
    })
    this.dir = dir
  }
}

/** A proxy for the rest of the world: whatever a page asks of another machine arrives here, and is refused. */
export class RestOfTheWorld extends Listener {
  constructor() {
    super((request, response) => {
      this.requests.push(request.url ?? '')
      response.writeHead(403).end()
    })
  }
}
