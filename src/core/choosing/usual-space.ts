import { wholeNear } from '../basics/count.ts'
import { CATALOGUE_UNITS, type CatalogueUnit } from '../plan/catalogue.ts'
import { LIMITS } from '../plan/limits.ts'
import type { Plan } from '../plan/schema.ts'
import { offerFits } from '../quantities/variant.ts'
import type { DesignSpace, Shell } from './within-our-money.ts'
import type { WallChoice } from './with-walls.ts'

/** Clear sides looked at, m: from what one person reaches over to what two can lift a tray from. Judgement, not a source. */
const LEAST_SIDE_M = 0.6
const MOST_SIDE_M = 1
const SIDE_STEP_M = 0.04
const LEAST_TRAYS = 4
const MOST_TRAYS = 12

/** How much of what can be built is looked at: usual bonds at the plan's height of wall, or every bond and other heights near it too. */
export type Breadth = 'usual' | 'every'

/** Heights looked at lie this far at most from the plan's own, m. */
const HEIGHT_APART_M = 0.15

/**
 * The designs worth looking at for a plan: walls of every unit that has a price here, all numbers of chambers, usual clear sides and the plan's
 * own, stacks from small to tall.
 */
export function usualSpace(plan: Plan, breadth: Breadth = 'usual'): DesignSpace {
  const { min, max } = LIMITS['chambers.count']
  const sides = steps(LEAST_SIDE_M, MOST_SIDE_M, SIDE_STEP_M)
  const own = plan.chambers.clearSideM
  return {
    chambers: steps(min, max, 1),
    clearSidesM: sides.includes(own) ? sides : [...sides, own].toSorted((a, b) => a - b),
    shells: unitsHere(plan)
      .filter((unit) => hasPrice(plan, unit))
      .flatMap((unit) => shellsOf(plan, unit, breadth)),
    perChamber: steps(LEAST_TRAYS, MOST_TRAYS, 1),
  }
}

/** Units of the catalogue, and in place of the plan's own kind the unit as it is made here: its measured sides, its joint. */
function unitsHere({ walls: { unit, joint } }: Plan): readonly CatalogueUnit[] {
  const isOwn = ({ key }: CatalogueUnit) => key === unit.key
  const known = CATALOGUE_UNITS.find(isOwn)
  const own: CatalogueUnit = { ...unit, joint, sources: known?.sources ?? { size: 'common-practice' } }
  return known === undefined ? [...CATALOGUE_UNITS, own] : CATALOGUE_UNITS.map((one) => (isOwn(one) ? own : one))
}

/** Units that no offer of the plan has a price for: their walls are not looked at. */
export const unpricedUnits = (plan: Plan): readonly CatalogueUnit[] =>
  unitsHere(plan).filter((unit) => !hasPrice(plan, unit))

function shellsOf(plan: Plan, unit: CatalogueUnit, breadth: Breadth): Shell[] {
  const own = plan.walls.aboveM
  if (breadth === 'usual') return [{ walls: usualWalls(unit), aboveM: own }]
  const aboveM = [own, ...wholeCourses(unit, own)]
  return waysToBuild(unit).flatMap((walls) => aboveM.map((height) => ({ walls, aboveM: height })))
}

/** Heights of whole courses at the usual joint near a height, the height itself left out. */
function wholeCourses({ heightM, joint }: CatalogueUnit, nearM: number): number[] {
  const { min, max } = LIMITS['walls.aboveM']
  const gaugeM = heightM + joint.usualM
  const counts = steps(1, wholeNear(max / gaugeM), 1)
  return counts
    .map((count) => wholeNear(count * gaugeM * 1000) / 1000)
    .filter((m) => m >= min && m <= max && m !== nearM && Math.abs(m - nearM) <= HEIGHT_APART_M)
}

const steps = (from: number, to: number, step: number): number[] => {
  const list: number[] = []
  for (let at = 0; from + at * step <= to + step / 1000; at++) list.push(wholeNear((from + at * step) * 1000) / 1000)
  return list
}

/** A unit whose price is known: by name, or by an offer that fits any. */
const hasPrice = (plan: Plan, unit: CatalogueUnit): boolean => {
  const walls = { ...plan, walls: { ...plan.walls, unit } }
  return Object.values(plan.offers).some((offer) => offer.priceMinor !== null && offerFits(walls, 'wall-unit', offer))
}

/** Blocks stand alone; bricks make a wall one brick thick, in English bond. */
export const usualWalls = (unit: CatalogueUnit): WallChoice =>
  unit.family === 'fired-brick'
    ? { unit, leaf: 'one-brick', bond: 'english' }
    : { unit, leaf: 'single', bond: 'stretcher' }

/** Every bond a unit can be laid in: walls as thick as it is long need one twice as long as wide, with a joint between the two halves. */
function waysToBuild(unit: CatalogueUnit): WallChoice[] {
  const between = unit.lengthM - 2 * unit.widthM
  const isDouble = between >= unit.joint.minM - 1e-6 && between <= unit.joint.maxM + 1e-6
  const ways: WallChoice[] = [{ unit, leaf: 'single', bond: 'stretcher' }]
  if (isDouble) ways.push({ unit, leaf: 'one-brick', bond: 'english' }, { unit, leaf: 'one-brick', bond: 'header' })
  return ways
}
