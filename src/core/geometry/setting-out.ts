import { counted, type Derived } from '../basics/derived.ts'
import type { KilnGeometry } from './kiln.ts'
import { boardMarks, offsetPegs, type BoardMark, type OffsetPeg } from './offset-pegs.ts'
import { stepsOf, type SettingOutStep } from './setting-out-steps.ts'
import { squareCorner, type SquareCorner } from './square-corner.ts'
import { tapePegs, tapesToTake, type TapeToTake } from './tape-plan.ts'
import type { Peg } from './tape-network.ts'
import { bearingOfLine, eastNorth, magneticOf, northOf, type Facing } from './wind.ts'

/** Everything a mason needs to peg the kiln out, with the bearings of the place where its winds are known. */
export interface SettingOut {
  readonly pegs: readonly Peg[]
  readonly tapes: readonly TapeToTake[]
  readonly offsets: readonly OffsetPeg[]
  readonly boards: readonly BoardMark[]
  readonly square: SquareCorner
  readonly bearings: SettingOutBearings | null
  readonly steps: readonly SettingOutStep[]
}

export interface SettingOutBearings {
  /** Bearing of the string from A to B, looking along the front from left to right. */
  readonly frontLine: Derived<'deg'>
  readonly frontLineMagnetic: Derived<'deg'>
  /** True where the needle is taken to point to true north, because nobody has typed by how much it does not. */
  readonly isNeedleTrue: boolean
  /** Direction of true north on the plan. */
  readonly north: { readonly xM: number; readonly yM: number }
  /** Every ground point, east and north of peg A. */
  readonly points: readonly { readonly id: string; readonly eastM: number; readonly northM: number }[]
}

/** Pegs, diagonals, boards and the steps of setting out, lengths in m, bearings in degrees. */
export function settingOut(geometry: KilnGeometry, facing: Facing, declinationDeg: number): SettingOut {
  const pegs = tapePegs(geometry)
  const offsets = offsetPegs(geometry)
  const square = squareCorner(geometry)
  const bearings = facing.front === null ? null : turned(geometry, facing.front.value, declinationDeg)
  return {
    pegs,
    tapes: tapesToTake(geometry),
    offsets,
    boards: boardMarks(geometry),
    square,
    bearings,
    steps: stepsOf(geometry, offsets, square, bearings),
  }
}

/** Plan coordinates turned to the place: only directions change, no length. */
function turned({ points }: KilnGeometry, frontDeg: number, declinationDeg: number): SettingOutBearings {
  const frontLine = counted('front-line-bearing', 'deg', bearingOfLine(frontDeg, 1, 0))
  return {
    frontLine,
    frontLineMagnetic: magneticOf(frontLine, declinationDeg),
    isNeedleTrue: declinationDeg === 0,
    north: northOf(frontDeg),
    points: points.map(({ id, xM, yM }) => ({ id, ...eastNorth(frontDeg, xM, yM) })),
  }
}
