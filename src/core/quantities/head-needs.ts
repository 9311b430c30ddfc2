import { cited, counted, derive, sumOf, typed, type Derived } from '../basics/derived.ts'
import { SAME_LENGTH_M, wholeUp } from '../basics/count.ts'
import type { Layout, PlacedLintel } from '../layout/contract.ts'
import type { Plan } from '../plan/schema.ts'
import { concreteNeeds } from './mix-needs.ts'
import type { Need } from './need.ts'
import { lengthsNeed, type PieceGroup } from './timber.ts'

/** Two bars of 9.5 to 10 mm with 25 mm of cover served lintels over wall load alone, spans to 1.2 m. */
const BARS = cited('lintel.bars', '1', 2, 'farm-concrete')
const COVER = cited('lintel.cover', 'm', 0.025, 'farm-concrete')
/** One steel angle for each half-brick of wall. */
const ANGLE_WIDTH = cited('angle.wall', 'm', 0.12, 'common-practice')
const NO_WASTE = cited('waste.none', '1', 0, 'common-practice')

/** What carries the wall over the openings: concrete and bars of cast lintels, or steel angles. Corbels and arches are units and mortar. */
export function headNeeds(plan: Plan, layout: Layout, wall: Derived<'m'>): Need[] {
  const cast = layout.lintels.filter((lintel) => lintel.kind === 'lintel')
  const steel = layout.lintels.filter((lintel) => lintel.kind === 'steel')
  const needs: Need[] = []
  if (cast.length > 0) {
    const volume = sumOf(
      'lintel.concrete',
      'm3',
      alike(cast).map((group) => groupVolume(plan, group, wall)),
    )
    needs.push(...concreteNeeds(volume, 'heads', 'lintels', plan))
    const bars = alike(cast).map((group): PieceGroup => {
      const l = lintelLength(plan, group)
      return {
        length: derive('lintel.bar', 'm', 'l − 2 · v', { l, v: COVER }, (of) => of.l - 2 * of.v),
        count: derive('lintel.bar-count', 'piece', 'n · k', { n: group.count, k: BARS }, (of) => of.n * of.k),
        label: 'piece.bar',
      }
    })
    needs.push(lengthsNeed('bar', 'heads', 'lintels', bars, NO_WASTE))
  }
  if (steel.length > 0) {
    const angles = alike(steel).map((group): PieceGroup => ({
      length: lintelLength(plan, group),
      count: derive(
        'angle.count',
        'piece',
        'n · ceil(t / b)',
        { n: group.count, t: wall, b: ANGLE_WIDTH },
        (of) => of.n * wholeUp(of.t / of.b),
      ),
      label: 'piece.angle',
    }))
    needs.push(lengthsNeed('angle', 'heads', 'steel', angles, NO_WASTE))
  }
  return needs
}

interface Alike {
  readonly lintel: PlacedLintel
  readonly count: Derived<'piece'>
}

/** Lintels of one length together. */
function alike(lintels: readonly PlacedLintel[]): Alike[] {
  const groups: { lintel: PlacedLintel; count: number }[] = []
  for (const lintel of lintels) {
    const same = groups.find((group) => Math.abs(group.lintel.dxM - lintel.dxM) < SAME_LENGTH_M)
    if (same === undefined) groups.push({ lintel, count: 1 })
    else same.count++
  }
  return groups.map(({ lintel, count }) => ({ lintel, count: counted('lintel.count', 'piece', count) }))
}

/** Opening and two bearings; counted from the drawing where the layout lengthened it or let neighbours meet. */
function lintelLength(plan: Plan, { lintel }: Alike): Derived<'m'> {
  const w = typed('opening-width', 'm', plan.openings.widthM, 'openings.widthM')
  const b = typed('lintel.bearing', 'm', plan.openings.bearingM, 'openings.bearingM')
  const plain = derive('lintel.length', 'm', 'w + 2 · b', { w, b }, (of) => of.w + 2 * of.b)
  return Math.abs(plain.value - lintel.dxM) < SAME_LENGTH_M ? plain : counted('lintel.length-laid', 'm', lintel.dxM)
}

const groupVolume = (plan: Plan, group: Alike, wall: Derived<'m'>): Derived<'m3'> =>
  derive(
    'lintel.volume',
    'm3',
    'n · l · t · h',
    {
      n: group.count,
      l: lintelLength(plan, group),
      t: wall,
      h: counted('lintel.depth', 'm', group.lintel.dzM),
    },
    (of) => of.n * of.l * of.t * of.h,
  )
