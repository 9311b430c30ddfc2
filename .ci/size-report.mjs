// `npm run size`: weighs dist against the budgets, and checks that the worker's list and the files agree. `-- --write` writes it where figures stand.
import { readdirSync, readFileSync, statSync } from 'node:fs'
import path from 'node:path'
import { gzipSync } from 'node:zlib'
import { FIGURES, put, table } from './figures.mjs'
import { NOT_KEPT } from './not-kept.mjs'
import { root, stop } from './set-up.mjs'

/** JavaScript before the first screen, gzip -9. */
const FIRST_LOAD_BYTES = 150_000
/** All that the worker keeps, as the server sends it without compression. */
const PRECACHE_BYTES = 1_500_000

const dist = path.join(root, 'dist')
const read = (/** @type {string} */ file) => readFileSync(path.join(dist, file), 'utf8')

/** The scripts that load before the first screen: those of the page, and what they import statically, in turn. */
function firstLoad() {
  const files = new Set(
    [...read('index.html').matchAll(/<script[^>]+src="\.\/([^"]+)"/g)].map((match) => match[1] ?? ''),
  )
  for (const file of files) {
    for (const [, asked = ''] of read(file).matchAll(/(?:\bfrom|\bimport)\s*["'`](\.[^"'`]+\.js)["'`]/g)) {
      files.add(path.posix.join(path.posix.dirname(file), asked))
    }
  }
  return [...files]
}

/** The worker's list of files, as built into it. */
function precached() {
  return [...read('sw.js').matchAll(/url:\s*["'`]\.\/([^"'`]+)["'`]/g)].map((match) => match[1] ?? '')
}

const kB = (/** @type {number} */ bytes) => `${(bytes / 1000).toFixed(1)} kB`.padStart(10)
const sum = (/** @type {readonly number[]} */ sizes) => sizes.reduce((total, size) => total + size, 0)
const gzipBytes = (/** @type {string} */ file) => gzipSync(read(file), { level: 9 }).length

const scripts = firstLoad()
const kept = precached()
const built = readdirSync(dist, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && entry.name !== 'sw.js')
  .map((entry) => path.relative(dist, path.join(entry.parentPath, entry.name)).split(path.sep).join('/'))

const missing = kept.filter((file) => !built.includes(file))
const forgotten = built.filter((file) => !kept.includes(file) && !NOT_KEPT.test(file))
const firstLoadBytes = sum(scripts.map(gzipBytes))
const precacheBytes = sum(
  kept.filter((file) => !missing.includes(file)).map((file) => statSync(path.join(dist, file)).size),
)

console.log('First-load JavaScript, gzip -9')
for (const file of scripts) console.log(`${kB(gzipBytes(file))}  ${file}`)
console.log(`${kB(firstLoadBytes)}  of ${kB(FIRST_LOAD_BYTES).trim()}`)
console.log(`Kept for offline use, uncompressed: ${String(kept.length)} files`)
console.log(`${kB(precacheBytes)}  of ${kB(PRECACHE_BYTES).trim()}`)

if (process.argv.includes('--write')) {
  const text = table(
    ['what', 'budget', 'measured'],
    [
      ['First-load JavaScript, gzip', kB(FIRST_LOAD_BYTES).trim(), kB(firstLoadBytes).trim()],
      [
        `Kept for offline use, five languages, uncompressed: ${String(kept.length)} files`,
        kB(PRECACHE_BYTES).trim(),
        kB(precacheBytes).trim(),
      ],
    ],
  )
  for (const file of [FIGURES, 'README.md']) put(file, 'npm run size', text)
}

const faults = [
  ...(scripts.length === 0 ? ['dist/index.html loads no script'] : []),
  ...(kept.length === 0 ? ['dist/sw.js keeps no file'] : []),
  ...missing.map((file) => `dist/sw.js lists ${file}, which was not built: the worker would never install`),
  ...forgotten.map((file) => `${file} was built, but the worker does not keep it`),
  ...(firstLoadBytes > FIRST_LOAD_BYTES ? ['the first load is over its budget'] : []),
  ...(precacheBytes > PRECACHE_BYTES ? ['the files kept are over their budget'] : []),
]
if (faults.length > 0) stop(faults.join('\n'))
