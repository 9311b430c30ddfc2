import { spawn, type ChildProcess } from 'node:child_process'
import { once } from 'node:events'
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises'
import net from 'node:net'
import os from 'node:os'
import path from 'node:path'
import { createInterface } from 'node:readline'
import type { BrowserContext, Page } from 'playwright-core'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { accessibilityFaults } from './accessibility.ts'
import { phone, waitForOffline } from './browser.ts'
import { openExample } from './in-hand.ts'
import { browser, serveApp, url } from './served.ts'

const KEY = 'a key for the test, invented'

/** The real server of `npm run office`, in a process of its own that can be killed like a machine that loses power. */
class OfficeProcess {
  #process: ChildProcess | undefined
  readonly port: number
  readonly folder: string

  constructor(port: number, folder: string) {
    this.port = port
    this.folder = folder
  }

  async start(key = KEY): Promise<void> {
    const started = spawn(process.execPath, ['.ci/office.mjs'], {
      env: { ...process.env, KILNWRIGHT_KEY: key, PORT: String(this.port), OFFICE_DATA: this.folder },
      stdio: ['ignore', 'pipe', 'inherit'],
    })
    this.#process = started
    for await (const line of createInterface(started.stdout)) if (line.startsWith('Office on port')) return
    throw new Error('the office did not start')
  }

  async kill(): Promise<void> {
    const running = this.#process
    this.#process = undefined
    if (running?.exitCode !== null) return
    running.kill('SIGKILL')
    await once(running, 'exit')
  }
}

/** A phone's way to the office, that can be cut and mended. */
class Cable {
  readonly #sockets = new Set<net.Socket>()
  readonly #server: net.Server
  isCut = false

  constructor(port: number) {
    this.#server = net.createServer((socket) => {
      if (this.isCut) {
        socket.destroy()
        return
      }
      const there = net.connect(port, '127.0.0.1')
      for (const [from, to] of [
        [socket, there],
        [there, socket],
      ] as const) {
        this.#sockets.add(from)
        from.on('error', () => to.destroy())
        from.on('close', () => {
          this.#sockets.delete(from)
          to.destroy()
        })
        from.pipe(to)
      }
    })
  }

  async address(): Promise<string> {
    await new Promise<void>((resolve) => {
      this.#server.listen(0, '127.0.0.1', resolve)
    })
    return `ws://localhost:${String((this.#server.address() as net.AddressInfo).port)}`
  }

  cut(): void {
    this.isCut = true
    for (const socket of this.#sockets) socket.destroy()
  }

  close(): void {
    this.cut()
    this.#server.close()
  }
}

async function freePort(): Promise<number> {
  const server = net.createServer().listen(0, '127.0.0.1')
  await once(server, 'listening')
  const { port } = server.address() as net.AddressInfo
  server.close()
  return port
}

let folder: string
let office: OfficeProcess
let phones: BrowserContext[] = []
let cables: Cable[] = []
let faults: string[] = []

serveApp('each')
beforeEach(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'office-'))
  office = new OfficeProcess(await freePort(), folder)
  phones = []
  cables = []
  faults = []
})
afterEach(async () => {
  for (const one of phones) await one.close()
  for (const one of cables) one.close()
  await office.kill()
  await rm(folder, { recursive: true })
  // oxlint-disable-next-line vitest/no-standalone-expect -- whatever a journey was about, nothing may have broken on the way
  expect(faults).toEqual([])
})

async function phoneNamed(name: string): Promise<Page> {
  const context = await phone(browser)
  context.on('weberror', (error) => faults.push(error.error().message))
  phones.push(context)
  const page = await context.newPage()
  page.setDefaultTimeout(15_000)
  await page.goto(url)
  await waitForOffline(page)
  await goTo(page, '#/settings')
  await page.getByLabel('Name of this phone').fill(name)
  await page.getByLabel('Name of this phone').press('Enter')
  return page
}
const goTo = (page: Page, hash: string) =>
  page.evaluate((to) => {
    window.location.hash = to
  }, hash)

