import type { Plan } from '../plan/schema.ts'
import type { Outline } from './outline.ts'
import { rect, type Rect } from './shape.ts'

export type WallId = 'front' | 'back' | 'left' | 'right' | `divider-${number}`

/** What the coursing actually chosen reaches, from the ground at the front left peg. */
export interface KilnLevels {
  readonly belowM: number
  readonly aboveM: number
  /** Underside of the opening's head. */
  readonly headM: number
  /** One course with its bed joint; unit height and usual joint where the caller has not coursed yet. */
  readonly gaugeM?: number
}

/** One wall as a box; front and back run past the corners, sides and dividing walls stand between them, so that no corner counts twice. */
export interface WallSolid extends Rect {
  readonly id: WallId
  readonly z0M: number
  readonly z1M: number
}

/** A fire opening, through the front wall, in the middle of its chamber. */
export interface Opening extends Rect {
  readonly chamber: number
  readonly sillM: number
  readonly headM: number
}

/** The walls as boxes that touch and never overlap, m. */
export function wallSolids({ wall, outsideLength, outsideDepth, chambers }: Outline, levels: KilnLevels): WallSolid[] {
  const t = wall.value
  const L = outsideLength.value
  const D = outsideDepth.value
  const z = { z0M: -levels.belowM, z1M: levels.aboveM }
  const dividers = chambers.slice(1).map((chamber, index): WallSolid => ({
    id: `divider-${index + 1}`,
    ...rect(chamber.x0M - t, chamber.x0M, t, D - t),
    ...z,
  }))
  return [
    { id: 'front', ...rect(0, L, 0, t), ...z },
    { id: 'back', ...rect(0, L, D - t, D), ...z },
    { id: 'left', ...rect(0, t, t, D - t), ...z },
    { id: 'right', ...rect(L - t, L, t, D - t), ...z },
    ...dividers,
  ]
}

/** The opening of each chamber in the front wall, in its middle, m. */
export const openingsOf = ({ wall, chambers }: Outline, plan: Plan, levels: KilnLevels): Opening[] =>
  chambers.map((chamber, index) => {
    const middle = (chamber.x0M + chamber.x1M) / 2
    const half = plan.openings.widthM / 2
    return { chamber: index + 1, ...rect(middle - half, middle + half, 0, wall.value), sillM: 0, headM: levels.headM }
  })
