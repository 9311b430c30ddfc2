// `npm run bench`: times the core against its baselines in the same run, and writes the table where figures stand.
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync } from 'node:fs'
import os from 'node:os'
import path from 'node:path'
import { circumstances, FIGURES, put, table } from './figures.mjs'
import { root, stop } from './set-up.mjs'

const report = path.join(mkdtempSync(path.join(os.tmpdir(), 'kilnwright-bench-')), 'bench.json')
const asked = process.argv.slice(2)
const ran = spawnSync(
  process.execPath,
  [
    path.join(root, 'node_modules/vitest/vitest.mjs'),
    'bench',
    '--run',
    '--project',
    'core',
    ...(asked.length > 0 ? asked : ['tests/bench']),
    '--outputJson',
    report,
  ],
  { cwd: root, stdio: 'inherit' },
)
if (ran.status !== 0) stop('The benchmarks did not finish.')

/**
 * @typedef {{ name: string, median: number, min: number, sampleCount: number }} Timing
 * @typedef {{ fullName: string, benchmarks: Timing[] }} Group
 */
const { files } = /** @type {{ files: { groups: Group[] }[] }} */ (JSON.parse(readFileSync(report, 'utf8')))

/** Budgets, ms, by the name of the timing. */
const BUDGETS = new Map([
  ['2 chambers, hollow block', 2],
  ['8 chambers, one brick of 190 × 90 × 90', 15],
  ['450 × 150 block, 2 chambers', 2],
  ['190 × 90 × 90 brick, one-brick English, 8 chambers', 15],
  ['one wall, 12 h', 3],
  ['tasks and schedule', 1],
])

const ms = (/** @type {number} */ value) => (value >= 100 ? value.toFixed(0) : value.toPrecision(3))

const rows = files
  .flatMap(({ groups }) => groups)
  .flatMap(({ fullName, benchmarks }) => {
    const group = fullName.split(' > ').slice(1).join(', ')
    const timed = benchmarks.filter(({ sampleCount }) => sampleCount > 0)
    const own = timed[0]?.median ?? 0
    return timed.map(({ name, median, min, sampleCount }) => {
      const budget = BUDGETS.get(name)
      const kept = budget === undefined ? '' : `${String(budget)}${median <= budget ? '' : ': not met'}`
      return [group, name, ms(median), ms(min), String(sampleCount), kept, (median / own).toFixed(1)]
    })
  })

const budgeted = rows.filter((row) => row[5] !== '')
const when = `Medians in milliseconds, ${circumstances()}. The last column is the median against the first line of its group, so that a
baseline stands beside ours in the same run.`
const head = ['work', 'what', 'median, ms', 'least', 'samples', 'budget, ms', 'against first']
put(FIGURES, 'npm run bench', `${when}\n\n${table(head, rows)}`)
put(
  'README.md',
  'npm run bench',
  `Timed ${circumstances()}.\n\n${table(
    head.slice(0, 6),
    budgeted.map((row) => row.slice(0, 6)),
  )}`,
)
