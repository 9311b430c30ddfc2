import { readFile } from 'node:fs/promises'
import path from 'node:path'
import { beforeEach, describe, expect, inject, it } from 'vitest'
import type { BrowserContext, Page } from 'playwright-core'
import { PLAN_VERSION } from '../../src/core/plan/schema.ts'
import { tellFault } from '../faults.ts'
import {
  keepingPhone,
  nameIn,
  open,
  planIn,
  rename,
  rowsIn,
  savingIs,
  tabIn,
  type KeepingPhone,
} from './keeping-phone.ts'
import { AppServer } from './server.ts'

const here: KeepingPhone = keepingPhone()
let context: BrowserContext
let url: string
beforeEach(() => {
  ;({ context, url } = here)
})
const tabOf = (): Promise<Page> => tabIn(context, url)

/** A page of the same origin without the app, from which the phone's database is looked at and prepared. */
async function besideTheApp(): Promise<Page> {
  const page = await context.newPage()
  await page.goto(`${url}/icon.svg`)
  return page
}

interface Put {
  readonly version: number
  readonly rows: readonly { readonly id: string; readonly name: string; readonly plan: unknown }[]
  /** Documents in base64, by the plan's id. */
  readonly documents: readonly { readonly planId: string; readonly base64: string }[]
}

/** Writes a database as the first version of the app laid it out, or adds to the one that is there; gives back what lets go of it. */
async function putInto(page: Page, put: Put): Promise<void> {
  await page.evaluate(
    ({ version, rows, documents }) =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open('kilnwright', version)
        request.addEventListener('error', () => {
          reject(new Error('not opened'))
        })
        request.addEventListener('upgradeneeded', () => {
          const made = request.result
          made.createObjectStore('plans', { keyPath: 'id' })
          made.createObjectStore('updates', { autoIncrement: true }).createIndex('planId', 'planId')
          made.createObjectStore('copies', { autoIncrement: true }).createIndex('planId', 'planId')
          made.createObjectStore('phone')
        })
        request.addEventListener('success', () => {
          const database = request.result
          Object.assign(globalThis, { held: database })
          const tx = database.transaction(['plans', 'updates'], 'readwrite')
          for (const row of rows) tx.objectStore('plans').put({ ...row, savedAtMs: 1, deletedAtMs: null })
          for (const { planId, base64 } of documents)
            tx.objectStore('updates').add({
              planId,
              bytes: Uint8Array.from(atob(base64), (char) => char.charCodeAt(0)),
            })
          tx.addEventListener('complete', () => {
            resolve()
          })
        })
      }),
    put,
  )
}
const letGo = (page: Page) =>
  page.evaluate(() => {
    ;(globalThis as unknown as { held: IDBDatabase }).held.close()
  })

/** A file that the first version of the app wrote, with the document as that version kept it. */
async function fileOfVersion1() {
  const name = '../device/database/versions/1-two-chambers.kilnwright.json'
  const text = await readFile(path.join(import.meta.dirname, name), 'utf8')
  return { text, ...(JSON.parse(text) as { plan: { id: string; name: string; version: number }; document: string }) }
}
async function databaseOfVersion1(): Promise<Put> {
  const { plan, document } = await fileOfVersion1()
  return {
    version: 1,
    rows: [{ id: plan.id, name: plan.name, plan }],
    documents: [{ planId: plan.id, base64: document }],
  }
}

