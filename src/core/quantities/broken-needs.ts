import { cited, counted, derive } from '../basics/derived.ts'
import type { Plan } from '../plan/schema.ts'
import { need, type Need } from './need.ts'

const NO_WASTE = cited('waste.none', '1', 0, 'common-practice')

/** Units broken beyond what the list allows for breakage: to be bought beside it. Nothing while the allowance holds. */
export function brokenNeeds({ built }: Plan, needs: readonly Need[]): Need[] {
  const broken = Object.values(built.broken).reduce((sum, { units }) => sum + units, 0)
  const units = needs.find(({ item, use }) => item === 'wall-unit' && use === 'walls')
  if (broken === 0 || units === undefined) return []
  const more = derive(
    'broken.more',
    'piece',
    'max(0, b − n · w)',
    { b: counted('broken.count', 'piece', broken), n: units.net, w: units.waste },
    (of) => Math.max(0, of.b - of.n * of.w),
  )
  return more.value > 0 ? [need('wall-unit', 'walls', 'broken', more, NO_WASTE)] : []
}
