import type { KeepingTrouble } from './connection.ts'
import { joined } from './document-bytes.ts'
import type { SaveOutcome } from './shelf.ts'

/** How safe a plan is. Times are milliseconds since 1970 by this phone's clock. */
export type Saving =
  | { readonly kind: 'saved'; readonly atMs: number }
  | { readonly kind: 'saving' }
  | { readonly kind: 'not-saved'; readonly reason: KeepingTrouble }
  /** No database on this phone (private window): work lives in this tab only; export still works. */
  | { readonly kind: 'memory-only' }

const FIRST_RETRY_MS = 1000
const LAST_RETRY_MS = 30_000

export interface Saver {
  readonly add: (update: Uint8Array) => void
  readonly saving: () => Saving
  /** Nothing waits to be saved. */
  readonly isIdle: () => boolean
  /** Comes when everything is saved, or with what stands in the way. */
  readonly settled: () => Promise<SaveOutcome>
  readonly end: () => void
}

interface SaverParts {
  readonly savedAtMs: number
  readonly isLasting: boolean
  readonly save: (update: Uint8Array) => Promise<SaveOutcome>
  /** After every attempt: a failed one is told too, so that another tab may manage. */
  readonly onAttempt: (update: Uint8Array, isSaved: boolean) => void
  readonly onChange: () => void
}

/**
 * Saves changes at once, one transaction after another; what is typed meanwhile goes into the next.
 * What could not be saved stays in hand and is tried again, with the next change or after a while.
 */
export function startSaver({ savedAtMs, isLasting, save, onAttempt, onChange }: SaverParts): Saver {
  let waiting: Uint8Array[] = []
  let saving: Saving = isLasting ? { kind: 'saved', atMs: savedAtMs } : { kind: 'memory-only' }
  let running: Promise<SaveOutcome> | null = null
  let retryMs = FIRST_RETRY_MS
  let hasEnded = false
  let timer: ReturnType<typeof setTimeout> | undefined

  const say = (next: Saving) => {
    if (isLasting) saving = next
    onChange()
  }
  // A fault of ours on the way is no reason to say "saving" for ever.
  const attempt = async (update: Uint8Array): Promise<SaveOutcome> => {
    try {
      return await save(update)
    } catch {
      return 'failed'
    }
  }
  const run = async (): Promise<SaveOutcome> => {
    clearTimeout(timer)
    while (waiting.length > 0) {
      const batch = waiting
      waiting = []
      const update = joined(batch)
      const outcome = await attempt(update)
      if (hasEnded) return outcome
      if (outcome !== 'saved') {
        waiting.unshift(update)
        running = null
        say({ kind: 'not-saved', reason: outcome })
        onAttempt(update, false)
        timer = setTimeout(start, retryMs)
        retryMs = Math.min(retryMs * 2, LAST_RETRY_MS)
        return outcome
      }
      retryMs = FIRST_RETRY_MS
      onAttempt(update, true)
    }
    running = null
    say({ kind: 'saved', atMs: Date.now() })
    return 'saved'
  }
  // Whoever hears of the outcome may change the plan at once: by then the way must be free for the next run.
  const start = () => {
    if (waiting.length > 0) running ??= run()
  }
  return {
    add: (update) => {
      waiting.push(update)
      if (saving.kind === 'saved') say({ kind: 'saving' })
      start()
    },
    saving: () => saving,
    isIdle: () => waiting.length === 0 && running === null,
    settled: async () => {
      start()
      return running ?? 'saved'
    },
    end: () => {
      hasEnded = true
      clearTimeout(timer)
    },
  }
}
