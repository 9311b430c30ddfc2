import { wholeNear } from '../basics/count.ts'
import { CATALOGUE_UNITS, type CatalogueUnit } from '../plan/catalogue.ts'
import { LIMITS } from '../plan/limits.ts'
import type { Plan } from '../plan/schema.ts'
import { offerFits } from '../quantities/variant.ts'
import type { DesignSpace } from './within-our-money.ts'
import type { WallChoice } from './with-walls.ts'

/** Clear sides looked at, m: from what one person reaches over to what two can lift a tray from. Judgement, not a source. */
const LEAST_SIDE_M = 0.6
const MOST_SIDE_M = 1
const SIDE_STEP_M = 0.04
const LEAST_TRAYS = 4
const MOST_TRAYS = 12

/**
 * The designs worth looking at for a plan: walls of every unit that has a price here, all numbers of chambers, usual clear sides and the plan's
 * own, stacks from small to tall, the plan's height of wall.
 */
export function usualSpace(plan: Plan): DesignSpace {
  const { min, max } = LIMITS['chambers.count']
  const sides = steps(LEAST_SIDE_M, MOST_SIDE_M, SIDE_STEP_M)
  const own = plan.chambers.clearSideM
  return {
    chambers: steps(min, max, 1),
    clearSidesM: sides.includes(own) ? sides : [...sides, own].toSorted((a, b) => a - b),
    walls: CATALOGUE_UNITS.filter((unit) => hasPrice(plan, unit)).flatMap(waysToBuild),
    aboveM: [plan.walls.aboveM],
    perChamber: steps(LEAST_TRAYS, MOST_TRAYS, 1),
  }
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
function waysToBuild(unit: CatalogueUnit): WallChoice[] {
  const isBrick = unit.family === 'fired-brick'
  return isBrick ? [{ unit, leaf: 'one-brick', bond: 'english' }] : [{ unit, leaf: 'single', bond: 'stretcher' }]
}
