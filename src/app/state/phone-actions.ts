import { eraseDatabase } from '../../device/database/connection.ts'
import { stopApp } from './actions.ts'
import { keeper } from './keeper.ts'
import { store } from './store.ts'

/** Gives this phone a name, which goes along with what is changed on it from now on. */
export async function namePhone(name: string): Promise<void> {
  const { shelf } = await keeper()
  const phoneName = name.trim().slice(0, 80)
  await shelf.putNote('name', phoneName)
  store.setState({ phoneName })
}

/** What was erased, to be told. */
export interface Erased {
  readonly plans: number
}

/** Takes everything of this app off this phone: plans, earlier copies, settings, and the app's own files kept for use without a network. */
export async function eraseEverything(): Promise<Erased> {
  const { shelf } = await keeper()
  const plans = (await shelf.rows()).length
  await stopApp()
  if (shelf.isLasting) await eraseDatabase()
  localStorage.clear()
  if ('caches' in globalThis) for (const name of await caches.keys()) await caches.delete(name)
  if ('serviceWorker' in navigator)
    for (const worker of await navigator.serviceWorker.getRegistrations()) await worker.unregister()
  return { plans }
}
