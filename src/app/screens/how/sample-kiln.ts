import { newPlan } from '../../../core/plan/defaults.ts'
import { workOut, type WorkedOut } from '../../../core/work-out.ts'

let made: WorkedOut | undefined

/** A kiln to show things on, with everything that a kiln may have; it belongs to nobody. */
export function sampleKiln(): WorkedOut {
  if (made !== undefined) return made
  const plan = newPlan({
    id: 'sample',
    name: '',
    freshKgPerDay: 40,
    unitKey: 'hollow-390-140-190',
    soil: 'clay-firm',
    currency: { code: 'USD', digits: 2 },
  })
  made = workOut({
    ...plan,
    chambers: { ...plan.chambers, count: 2 },
    walls: { ...plan.walls, liningM: 0.04, renderM: 0.02 },
    ground: { ...plan.ground, hearthM: 0.08, hardcoreM: 0.1, apronM: 0.6 },
  })
  return made
}
