import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import os from 'node:os'
import path from 'node:path'
import { decodeQR } from 'qr/decode.js'
import type { BrowserContext, BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader'
import { accessibilityFaults } from './accessibility.ts'
import { complaints, launch, phone, waitForOffline } from './browser.ts'
import { asImageData, luckFrom, photographed, worn, writeFilm, type GreyPicture } from './code-pictures.ts'
import { browser, serveApp, server, url } from './served.ts'

let folder: string
let phones: BrowserContext[] = []

serveApp('each')
beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'hand-over-'))
  const wasm = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm')
  await prepareZXingModule({
    overrides: { wasmBinary: (await readFile(wasm)).buffer as ArrayBuffer },
    fireImmediately: true,
  })
})
afterAll(async () => {
  await rm(folder, { recursive: true })
})
beforeEach(async () => {
  phones = []
})
afterEach(async () => {
  const found = phones.flatMap((one) => [...complaints(one)])
  for (const one of phones) await one.close()
  // oxlint-disable-next-line vitest/no-standalone-expect -- whatever a journey was about, nothing may have gone wrong on the way
  expect(found).toEqual([])
})

/** A phone that has the app and no network from then on. */
async function offlinePhone(name: string, on = browser, options: BrowserContextOptions = {}): Promise<Page> {
  const context = await phone(on, { reducedMotion: 'reduce', ...options })
  phones.push(context)
  const page = await context.newPage()
  page.setDefaultTimeout(10_000)
  await page.goto(url)
  await waitForOffline(page)
  await page.getByText('Ready without signal').waitFor()
  await context.setOffline(true)
  await goTo(page, '#/settings')
  await page.getByLabel('Name of this phone').fill(name)
  await page.getByLabel('Name of this phone').press('Enter')
  await goTo(page, '#/')
  await page.getByRole('heading', { name: 'Plans on this phone' }).waitFor()
  return page
}
const goTo = (page: Page, hash: string) =>
  page.evaluate((to) => {
    window.location.hash = to
  }, hash)
const planHere = async (page: Page): Promise<string> => {
  await page.getByRole('link', { name: /^Walls/ }).waitFor()
  return page.evaluate(() => window.location.hash.split('/')[2] ?? '')
}

/** A plan with a season of firings: too much for one code. `name` is what it is called. */
async function seasonPlan(name: string): Promise<string> {
  const example = JSON.parse(await readFile('shared/examples/two-chambers.json', 'utf8')) as Record<string, unknown>
  const luck = luckFrom(7)
  const firings = Object.fromEntries(
    Array.from({ length: 90 }, (_, index) => [
      `f${Math.floor(luck() * 1e9).toString(36)}`,
      {
        day: `2026-0${String(1 + Math.floor(index / 28))}-${String((index % 28) + 1).padStart(2, '0')}`,
        freshKg: Math.round(60 + luck() * 90),
        productKg: Math.round(200 + luck() * 200) / 10,
        woodKg: Math.round(30 + luck() * 40),
        hours: 6 + Math.round(luck() * 12) / 2,
        fishCostMinor: null,
        woodCostMinor: null,
        otherCostMinor: null,
        salesMinor: null,
        note: '',
      },
    ]),
  )
  const file = path.join(folder, 'season.json')
  const run = { ...(example['run'] as object), firings }
  const members = { m1: { name: 'Abena (invented)', weight: 1 } }
  await writeFile(file, JSON.stringify({ ...example, id: 'season', name, example: false, run, members }))
  return file
}
async function open(page: Page, file: string): Promise<string> {
  await page.getByLabel('Open file').setInputFiles(file)
  return planHere(page)
}
async function handOver(page: Page, id: string): Promise<void> {
  await goTo(page, `#/hand-over/${id}`)
  await page.locator('.code svg').waitFor()
}
const saved = (page: Page) => page.getByText(/^Saved on this phone/).waitFor()
const rename = async (page: Page, name: string) => {
  await page.getByRole('button', { name: /^More for/ }).click()
  await page.getByLabel('Name of the plan').fill(name)
  await page.getByLabel('Name of the plan').press('Enter')
  await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click()
  await page.getByRole('heading', { level: 1, name }).waitFor()
  await saved(page)
}

/** Pictures of the codes that a phone shows, one after another, as long as `count` of them. */
async function film(page: Page, count: number): Promise<(GreyPicture & { png: Buffer })[]> {
  const pictures = []
  let before = ''
  while (pictures.length < count) {
    const picture = await photographed(page)
    const now = picture.png.toString('base64')
    if (now !== before) pictures.push(picture)
    before = now
  }
  return pictures
}

