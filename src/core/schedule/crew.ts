import type { Trade } from './wall-work.ts'

/** The trades that a kiln takes, in the order of the list. */
export const TRADES: readonly Trade[] = ['mason', 'labourer', 'carpenter']
/** Where the plan says how many there are. */
export const CREW_FIELD = { mason: 'masons', labourer: 'labourers', carpenter: 'carpenters' } as const
