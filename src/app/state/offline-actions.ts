import { applyUpdate as applyWaitingUpdate, watchOffline } from '../../device/offline/register.ts'
import { notify } from './notices.ts'
import { store } from './store.ts'

let isFollowing = false

/** Keeps the state in step with what works without a network; once for a page. */
export function followOffline(isSafeToReload: () => boolean): void {
  if (isFollowing) return
  isFollowing = true
  watchOffline(({ kind }) => {
    store.setState({ offline: kind })
  }, isSafeToReload)
}

/** Lets the newer version take over, unless work in some tab is not saved yet. */
export async function applyUpdate(): Promise<void> {
  if ((await applyWaitingUpdate()) === 'held') notify({ key: 'keeping.update-held' })
}
