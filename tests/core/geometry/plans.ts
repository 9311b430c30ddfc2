import { newPlan } from '../../../src/core/plan/defaults.ts'
import type { Plan } from '../../../src/core/plan/schema.ts'

/** A plan of the common-practice size with an invented name: n chambers in 150 mm block whose wall is taken as 160 mm where asked. */
function planOf(change: (plan: Plan) => void = () => undefined): Plan {
  const plan = newPlan({
    id: 'test',
    name: 'Test kiln',
    freshKgPerDay: 60,
    unitKey: 'hollow-450-150-225',
    soil: 'sand-dense',
    currency: { code: 'XOF', digits: 0 },
  })
  change(plan)
  return plan
}

/** The same with walls of a given thickness. */
export const planWith = (
  count: number,
  clearSideM: number,
  wallM: number,
  change: (plan: Plan) => void = () => undefined,
): Plan =>
  planOf((plan) => {
    plan.chambers = { count, clearSideM }
    plan.walls.unit = { ...plan.walls.unit, widthM: wallM }
    change(plan)
  })

export const LEVELS = { belowM: 0.2, aboveM: 0.6, headM: 0.35, gaugeM: 0.235 }
