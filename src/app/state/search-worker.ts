import '../../device/older-browsers.ts'
import { moneySearch, type MoneyAsk } from './money-search-steps.ts'
import { wallSearch, type WallsAsk } from './wall-search-steps.ts'

export type SearchAsk = WallsAsk | MoneyAsk

/** What the page and this worker need of each other. */
interface WorkerScope {
  onmessage: ((event: { readonly data: SearchAsk }) => void) | null
  postMessage(news: unknown): void
}
const scope = globalThis as unknown as WorkerScope

scope.onmessage = ({ data }) => {
  const steps = data.kind === 'walls' ? wallSearch(data.plan, data.ask) : moneySearch(data)
  for (const news of steps) scope.postMessage(news)
}