describe('the phone’s database', () => {
  it('held by an old tab is waited for, which is said, and all of it is there when that tab lets go', async () => {
    const old = await besideTheApp()
    await putInto(old, await databaseOfVersion1())
    const page = await context.newPage()
    await page.goto(url)
    await page.waitForFunction(() => window.keeping.store.getState().storage === 'blocked')
    expect(await page.evaluate(() => window.keeping.store.getState().phase)).toBe('loading')
    await letGo(old)
    await page.waitForFunction(() => window.keeping.store.getState().phase === 'ready')
    expect(await page.evaluate(() => window.keeping.store.getState().storage)).toBe('lasting')
    expect(await rowsIn(page)).toEqual([{ name: 'Kept by version 1, renamed', isWhole: true }])
    tellFault('upgrade blocked by an old tab', 1)
  })

  it('that throws when it is opened leaves an app that works in memory, says so and hands the plan on as a file', async () => {
    await context.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('not in this window', 'SecurityError')
      }
    })
    const page = await tabOf()
    expect(await page.evaluate(() => window.keeping.store.getState().storage)).toBe('memory-only')
    const app = new AppServer(inject('appA'))
    const appUrl = await app.open()
    const screen = await context.newPage()
    await screen.goto(appUrl)
    await screen.getByText(/^This browser keeps nothing/).waitFor()
    await screen.getByRole('button', { name: 'Example' }).click()
    await screen.getByRole('dialog').getByRole('button').nth(1).click()
    await screen.getByRole('link', { name: /^Walls/ }).waitFor()
    await screen.getByText(/^This browser keeps nothing/).waitFor()
    const saved = screen.waitForEvent('download')
    await screen.evaluate(() => {
      window.location.hash = `#/hand-over/${window.location.hash.split('/')[2] ?? ''}`
    })
    await screen.getByRole('button', { name: 'As a file' }).click()
    expect((await saved).suggestedFilename()).toMatch(/\.kilnwright\.json$/)
    await app.close()
    tellFault('database that throws when opened', 1)
  })

  it('whose connection is dropped in the middle of typing is opened anew, and nothing is lost', async () => {
    const DROPS = 20
    await context.addInitScript(() => {
      const held: IDBDatabase[] = []
      const own = Object.getOwnPropertyDescriptor(IDBRequest.prototype, 'result') ?? {}
      Object.defineProperty(IDBRequest.prototype, 'result', {
        get(this: IDBRequest) {
          const result: unknown = own.get?.call(this)
          if (result instanceof IDBDatabase && !held.includes(result)) held.push(result)
          return result
        },
      })
      Object.assign(globalThis, {
        drop: () => {
          const open = held.splice(0)
          for (const database of open) database.close()
          return open.length
        },
      })
    })
    const page = await tabOf()
    const id = await planIn(page)
    let dropped = 0
    for (let turn = 1; turn <= DROPS; turn++) {
      dropped += await page.evaluate((number) => {
        window.keeping.setField('name', `Before drop ${String(number)}`)
        const count = (globalThis as unknown as { drop: () => number }).drop()
        window.keeping.setField('trays.spares', number)
        return count
      }, turn)
      await savingIs(page, 'saved')
    }
    expect(dropped).toBeGreaterThanOrEqual(DROPS)
    const again = await tabOf()
    await open(again, id)
    expect(await again.evaluate(() => window.keeping.store.getState().open?.plan)).toMatchObject({
      name: `Before drop ${String(DROPS)}`,
      trays: { spares: DROPS },
    })
    tellFault('database connection dropped while typing', DROPS)
  })

  it('of the first version opens with the plan that the first version kept, and goes on from there', async () => {
    const old = await besideTheApp()
    const put = await databaseOfVersion1()
    await putInto(old, put)
    await letGo(old)
    const page = await tabOf()
    const { plan } = await fileOfVersion1()
    await open(page, plan.id)
    // Everything that was decided then is there, field by field; only the version is ours.
    expect(await page.evaluate(() => window.keeping.store.getState().open?.plan)).toMatchObject({
      ...plan,
      version: PLAN_VERSION,
    })
    await rename(page, 'Went on in this version')
    await savingIs(page, 'saved')
    const again = await tabOf()
    await open(again, plan.id)
    expect(await nameIn(again)).toBe('Went on in this version')
    tellFault('database and document of the first version', 1)
  })

  it('with damaged rows and one of a newer version shows every other plan, touches nothing and hands them on raw', async () => {
    const page = await tabOf()
    await planIn(page)
    const side = await besideTheApp()
    const { plan, document } = await fileOfVersion1()
    await putInto(side, {
      version: 2,
      rows: [
        { id: 'no-plan', name: 'Damaged', plan: 'rubbish' },
        { id: 'of-version-9', name: 'Newer', plan: { ...plan, id: 'of-version-9', version: 9 } },
        { id: plan.id, name: 'Row damaged, document whole', plan: { format: 'kilnwright-plan', version: 2 } },
      ],
      documents: [
        { planId: 'no-plan', base64: 'AQID' },
        { planId: plan.id, base64: document },
      ],
    })
    await letGo(side)
    const again = await tabOf()
    expect(Object.fromEntries((await rowsIn(again)).map(({ name, isWhole }) => [name, isWhole]))).toEqual({
      'By the landing': true,
      Damaged: false,
      Newer: false,
      // The document is whole, and it decides: also what the plan is called.
      [plan.name]: true,
    })
    const rows = await again.evaluate(() => window.keeping.store.getState().rows)
    expect(rows.find(({ name }) => name === 'Newer')?.trouble).toEqual({ kind: 'newer', theirVersion: 9 })
    const raw = await again.evaluate(async () => (await window.keeping.exportPlan('no-plan')).text)
    expect(JSON.parse(raw)).toMatchObject({ stored: ['AQID'] })
    tellFault('damaged row or plan of a newer version among others', 3)
  })
})

describe('a file of the first version', () => {
  it('opens, and its document merges with later work', async () => {
    const page = await tabOf()
    const { text, plan } = await fileOfVersion1()
    const take = () => page.evaluate((content) => window.keeping.openFile(new Blob([content])), text)
    expect(await take()).toEqual({ ok: true, value: plan.id })
    await page.evaluate(() => window.keeping.setField('trays.spares', 7))
    expect(await take()).toEqual({ ok: true, value: plan.id })
    expect(await page.evaluate(() => window.keeping.store.getState().open?.plan)).toMatchObject({
      name: plan.name,
      trays: { spares: 7 },
    })
  })
})

describe('lasting storage', () => {
  it('is asked for once, after the first work and not before', async () => {
    await context.addInitScript(() => {
      // The blank page before ours has none.
      if (!('StorageManager' in globalThis)) return
      const asked = { times: 0 }
      Object.assign(globalThis, { asked })
      StorageManager.prototype.persist = () => {
        asked.times++
        return Promise.resolve(true)
      }
    })
    const page = await tabOf()
    const times = () => page.evaluate(() => (globalThis as unknown as { asked: { times: number } }).asked.times)
    expect(await times()).toBe(0)
    await planIn(page)
    await rename(page, 'More work')
    await expect.poll(times).toBe(1)
  })
})

describe('two phones of different versions', () => {
  it('an older app refuses a newer file with both versions named, and changes nothing', async () => {
    const page = await tabOf()
    const { text } = await fileOfVersion1()
    const newer = text.replace(/"version": 1,(\s*"id")/, '"version": 9,$1')
    expect(newer).not.toBe(text)
    expect(await page.evaluate((content) => window.keeping.openFile(new Blob([content])), newer)).toMatchObject({
      ok: false,
      problems: [{ kind: 'newer', theirVersion: 9, ourVersion: PLAN_VERSION }],
    })
    expect(await rowsIn(page)).toEqual([])
  })
})
