import { HocuspocusProvider, HocuspocusProviderWebsocket } from '@hocuspocus/provider'
import * as Y from 'yjs'
import { encodeDocument } from '../../database/document-bytes.ts'
import type { Private } from '../chosen.ts'
import { forOthers } from '../privacy.ts'
import type { OfficeState } from './office-state.ts'
import { PipeSocket } from './pipe-socket.ts'

/** Quiet after the last change before it goes out or comes in: typing is one message, not one a letter. */
const PAUSE_MS = 700
/** Plans of one programme that a phone takes up; a list from outside may not fill it. */
const MOST_PLANS = 500
const LONGEST_RETRY_MS = 15_000
/** Origin of what this phone puts into the office's documents. */
const HERE = 'this phone'

export interface OfficeParts {
  readonly url: URL
  readonly key: string
  /** Which plans belong together; phones that name the same one share them. */
  readonly programme: string
  readonly chosen: Private
  /** The plan's document as it is on this phone; null where it is not here, or was put away. */
  readonly documentOf: (planId: string) => Promise<Uint8Array | null>
  /** Takes in what the office has. It is checked like anything from outside, and may be refused. */
  readonly take: (planId: string, document: Uint8Array) => Promise<void>
  /** A plan of the programme that this phone did not know of. */
  readonly found: (planId: string) => Promise<boolean>
  readonly onState: (state: OfficeState) => void
}

export interface Office {
  /** Puts a plan into the programme, or goes on with one that is there. */
  readonly share: (planId: string) => void
  /** To be called when a plan changed on this phone. */
  readonly changed: (planId: string) => void
  readonly leave: () => void
}

interface AtOffice {
  readonly document: Y.Doc
  readonly provider: HocuspocusProvider
}
interface PlanThere extends AtOffice {
  readonly push: () => void
  readonly end: () => void
}

/** Runs work once things have been quiet for a moment. */
function afterPause(work: () => Promise<void>): { readonly soon: () => void; readonly cancel: () => void } {
  let timer: ReturnType<typeof setTimeout> | undefined
  const cancel = () => {
    clearTimeout(timer)
  }
  const soon = () => {
    cancel()
    timer = setTimeout(() => void work().catch(() => {}), PAUSE_MS)
  }
  return { soon, cancel }
}

/**
 * Joins a programme of plans at an office's Hocuspocus server. The server gets documents of its own, in which private things are blanked unless chosen, and what
 * comes from it goes through the same door as a file: so nobody at the office can break a plan on a phone.
 */
export function joinOffice(parts: OfficeParts): Office {
  const { url, key, programme, chosen, documentOf, take, found, onState } = parts
  let isRefused = false
  const socket = new HocuspocusProviderWebsocket({
    url: url.href,
    WebSocketPolyfill: PipeSocket,
    maxDelay: LONGEST_RETRY_MS,
    onStatus: () => {
      tell()
    },
  })
  const plans = new Map<string, PlanThere>()

  function open(name: string, isFirst = false): AtOffice {
    const document = new Y.Doc()
    const provider = new HocuspocusProvider({
      websocketProvider: socket,
      name: `${programme}/${name}`,
      document,
      // One of them has to be heard from now and then, or the connection counts as dead.
      ...(!isFirst && { awareness: null }),
      token: key,
      onSynced: () => {
        tell()
      },
      onUnsyncedChanges: () => {
        tell()
      },
      onAuthenticationFailed: () => {
        isRefused = true
        socket.disconnect()
        tell()
      },
    })
    provider.attach()
    return { document, provider }
  }

  const list = open('list', true)
  const listed = list.document.getMap<unknown>('plans')
  const readList = async () => {
    for (const planId of [...listed.keys()].slice(0, MOST_PLANS))
      // Asked again after the wait: the list may have been read once more meanwhile.
      if (!plans.has(planId) && (await found(planId)) && !plans.has(planId)) attach(planId)
  }
  listed.observe(() => void readList().catch(() => {}))

  function attach(planId: string): PlanThere {
    const there = open(`plan/${planId}`)
    const { document, provider } = there
    const push = async () => {
      const bytes = await documentOf(planId)
      if (bytes === null) return
      const copy = forOthers(bytes, chosen)
      Y.applyUpdate(document, Y.encodeStateAsUpdate(copy, Y.encodeStateVector(document)), HERE)
      copy.destroy()
    }
    const pull = async () => {
      if (provider.synced) await take(planId, encodeDocument(document))
    }
    const pushing = afterPause(push)
    const pulling = afterPause(pull)
    document.on('update', (_update: Uint8Array, origin: unknown) => {
      if (origin !== HERE) pulling.soon()
    })
    provider.on('synced', pulling.soon)
    const plan: PlanThere = {
      ...there,
      push: pushing.soon,
      end: () => {
        pushing.cancel()
        pulling.cancel()
        provider.destroy()
        document.destroy()
      },
    }
    plans.set(planId, plan)
    push().catch(() => {})
    return plan
  }

  function tell(): void {
    const all = [list, ...plans.values()].map(({ provider }) => provider)
    const isJoined = all.every((provider) => provider.synced)
    const isSent = all.every((provider) => !provider.hasUnsyncedChanges)
    onState({
      kind: isRefused ? 'refused' : isJoined ? 'joined' : 'away',
      plans: plans.size,
      isSent: isJoined && isSent,
    })
  }

  tell()
  return {
    share: (planId) => {
      if (!plans.has(planId)) attach(planId)
      if (!listed.has(planId)) listed.set(planId, 1)
      tell()
    },
    changed: (planId) => {
      plans.get(planId)?.push()
    },
    leave: () => {
      for (const plan of plans.values()) plan.end()
      plans.clear()
      list.provider.destroy()
      list.document.destroy()
      socket.destroy()
    },
  }
}
