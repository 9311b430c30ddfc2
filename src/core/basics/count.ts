/** Lengths closer than this are the same length: a hundredth of the finest line a saw or a trowel can follow. */
export const SAME_LENGTH_M = 1e-6

/** Whole modules that fit in a length: 2.4 m of 0.2 m courses is 12, though 2.4 / 0.2 is 11.999…8. */
export const wholeModulesIn = (lengthM: number, moduleM: number): number =>
  Math.floor((lengthM + SAME_LENGTH_M) / moduleM)

/** Fewest whole modules that cover a length: 2.4 m of 0.2 m courses is 12, never 13. */
export const modulesToCover = (lengthM: number, moduleM: number): number =>
  Math.max(0, Math.ceil((lengthM - SAME_LENGTH_M) / moduleM))

/** Part of a lot below which a need is the rounding of the arithmetic and not a thing to buy: one in a thousand million. */
const SAME_SHARE = 1e-9

/** Fewest whole lots of one size that hold a need; any unit, as long as both have the same. */
export const lotsFor = (need: number, lotSize: number): number => Math.max(0, Math.ceil(need / lotSize - SAME_SHARE))

/** A number of things that must be whole: 59.85 blocks is 60, and 60.000000001 is 60 as well. */
export const wholeUp = (amount: number): number => lotsFor(amount, 1)

/** Whole things that are certainly there: 59.85 is 59, and 59.9999999999 is 60. */
export const wholeDown = (amount: number): number => Math.floor(amount + SAME_SHARE)

/** The whole part of a number of either sign: 2.9 is 2, −2.9 is −2. */
export const wholePart = (amount: number): number => Math.trunc(amount)

/** The nearest whole number, halves up: for money in minor units and marks in whole millimetres. */
export const wholeNear = (amount: number): number => Math.round(amount)

/** A number to the nearest step, halves up: 0.7649 to 0.005 is 0.765. */
export const toStep = (amount: number, step: number): number => Math.round(amount / step) * step
