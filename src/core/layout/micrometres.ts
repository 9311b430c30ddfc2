import { wholeNear } from '../basics/count.ts'

/** Layout works in whole micrometres, so that pieces and joints add up to the wall exactly. */
export const toMicro = (lengthM: number): number => wholeNear(lengthM * 1e6)

/** Back to metres. */
export const toMetres = (lengthUm: number): number => lengthUm / 1e6

/** Cuts are marked on this grid where the joints allow it: 5 mm. */
export const CUT_GRID_UM = 5000

/** Rounding of one joint against the next; laps and joints this close to a limit meet it. */
export const SLACK_UM = 3
