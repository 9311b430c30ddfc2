// A slow phone over a counted wire, for paced.mjs.
import { createServer } from 'node:http'
import { chromium } from 'playwright-core'
import { findChromium, howToInstall } from '../../.ci/chromium.mjs'
import { answer } from '../../.ci/serve.mjs'
import { stop } from '../../.ci/set-up.mjs'

/** A slow mobile network: 1.6 Mbit/s down, 750 kbit/s up, 150 ms there and back. */
export const SLOW_NETWORK = {
  offline: false,
  latency: 150,
  downloadThroughput: (1.6e6 * 0.9) / 8,
  uploadThroughput: 750e3 / 8,
}

/** Serves a folder, which can be swapped, and counts what crosses the wire: headers and bodies as they are sent. */
export async function countedServer(/** @type {string} */ folder) {
  /** @type {Set<import('node:net').Socket>} */
  const sockets = new Set()
  const wire = {
    folder,
    requests: 0,
    url: '',
    close: () => {},
    get bytes() {
      return [...sockets].reduce((sum, socket) => sum + socket.bytesWritten, 0)
    },
  }
  const server = createServer((request, response) => {
    wire.requests++
    void answer(wire.folder, request, response)
  })
  server.on('connection', (socket) => sockets.add(socket))
  await new Promise((resolve) => server.listen(0, '127.0.0.1', () => resolve(undefined)))
  const address = server.address()
  if (address === null || typeof address === 'string') stop('no port')
  wire.url = `http://localhost:${String(address.port)}/`
  wire.close = () => {
    server.closeAllConnections()
    server.close()
  }
  return wire
}

export async function startBrowser() {
  const executablePath = findChromium()
  if (executablePath === undefined) stop(howToInstall)
  return chromium.launch({ executablePath, chromiumSandbox: false, args: ['--disable-dev-shm-usage'] })
}

/** @typedef {import('playwright-core').Page} Page */
/** @typedef {import('playwright-core').BrowserContext} Phone */

/** A page whose processor is so many times slower.
 * @param {Phone} phone @param {number} slower */
export async function slowPage(phone, slower) {
  const page = await phone.newPage()
  page.setDefaultTimeout(60_000)
  const devtools = await phone.newCDPSession(page)
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: slower })
  return { page, devtools }
}

/** From the start of the navigation until something that can be pressed has been painted, ms.
 * @param {Page} page */
export const untilUsableMs = (page) =>
  page.evaluate(
    () =>
      new Promise((/** @type {(ms: number) => void} */ resolve) => {
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
  )

/** Waits until every file is on the phone and its worker runs.
 * @param {Page} page */
export const kept = (page) => page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated')

/** Opens an example from the front page, and gives the start of its addresses.
 * @param {Page} page @param {RegExp} name */
export async function openExample(page, name) {
  await page.getByRole('button', { name: 'Example' }).click()
  await page.getByRole('dialog').getByRole('button', { name }).click()
  await page.getByRole('link', { name: /^Walls/ }).waitFor()
  return page.evaluate(() => location.hash.replace(/plan$/, ''))
}
