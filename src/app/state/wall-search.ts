import type { Plan } from '../../core/plan/schema.ts'
import { trustedWorkerUrl } from '../../device/offline/trusted-worker-url.ts'
import type { WallAsk, WallNews } from './wall-search-steps.ts'
// The bundler makes this export; the linter reads the file itself.
// oxlint-disable-next-line import/default
import workerUrl from './wall-search-worker.ts?worker&url'

export type { WallAsk, WallNews }

/** Searches beside the page, so that the screen stays quick; gives back what stops it. `null` says that it could not run. */
export function searchWalls(plan: Plan, ask: WallAsk, hear: (news: WallNews | null) => void): () => void {
  let worker: Worker
  try {
    worker = new Worker(trustedWorkerUrl(workerUrl))
  } catch {
    hear(null)
    return () => {}
  }
  worker.addEventListener('message', ({ data }: MessageEvent<WallNews>) => {
    hear(data)
    if (data.kind === 'end') worker.terminate()
  })
  worker.addEventListener('error', () => {
    worker.terminate()
    hear(null)
  })
  worker.postMessage({ plan, ask })
  return () => {
    worker.terminate()
  }
}
