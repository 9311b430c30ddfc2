import type { Plan } from '../../core/plan/schema.ts'
import { searchBeside } from './search-beside.ts'
import type { WallAsk, WallNews } from './wall-search-steps.ts'

export type { WallAsk, WallNews }

/** A longer search over the walls, beside the page; gives back what stops it. `null` says that it could not run. */
export const searchWalls = (plan: Plan, ask: WallAsk, hear: (news: WallNews | null) => void): (() => void) =>
  searchBeside({ kind: 'walls', plan, ask }, hear)
