// Serves a folder of files the way the app needs: nothing but Node's own library.
import { createReadStream } from 'node:fs'
import { readFile, realpath, stat } from 'node:fs/promises'
import { createServer } from 'node:http'
import path from 'node:path'
import { promisify } from 'node:util'
import { brotliCompress, constants, gzip } from 'node:zlib'

/** @type {Readonly<Record<string, string>>} */
const types = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.ttf': 'font/ttf',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.woff2': 'font/woff2',
}

/** What grows much smaller when it is packed; the rest is packed already. */
const PACKS = /\.(css|html|js|json|svg|ttf|wasm|webmanifest)$/
const packers = {
  br: (/** @type {Buffer} */ bytes) =>
    promisify(brotliCompress)(bytes, { params: { [constants.BROTLI_PARAM_QUALITY]: 9 } }),
  gzip: (/** @type {Buffer} */ bytes) => promisify(gzip)(bytes),
}
/** Packed files by what they are: how, name, age, size. */
const packed = /** @type {Map<string, Promise<Buffer>>} */ (new Map())

/**
 * The bytes of a file, packed as this browser can read it; undefined where they go as they are.
 * @param {{ name: string, sizeBytes: number, changedMs: number }} file
 * @param {string} accepted
 */
async function packedFor({ name, sizeBytes, changedMs }, accepted) {
  const how = /\bbr\b/.test(accepted) ? 'br' : /\bgzip\b/.test(accepted) ? 'gzip' : undefined
  if (how === undefined || sizeBytes < 500 || !PACKS.test(name)) return undefined
  const key = [how, name, changedMs, sizeBytes].join()
  const bytes = packed.get(key) ?? readFile(name).then(packers[how])
  packed.set(key, bytes)
  return { how, body: await bytes }
}

/**
 * Answers one request from a folder. Names under /assets/ carry a hash of their content and never change;
 * everything else, the page and the worker above all, is asked for again each time.
 * @param {string} folder
 * @param {import('node:http').IncomingMessage} request
 * @param {import('node:http').ServerResponse} response
 */
export async function answer(folder, request, response) {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405, { allow: 'GET, HEAD' }).end()
    return
  }
  const file = await fileFor(folder, request.url ?? '/')
  if (file === undefined) {
    response.writeHead(404, { 'content-type': 'text/plain; charset=utf-8' }).end('Not found')
    return
  }
  const small = await packedFor(file, String(request.headers['accept-encoding'] ?? '')).catch(() => undefined)
  response.writeHead(200, {
    'content-type': types[path.extname(file.name)] ?? 'application/octet-stream',
    'content-length': small === undefined ? file.sizeBytes : small.body.length,
    ...(small && { 'content-encoding': small.how }),
    vary: 'accept-encoding',
    'cache-control': file.isHashed ? 'public, max-age=31536000, immutable' : 'no-cache',
    'content-security-policy': "frame-ancestors 'none'",
    'referrer-policy': 'no-referrer',
    'x-content-type-options': 'nosniff',
  })
  if (request.method === 'HEAD') response.end()
  else if (small !== undefined) response.end(small.body)
  else
    createReadStream(file.name)
      .on('error', () => response.destroy())
      .pipe(response)
}

/**
 * The file that an address means, if it lies inside the folder: links and `..` that lead out do not count.
 * @param {string} folder
 * @param {string} address
 */
async function fileFor(folder, address) {
  try {
    const { pathname } = new URL(address, 'http://localhost')
    const asked = decodeURIComponent(pathname.endsWith('/') ? `${pathname}index.html` : pathname)
    const inside = (await realpath(folder)) + path.sep
    const name = await realpath(path.join(folder, asked))
    const found = await stat(name)
    if (!name.startsWith(inside) || !found.isFile()) return undefined
    return {
      name,
      sizeBytes: found.size,
      changedMs: found.mtimeMs,
      isHashed: name.startsWith(`${inside}assets${path.sep}`),
    }
  } catch {
    return undefined
  }
}

/**
 * Serves a folder at the first free port from the one asked for, and says which it is.
 * @param {string} folder
 * @param {number} port
 * @param {string} host
 * @returns {Promise<string>} the address
 */
export function serve(folder, port, host) {
  return new Promise((resolve, reject) => {
    const server = createServer((request, response) => void answer(folder, request, response))
    server.once('error', (/** @type {NodeJS.ErrnoException} */ error) => {
      if (error.code === 'EADDRINUSE' && port < 65_535) resolve(serve(folder, port + 1, host))
      else reject(error)
    })
    server.listen(port, host, () => resolve(`http://${host}:${String(port)}/`))
  })
}
