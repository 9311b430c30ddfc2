import type { Derived } from '../basics/derived.ts'
import type { Range } from '../basics/range.ts'
import type { Fuel } from './fuel.ts'

/** The stretch that both routes to the wood allow; null where they do not meet. Its ends keep the working of the route they come from. */
export function bothAllow({ byRatio, byEnergy }: Pick<Fuel, 'byRatio' | 'byEnergy'>): Range<'kg'> | null {
  const low = later(byRatio.low, byEnergy.low.wood)
  const high = byRatio.high.value <= byEnergy.high.wood.value ? byRatio.high : byEnergy.high.wood
  return low.value <= high.value ? { low, high } : null
}

const later = (a: Derived<'kg'>, b: Derived<'kg'>) => (a.value >= b.value ? a : b)
