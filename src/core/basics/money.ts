import { wholeNear, wholePart } from './count.ts'

/**
 * Splits an amount over weights so that the parts add up to it to the minor unit (largest remainder; ties to the earlier weight).
 * Weights are any non-negative numbers; all zero means equal parts.
 */
export function splitMinor(amountMinor: number, weights: readonly number[]): number[] {
  if (weights.length === 0) return []
  const total = weights.reduce((sum, weight) => sum + weight, 0)
  const shares = weights.map((weight) => (total > 0 ? weight / total : 1 / weights.length) * amountMinor)
  const parts = shares.map(wholePart)
  let left = amountMinor - parts.reduce((sum, part) => sum + part, 0)
  const step = Math.sign(left)
  const byRemainder = shares
    .map((share, index) => ({ index, rest: Math.abs(share - (parts[index] ?? 0)) }))
    .toSorted((a, b) => b.rest - a.rest || a.index - b.index)
  for (let turn = 0; left !== 0; turn++) {
    const next = byRemainder[turn % byRemainder.length]
    if (next === undefined) break
    parts[next.index] = (parts[next.index] ?? 0) + step
    left -= step
  }
  return parts
}

/** A share of an amount, to the nearest minor unit: 15 % of 10 001 is 1500. */
export const shareMinor = (amountMinor: number, share: number): number => wholeNear(amountMinor * share)
