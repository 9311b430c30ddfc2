import { cited, sumOf } from '../basics/derived.ts'
import type { KilnGeometry } from '../geometry/kiln.ts'
import type { Plan } from '../plan/schema.ts'
import { concreteNeeds } from './mix-needs.ts'
import { need, type Need } from './need.ts'

/** Loose stone settles as it is rammed. */
const HARDCORE_WASTE = cited('waste.hardcore', '1', 0.2, 'common-practice')

/** Concrete of footing, hearth slab and apron, and the hardcore under the footing. Digging is work, not a thing to buy. */
export function groundNeeds(plan: Plan, { footing, earthworks }: KilnGeometry): Need[] {
  const slabs = [footing.concrete, earthworks.hearthSlab, earthworks.apronSlab].filter((volume) => volume.value > 0)
  const volume = slabs.length === 1 ? footing.concrete : sumOf('ground.concrete', 'm3', slabs)
  const needs = concreteNeeds(volume, 'ground', 'footing', plan)
  if (footing.hardcoreVolume.value > 0)
    needs.push(need('hardcore', 'ground', 'hardcore', footing.hardcoreVolume, HARDCORE_WASTE))
  return needs
}
