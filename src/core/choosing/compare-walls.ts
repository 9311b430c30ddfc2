import { cited, counted, derive, sumOf, type Derived } from '../basics/derived.ts'
import type { ItemKey } from '../quantities/items.ts'
import { CATALOGUE_UNITS } from '../plan/catalogue.ts'
import type { Plan, WallUnit } from '../plan/schema.ts'
import { workOut, type WorkedOut } from '../work-out.ts'
import { livesOf, type WallLife } from './wall-lives.ts'
import { withWalls, type WallChoice } from './with-walls.ts'

/** One way to build the walls, worked out for the same catch, ground and prices. */
export interface WallsCompared {
  readonly unit: WallUnit
  readonly plan: Plan
  readonly total: Derived<'money'>
  /** Items without a price here: with any, the total cannot be compared. */
  readonly unpriced: readonly ItemKey[]
  readonly units: Derived
  readonly cutPieces: number
  readonly cutLengths: number
  readonly days: Derived<'day'>
  readonly labour: Derived<'day'>
  /** One unit, and all of them to carry to the place. */
  readonly unitMass: Derived<'kg'>
  readonly carried: Derived<'kg'>
  /** Money that goes to hardware: what neither the block maker nor the ground of the place gives. */
  readonly boughtIn: Derived<'money'>
  readonly lives: readonly WallLife[]
  readonly problems: number
  readonly cautions: number
}

/** Wall units side by side, in the order given. */
export const compareWalls = (plan: Plan, choices: readonly WallChoice[]): WallsCompared[] =>
  choices.map((choice) => compared(workOut(withWalls(plan, choice))))

/** The figures of one kiln that stand beside those of others. */
export function compared(worked: WorkedOut): WallsCompared {
  const { plan, costs, layout, schedule, needs, purchase, findings } = worked
  const units = needs.find((one) => one.item === 'wall-unit')?.gross ?? counted('compare.units', 'piece', 0)
  const { unit } = plan.walls
  const unitMass = massOf(unit)
  const { mason, labourer, carpenter } = schedule.labour
  return {
    unit,
    plan,
    total: costs.total,
    unpriced: costs.unpriced,
    units,
    cutPieces: layout.counts.cutPieces,
    cutLengths: layout.counts.cuts.length,
    days: schedule.length,
    labour: sumOf('compare.labour', 'day', [mason.days, labourer.days, carpenter.days]),
    unitMass,
    carried: derive('compare.carried', 'kg', 'n · m', { n: units, m: unitMass }, (of) => of.n * of.m),
    boughtIn: boughtIn(purchase.lines),
    lives: livesOf(unit.family),
    problems: findings.filter(({ level }) => level === 'problem').length,
    cautions: findings.filter(({ level }) => level === 'caution').length,
  }
}

/** Money of all lines from the hardware shop. */
export const boughtIn = (lines: WorkedOut['purchase']['lines']): Derived<'money'> =>
  sumOf(
    'compare.bought-in',
    'money',
    lines.flatMap(({ seller, cost }) => (seller === 'hardware' && cost !== null ? [cost] : [])),
  )

/** Mass of one unit by its published size and the usual weight of what it is made of. */
function massOf(unit: WallUnit): Derived<'kg'> {
  const known = CATALOGUE_UNITS.find(({ key }) => key === unit.key)
  const size = known?.sources.size ?? 'common-practice'
  const hollow = known?.sources.void ?? size
  const l = cited('unit.length', 'm', unit.lengthM, size)
  const w = cited('unit.width', 'm', unit.widthM, size)
  const h = cited('unit.height', 'm', unit.heightM, size)
  const v = cited('unit.void', '1', unit.voidFraction, hollow)
  const d = cited('unit.density', 'kg/m3', unit.densityKgM3, 'common-practice')
  return derive(
    'unit.mass',
    'kg',
    'l · w · h · (1 − v) · d',
    { l, w, h, v, d },
    (of) => of.l * of.w * of.h * (1 - of.v) * of.d,
  )
}
