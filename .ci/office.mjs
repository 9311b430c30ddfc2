// `KILNWRIGHT_KEY=… npm run office`: an office's server for plans. It is Hocuspocus (MIT), an existing server for Yjs documents; this file only sets it up:
// a key is required, and documents are kept on disk: in SQLite where its maker's extension for it is installed, else one file a document.
import { createHash, timingSafeEqual } from 'node:crypto'
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { Database } from '@hocuspocus/extension-database'
import { Server } from '@hocuspocus/server'
import { stop } from './set-up.mjs'

const { KILNWRIGHT_KEY: key = '', PORT = '4180', OFFICE_DATA = 'office-data' } = process.env
const LEAST_KEY_CHARS = 12
if (key.length < LEAST_KEY_CHARS) stop(`KILNWRIGHT_KEY must be set, ${String(LEAST_KEY_CHARS)} characters at least.`)
const folder = path.resolve(OFFICE_DATA)
await mkdir(folder, { recursive: true })

const digest = (/** @type {string} */ text) => createHash('sha256').update(text).digest()
const isKey = (/** @type {string} */ text) => timingSafeEqual(digest(text), digest(key))
const fileOf = (/** @type {string} */ name) => path.join(folder, `${digest(name).toString('hex')}.yjs`)

/** One file a document, put in place whole: a machine that loses power keeps the one before. */
const inFiles = () =>
  new Database({
    fetch: ({ documentName }) => readFile(fileOf(documentName)).catch(() => null),
    store: async ({ documentName, state }) => {
      const file = fileOf(documentName)
      await writeFile(`${file}.new`, state, { flush: true })
      await rename(`${file}.new`, file)
    },
  })

/** @typedef {{ SQLite: new (options: { database: string }) => import('@hocuspocus/server').Extension }} SqliteModule */

/** @returns {Promise<import('@hocuspocus/server').Extension | null>} */
async function inSqlite() {
  const name = '@hocuspocus/extension-sqlite'
  try {
    const { SQLite } = /** @type {SqliteModule} */ (await import(name))
    return new SQLite({ database: path.join(folder, 'office.sqlite') })
  } catch {
    return null
  }
}

const sqlite = await inSqlite()
const server = new Server({
  name: 'kilnwright office',
  port: Number(PORT),
  quiet: true,
  debounce: 1000,
  maxDebounce: 5000,
  extensions: [sqlite ?? inFiles()],
  onAuthenticate: async ({ token }) => {
    if (!isKey(token)) throw new Error('not the key')
  },
})
await server.listen()
console.log(`Office on port ${PORT}, plans in ${folder}${sqlite ? ' (SQLite)' : ''}`)
