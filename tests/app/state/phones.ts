import 'fake-indexeddb/auto'
import { IDBFactory } from 'fake-indexeddb'
import { afterEach, beforeEach, vi } from 'vitest'
import { startApp, stopApp } from '../../../src/app/state/actions.ts'
import { namePhone } from '../../../src/app/state/phone-actions.ts'
import { store } from '../../../src/app/state/store.ts'

const phones = new Map<string, IDBFactory>()

/** Puts one phone down and takes another up: each has a database of its own, and its name. */
export async function takeUp(name: string): Promise<void> {
  await stopApp()
  const database = phones.get(name) ?? new IDBFactory()
  phones.set(name, database)
  globalThis.indexedDB = database
  await startApp()
  await namePhone(name)
}

/** Before each test of the file no phone is there, and Node has what the app needs of a page. */
export function phonesInNode(): void {
  beforeEach(() => {
    phones.clear()
    globalThis.indexedDB = new IDBFactory()
    vi.stubGlobal('window', new EventTarget())
    vi.stubGlobal('document', Object.assign(new EventTarget(), { visibilityState: 'visible' }))
    vi.stubGlobal('navigator', {})
  })
  afterEach(async () => {
    await stopApp()
    vi.unstubAllGlobals()
  })
}

/** The plan on the screen. */
export const open = () => {
  const { open: plan } = store.getState()
  if (plan === null) throw new Error('no plan is open')
  return plan
}
export const saved = () => vi.waitUntil(() => open().saving.kind === 'saved')