describe('a plan on one phone’s screen', () => {
  it('is filmed by the other, which misses codes at random: both in flight mode', { timeout: 180_000 }, async () => {
    const a = await offlinePhone('Officer')
    const id = await open(a, await seasonPlan('A season at the landing'))
    await handOver(a, id)
    expect(await accessibilityFaults(a)).toEqual([])
    const said = await a.getByText(/codes in turn/).textContent()
    const count = Number(/(\d+) codes/.exec(said ?? '')?.[1])
    expect(count).toBeGreaterThan(2)
    await a.getByRole('button', { name: 'Slower' }).click()
    const luck = luckFrom(11)
    // Two rounds and more of the codes, until none was missed each time: a busy machine misses some of its own.
    const seen: Awaited<ReturnType<typeof film>> = []
    const codes = new Set<string>()
    let shown = 0
    while (shown < count * 2 + 4 || codes.size < count) {
      const turn = await film(a, count + 2)
      shown += turn.length
      for (const picture of turn.filter(() => luck() > 0.3)) {
        seen.push(picture)
        codes.add(picture.png.toString('base64'))
      }
    }
    const pictures = seen.flatMap((picture) => {
      const frame = worn(picture, 640, 480, { tilt: 0.04, scale: 1.35, blurPx: 1, noise: 18 }, luck)
      return [frame, frame, frame]
    })
    const file = path.join(folder, 'season.y4m')
    await writeFilm(file, pictures)
    const camera = await launch([
      '--use-fake-ui-for-media-stream',
      '--use-fake-device-for-media-stream',
      `--use-file-for-fake-video-capture=${file}`,
    ])
    try {
      const b = await offlinePhone('Treasurer', camera, { permissions: ['camera'] })
      await server.close()
      await b.getByRole('link', { name: 'Scan code' }).click()
      await b.getByText(/of \d+ parts are here/).waitFor()
      await b.getByRole('heading', { level: 1, name: 'A season at the landing' }).waitFor({ timeout: 90_000 })
      await b.getByText('A season at the landing is on this phone now.').waitFor()
      console.log(`${said ?? ''} ${String(seen.length)} of ${String(shown)} seen by the camera`)
    } finally {
      const [one] = phones.splice(1)
      expect(one && complaints(one)).toEqual([])
      await camera.close()
    }
  })

  it('is read by a decoder that is not ours, blurred, noisy and turned', { timeout: 120_000 }, async () => {
    const a = await offlinePhone('Officer')
    await a.getByRole('button', { name: 'Example' }).click()
    await a
      .getByRole('dialog')
      .getByRole('button', { name: /fired brick/ })
      .click()
    const id = await planHere(a)
    await handOver(a, id)
    const picture = await photographed(a)
    const tries = [
      { tilt: 0, scale: 1, blurPx: 0, noise: 0 },
      { tilt: 0.35, scale: 2, blurPx: 1, noise: 40 },
      { tilt: -0.2, scale: 2, blurPx: 1, noise: 60 },
      { tilt: 1.3, scale: 1.6, blurPx: 1, noise: 25 },
      { tilt: 3.0, scale: 2.4, blurPx: 2, noise: 40 },
    ]
    const texts: string[] = []
    const ours: boolean[] = []
    for (const [index, wear] of tries.entries()) {
      const image = asImageData(worn(picture, 900, 900, wear, luckFrom(index + 1)))
      const [found] = await readBarcodes(image, { formats: ['QRCode'], tryHarder: true })
      texts.push(found?.text ?? '')
      try {
        ours.push(decodeQR(image) === found?.text)
      } catch {
        ours.push(false)
      }
    }
    // ZXing C++ compiled to WebAssembly (zxing-wasm) reads all of them, and all the same.
    expect(new Set(texts).size).toBe(1)
    expect(texts[0]).toMatch(/^[0-9A-Z $%*+./:-]{100,}$/)
    console.log(`our own reader agreed on ${String(ours.filter(Boolean).length)} of ${String(ours.length)} pictures`)
    expect(ours[0]).toBe(true)
  })

  it('is read from photos where there is no camera', async () => {
    const a = await offlinePhone('Officer')
    await a.getByRole('button', { name: 'Example' }).click()
    await a
      .getByRole('dialog')
      .getByRole('button', { name: /hollow block/ })
      .click()
    const id = await planHere(a)
    const name = (await a.getByRole('heading', { level: 1 }).textContent()) ?? ''
    await handOver(a, id)
    const photos = await film(a, 6)
    const b = await offlinePhone('Mason')
    await goTo(b, '#/scan')
    await b.getByText('No camera was found on this phone.').waitFor()
    expect(await accessibilityFaults(b)).toEqual([])
    await b
      .getByLabel('From a photo')
      .last()
      .setInputFiles({ name: 'b.png', mimeType: 'image/png', buffer: await b.screenshot() })
    await b.getByText(/No code was found/).waitFor()
    await b
      .getByLabel('From a photo')
      .last()
      .setInputFiles(
        photos.map(({ png }, index) => ({ name: `${String(index)}.png`, mimeType: 'image/png', buffer: png })),
      )
    expect(await planHere(b)).toBe(id)
    expect(await b.getByRole('heading', { level: 1 }).textContent()).toBe(name)
  })
})

