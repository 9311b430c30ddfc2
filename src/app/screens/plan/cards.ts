import type { CardAddress, Place } from '../route.ts'

/** Decisions, in the order of the job, and the place where each card opens. */
export const PLAN_CARDS = [
  'catch',
  'chambers',
  'walls',
  'openings',
  'ground',
  'trays',
  'place',
  'mixes',
  'money',
  'show',
] as const
export type PlanCard = (typeof PLAN_CARDS)[number]

export const isPlanCard = (card: string | null): card is PlanCard => PLAN_CARDS.some((one) => one === card)

/** Where a typed field of the plan is changed: place and card of its box. */
export function homeOf(field: string): { readonly place: Place; readonly card: CardAddress } {
  const [room = '', id = '', entry = ''] = field.split('.')
  if (room === 'offers') return { place: 'buy', card: `offer:${id}` }
  if (room === 'spending') return { place: 'buy', card: `paid:${id}` }
  if (room === 'contributions') return { place: 'buy', card: `gift:${id}` }
  if (room === 'payouts') return { place: 'buy', card: `payout:${id}` }
  if (room === 'run' && id === 'firings') return { place: 'run', card: `log:${entry}` }
  if (room === 'firing' || room === 'run') return { place: 'run', card: room }
  if (room === 'built') return { place: 'build', card: 'batch' }
  if (room === 'build') return { place: 'build', card: 'crew' }
  if (room === 'waste') return { place: 'plan', card: 'mixes' }
  if (room === 'currency') return { place: 'plan', card: 'money' }
  return { place: 'plan', card: isPlanCard(room) ? room : 'show' }
}
