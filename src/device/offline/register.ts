import { messageSW, Workbox } from 'workbox-window'
import { askOtherTabs, answerOtherTabs } from './tabs.ts'
import { trustedWorkerUrl } from './trusted-worker-url.ts'

/**
 * How far the app can be used without a network.
 *
 * - `starting`: not known yet.
 * - `ready`: a worker is active and every file of the app is in its cache.
 * - `update-waiting`: the same, and a newer version waits for `applyUpdate`.
 * - `unsupported`: this browser, or a page that is not served securely, has no service workers.
 * - `failed`: the worker could not be installed, or some of its files are gone.
 */
export interface OfflineStatus {
  readonly kind: 'starting' | 'ready' | 'update-waiting' | 'unsupported' | 'failed'
}

const RETRY_MS = 500

let worker: Workbox | undefined
let isSafeHere = () => true

/**
 * Registers the worker and reports every change of the status; call it once, when the page starts.
 *
 * When a new version takes over, every open tab reloads, because the files of its old version are gone by then. A tab
 * whose `isSafeToReload` answers no keeps its unsaved work on the screen and reloads as soon as the answer is yes.
 */
export function watchOffline(listener: (status: OfflineStatus) => void, isSafeToReload: () => boolean): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) {
    listener({ kind: 'unsupported' })
    return
  }
  isSafeHere = isSafeToReload
  answerOtherTabs(isSafeToReload)
  let kind: OfflineStatus['kind'] = 'starting'
  const report = (next: OfflineStatus['kind']) => {
    kind = next
    listener({ kind })
  }
  report('starting')

  worker = new Workbox(trustedWorkerUrl(`${import.meta.env.BASE_URL}sw.js`))
  worker.addEventListener('waiting', () => {
    report('update-waiting')
  })
  // The first install takes control too; only a change of worker means new code.
  let controlled = navigator.serviceWorker.controller !== null
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    if (controlled || kind === 'update-waiting') reloadWhenSafe()
    controlled = true
  })
  void start(worker, (next) => {
    if (kind !== 'update-waiting') report(next)
  })
}

/**
 * Lets the waiting version take over, in this tab and in every other.
 * `held` says that a tab has unsaved work: nothing was done, and the update goes on waiting.
 */
export async function applyUpdate(): Promise<'applying' | 'held'> {
  if (!isSafeHere() || !(await askOtherTabs())) return 'held'
  worker?.messageSkipWaiting()
  return 'applying'
}

async function start(workbox: Workbox, report: (kind: 'ready' | 'failed') => void): Promise<void> {
  try {
    const registration = await workbox.register()
    if (registration === undefined) throw new Error('no registration')
    // A first install that fails ends as redundant, and no worker ever becomes active.
    registration.installing?.addEventListener('statechange', (event) => {
      if (event.target instanceof ServiceWorker && event.target.state === 'redundant' && registration.active === null) {
        report('failed')
      }
    })
    const { active } = await navigator.serviceWorker.ready
    const complete: unknown = active === null ? false : await messageSW(active, { type: 'IS_COMPLETE' })
    report(complete === true ? 'ready' : 'failed')
  } catch {
    report('failed')
  }
}

function reloadWhenSafe(): void {
  if (isSafeHere()) window.location.reload()
  else setTimeout(reloadWhenSafe, RETRY_MS)
}
