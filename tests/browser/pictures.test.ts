import { mkdir, readFile, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import type { Page } from 'playwright-core'
import { beforeEach, expect, it } from 'vitest'
import { browser, context, openExample, page, takeInHand } from './in-hand.ts'
import { smallPicture, strangeness, STRANGE_PERCENT, useOwnFaces } from './picture.ts'
import { goTo, settled } from './screens.ts'

/** `npm run accept-looks` takes what the app shows now as what it should show. Look at the changed files before they are committed. */
const isAccepting = process.env['ACCEPT_PICTURES'] === '1'
const KEPT = path.join(import.meta.dirname, 'pictures')
const SEEN = path.join(os.tmpdir(), 'kilnwright-pictures')

takeInHand({ reducedMotion: 'reduce', timezoneId: 'UTC', serviceWorkers: 'block', bypassCSP: true })

const HAND = { width: 360, height: 740 }
const TABLE = { width: 1280, height: 800 }
const SCREENS: readonly (readonly [name: string, size: typeof HAND, light: string, at: string])[] = [
  ['front', HAND, 'light', '#/'],
  ['new', HAND, 'light', '#/new'],
  ['plan', HAND, 'light', 'plan'],
  ['walls', HAND, 'light', 'plan/walls'],
  ['compare', HAND, 'light', 'plan/compare'],
  ['buy', HAND, 'light', 'buy'],
  ['money', HAND, 'light', 'buy/spending'],
  ['build', HAND, 'light', 'build'],
  ['peg-out', HAND, 'light', 'build/setout'],
  ['course', HAND, 'light', 'build/course'],
  ['run', HAND, 'light', 'run'],
  ['heat', HAND, 'light', 'run/heat'],
  ['plan-wide', TABLE, 'light', 'plan'],
  ['walls-wide', TABLE, 'light', 'plan/walls'],
  ['buy-wide', TABLE, 'light', 'buy'],
  ['plan-dark', HAND, 'dark', 'plan'],
  ['buy-dark', HAND, 'dark', 'buy'],
  ['plan-sun', HAND, 'sun', 'plan'],
  ['course-sun', HAND, 'sun', 'build/course'],
]

let laboratory: Page
let base: string

beforeEach(async () => {
  laboratory = await (await browser.newContext()).newPage()
  await context.clock.setFixedTime(new Date('2026-06-01T10:42:00Z'))
  await useOwnFaces(context)
  await page.reload()
  await openExample(/One chamber/)
  base = `#${page.url().split('#')[1] ?? ''}`.replace(/plan$/, '')
})

async function show([, size, light, at]: (typeof SCREENS)[number]): Promise<void> {
  await page.setViewportSize(size)
  await page.evaluate((theme) => {
    document.documentElement.dataset['theme'] = theme
  }, light)
  await goTo(page, '#/settings')
  await goTo(page, at.startsWith('#') ? at : base + at)
  if (at.includes('/') && !at.startsWith('#')) await page.getByRole('dialog').waitFor()
  await page.evaluate(() => {
    window.scrollTo(0, 0)
  })
  await settled(page)
  const hint = page.getByRole('button', { name: 'Understood' })
  if (at.includes('/') || (await hint.count()) === 0) return
  await hint.click()
  await settled(page)
}

it('look as they were accepted', { timeout: 180_000 }, async () => {
  const others: string[] = []
  await mkdir(isAccepting ? KEPT : SEEN, { recursive: true })
  for (const screen of SCREENS) {
    await show(screen)
    const file = `${screen[0]}.png`
    const seen = await smallPicture(page, laboratory)
    const kept = await readFile(path.join(KEPT, file)).catch(() => null)
    const strange = kept === null ? 100 : await strangeness(kept, seen, laboratory)
    if (isAccepting && strange > STRANGE_PERCENT / 4) await writeFile(path.join(KEPT, file), seen)
    if (isAccepting || strange <= STRANGE_PERCENT) continue
    await writeFile(path.join(SEEN, file), seen)
    others.push(`${file}: ${strange.toFixed(1)} % strange; now ${path.join(SEEN, file)}`)
  }
  expect(others, 'If they should look so: npm run accept-looks').toEqual([])
})

it('would not pass with a line gone, a colour changed or a part moved', async () => {
  const plan = SCREENS.find(([name]) => name === 'plan')
  if (plan === undefined) throw new Error('no plan among the screens')
  await show(plan)
  const before = await smallPicture(page, laboratory)
  expect(await strangeness(before, await smallPicture(page, laboratory), laboratory)).toBe(0)
  for (const change of [
    '.figs { visibility: hidden }',
    '.bar a[aria-current] { background: var(--ember) !important }',
    '.draw .ink { translate: 12px 0 }',
    '.seg { margin-top: 24px }',
  ]) {
    const tag = await page.addStyleTag({ content: change })
    expect([
      change,
      (await strangeness(before, await smallPicture(page, laboratory), laboratory)) > STRANGE_PERCENT,
    ]).toEqual([change, true])
    await tag.evaluate((one) => (one as Element).remove())
  }
})
