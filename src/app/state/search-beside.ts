import { trustedWorkerUrl } from '../../device/offline/trusted-worker-url.ts'
import type { SearchAsk } from './search-worker.ts'
import { address as workerUrl } from './search-worker.ts?chunk'

/**
 * A search beside the page, so that the screen stays quick; `hear` is told each of its news up to the one of kind `end`, or `null` where it could
 * not run. Gives back what stops it.
 */
export function searchBeside<News extends { readonly kind: string }>(
  ask: SearchAsk,
  hear: (news: News | null) => void,
): () => void {
  let worker: Worker
  try {
    worker = new Worker(trustedWorkerUrl(workerUrl), { type: 'module' })
  } catch {
    hear(null)
    return () => {}
  }
  worker.addEventListener('message', ({ data }: MessageEvent<News>) => {
    hear(data)
    if (data.kind === 'end') worker.terminate()
  })
  worker.addEventListener('error', () => {
    worker.terminate()
    hear(null)
  })
  worker.postMessage(ask)
  return () => {
    worker.terminate()
  }
}
