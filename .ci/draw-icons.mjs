// `npm run icons`: renders the PNG icons from public/icon.svg. Run it after the drawing changes; commit what it writes.
import { readFileSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import { chromium } from 'playwright-core'
import { findChromium, howToInstall } from './chromium.mjs'
import { root, stop } from './set-up.mjs'

const executablePath = findChromium()
if (executablePath === undefined) stop(howToInstall)

const svg = readFileSync(path.join(root, 'public/icon.svg'), 'utf8')
// A launcher may cut a maskable icon to a circle of 80 % of its width: the drawing is shrunk into it.
const icons = [
  { file: 'icon-180.png', sizePx: 180, scale: 1 },
  { file: 'icon-192.png', sizePx: 192, scale: 1 },
  { file: 'icon-512.png', sizePx: 512, scale: 1 },
  { file: 'icon-maskable-512.png', sizePx: 512, scale: 0.9 },
]

const browser = await chromium.launch({ executablePath, chromiumSandbox: false })
for (const { file, sizePx, scale } of icons) {
  const page = await browser.newPage({ viewport: { width: sizePx, height: sizePx } })
  await page.setContent(
    `<style>body{margin:0;background:#26221E}svg{display:block;transform:scale(${scale})}</style>${svg}`,
  )
  writeFileSync(path.join(root, 'public', file), await page.screenshot())
  await page.close()
}
await browser.close()
