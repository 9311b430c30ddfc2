// `npm run start-time`: how long the built app takes to start with no network on a slow phone. Needs dist; asserts nothing.
import { createServer } from 'node:http'
import path from 'node:path'
import { chromium } from 'playwright-core'
import { findChromium, howToInstall } from './chromium.mjs'
import { answer } from './serve.mjs'
import { root, stop } from './set-up.mjs'

const STARTS = 7
const SLOWER = 4
const LIMIT_MS = 1500

const executablePath = findChromium()
if (executablePath === undefined) stop(howToInstall)

const server = createServer((request, response) => void answer(path.join(root, 'dist'), request, response))
await new Promise((resolve) => server.listen(0, '127.0.0.1', () => resolve(undefined)))
const address = server.address()
if (address === null || typeof address === 'string') stop('no port')
const url = `http://localhost:${String(address.port)}/`

const browser = await chromium.launch({ executablePath, chromiumSandbox: false })
const context = await browser.newContext({ viewport: { width: 360, height: 740 } })
const first = await context.newPage()
await first.goto(url)
await first.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated')
await first.close()
server.closeAllConnections()
server.close()

/** From the start of the navigation until a button has been painted, ms. */
async function coldStartMs() {
  const page = await context.newPage()
  const devtools = await context.newCDPSession(page)
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: SLOWER })
  await page.goto(url, { waitUntil: 'commit' })
  const ms = Number(
    await page.evaluate(
      () =>
        new Promise((resolve) => {
          const whenPainted = () => requestAnimationFrame(() => setTimeout(() => resolve(performance.now())))
          const isThere = () => document.querySelector('#root button, #root a') !== null
          if (isThere()) whenPainted()
          else {
            new MutationObserver((_, watch) => {
              if (!isThere()) return
              watch.disconnect()
              whenPainted()
            }).observe(document, { childList: true, subtree: true })
          }
        }),
    ),
  )
  await page.close()
  return ms
}

/** @type {number[]} */
const times = []
for (let start = 0; start < STARTS; start++) times.push(await coldStartMs())
await browser.close()
times.sort((a, b) => a - b)
const median = times[(STARTS - 1) / 2] ?? 0
console.log(`Offline start, CPU slowed ${SLOWER} times: median ${median.toFixed(0)} ms of ${LIMIT_MS} ms`)
console.log(`All ${STARTS}: ${times.map((ms) => ms.toFixed(0)).join(', ')} ms`)
