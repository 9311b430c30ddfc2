import { wholeNear } from '../basics/count.ts'

/** A tick is 0.1 µm: a millimetre is 10,000 and a sixteenth of an inch 15,875, so trade sizes of both kinds are whole. */
const TICKS_IN_A_METRE = 1e7

/** A piece this much over its stock still fits: the rounding of a sum of lengths, far below what a saw can show. */
export const FIT_TICKS = 10

/** A length in metres as whole ticks, to the nearest. */
export const toTicks = (lengthM: number): number => wholeNear(lengthM * TICKS_IN_A_METRE)
/** Ticks as metres. */
export const toMetres = (ticks: number): number => ticks / TICKS_IN_A_METRE
