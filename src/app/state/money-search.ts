import type { MoneyAsk, MoneyNews } from './money-search-steps.ts'
import { searchBeside } from './search-beside.ts'

export type { MoneyNews }

/** What the money can build, looked for beside the page; gives back what stops it. `null` says that it could not run. */
export const searchWithinMoney = (ask: Omit<MoneyAsk, 'kind'>, hear: (news: MoneyNews | null) => void): (() => void) =>
  searchBeside({ kind: 'money', ...ask }, hear)
