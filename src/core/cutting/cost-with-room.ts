import { wholeUp } from '../basics/count.ts'
import { type Bar } from './bars.ts'
import { wholeBound } from './linear-bound.ts'
import { at } from './vector.ts'

/** Costs beyond which they are not listed one by one. */
const MOST_COSTS = 20_000

/**
 * The least cost, not below a bound, that some choice of bars has whose room holds the bare pieces: prices do not add up to
 * every sum, and not every sum buys enough. Looks no further than `upTo`.
 */
export function leastCostWithRoom(
  bound: number,
  step: number,
  bars: readonly Bar[],
  room: number,
  upTo: number,
): number {
  const least = wholeBound(bound, step)
  const costs = wholeUp(upTo / step)
  if (bars.length === 0 || costs > MOST_COSTS) return least
  const most = new Float64Array(costs + 1).fill(-Infinity)
  most[0] = bars.reduce((sum, b) => sum + (b.cost === 0 ? (b.available ?? Infinity) * b.room : 0), 0)
  for (let c = 0; c <= costs; c++) {
    for (const bar of bars) {
      const from = c - bar.cost / step
      if (bar.cost > 0 && from >= 0) most[c] = Math.max(at(most, c), at(most, from) + bar.room)
    }
    if (c * step >= least && at(most, c) * (1 + 1e-6) >= room) return c * step
  }
  return least
}