async function join(page: Page, key = KEY): Promise<Cable> {
  const cable = new Cable(office.port)
  cables.push(cable)
  await goTo(page, '#/settings')
  await page.getByRole('button', { name: /^(Join an office|Change)$/ }).click()
  const sheet = page.getByRole('dialog')
  await sheet.getByLabel('Address of the server').fill(await cable.address())
  await sheet.getByLabel('Key').fill(key)
  await sheet.getByLabel('Name of the programme').fill('Landing sites')
  await sheet.getByRole('button', { name: 'Join an office' }).click()
  await sheet.waitFor({ state: 'detached' })
  return cable
}
const rename = async (page: Page, id: string, name: string) => {
  await goTo(page, `#/plan/${id}/plan`)
  await page.getByRole('button', { name: /^More for/ }).click()
  await page.getByLabel('Name of the plan').fill(name)
  await page.getByLabel('Name of the plan').press('Enter')
  await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click()
  await page.getByRole('heading', { level: 1, name }).waitFor()
}
const chooseSoil = async (page: Page, id: string, soil: string) => {
  await goTo(page, `#/plan/${id}/plan/ground`)
  await page.getByRole('dialog').getByRole('radio', { name: soil }).check()
  await goTo(page, `#/plan/${id}/plan`)
  await page.getByText(/^Saved on this phone/).waitFor()
}

