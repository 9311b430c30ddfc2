import { derive, sumOf, typed, type Derived } from '../basics/derived.ts'
import type { Finding } from '../basics/finding.ts'
import type { Plan } from '../plan/schema.ts'

export type UnitSide = 'lengthM' | 'widthM' | 'heightM'
export const UNIT_SIDES: readonly UnitSide[] = ['lengthM', 'widthM', 'heightM']

/** One side of the units that somebody measured: the mean to lay by, and how far the units differ. */
export interface MeasuredSide {
  readonly side: UnitSide
  readonly mean: Derived<'m'>
  readonly leastM: number
  readonly mostM: number
}

/** Mean and spread of the measured units, side by side; empty where nobody has measured. */
export function measuredSides({ walls: { samples } }: Pick<Plan, 'walls'>): MeasuredSide[] {
  if (samples.length === 0) return []
  return UNIT_SIDES.map((side, index) => {
    const values = samples.map((sample) => sample[index] ?? 0)
    const measured = values.map((value, at) => typed('measured-side', 'm', value, 'walls.samples', { number: at + 1 }))
    const sum = sumOf('measured-sum', 'm', measured)
    const n = typed('measured-count', '1', samples.length, 'walls.samples')
    return {
      side,
      mean: derive('measured-mean', 'm', 's / n', { s: sum, n }, (v) => v.s / v.n),
      leastM: Math.min(...values),
      mostM: Math.max(...values),
    }
  })
}

/**
 * Joints take up what units differ by: a long unit has a thin joint beside it, a short one a thick joint. Where they differ by more than the joint may,
 * no wall of them keeps its gauge.
 */
export function measuredFindings(plan: Plan): Finding[] {
  const roomM = plan.walls.joint.maxM - plan.walls.joint.minM
  const sides = measuredSides(plan)
  if (sides.length === 0) return []
  const worst = sides.reduce((one, other) => (other.mostM - other.leastM > one.mostM - one.leastM ? other : one))
  const spreadM = worst.mostM - worst.leastM
  const args = {
    side: `unit-side.${worst.side}`,
    spread: { value: spreadM, unit: 'm' as const },
    room: { value: roomM, unit: 'm' as const },
    count: plan.walls.samples.length,
  }
  const kind = spreadM > roomM + 1e-9 ? 'units-vary' : 'units-even'
  return [{ level: kind === 'units-vary' ? 'caution' : 'good', kind, args, card: 'walls', remedies: [] }]
}
