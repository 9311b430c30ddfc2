import type { Finding } from '../basics/finding.ts'
import type { TrayFrame } from '../fish/tray-frame.ts'
import type { Plan } from '../plan/schema.ts'
import { bearingRange } from './bearing-tables.ts'
import { foundationOf, type Foundation } from './foundation.ts'
import { groundFindings } from './ground-findings.ts'
import type { KilnGeometry } from './kiln.ts'
import { placeFindings } from './neighbours.ts'
import { shelterFindings, shelterOf, type Shelter } from './shelter.ts'
import { facingOf, type Facing } from './wind.ts'

/** Where the kiln stands: what carries it, which way it looks, what is near, what keeps the rain off. */
export interface Site {
  readonly foundation: Foundation
  readonly bearingRange: ReturnType<typeof bearingRange>
  readonly facing: Facing
  readonly shelter: Shelter | null
  readonly findings: readonly Finding[]
}

/** What the place decides: what the ground bears, how the kiln faces, what stands near, and the findings on it. */
export function siteOf(plan: Plan, geometry: KilnGeometry, tray: TrayFrame): Site {
  const foundation = foundationOf(plan, geometry, tray)
  const facing = facingOf(plan)
  const shelter = shelterOf(plan, geometry)
  return {
    foundation,
    bearingRange: bearingRange(plan.ground.soil),
    facing,
    shelter,
    findings: [
      ...groundFindings(plan, geometry, foundation),
      ...placeFindings(plan, facing),
      ...shelterFindings(shelter, tray),
    ],
  }
}
