import type { Derived } from '../../../core/basics/derived.ts'
import { compareWalls } from '../../../core/choosing/compare-walls.ts'
import { usualWalls } from '../../../core/choosing/usual-space.ts'
import { livesOf, type WallLife } from '../../../core/choosing/wall-lives.ts'
import type { WallChoice } from '../../../core/choosing/with-walls.ts'
import { CATALOGUE_UNITS } from '../../../core/plan/catalogue.ts'
import type { WallUnit } from '../../../core/plan/schema.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { USUAL_UNITS } from '../usual-units.ts'

export const MEASURES = ['money', 'units', 'days'] as const
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
  const { plan, costs, schedule, needs, findings } = worked
  const { unit } = plan.walls
  const laid = needs.find(({ item }) => item === 'wall-unit')
  const others = CATALOGUE_UNITS.filter(({ key }) => USUAL_UNITS.includes(key) && key !== unit.key)
  const present: CompareRow[] =
    laid === undefined
      ? []
      : [
          {
            unit,
            choice: null,
            figures: { money: costs.total, units: laid.gross, days: schedule.length },
            unpriced: costs.unpriced.length,
            problems: findings.filter(({ level }) => level === 'problem').length,
            lives: livesOf(unit.family),
          },
        ]
  return [
    ...present,
    ...compareWalls(plan, others.map(usualWalls)).map((one) => ({
      unit: one.choice.unit,
      choice: one.choice,
      figures: { money: one.total, units: one.units, days: one.days },
      unpriced: one.unpriced.length,
      problems: one.problems,
      lives: one.lives,
    })),
  ]
}

/** Lengths of bars as shares of the longest; a bar of nothing stays empty. */
export function barShares(values: readonly number[]): number[] {
  const longest = Math.max(...values, 0)
  return values.map((value) => (longest > 0 ? Math.max(0, value / longest) : 0))
}
