// `npm run paced`: the built app on a phone made slow, in Chromium. Needs dist. Measures and asserts nothing; writes its part of figures.md.
import { spawnSync } from 'node:child_process'
import { mkdtempSync } from 'node:fs'
import os from 'node:os'
import path from 'node:path'
import { circumstances, FIGURES, median, put, table } from '../../.ci/figures.mjs'
import { root, stop } from '../../.ci/set-up.mjs'
import { countedServer, kept, openExample, SLOW_NETWORK, slowPage, startBrowser, untilUsableMs } from './phone.mjs'

const STARTS = 7
/** An hour at the kiln: a tap every four or five seconds. */
const INTERACTIONS = Number(process.env['INTERACTIONS'] ?? 800)

const dist = path.join(root, 'dist')
const browser = await startBrowser()
const phone = () => browser.newContext({ viewport: { width: 360, height: 740 }, locale: 'en-GB', hasTouch: true })
const kB = (/** @type {number} */ bytes) => `${(bytes / 1000).toFixed(0)} kB`
const ms = (/** @type {number} */ value) => `${value.toFixed(0)} ms`
const listed = (/** @type {readonly number[]} */ values) => values.map((value) => value.toFixed(0)).join(', ')

/** First visits over a slow network with the processor 4 times slower: until usable, and what crossed the wire by then and in all. */
async function firstVisit() {
  /** @type {number[]} */
  const times = []
  const wires = []
  for (let visit = 0; visit < 3; visit++) {
    const wire = await countedServer(dist)
    const context = await phone()
    const { page, devtools } = await slowPage(context, 4)
    await devtools.send('Network.enable')
    await devtools.send('Network.emulateNetworkConditions', SLOW_NETWORK)
    await page.goto(wire.url, { waitUntil: 'commit' })
    times.push(await untilUsableMs(page))
    const shown = await page.evaluate(() =>
      ['navigation', 'resource']
        .flatMap((type) => performance.getEntriesByType(type))
        .reduce((sum, one) => sum + /** @type {PerformanceResourceTiming} */ (one).transferSize, 0),
    )
    await kept(page)
    wires.push({ shownBytes: shown, bytes: wire.bytes, requests: wire.requests })
    await context.close()
    wire.close()
  }
  return { times, wire: wires[0] ?? { shownBytes: 0, bytes: 0, requests: 0 } }
}

/** What an update with one changed file costs: the same source built again with another version in its start file. */
async function update() {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'kilnwright-update-'))
  const build = (/** @type {string} */ id) => {
    const outDir = path.join(folder, id)
    const ran = spawnSync(process.execPath, ['node_modules/vite/bin/vite.js', 'build', '--outDir', outDir], {
      cwd: root,
      env: { ...process.env, NODE_ENV: 'production', BUILD_ID: id },
    })
    if (ran.status !== 0) stop('The build failed.')
    return outDir
  }
  const [before, after] = [build('1'), build('2')]
  const wire = await countedServer(before)
  const context = await phone()
  const page = await context.newPage()
  await page.goto(wire.url)
  await kept(page)
  wire.folder = after
  const [bytes, requests] = [wire.bytes, wire.requests]
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready
    await registration.update()
  })
  await page.waitForFunction(async () => (await navigator.serviceWorker.ready).waiting?.state === 'installed')
  await context.close()
  wire.close()
  return { bytes: wire.bytes - bytes, requests: wire.requests - requests }
}

/** Starts with no network and no server, 4 times slower. */
async function offlineStarts() {
  const wire = await countedServer(dist)
  const context = await phone()
  const first = await context.newPage()
  await first.goto(wire.url)
  await kept(first)
  await first.close()
  wire.close()
  /** @type {number[]} */
  const times = []
  for (let start = 0; start < STARTS; start++) {
    const { page } = await slowPage(context, 4)
    await page.goto(wire.url, { waitUntil: 'commit' })
    times.push(await untilUsableMs(page))
    await page.close()
  }
  await context.close()
  return times
}

/** What each tap of a round through the places takes until it is painted, 6 times slower; and tasks that held the page up meanwhile. */
async function taps() {
  const wire = await countedServer(dist)
  const context = await phone()
  const { page } = await slowPage(context, 6)
  await page.goto(wire.url)
  await kept(page)
  await openExample(page, /Two chambers/)
  await page.waitForTimeout(2000)
  await page.evaluate(() => {
    const seen = { taps: /** @type {number[]} */ ([]), tasks: /** @type {number[]} */ ([]) }
    Object.assign(window, { seen })
    const events = /** @type {PerformanceObserverInit} */ ({ type: 'event', durationThreshold: 16 })
    new PerformanceObserver((list) => {
      for (const one of list.getEntries()) if (one.name === 'click') seen.taps.push(one.duration)
    }).observe(events)
    new PerformanceObserver((list) => {
      for (const one of list.getEntries()) seen.tasks.push(one.duration)
    }).observe({ type: 'longtask' })
  })
  const take = () =>
    page.evaluate(() => {
      const { seen } = /** @type {{ seen: { taps: number[], tasks: number[] } }} */ (/** @type {unknown} */ (window))
      const now = { taps: [...seen.taps], tasks: [...seen.tasks] }
      seen.taps.length = 0
      seen.tasks.length = 0
      return now
    })
  const dialog = page.getByRole('dialog')
  /** @type {(() => Promise<unknown>)[]} */
  const round = [
    ...['Buy', 'Build', 'Run', 'Plan'].map(
      (name) => () => page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name, exact: true }).click(),
    ),
    () => page.getByRole('link', { name: /^Walls/ }).click(),
    () => dialog.getByRole('button', { name: 'Close' }).click(),
    () => page.getByRole('link', { name: /^Catch/ }).click(),
    () => dialog.getByRole('button', { name: 'Close' }).click(),
  ]
  /** @type {number[][]} */
  const by = []
  /** @type {number[]} */
  const tasks = []
  for (let turn = 0; turn < 4; turn++)
    for (const tap of round) {
      await take()
      await tap()
      await page.waitForTimeout(700)
      const found = await take()
      // A tap that was answered within 16 ms is not told of by the browser.
      if (turn > 0) by.push([Math.max(16, ...found.taps), ...found.tasks])
      if (turn > 0) tasks.push(...found.tasks)
    }
  await context.close()
  wire.close()
  return { taps: by.map(([tap = 16]) => tap), tasks }
}

