import { counted, derive, sumOf, type Derived } from '../basics/derived.ts'
import type { LaidCourse, Layout } from '../layout/contract.ts'
import { ITEM_KEYS, type ItemKey } from '../quantities/items.ts'
import type { Need } from '../quantities/need.ts'
import type { Step } from './schedule.ts'
import { coursesOf, isFor } from './site-work.ts'

/** What to have at hand for a step, from the list, waste counted in. */
export interface StepMaterial {
  readonly item: ItemKey
  readonly amount: Derived
}

const piecesIn = (courses: readonly LaidCourse[]): number =>
  courses.reduce((sum, { firstUnit, endUnit }) => sum + endUnit - firstUnit, 0)

/** Walls that rise in several steps share their units and mortar by the pieces that each step lays. */
export function stepMaterials(
  step: Step,
  steps: readonly Step[],
  layout: Layout,
  needs: readonly Need[],
): StepMaterial[] {
  const courses = coursesOf(step, steps, layout)
  const share = derive(
    'step.share',
    '1',
    'n / N',
    {
      n: counted('step.pieces', 'piece', piecesIn(courses)),
      N: counted('still.pieces', 'piece', piecesIn(layout.courses)),
    },
    (of) => of.n / of.N,
  )
  const own = needs.filter((need) => isFor(step.kind, need) && need.gross.value > 0)
  const amountOf = (need: Need): Derived =>
    need.use === 'walls' || need.use === 'joints'
      ? derive('step.part', need.gross.unit, 'G · s', { G: need.gross, s: share }, (of) => of.G * of.s)
      : need.gross
  return ITEM_KEYS.flatMap((item): StepMaterial[] => {
    const amounts = own.filter((need) => need.item === item).map(amountOf)
    const [first] = amounts
    if (first === undefined || amounts.every(({ value }) => value === 0)) return []
    return [{ item, amount: amounts.length === 1 ? first : sumOf('step.item', first.unit, amounts) }]
  })
}
