import { toStep } from '../basics/count.ts'
import type { Finding } from '../basics/finding.ts'
import type { Plan } from '../plan/schema.ts'
import { dryingAir } from './humid-air.ts'

/** Little room for water in the air: below this, kg of water per kg of air, damp weather holds drying up. From memory. */
const LITTLE_PICK_UP = 0.006

/** How much water the air of the place takes up once the drying fire has warmed it, and whether that holds drying up. */
export function airFindings({ firing }: Plan): Finding[] {
  if (firing.dryHours === 0) return []
  const { mostPickUp } = dryingAir(firing.airDegC, firing.airHumidity, firing.dryDegC)
  const of = (level: Finding['level'], kind: string, args: Finding['args']): Finding => ({
    level,
    kind,
    args,
    card: 'catch',
    remedies: [],
  })
  const grams = toStep(1000 * mostPickUp, 0.1)
  return mostPickUp < LITTLE_PICK_UP
    ? [of('caution', 'air-limits-drying', { grams, humidity: firing.airHumidity })]
    : [of('good', 'air-dries', { grams })]
}
