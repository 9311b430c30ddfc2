import { wholeUp } from '../basics/count.ts'
import { counted, derive, sumOf, type Derived } from '../basics/derived.ts'
import type { Layout } from '../layout/contract.ts'
import type { Plan } from '../plan/schema.ts'
import { ITEM_KEYS, type ItemKey } from '../quantities/items.ts'
import type { Need } from '../quantities/need.ts'
import type { Step } from './schedule.ts'
import { isFor, liesOf } from './site-work.ts'

/** What of an item the work that is left will take, and the work in all. */
export interface StillNeeded {
  readonly item: ItemKey
  readonly left: Derived
  readonly all: Derived
}

const isWall = ({ use }: Need) => use === 'walls' || use === 'joints' || use === 'broken'

/** Share of the walls' pieces that are still to lay. */
export function shareToLay(plan: Plan, layout: Layout, steps: readonly Step[]): Derived<'1'> {
  let all = 0
  let lies = 0
  for (const course of layout.courses) {
    all += course.endUnit - course.firstUnit
    lies += liesOf(course, steps, plan)
  }
  return derive(
    'still.share',
    '1',
    '(N − r) / N',
    { N: counted('still.pieces', 'piece', all), r: counted('still.laid', 'piece', lies) },
    (of) => (of.N - of.r) / of.N,
  )
}

/**
 * The list less what went into the work that is done: nothing for a step that is ticked, the unlaid share for walls, all for the rest. What is used
 * and what is left always make the list.
 */
export function stillNeeded(plan: Plan, layout: Layout, steps: readonly Step[], needs: readonly Need[]): StillNeeded[] {
  const share = shareToLay(plan, layout, steps)
  const leftOf = (need: Need): Derived[] => {
    if (isWall(need))
      return share.value > 0
        ? [derive('still.left', need.gross.unit, 'G · s', { G: need.gross, s: share }, (of) => of.G * of.s)]
        : []
    const own = steps.filter((step) => isFor(step.kind, need))
    return own.length > 0 && own.every(({ done }) => done !== null) ? [] : [need.gross]
  }
  return ITEM_KEYS.flatMap((item): StillNeeded[] => {
    const own = needs.filter((need) => need.item === item && need.section !== 'labour' && need.gross.value > 0)
    const [first] = own
    if (first === undefined) return []
    const { unit } = first.gross
    return [
      {
        item,
        left: whole(sumOf('still.item', unit, own.flatMap(leftOf))),
        all: whole(
          sumOf(
            'still.all',
            unit,
            own.map(({ gross }) => gross),
          ),
        ),
      },
    ]
  })
}

/** Things counted in pieces are fetched whole. */
const whole = (amount: Derived): Derived =>
  amount.unit === 'piece' ? derive(amount.id, 'piece', 'ceil(x)', { x: amount }, (of) => wholeUp(of.x)) : amount
