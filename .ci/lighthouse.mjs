// `npm run lighthouse`: Lighthouse's own marks for the built app, on a phone as it thinks of one. Needs dist, and a network the first time:
// the tool is fetched at this very version and is no part of the checkout. Leaves with 1 where a mark is below what we promise.
import { spawn } from 'node:child_process'
import { mkdtempSync, readFileSync } from 'node:fs'
import os from 'node:os'
import path from 'node:path'
import { findChromium, howToInstall } from './chromium.mjs'
import { circumstances, FIGURES, put, table } from './figures.mjs'
import { serve } from './serve.mjs'
import { root, stop } from './set-up.mjs'

const TOOL = 'lighthouse@12.8.2'
/** @type {Readonly<Record<string, number>>} */
const LEAST = { performance: 95, accessibility: 100, 'best-practices': 100 }
/** Of so many visits of each page the middle one counts: the machine may be busy with something else. */
const VISITS = 3
const PAGES = ['', '#/new', '#/how']

/**
 * @typedef {{ score: number, auditRefs: { id: string, weight: number }[] }} Category
 * @typedef {{ categories: Record<string, Category>, audits: Record<string, { score: number | null, displayValue?: string }> }} Report
 */

const chrome = findChromium()
if (chrome === undefined) stop(howToInstall)
const address = await serve(path.join(root, 'dist'), 4190, '127.0.0.1')
const folder = mkdtempSync(path.join(os.tmpdir(), 'kilnwright-lighthouse-'))

/**
 * One visit: the marks of 100, and what took any off.
 * @param {string} page
 * @param {number} visit
 * @returns {Promise<{ marks: Record<string, number>, faults: string[] }>}
 */
async function visited(page, visit) {
  const file = path.join(folder, `${page.replaceAll(/\W/g, '') || 'front'}-${visit}.json`)
  const words = [
    '--quiet',
    '--output=json',
    `--output-path=${file}`,
    `--only-categories=${Object.keys(LEAST).join(',')}`,
  ]
  const flags = '--chrome-flags=--headless --no-sandbox --disable-dev-shm-usage'
  const code = await new Promise((/** @type {(code: number | null) => void} */ resolve) => {
    const run = spawn('npx', ['--yes', TOOL, address + page, ...words, flags], {
      cwd: folder,
      env: { ...process.env, CHROME_PATH: chrome },
      stdio: ['ignore', 'ignore', 'inherit'],
      shell: process.platform === 'win32',
    })
    run.on('error', () => resolve(1)).on('close', resolve)
  })
  if (code !== 0) stop(`${TOOL} did not run. It is fetched from the npm registry the first time.`)
  const { categories, audits } = /** @type {Report} */ (JSON.parse(readFileSync(file, 'utf8')))
  const marks = Object.fromEntries(
    Object.entries(categories).map(([name, { score }]) => [name, Math.round(score * 100)]),
  )
  const counted = Object.values(categories).flatMap(({ auditRefs }) => auditRefs.filter(({ weight }) => weight > 0))
  const faults = counted.flatMap(({ id }) => {
    const { score = null, displayValue = '' } = audits[id] ?? {}
    return score === null || score >= 0.9 ? [] : [`${id} ${displayValue}`.trim()]
  })
  return { marks, faults }
}

/** @type {string[]} */
const below = []
/** @type {string[][]} */
const rows = []
for (const page of PAGES) {
  /** @type {Awaited<ReturnType<typeof visited>>[]} */
  const visits = []
  for (let visit = 0; visit < VISITS; visit++) visits.push(await visited(page, visit))
  const marks = Object.entries(LEAST).map(([name, least]) => {
    const all = visits.map((one) => one.marks[name] ?? 0).sort((a, b) => a - b)
    const middle = all[VISITS >> 1] ?? 0
    if (middle < least) below.push(`${name} of ${page || 'the front page'}`)
    return `${middle} (${all.join(', ')})`
  })
  rows.push([page === '' ? 'front page' : `\`${page}\``, ...marks])
  console.log(rows.at(-1)?.join('  '))
  const faults = new Set(visits.flatMap((one) => one.faults))
  if (faults.size > 0) console.log(`  what took marks off: ${[...faults].join('; ')}`)
}
const head = ['page', ...Object.entries(LEAST).map(([name, least]) => `${name}, of ${least} asked`)]
const text = `${TOOL} with its phone and its slow network, the middle one of ${VISITS} visits (all): ${circumstances()}.\n\n${table(head, rows)}`
for (const file of [FIGURES, 'README.md']) put(file, 'npm run lighthouse', text)
console.log(text)
process.exit(below.length > 0 ? 1 : 0)
