import { typed, type Derived } from '../basics/derived.ts'
import type { Plan } from '../plan/schema.ts'

/** Thickness of every wall, m, bare: the unit's width laid as a single leaf, its length where the wall is one brick thick. */
export const wallThickness = ({ walls }: Plan): Derived<'m'> =>
  walls.leaf === 'single'
    ? typed('wall-thickness', 'm', walls.unit.widthM, 'walls.unit.widthM')
    : typed('wall-thickness', 'm', walls.unit.lengthM, 'walls.unit.lengthM')
