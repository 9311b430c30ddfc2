import type { KilnGeometry } from '../geometry/kiln.ts'
import type { Layout } from '../layout/contract.ts'
import type { Plan } from '../plan/schema.ts'
import { groundNeeds } from './ground-needs.ts'
import { headNeeds } from './head-needs.ts'
import type { Need } from './need.ts'
import { wallNeeds } from './wall-needs.ts'

/** What the masonry takes, net and with its waste: ground, walls, fill and heads. Trays and shelter have needs of their own. */
export const masonryNeeds = (plan: Plan, geometry: KilnGeometry, layout: Layout): readonly Need[] => [
  ...groundNeeds(plan, geometry),
  ...wallNeeds(plan, geometry, layout),
  ...headNeeds(plan, layout, geometry.wall),
]
