import type { Finding } from '../basics/finding.ts'
import type { PurchaseLine } from '../purchase/line.ts'
import type { Plan } from '../plan/schema.ts'
import { dayNumber } from '../schedule/day-number.ts'

/** Days after which a price is asked again: common practice. */
const OLD_PRICE_DAYS = 60

/** Offers that the list uses and whose price was seen too long ago, by their ids. `today` is a day as text; a price without a day is not judged. */
export function oldPrices(plan: Plan, lines: readonly PurchaseLine[], today: string): readonly string[] {
  const used = new Set(lines.flatMap(({ offerId }) => (offerId === null ? [] : [offerId])))
  return [...used].filter((id) => isOldPrice(plan.offers[id]?.seen ?? null, today))
}

/** Was a price seen so long ago that it should be asked again? One without a day is not judged. */
export function isOldPrice(seen: string | null, today: string): boolean {
  const now = dayNumber(today)
  const then = seen === null ? null : dayNumber(seen)
  return now !== null && then !== null && now - then > OLD_PRICE_DAYS
}

/** One line about them all, or nothing. */
export const oldPriceFindings = (old: readonly string[]): Finding[] =>
  old.length === 0
    ? []
    : [
        {
          level: 'caution',
          kind: 'money.old-prices',
          args: { count: old.length, days: OLD_PRICE_DAYS },
          card: 'money',
          remedies: [],
        },
      ]
