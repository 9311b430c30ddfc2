import '../../device/older-browsers.ts'
import type { Plan } from '../../core/plan/schema.ts'
import { wallSearch, type WallAsk, type WallNews } from './wall-search-steps.ts'

/** What the page and this worker need of each other. */
interface WorkerScope {
  onmessage: ((event: { readonly data: { readonly plan: Plan; readonly ask: WallAsk } }) => void) | null
  postMessage(news: WallNews): void
}
const scope = globalThis as unknown as WorkerScope

scope.onmessage = ({ data }) => {
  for (const news of wallSearch(data.plan, data.ask)) scope.postMessage(news)
}
