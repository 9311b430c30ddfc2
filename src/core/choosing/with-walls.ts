import { CATALOGUE_MIXES, type CatalogueUnit } from '../plan/catalogue.ts'
import { mortarWasteFor, wallsFor } from '../plan/defaults.ts'
import type { Plan } from '../plan/schema.ts'

/** A way to build the walls: a unit, and how it is bonded. */
export interface WallChoice {
  readonly unit: CatalogueUnit
  readonly leaf: Plan['walls']['leaf']
  readonly bond: Plan['walls']['bond']
}

const isEarthen = ({ family }: Pick<CatalogueUnit, 'family'>): boolean =>
  family === 'earth-block' || family === 'clay-brick'

/** Whether a unit is the one that the plan's walls are of, in every side. */
const isOwn = (unit: CatalogueUnit, own: Plan['walls']['unit']): boolean =>
  unit.key === own.key &&
  unit.lengthM === own.lengthM &&
  unit.widthM === own.widthM &&
  unit.heightM === own.heightM &&
  unit.voidFraction === own.voidFraction &&
  unit.densityKgM3 === own.densityKgM3

/**
 * The plan with other walls and all that goes with them: joint, fill and mortar waste of the unit, clay mortar under earthen walls and cement
 * mortar under others. Where the kind of wall stays, the plan's own mortar does too; where the unit stays, so do its joint, its fill and what was measured.
 */
export function withWalls(plan: Plan, { unit, leaf, bond }: WallChoice): Plan {
  if (isOwn(unit, plan.walls.unit))
    return { ...plan, walls: { ...plan.walls, leaf, bond, coursing: null, laying: null } }
  const walls = { ...plan.walls, ...wallsFor(unit), leaf, bond }
  const same = isEarthen(unit) === isEarthen(plan.walls.unit)
  const named = CATALOGUE_MIXES.mortar.find(({ key }) => key === (isEarthen(unit) ? 'clay-1-2' : '1-5'))
  if (named === undefined) throw new Error('a usual mortar is missing from the mixes')
  const { cement, clay, sand, dryFactor } = named
  return {
    ...plan,
    walls,
    mixes: same ? plan.mixes : { ...plan.mixes, mortar: { cement, clay, sand, dryFactor } },
    waste: { ...plan.waste, mortar: mortarWasteFor(unit) },
  }
}
