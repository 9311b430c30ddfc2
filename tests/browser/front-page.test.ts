import { readFile } from 'node:fs/promises'
import path from 'node:path'
import type { BrowserContext, Page } from 'playwright-core'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { complaints, phone, waitForOffline } from './browser.ts'
import { browser, serveApp, url } from './served.ts'

const PLANS = 500
const TURNS = 9
/** Rows that no version of the app ever wrote. */
const DAMAGED: readonly unknown[] = [null, { format: 'kilnwright', version: 2, chambers: 'many' }, '<b>']

let context: BrowserContext
serveApp('each')
beforeEach(async () => {
  context = await phone(browser)
})
afterEach(async () => {
  const found = complaints(context)
  await context.close()
  // oxlint-disable-next-line vitest/no-standalone-expect -- whatever a test was about, nothing may have broken on the way
  expect(found).toEqual([])
})

interface Row {
  readonly id: string
  readonly name: string
  readonly plan: unknown
}
async function rows(): Promise<Row[]> {
  const examples = await Promise.all(
    ['one-chamber', 'two-chambers', 'three-chambers'].map(async (name) => {
      const file = path.resolve(import.meta.dirname, `../../shared/examples/${name}.json`)
      return JSON.parse(await readFile(file, 'utf8')) as Record<string, unknown>
    }),
  )
  const short = { offers: {}, spending: {}, members: {}, contributions: {}, example: false }
  return Array.from({ length: PLANS }, (_, index) => {
    const id = `plan-${String(index)}`
    const name = `Plan ${String(index)}`
    const isDamaged = index >= 250 && index < 250 + DAMAGED.length
    return { id, name, plan: isDamaged ? DAMAGED[index - 250] : { ...examples[index % 3], ...short, id, name } }
  })
}

/** Puts rows where the app keeps them, as it writes them, the last one newest. */
const put = (page: Page, all: readonly Row[]) =>
  page.evaluate(
    (list) =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open('kilnwright')
        request.addEventListener('success', () => {
          const tx = request.result.transaction('plans', 'readwrite')
          for (const [index, row] of list.entries())
            tx.objectStore('plans').put({ ...row, savedAtMs: 1.7e12 + index, deletedAtMs: null })
          tx.addEventListener('complete', () => {
            request.result.close()
            resolve()
          })
          tx.addEventListener('abort', () => {
            reject(new Error('not written'))
          })
        })
      }),
    all,
  )

interface Seen {
  firstMs?: number
  allMs?: number
}
const seenOn = (page: Page) => page.evaluate(() => (globalThis as unknown as { seen: Seen }).seen)

/** Opens the front page again, without a network: when its first plans were on the screen, and when `count` stood in the list, ms from the start of the page. */
async function timed(count: number): Promise<Required<Seen>> {
  const page = await context.newPage()
  await page.goto(url)
  await page.waitForFunction(() => (globalThis as unknown as { seen: Seen }).seen.firstMs !== undefined)
  await expect.poll(() => page.locator('.shelf').count(), { timeout: 20_000 }).toBe(count)
  const { firstMs = NaN, allMs = NaN } = await seenOn(page)
  await page.close()
  return { firstMs, allMs }
}
const median = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1] ?? NaN

const drawn = (page: Page) => page.locator('.shelf svg.mini-kiln:has(path)').count()

describe('the front page of five hundred plans', () => {
  it('stands at once, draws what comes into sight, and lists every plan though some are damaged', async () => {
    const first = await context.newPage()
    await first.goto(url)
    await waitForOffline(first)
    await first.getByText('Ready without signal').waitFor()
    const all = await rows()
    await put(first, all.slice(0, 1))
    await first.close()
    await context.setOffline(true)
    await context.addInitScript(() => {
      const seen: Seen = {}
      Object.assign(globalThis, { seen })
      new MutationObserver(() => {
        const count = document.querySelectorAll('.shelf').length
        if (count > 0 && seen.allMs === undefined)
          requestAnimationFrame(() => {
            const { port1, port2 } = new MessageChannel()
            port1.addEventListener('message', () => (seen.firstMs ??= performance.now()))
            port1.start()
            port2.postMessage(0)
          })
        if (count > 0) seen.allMs = performance.now()
      }).observe(document, { childList: true, subtree: true })
    })
    const one: Required<Seen>[] = []
    const many: Required<Seen>[] = []
    for (let turn = 0; turn < TURNS; turn++) one.push(await timed(1))
    const page = await context.newPage()
    await page.goto(url)
    await put(page, all)
    await page.close()
    for (let turn = 0; turn < TURNS; turn++) many.push(await timed(PLANS))
    const tell = (runs: readonly Required<Seen>[], key: keyof Seen) => {
      const times = runs.map((run) => run[key])
      return `${median(times).toFixed(0)} ms (least ${Math.min(...times).toFixed(0)})`
    }
    console.log(
      `front page from the start of the page, median of ${String(TURNS)}: with one plan seen after ${tell(one, 'firstMs')}; ` +
        `with ${String(PLANS)}, the first of them seen after ${tell(many, 'firstMs')}, all listed after ${tell(many, 'allMs')}`,
    )

    const again = await context.newPage()
    await again.goto(url)
    await again.getByText('Plan 499').waitFor()
    await expect.poll(() => again.locator('.shelf').count(), { timeout: 20_000 }).toBe(PLANS)
    expect(await drawn(again)).toBeLessThan(40)
    const last = again.locator('.shelf').last()
    expect(await last.locator('path').count()).toBeLessThanOrEqual(1)
    expect(await again.getByText('This plan’s data are damaged').count()).toBe(DAMAGED.length)
    await last.scrollIntoViewIfNeeded()
    await expect.poll(() => last.locator('svg.mini-kiln path').count()).toBeGreaterThan(3)
    expect(await drawn(again)).toBeLessThan(120)
    await expect(last.locator('b').textContent()).resolves.toBe('Plan 0')
  })
})
