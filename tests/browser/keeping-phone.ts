import { execFile } from 'node:child_process'
import { mkdtemp, rm } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { promisify } from 'node:util'
import type { Browser, BrowserContext, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, expect } from 'vitest'
import { FIRST } from '../app/state/first-answers.ts'
import { complaints, launch, phone } from './browser.ts'
import { AppServer } from './server.ts'
import type {} from './keeping-page/main.ts'

export interface KeepingPhone {
  readonly browser: Browser
  readonly server: AppServer
  readonly context: BrowserContext
  readonly url: string
}

/** Builds the bare page around the app's state once, and gives each test a server and a phone of its own. */
export function keepingPhone(): KeepingPhone {
  let dir: string
  const here = {} as { -readonly [part in keyof KeepingPhone]: KeepingPhone[part] }
  beforeAll(async () => {
    dir = await mkdtemp(path.join(os.tmpdir(), 'keeping-'))
    const root = path.resolve(import.meta.dirname, '../..')
    const vite = ['node_modules/vite/bin/vite.js', 'build', 'tests/browser/keeping-page', '--config', 'vite.config.ts']
    await promisify(execFile)(process.execPath, [...vite, '--logLevel', 'warn', '--outDir', dir, '--emptyOutDir'], {
      cwd: root,
      env: { ...process.env, NODE_ENV: 'production', BUILD_ID: 'keeping', VITEST: '' },
    })
    here.browser = await launch()
  })
  afterAll(async () => {
    await here.browser.close()
    await rm(dir, { recursive: true })
  })
  beforeEach(async () => {
    here.server = new AppServer(dir)
    here.url = await here.server.open()
    here.context = await phone(here.browser)
  })
  afterEach(async () => {
    const found = complaints(here.context)
    await here.context.close()
    await here.server.close()
    // oxlint-disable-next-line vitest/no-standalone-expect -- whatever a test was about, nothing may have broken on the way
    expect(found).toEqual([])
  })
  return here
}

/** A tab of the app, when the database has answered. */
export async function tabIn(context: BrowserContext, url: string): Promise<Page> {
  const page = await context.newPage()
  await page.goto(url)
  await page.waitForFunction(() => window.keeping.store.getState().phase === 'ready')
  return page
}

/** The plan made from three answers, saved. */
export async function planIn(page: Page): Promise<string> {
  const id = await page.evaluate((first) => window.keeping.createPlan(first), FIRST)
  await savingIs(page, 'saved')
  return id
}
export const savingIs = (page: Page, kind: string) =>
  page.waitForFunction((wanted) => window.keeping.store.getState().open?.saving.kind === wanted, kind)
export const rename = (page: Page, name: string) =>
  page.evaluate((text) => window.keeping.setField('name', text).ok, name)
export const nameIn = (page: Page) => page.evaluate(() => window.keeping.store.getState().open?.plan.name)
export const rowsIn = (page: Page) =>
  page.evaluate(() => window.keeping.store.getState().rows.map(({ name, plan }) => ({ name, isWhole: plan !== null })))
export const open = (page: Page, id: string) => page.evaluate((planId) => window.keeping.openPlan(planId), id)
