import { counted, derive, typed, type Derived } from '../basics/derived.ts'
import type { KilnGeometry } from '../geometry/kiln.ts'
import type { Layout } from '../layout/contract.ts'
import type { Plan } from '../plan/schema.ts'
import { rate } from './labour-data.ts'

export type Trade = 'mason' | 'labourer' | 'carpenter'
export type Hours = Partial<Readonly<Record<Trade, Derived<'h'>>>>

/** Do the walls go by the output for bricks, by volume, or for blocks, by face? */
const isBrick = ({ walls }: Plan) => walls.unit.family !== 'hollow-block' && walls.unit.family !== 'solid-block'

/** Hours to lay the walls between two levels, m over the ground: the mason's, and the labourer's who carries and mixes. */
export function wallWork(plan: Plan, geometry: KilnGeometry, layout: Layout, fromM: number, toM: number): Hours {
  const area = faceBetween(plan, geometry, fromM, toM)
  const mortar = mortarBetween(geometry, layout, fromM, toM)
  const mixing = derive(
    'work.mix-mortar',
    'h',
    'm · k',
    { m: mortar, k: rate('mortar-labourer', 'h/m3') },
    (v) => v.m * v.k,
  )
  const { mason, carrying } = isBrick(plan) ? byVolume(area, geometry.wall) : byFace(area)
  return {
    mason,
    labourer: derive('work.walls-labourer', 'h', 'c + m', { c: carrying, m: mixing }, (v) => v.c + v.m),
  }
}

const byFace = (A: Derived<'m2'>) => ({
  mason: derive('work.walls-mason', 'h', 'A · k', { A, k: rate('block-mason', 'h/m2') }, (v) => v.A * v.k),
  carrying: derive('work.carry', 'h', 'A · k', { A, k: rate('block-labourer', 'h/m2') }, (v) => v.A * v.k),
})

const byVolume = (A: Derived<'m2'>, t: Derived<'m'>) => ({
  mason: derive('work.walls-mason', 'h', 'A · t · k', { A, t, k: rate('brick-mason', 'h/m3') }, (v) => v.A * v.t * v.k),
  carrying: derive('work.carry', 'h', 'A · t · k', { A, t, k: rate('brick-labourer', 'h/m3') }, (v) => v.A * v.t * v.k),
})

/** One face of all walls between two levels, fire openings taken out. */
function faceBetween(plan: Plan, geometry: KilnGeometry, fromM: number, toM: number): Derived<'m2'> {
  const openM = Math.max(0, Math.min(toM, geometry.levels.headM) - Math.max(fromM, 0))
  return derive(
    'work.face',
    'm2',
    'S / t · z − n · b · o',
    {
      S: geometry.wallPlanArea,
      t: geometry.wall,
      z: counted('work.rise', 'm', toM - fromM),
      n: geometry.chamberCount,
      b: typed('opening-width', 'm', plan.openings.widthM, 'openings.widthM'),
      o: counted('work.opening-rise', 'm', openM),
    },
    (v) => (v.S / v.t) * v.z - v.n * v.b * v.o,
  )
}

/** Mortar by the share of the walls' height. */
const mortarBetween = ({ levels }: KilnGeometry, { mortarM3 }: Layout, fromM: number, toM: number): Derived<'m3'> =>
  derive(
    'work.mortar',
    'm3',
    'm · z / h',
    {
      m: counted('work.mortar-all', 'm3', mortarM3),
      z: counted('work.rise', 'm', toM - fromM),
      h: counted('work.wall-height', 'm', levels.belowM + levels.aboveM),
    },
    (v) => (v.m * v.z) / v.h,
  )
