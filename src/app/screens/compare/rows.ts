import { counted, type Derived } from '../../../core/basics/derived.ts'
import { compared, compareWalls, type WallsCompared } from '../../../core/choosing/compare-walls.ts'
import { usualWalls } from '../../../core/choosing/usual-space.ts'
import type { WallLife } from '../../../core/choosing/wall-lives.ts'
import type { WallChoice } from '../../../core/choosing/with-walls.ts'
import { CATALOGUE_UNITS } from '../../../core/plan/catalogue.ts'
import type { WallUnit } from '../../../core/plan/schema.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { USUAL_UNITS } from '../usual-units.ts'

export const MEASURES = ['money', 'bought', 'units', 'cuts', 'carried', 'days'] as const
export type Measure = (typeof MEASURES)[number]

/** One way to build the walls, ready to stand beside others. */
export interface CompareRow {
  readonly unit: WallUnit
  /** Null for what is planned now. */
  readonly choice: WallChoice | null
  readonly figures: Readonly<Record<Measure, Derived>>
  /** Things without a price: with any, the money cannot be compared. */
  readonly unpriced: number
  readonly problems: number
  readonly lives: readonly WallLife[]
}

/** What is planned now, then the usual units of every other kind, all worked out for the same catch, ground and prices. */
export function compareRows(worked: WorkedOut): CompareRow[] {
  const { plan } = worked
  const others = CATALOGUE_UNITS.filter(({ key }) => USUAL_UNITS.includes(key) && key !== plan.walls.unit.key)
  const choices = others.map(usualWalls)
  return [
    rowOf(compared(worked), null),
    ...compareWalls(plan, choices).map((one, at) => rowOf(one, choices[at] ?? null)),
  ]
}

const rowOf = (one: WallsCompared, choice: WallChoice | null): CompareRow => ({
  unit: one.unit,
  choice,
  figures: {
    money: one.total,
    bought: one.boughtIn,
    units: one.units,
    cuts: counted('compare.cuts', 'piece', one.cutPieces),
    carried: one.carried,
    days: one.days,
  },
  unpriced: one.unpriced.length,
  problems: one.problems,
  lives: one.lives,
})

/** Lengths of bars as shares of the longest; a bar of nothing stays empty. */
export function barShares(values: readonly number[]): number[] {
  const longest = Math.max(...values, 0)
  return values.map((value) => (longest > 0 ? Math.max(0, value / longest) : 0))
}
