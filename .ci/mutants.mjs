// `npm run mutants -- costs [how many] [seed]`: puts small faults into a room of the core, one at a time, and counts how many the
// tests notice. Writes the room's line of tests/mutation/scores.md and prints the faults that nothing noticed.
import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import os from 'node:os'
import path from 'node:path'
import { root, stop } from './set-up.mjs'

const [room, sample = '400', seed = '1', ...tests] = process.argv.slice(2)
if (room === undefined || !existsSync(path.join(root, 'src/core', room))) stop('Which folder of src/core?')

const work = mkdtempSync(path.join(os.tmpdir(), 'kilnwright-mutants-'))
const list = path.join(work, 'list.json')
const fates = path.join(work, 'fates.json')
const vitest = path.join(root, 'node_modules/vitest/vitest.mjs')
const started = Date.now()
const ran = spawnSync(
  process.execPath,
  [vitest, 'run', '--reporter', 'dot', '--config', 'tests/mutation/vitest.config.ts', ...tests],
  {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    env: {
      LAWS_TIMES: '0.05',
      ...process.env,
      MUTANTS_ROOM: room,
      MUTANTS_SAMPLE: sample,
      MUTANTS_SEED: seed,
      MUTANTS_LIST: list,
      MUTANTS_FATES: fates,
    },
  },
)
if (!existsSync(fates)) stop('No test ran.')
if (ran.status !== 0)
  console.log('The tests named above did not pass without a fault on so few cases: they noticed nothing here.')

/**
 * @typedef {{ id: number, kind: string, file: string, line: number, before: string, text: string }} Placed
 * @typedef {{ by: string, tooLong: boolean }} Fate
 */
const { all, mutants } = /** @type {{ all: number, mutants: Placed[] }} */ (JSON.parse(readFileSync(list, 'utf8')))
const { met, noticed } = /** @type {{ met: number[], noticed: [number, Fate][] }} */ (
  JSON.parse(readFileSync(fates, 'utf8'))
)
const fateOf = new Map(noticed)
const reached = new Set(met)
if (reached.size === 0) stop('The tests that ran met none of the faults: nothing is known of them.')

const short = (/** @type {string} */ text) => text.replaceAll(/\s+/g, ' ').slice(0, 90)
for (const { id, file, line, kind, before, text } of mutants.toSorted((a, b) => a.id - b.id)) {
  if (fateOf.has(id)) continue
  console.log(
    `${file}:${String(line)} ${kind}${reached.has(id) ? '' : ', never run'}: ${short(before)} → ${short(text)}`,
  )
}

/** 95 % interval of a share by Wilson's score, narrowed because the mutants are a finite number. */
function interval(/** @type {number} */ share, /** @type {number} */ of) {
  const z = 1.96
  const among = all > 1 ? (of * (all - 1)) / Math.max(all - of, 1e-9) : of
  const middle = (share + z ** 2 / (2 * among)) / (1 + z ** 2 / among)
  const half = (z / (1 + z ** 2 / among)) * Math.sqrt((share * (1 - share)) / among + z ** 2 / (4 * among ** 2))
  const percent = (/** @type {number} */ value) => (100 * value).toFixed(0)
  return of === all ? 'all' : `${percent(middle - half)} to ${percent(middle + half)} %`
}

const of = mutants.length
const share = fateOf.size / of
const endless = noticed.filter(([, { tooLong }]) => tooLong).length
const unmet = mutants.filter(({ id }) => !reached.has(id)).length
const cells = [
  room,
  String(all),
  String(of),
  String(fateOf.size),
  String(endless),
  String(unmet),
  `${(100 * share).toFixed(1)} %`,
  interval(share, of),
  new Date().toISOString().slice(0, 10),
]
const line = `| ${cells.join(' | ')} |`
console.log(`${line} ${String(Math.round((Date.now() - started) / 1000))} s`)

const scores = path.join(root, 'tests/mutation/scores.md')
if (tests.length === 0) {
  const lines = readFileSync(scores, 'utf8').split('\n')
  const rows = lines.filter((row) => row.startsWith('| ') && !/^\| (room|---)/.test(row))
  const kept = rows.filter((row) => !row.startsWith(`| ${room} |`))
  const start = lines.findIndex((row) => row.startsWith('| ---')) + 1
  writeFileSync(scores, `${[...lines.slice(0, start), ...[...kept, line].toSorted()].join('\n')}\n`)
}
