import { courseChoices } from '../../../src/core/layout/coursing.ts'
import type { Head, LayoutRequest, UnitCell } from '../../../src/core/layout/contract.ts'

export interface UnitSize {
  readonly lengthM: number
  readonly widthM: number
  readonly heightM: number
  readonly jointM: number
  readonly cells: readonly UnitCell[]
}

const block = (
  lengthMm: number,
  widthMm: number,
  heightMm: number,
  jointMm = 10,
  cells: readonly UnitCell[] = [],
): UnitSize => ({
  lengthM: lengthMm / 1000,
  widthM: widthMm / 1000,
  heightM: heightMm / 1000,
  jointM: jointMm / 1000,
  cells,
})

const twoCells = (fromM: number, lengthM: number, betweenM: number, widthM: number): readonly UnitCell[] => [
  { fromM, lengthM, widthM },
  { fromM: fromM + lengthM + betweenM, lengthM, widthM },
]

/** Actual sizes of the wall units that the product's catalogue offers, with their usual joint. */
export const UNITS = {
  hollow450x150: block(450, 150, 225, 10, twoCells(0.035, 0.175, 0.03, 0.085)),
  hollow450x225: block(450, 225, 225, 10, twoCells(0.05, 0.15, 0.05, 0.125)),
  hollow390x140: block(390, 140, 190, 10, twoCells(0.03, 0.15, 0.03, 0.08)),
  hollow390x190: block(390, 190, 190, 10, twoCells(0.03, 0.15, 0.03, 0.13)),
  solid450x125: block(450, 125, 225),
  brick215: block(215, 102.5, 65),
  brick190: block(190, 90, 90),
  brick230: block(230, 110, 76),
  earth290: block(290, 140, 90),
  earth240: block(240, 240, 90),
  adobe290: block(290, 140, 110, 15),
  adobe356: block(356, 254, 102, 19),
} as const

export type UnitName = keyof typeof UNITS

export const UNIT_NAMES = Object.keys(UNITS) as readonly UnitName[]

export interface Wish {
  readonly unit: UnitSize
  readonly chambers?: number
  readonly clearSideM?: number
  readonly leaf?: LayoutRequest['leaf']
  readonly bond?: LayoutRequest['bond']
  readonly openingM?: number
  readonly head?: Head
  readonly belowM?: number
  readonly aboveM?: number
  readonly headM?: number
}

/** A request as the plan would make it: joints 2 mm less to 5 mm more than usual, the first course choice. */
export function request(wish: Wish): LayoutRequest {
  const { lengthM, widthM, heightM, jointM, cells } = wish.unit
  const perpend = { minM: jointM - 0.002, usualM: jointM, maxM: jointM + 0.005 }
  const { belowM = 0.2, aboveM = 0.6, headM = 0.35 } = wish
  const [first] = courseChoices({ unitHeightM: heightM, bed: perpend, wanted: { belowM, aboveM, headM }, levelling: 0 })
  if (first === undefined) throw new Error('no coursing')
  return {
    chambers: wish.chambers ?? 2,
    clearSideM: wish.clearSideM ?? 0.68,
    unit: { lengthM, widthM, heightM, cells, voidFraction: 0 },
    leaf: wish.leaf ?? 'single',
    bond: wish.bond ?? 'stretcher',
    perpend,
    courses: first.plan,
    opening: { widthM: wish.openingM ?? 0.35, head: wish.head ?? { kind: 'lintel', bearingM: 0.15, courses: 1 } },
    cutLossM: 0.003,
  }
}
