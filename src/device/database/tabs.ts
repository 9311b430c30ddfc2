import { isRecord } from './json.ts'

/** What tabs of one phone tell each other. An update that is not saved yet is to be saved by whoever hears of it. */
export type TabMessage =
  | { readonly kind: 'update'; readonly planId: string; readonly bytes: Uint8Array; readonly isSaved: boolean }
  /** The list of plans changed: renamed, deleted, brought back. */
  | { readonly kind: 'rows' }
  /** Everything was erased: whoever still holds plans in hand lets go of them, and writes nothing any more. */
  | { readonly kind: 'erased' }

export interface Tabs {
  readonly tell: (message: TabMessage) => void
  readonly close: () => void
}

/** A message from a tab that may run another version of the app: looked at like anything from outside. Its bytes are looked at by the plan that takes them in. */
function messageFrom(data: unknown): TabMessage | null {
  if (!isRecord(data)) return null
  const { kind, planId, bytes, isSaved } = data
  if (kind === 'rows' || kind === 'erased') return { kind }
  if (kind !== 'update' || typeof planId !== 'string' || typeof isSaved !== 'boolean') return null
  if (!(bytes instanceof Uint8Array)) return null
  return { kind, planId, bytes, isSaved }
}

/** Joins the tabs of this phone; alone where the browser has no channel between tabs. */
export function joinTabs(hear: (message: TabMessage) => void, name = 'kilnwright'): Tabs {
  if (typeof BroadcastChannel === 'undefined') return { tell: () => {}, close: () => {} }
  const channel = new BroadcastChannel(name)
  let isOpen = true
  channel.addEventListener('message', (event: MessageEvent<unknown>) => {
    const message = messageFrom(event.data)
    if (message !== null) hear(message)
  })
  return {
    tell: (message) => {
      if (isOpen) channel.postMessage(message)
    },
    close: () => {
      isOpen = false
      channel.close()
    },
  }
}