describe('a link', () => {
  it(
    'brings a plan, then the changes of both, and shows what both answered differently',
    { timeout: 120_000 },
    async () => {
      const a = await offlinePhone('Officer', browser, { permissions: ['clipboard-read', 'clipboard-write'] })
      await a.getByRole('button', { name: 'Example' }).click()
      await a
        .getByRole('dialog')
        .getByRole('button', { name: /fired brick/ })
        .click()
      const id = await planHere(a)
      const b = await offlinePhone('Treasurer', browser, { permissions: ['clipboard-read', 'clipboard-write'] })
      const linkFrom = async (page: Page) => {
        await handOver(page, id)
        await page.getByRole('button', { name: 'As a link' }).click()
        await page.getByText('The link is copied').waitFor()
        const link = await page.evaluate(() => navigator.clipboard.readText())
        await page.getByRole('button', { name: 'The other phone has it' }).click()
        await page.getByText(/Changes since/).waitFor()
        await goTo(page, `#/plan/${id}/plan`)
        await planHere(page)
        return link
      }
      await goTo(b, new URL(await linkFrom(a)).hash)
      await b.getByText('It is not on this phone yet.').waitFor()
      expect(await accessibilityFaults(b)).toEqual([])
      await b.getByRole('button', { name: 'Take this plan' }).click()
      expect(await planHere(b)).toBe(id)
      await rename(a, 'The officer’s name')
      await rename(b, 'The treasurer’s name')
      await goTo(b, new URL(await linkFrom(a)).hash)
      await b.getByRole('button', { name: 'Join it with mine' }).click()
      await b.getByText('One decision was answered differently on two phones.').waitFor()
      await b.getByRole('link', { name: 'See and choose' }).click()
      const sheet = b.getByRole('dialog')
      await sheet.getByText(/^Officer, /).waitFor()
      await sheet.getByText(/^On this phone · Treasurer, /).waitFor()
      expect(await accessibilityFaults(b)).toEqual([])
      await sheet.getByRole('button', { name: 'Name of the plan: The officer’s name' }).click()
      await sheet.getByText('Every difference is settled.').waitFor()
      await sheet.getByRole('button', { name: 'Close' }).click()
      await b.getByRole('heading', { level: 1, name: 'The officer’s name' }).waitFor()
      // What was before can be brought back, as a new change that undo takes back.
      await goTo(b, `#/history/${id}`)
      await b
        .getByText(/→ The officer’s name/)
        .first()
        .waitFor()
      expect(await accessibilityFaults(b)).toEqual([])
      await b
        .getByRole('button', { name: /^Bring back: Before joining/ })
        .first()
        .click()
      await b.getByRole('heading', { level: 1, name: 'The treasurer’s name' }).waitFor()
      await b.getByRole('status').getByRole('button', { name: 'Undo' }).click()
      await b.getByRole('heading', { level: 1, name: 'The officer’s name' }).waitFor()
    },
  )

  it('that was cut short or made to do harm is refused, and what is markup stays text', async () => {
    const a = await offlinePhone('Officer')
    const id = await open(a, await seasonPlan('<img src=x onerror=alert(1)><script>window.harm = 1</script>'))
    expect(await a.getByRole('heading', { level: 1 }).textContent()).toContain('<img src=x')
    for (const hash of [
      '#/take/',
      '#/take/AQBx',
      `#/take/${'A'.repeat(15_000)}`,
      '#/take/%00"><script>',
      '#/take/../../x',
    ]) {
      await goTo(a, hash)
      await a.getByText('Nothing was changed.').waitFor()
      await goTo(a, '#/')
      await a.getByRole('heading', { name: 'Plans on this phone' }).waitFor()
    }
    await goTo(a, `#/history/${id}`)
    await a.getByRole('heading', { name: 'Earlier copies' }).waitFor()
    await goTo(a, `#/hand-over/${encodeURIComponent('<b>nobody</b>')}`)
    await a.getByText('This plan is not on this phone').waitFor()
    expect(await a.evaluate(() => 'harm' in window)).toBe(false)
    expect(await a.locator('img[src=x]').count()).toBe(0)
  })
})

