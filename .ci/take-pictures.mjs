// `npm run pictures`: the README's pictures, taken from the built app with the example plan. Needs dist.
import { createServer } from 'node:http'
import path from 'node:path'
import { chromium } from 'playwright-core'
import { findChromium, howToInstall } from './chromium.mjs'
import { answer } from './serve.mjs'
import { root, stop } from './set-up.mjs'

const executablePath = findChromium()
if (executablePath === undefined) stop(howToInstall)
const server = createServer((request, response) => void answer(path.join(root, 'dist'), request, response))
await new Promise((resolve) => server.listen(0, '127.0.0.1', () => resolve(undefined)))
const address = server.address()
if (address === null || typeof address === 'string') stop('no port')
const url = `http://localhost:${String(address.port)}/`
const browser = await chromium.launch({ executablePath, chromiumSandbox: false })

/**
 * @param {{ width: number, height: number }} viewport
 * @param {readonly { name: string, place: string }[]} views
 */
async function take(viewport, views) {
  const context = await browser.newContext({ viewport, locale: 'en-GB', reducedMotion: 'reduce' })
  const page = await context.newPage()
  await page.goto(url)
  await page.getByRole('button', { name: 'Example' }).click()
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /hollow block/ })
    .click()
  await page.getByRole('img').first().waitFor()
  await page.waitForFunction(() => location.hash.startsWith('#/plan/'))
  const id = await page.evaluate(() => location.hash.split('/')[2] ?? '')
  for (const { name, place } of views) {
    await page.evaluate((hash) => {
      location.hash = hash
    }, `#/plan/${id}/${place}`)
    await page.waitForTimeout(800)
    await page.screenshot({ path: path.join(root, `.ci/pictures/${name}.png`) })
  }
  await context.close()
}

await take({ width: 360, height: 740 }, [
  { name: 'plan', place: 'plan' },
  { name: 'buy', place: 'buy' },
  { name: 'build', place: 'build' },
  { name: 'run', place: 'run' },
])
await take({ width: 1280, height: 800 }, [{ name: 'plan-wide', place: 'plan' }])
await browser.close()
server.closeAllConnections()
server.close()