/** Hours of use in minutes: rounds of places, cards, changed figures and undo; what the page holds after the rubbish is collected. */
async function memory() {
  const wire = await countedServer(dist)
  const context = await phone()
  const { page, devtools } = await slowPage(context, 1)
  await page.goto(wire.url)
  await kept(page)
  const base = await openExample(page, /Two chambers/)
  await devtools.send('Performance.enable')
  const held = async () => {
    await page.waitForTimeout(1000)
    await devtools.send('HeapProfiler.collectGarbage')
    await devtools.send('HeapProfiler.collectGarbage')
    const { usedSize } = await devtools.send('Runtime.getHeapUsage')
    const { metrics } = await devtools.send('Performance.getMetrics')
    const of = (/** @type {string} */ name) => metrics.find((one) => one.name === name)?.value ?? 0
    return { mb: usedSize / 1e6, nodes: of('Nodes'), listeners: of('JSEventListeners') }
  }
  const places = [
    'plan',
    'buy',
    'build',
    'run',
    'plan/walls',
    'plan/compare',
    'buy/spending',
    'build/course',
    'run/log',
  ]
  let done = 0
  const go = async (/** @type {string} */ place) => {
    await page.evaluate((hash) => {
      location.hash = hash
    }, base + place)
    await page.waitForTimeout(60)
    done++
  }
  const round = async (/** @type {number} */ turn) => {
    for (const place of places) await go(place)
    await go('plan/chambers')
    const side = page.getByRole('textbox', { name: /Clear side of a chamber/ })
    await side.fill(String(700 + (turn % 5) * 20))
    await side.press('Enter')
    await page.keyboard.press('Escape')
    await go('plan')
    done += 2
  }
  await round(0) // what is loaded once is loaded now
  const marks = [{ done, ...(await held()) }]
  for (let turn = 1; done < INTERACTIONS; turn++) {
    await round(turn)
    if (done - (marks.at(-1)?.done ?? 0) >= INTERACTIONS / 4) marks.push({ done, ...(await held()) })
  }
  marks.push({ done, ...(await held()) })
  await context.close()
  wire.close()
  return marks
}

const visit = await firstVisit()
const change = await update()
const starts = await offlineStarts()
const round = await taps()
const marks = await memory()
await browser.close()

const [first, last] = [marks[0], marks.at(-1)]
if (first === undefined || last === undefined) stop('no memory was measured')
const longest = Math.max(0, ...round.tasks)
const rows = [
  [
    'First visit until usable, slow network, CPU slowed 4×',
    '',
    ms(median(visit.times)),
    `median of ${listed(visit.times)}`,
  ],
  ['First visit, sent before the front page', '', kB(visit.wire.shownBytes), 'compressed, headers in'],
  ['First visit, sent in all until ready offline', '', kB(visit.wire.bytes), `${visit.wire.requests} requests`],
  ['Update with one changed file, sent', '', kB(change.bytes), `${change.requests} requests`],
  ['Cold offline start, CPU slowed 4×', '1500 ms', ms(median(starts)), `median of ${listed(starts)}`],
  [
    'A tap to its paint, CPU slowed 6×',
    '100 ms',
    ms(median(round.taps)),
    `median of ${round.taps.length}; longest ${ms(Math.max(...round.taps))}`,
  ],
  ['Tasks over 50 ms in those taps, CPU slowed 6×', '', String(round.tasks.length), `longest ${ms(longest)}`],
  [
    `Heap after ${last.done} interactions`,
    '',
    `${last.mb.toFixed(1)} MB`,
    marks.map((one) => `${one.mb.toFixed(1)} MB at ${one.done}`).join(', '),
  ],
  [
    'Nodes and listeners then',
    '',
    `${last.nodes} and ${last.listeners}`,
    `${first.nodes} and ${first.listeners} after the first round`,
  ],
]
const text = `Measured ${circumstances()}; Chromium ${browser.version()}. The slow network has 1.6 Mbit/s and 150 ms there and back; the plan is the example of two
chambers; an hour's use is played in quick time: places, cards, a changed size with everything worked out anew.

${table(['what', 'budget', 'measured', 'how'], rows)}`
put(FIGURES, 'npm run paced', text)
put('README.md', 'npm run paced', text)
console.log(text)
