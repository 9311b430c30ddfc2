import { wholeNear } from '../basics/count.ts'
import type { Plan } from './schema.ts'

/**
 * The plan in another currency: figures stay as they read (4500 becomes 4500), only the name of the money changes, since no rate is known.
 * Amounts are kept in minor units, so they are rewritten where the new currency has more or fewer digits; what has no place is rounded.
 */
export function withCurrency(plan: Plan, currency: Plan['currency']): Plan {
  const factor = 10 ** (currency.digits - plan.currency.digits)
  const rewritten = factor === 1 ? plan : (scaled(plan, factor) as Plan)
  return { ...rewritten, currency }
}

/** Every amount lies in a field whose name ends in `Minor`. */
function scaled(value: unknown, factor: number): unknown {
  if (Array.isArray(value)) return value.map((one) => scaled(one, factor))
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(
    Object.entries(value).map(([name, inner]) => [
      name,
      name.endsWith('Minor') && typeof inner === 'number' ? wholeNear(inner * factor) : scaled(inner, factor),
    ]),
  )
}