describe('an office’s server', () => {
  it(
    'brings two phones together, one away for a while, the server killed and started again: nothing is lost',
    { timeout: 240_000 },
    async () => {
      await office.start()
      const a = await phoneNamed('Officer')
      await join(a)
      await a.getByText(/^Joined\. No plan is shared yet/).waitFor()
      expect(await accessibilityFaults(a)).toEqual([])
      await goTo(a, '#/')
      await openExample(/fired brick/, a)
      const id = await a.evaluate(() => window.location.hash.split('/')[2] ?? '')
      await goTo(a, `#/hand-over/${id}`)
      await a.getByRole('button', { name: 'Put it in the office’s programme' }).click()
      await a.getByText(/It is in the office’s programme/).waitFor()
      await goTo(a, '#/settings')
      await a.getByText(/One plan is shared\. Everything has arrived there\./).waitFor()

      const b = await phoneNamed('Mason')
      const cable = await join(b)
      await b.getByText('Heron Point, two chambers is on this phone now.').waitFor()
      await goTo(b, '#/')
      await b.locator('a.shelf-plan').first().click()
      await b.getByRole('link', { name: /^Walls/ }).waitFor()

      cable.cut()
      await rename(a, id, 'Renamed at the office')
      await chooseSoil(b, id, 'Laterite')
      // The office's disk has what arrived before the machine loses power.
      await expect
        .poll(async () => (await readdir(folder)).filter((file) => file.endsWith('.yjs')).length, { timeout: 15_000 })
        .toBe(2)
      await office.kill()
      await rename(a, id, 'Renamed while the office was dead')
      await goTo(b, '#/settings')
      await b.getByText(/^The office cannot be reached now/).waitFor()
      await office.start()
      cable.isCut = false
      await goTo(b, `#/plan/${id}/plan`)
      await b.getByRole('heading', { level: 1, name: 'Renamed while the office was dead' }).waitFor({ timeout: 60_000 })
      await goTo(a, `#/plan/${id}/plan`)
      await a.getByRole('link', { name: /^Ground.*Laterite/ }).waitFor({ timeout: 60_000 })

      // Live, both ways, and the last state is on the office's disk for a phone that comes later.
      await rename(b, id, 'Live from the mason')
      await a.getByRole('heading', { level: 1, name: 'Live from the mason' }).waitFor()
      await goTo(b, '#/settings')
      await b.getByText(/Everything has arrived there\./).waitFor()
      for (const one of phones.splice(0)) await one.close()
      await new Promise((resolve) => setTimeout(resolve, 2500)) // longer than the office waits before it writes
      await office.kill()
      await office.start()
      const c = await phoneNamed('Treasurer')
      await join(c)
      await c.getByText('Live from the mason is on this phone now.').waitFor()
      await goTo(c, `#/plan/${id}/plan`)
      await c.getByRole('heading', { level: 1, name: 'Live from the mason' }).waitFor()
      await c.getByRole('link', { name: /^Ground.*Laterite/ }).waitFor()
    },
  )

  it(
    'sends a plan that somebody waits for: it is told as on its way, and opens when it comes',
    { timeout: 120_000 },
    async () => {
      await office.start()
      const a = await phoneNamed('Officer')
      await join(a)
      await a.getByText(/^Joined/).waitFor()
      await goTo(a, '#/')
      await openExample(/hollow block/, a)
      const id = await a.evaluate(() => window.location.hash.split('/')[2] ?? '')
      const name = (await a.getByRole('heading', { level: 1 }).textContent()) ?? ''

      const b = await phoneNamed('Mason')
      await goTo(b, `#/plan/${id}/build`)
      await b.getByRole('heading', { name: 'This plan is not on this phone' }).waitFor()
      const cable = await join(b)
      await b.getByText(/^Joined/).waitFor()
      await goTo(b, `#/plan/${id}/build`)
      await b.getByRole('heading', { name: 'This plan has not arrived yet' }).waitFor()
      await b.getByText(/^Joined\. No plan is shared yet/).waitFor()
      expect(await accessibilityFaults(b)).toEqual([])
      cable.cut()
      await b.getByText(/^The office cannot be reached now/).waitFor()
      await goTo(a, `#/hand-over/${id}`)
      await a.getByRole('button', { name: 'Put it in the office’s programme' }).click()
      await b.getByRole('link', { name: 'To the plans on this phone' }).click()
      await b.getByRole('heading', { name: 'Plans on this phone' }).waitFor()
      await goTo(b, `#/plan/${id}/build`)
      await b.getByRole('heading', { name: 'This plan has not arrived yet' }).waitFor()
      cable.isCut = false
      await b.getByRole('heading', { level: 1, name }).waitFor({ timeout: 60_000 })
      expect(await b.evaluate(() => window.location.hash)).toBe(`#/plan/${id}/build`)
    },
  )

  it(
    'takes no other key, sends nothing then, and private names stay at home unless chosen',
    { timeout: 120_000 },
    async () => {
      await office.start()
      const a = await phoneNamed('Officer')
      await join(a, 'another key, invented')
      await a.getByText('The office does not take this key.').waitFor()
      await join(a)
      await a.getByText(/^Joined/).waitFor()
      const example = JSON.parse(await readFile('shared/examples/two-chambers.json', 'utf8')) as object
      const members = { m1: { name: 'Abena Invented', weight: 1 } }
      const file = JSON.stringify({ ...example, id: 'private', name: 'Named here only', example: false, members })
      await goTo(a, '#/')
      await a
        .getByLabel('Open file')
        .setInputFiles({ name: 'plan.json', mimeType: 'application/json', buffer: Buffer.from(file) })
      await a.getByRole('link', { name: /^Walls/ }).waitFor()
      await goTo(a, '#/hand-over/private')
      await a.getByRole('button', { name: 'Put it in the office’s programme' }).click()
      await goTo(a, '#/settings')
      await a.getByText(/One plan is shared\. Everything has arrived there\./).waitFor()
      await new Promise((resolve) => setTimeout(resolve, 2500))
      const kept = await Promise.all((await readdir(folder)).map((name) => readFile(path.join(folder, name), 'latin1')))
      expect(kept.some((text) => text.includes('Named here only'))).toBe(true)
      expect(kept.filter((text) => text.includes('Abena'))).toEqual([])
      await a.getByRole('button', { name: 'Leave the office' }).click()
      await a.getByText(/^No office is joined/).waitFor()
    },
  )

  it('is reached by a secured way only, and not at all before someone joins one', { timeout: 60_000 }, async () => {
    const a = await phoneNamed('Officer')
    const asked: string[] = []
    a.on('worker', (worker) => asked.push(worker.url()))
    await goTo(a, '#/')
    await a.getByRole('heading', { name: 'Plans on this phone' }).waitFor()
    expect(await a.evaluate(() => performance.getEntriesByType('resource').map(({ name }) => name))).not.toContainEqual(
      expect.stringMatching(/\/(office|pipe-worker)-[A-Za-z0-9_]{8}\.js$/),
    )
    expect(asked).toEqual([])
    await goTo(a, '#/settings')
    await a.getByRole('button', { name: 'Join an office' }).click()
    const sheet = a.getByRole('dialog')
    for (const [field, text] of [
      ['Address of the server', 'ws://office.invalid'],
      ['Key', KEY],
      ['Name of the programme', 'Landing sites'],
    ] as const)
      await sheet.getByLabel(field).fill(text)
    expect(await accessibilityFaults(a)).toEqual([])
    await sheet.getByRole('button', { name: 'Join an office' }).click()
    await sheet.getByText(/This way is not secured/).waitFor()
  })
})