describe('a file', () => {
  it('goes without members’ names unless they are chosen, and joins with what the other phone has', async () => {
    const a = await offlinePhone('Officer')
    const id = await open(a, await seasonPlan('Handed on as a file'))
    await handOver(a, id)
    const take = async () => {
      const downloading = a.waitForEvent('download')
      await a.getByRole('button', { name: 'As a file' }).click()
      const file = path.join(folder, 'handed.json')
      await (await downloading).saveAs(file)
      return file
    }
    expect(await readFile(await take(), 'utf8')).not.toContain('Abena')
    await a.getByRole('button', { name: 'Members’ names go along' }).click()
    const file = await take()
    expect(await readFile(file, 'utf8')).toContain('Abena')
    const b = await offlinePhone('Mason')
    expect(await open(b, file)).toBe(id)
  })

  it(
    'of the changes alone is small, is refused where the plan is not, and joins where it is',
    { timeout: 120_000 },
    async () => {
      const a = await offlinePhone('Officer')
      const file = await seasonPlan('Handed on in parts')
      const id = await open(a, file)
      await handOver(a, id)
      const take = async (button: RegExp, name: string) => {
        const downloading = a.waitForEvent('download')
        await a.getByRole('button', { name: button }).click()
        const taken = path.join(folder, name)
        await (await downloading).saveAs(taken)
        return taken
      }
      const whole = await take(/^As a file, [\d.]+ kB$/, 'whole.json')
      await a.getByRole('button', { name: 'The other phone has it' }).click()
      await a.getByText(/^Nothing has changed since/).waitFor()
      expect(await a.getByRole('button', { name: 'The other phone has it' }).isDisabled()).toBe(true)
      await goTo(a, `#/plan/${id}/plan`)
      await rename(a, 'Renamed on the first phone')
      await handOver(a, id)
      await a.getByRole('radio', { name: /^Changes since/ }).check({ force: true })
      const changes = await take(/^As a file, \d+ bytes$/, 'changes.json')
      expect((await readFile(changes)).length).toBeLessThan(500)

      const b = await offlinePhone('Mason')
      await b.getByLabel('Open file').setInputFiles(changes)
      await b
        .getByRole('alert')
        .getByText(/Ask for the whole plan/)
        .waitFor()
      expect(await accessibilityFaults(b)).toEqual([])
      await b.getByRole('dialog').getByRole('button', { name: 'Close' }).click()
      await b.getByText('No plans here yet').waitFor()
      expect(await open(b, whole)).toBe(id)
      await b.getByRole('heading', { level: 1, name: 'Handed on in parts' }).waitFor()
      await goTo(b, '#/')
      await b.getByLabel('Open file').setInputFiles(changes)
      await b.getByRole('heading', { level: 1, name: 'Renamed on the first phone' }).waitFor()
    },
  )

  it('of all plans is the copy that the front page asks for, and brings them back after everything was erased', async () => {
    const a = await offlinePhone('Officer')
    await open(a, await seasonPlan('To be kept'))
    await goTo(a, '#/')
    await a.getByText('No copy is kept outside this phone yet.').waitFor()
    const downloading = a.waitForEvent('download')
    await a.getByRole('button', { name: 'Save a copy of all plans' }).click()
    const file = path.join(folder, 'all.json')
    await (await downloading).saveAs(file)
    await a.getByText('No copy is kept outside this phone yet.').waitFor({ state: 'detached' })
    await goTo(a, '#/settings')
    await a.getByText(/^Last copy outside this phone/).waitFor()
    await a.getByRole('button', { name: 'Erase everything on this phone' }).click()
    const sheet = a.getByRole('dialog')
    expect(await sheet.getByRole('button', { name: 'Waits for the word' }).isDisabled()).toBe(true)
    await sheet.getByLabel(/Type the word/).fill('erase')
    expect(await accessibilityFaults(a)).toEqual([])
    await sheet.getByRole('button', { name: 'Erase everything on this phone' }).click()
    await a.getByText(/^One plan was erased/).waitFor()
    expect(
      await a.evaluate(async () => ({
        databases: (await indexedDB.databases()).length,
        caches: (await caches.keys()).length,
        notes: localStorage.length,
        workers: (await navigator.serviceWorker.getRegistrations()).length,
      })),
    ).toEqual({ databases: 0, caches: 0, notes: 0, workers: 0 })
    const b = await offlinePhone('Another')
    await open(b, file)
    await b.getByRole('heading', { level: 1, name: 'To be kept' }).waitFor()
  })
})
