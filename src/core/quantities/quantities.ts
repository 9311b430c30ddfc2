import type { TrayFrame } from '../fish/tray-frame.ts'
import type { KilnGeometry } from '../geometry/kiln.ts'
import type { Shelter } from '../geometry/shelter.ts'
import type { Layout } from '../layout/contract.ts'
import type { Plan } from '../plan/schema.ts'
import { groundNeeds } from './ground-needs.ts'
import { headNeeds } from './head-needs.ts'
import type { Need } from './need.ts'
import { shelterNeeds } from './shelter-needs.ts'
import { trayNeeds } from './tray-needs.ts'
import { wallNeeds } from './wall-needs.ts'

/** Everything that goes into the kiln, net and with its waste, part by part. */
export const quantities = (
  plan: Plan,
  tray: TrayFrame,
  geometry: KilnGeometry,
  layout: Layout,
  shelter: Shelter | null,
): readonly Need[] => [
  ...groundNeeds(plan, geometry),
  ...wallNeeds(plan, geometry, layout),
  ...headNeeds(plan, layout, geometry.wall),
  ...trayNeeds(plan, tray),
  ...shelterNeeds(plan, shelter),
]
