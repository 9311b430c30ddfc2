import { eraseDatabase } from '../../device/database/connection.ts'
import { isPersistent, storageEstimate, type Persistence } from '../../device/offline/storage.ts'
import { stopApp } from './actions.ts'
import type { Erased } from './app-state.ts'
import { keeper } from './keeper.ts'
import { store } from './store.ts'

/** Gives this phone a name, which goes along with what is changed on it from now on. */
export async function namePhone(name: string): Promise<void> {
  const { shelf } = await keeper()
  const phoneName = name.trim().slice(0, 80)
  await shelf.putNote('name', phoneName)
  store.setState({ phoneName })
}

/** How safe the browser says that this phone's plans are, and how much room they take. */
export interface PhoneStorage {
  readonly persistence: Persistence
  readonly usedBytes: number | null
}

/** Asks nothing of anyone: only tells. */
export async function phoneStorage(): Promise<PhoneStorage> {
  const [persistence, estimate] = await Promise.all([isPersistent(), storageEstimate()])
  return { persistence, usedBytes: estimate?.usedBytes ?? null }
}

/** Takes everything of this app off this phone: plans, earlier copies, settings, and the app's own files kept for use without a network. */
export async function eraseEverything(): Promise<Erased> {
  const { shelf, tabs } = await keeper()
  const ids = (await shelf.rows()).map(({ id }) => id)
  const copies = (await Promise.all(ids.map((id) => shelf.copies(id)))).reduce((sum, { length }) => sum + length, 0)
  const { isLasting } = shelf
  tabs.tell({ kind: 'erased' })
  await stopApp()
  if (isLasting) await eraseDatabase()
  localStorage.clear()
  const erased = { plans: ids.length, copies, files: await eraseFiles() }
  store.setState({ erased })
  return erased
}

/** Takes away the app's own files, so that not even the app is left; gives their number. */
async function eraseFiles(): Promise<number> {
  let files = 0
  if ('caches' in globalThis)
    for (const name of await caches.keys()) {
      files += (await (await caches.open(name)).keys()).length
      await caches.delete(name)
    }
  if ('serviceWorker' in navigator)
    for (const worker of await navigator.serviceWorker.getRegistrations()) await worker.unregister()
  return files
}
