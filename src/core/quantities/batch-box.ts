import { toStep, wholeDown, wholeUp } from '../basics/count.ts'
import { cited, derive, sumOf, typed, type Derived } from '../basics/derived.ts'
import { CATALOGUE_MIXES } from '../plan/catalogue.ts'
import type { Plan } from '../plan/schema.ts'
import type { Need } from './need.ts'

export type Mix = 'concrete' | 'mortar'
export type Measure = Plan['built']['batch']['measure']

/** A measured part of one batch, in the measure of the site. */
export interface BatchPart {
  readonly part: 'cement' | 'clay' | 'sand' | 'stone'
  /** Loose volume to shovel in, the swelling of damp sand counted in. */
  readonly volume: Derived<'m3'>
  readonly measures: Derived<'1'>
  /** Measures as one can fill them: to the nearest quarter. */
  readonly filled: number
}

/** One batch as it is mixed on the board. */
export interface Batch {
  readonly mix: Mix
  /** Bags of cement; null where clay alone binds: then one measure of clay begins the batch. */
  readonly bags: number | null
  readonly parts: readonly BatchPart[]
  /** The most water by the bag; none is known for clay, which is mixed by feel. */
  readonly water: Derived<'l'> | null
  readonly bulking: Derived<'1'>
  /** Wet volume that comes of it. */
  readonly yield: Derived<'m3'>
}

const BAG = cited('mix.bag', 'kg', CATALOGUE_MIXES.cement.bagKg, CATALOGUE_MIXES.cement.source)
const LOOSE = cited('mix.cement-loose', 'kg/m3', CATALOGUE_MIXES.cement.looseKgM3, CATALOGUE_MIXES.cement.source)
const WATER = CATALOGUE_MIXES.waterLitrePerBag

/**
 * How much more room damp sand takes than dry or wet through: the height of damp sand in a tin over its height after it settled under water, less one.
 * 200 mm that settle to 160 mm are 25 %.
 */
const bulkingOf = ({ dampM, settledM }: Pick<Plan['built']['batch'], 'dampM' | 'settledM'>): Derived<'1'> =>
  derive(
    'batch.bulking',
    '1',
    'max(0, d / s − 1)',
    {
      d: typed('batch.damp', 'm', dampM, 'built.batch.dampM'),
      s: typed('batch.settled', 'm', settledM, 'built.batch.settledM'),
    },
    (of) => Math.max(0, of.d / of.s - 1),
    { source: 'settling-test' },
  )

function measureOf(plan: Plan, measure: Measure = plan.built.batch.measure): Derived<'m3'> {
  switch (measure) {
    case 'pan':
      return typed('batch.pan', 'm3', plan.ground.panM3, 'ground.panM3')
    case 'barrow':
      return typed('batch.barrow', 'm3', plan.ground.barrowM3, 'ground.barrowM3')
    case 'bucket':
      return typed('batch.bucket', 'm3', plan.built.batch.bucketM3, 'built.batch.bucketM3')
    default:
      return measure satisfies never
  }
}

/**
 * One batch by the bag: the parts are loose volumes, so cement's own loose volume is one part of them and the rest follow it.
 *
 *   part = cement volume · parts ÷ cement parts      damp sand = sand · (1 + bulking)      wet = sum of dry parts ÷ dry factor
 */
export function batchBox(plan: Plan, mix: Mix): Batch {
  const { mixes, built } = plan
  const ratio = { clay: 0, stone: 0, ...mixes[mix] }
  const measure = measureOf(plan)
  const bulking = bulkingOf(built.batch)
  const bags = ratio.cement > 0 ? built.batch.bags : null
  const n = typed('batch.bags', '1', built.batch.bags, 'built.batch.bags')
  const start: Derived<'m3'> =
    bags === null
      ? measure
      : derive('batch.cement', 'm3', 'n · B / d', { n, B: BAG, d: LOOSE }, (of) => (of.n * of.B) / of.d)
  const first = bags === null ? 'clay' : 'cement'
  const partOf = (part: BatchPart['part']) => typed(`mix.${part}-part`, '1', ratio[part], `mixes.${mix}.${part}`)
  const dryOf = (part: BatchPart['part']): Derived<'m3'> =>
    part === first
      ? start
      : derive(
          `batch.${part}-dry`,
          'm3',
          'V · q / c',
          { V: start, q: partOf(part), c: partOf(first) },
          (of) => (of.V * of.q) / of.c,
        )
  const used = (['cement', 'clay', 'sand', 'stone'] as const).filter((part) => ratio[part] > 0)
  const dry = used.map(dryOf)
  const parts = used.map((part, index): BatchPart => {
    const own = dry[index] ?? start
    const volume =
      part === 'sand' && bulking.value > 0
        ? derive('batch.sand-damp', 'm3', 'V · (1 + u)', { V: own, u: bulking }, (of) => of.V * (1 + of.u))
        : own
    const measures = derive(`batch.measures`, '1', 'V / m', { V: volume, m: measure }, (of) => of.V / of.m)
    return { part, volume, measures, filled: toStep(measures.value, 0.25) }
  })
  const k = typed('mix.dry-factor', '1', ratio.dryFactor, `mixes.${mix}.dryFactor`)
  const l = cited(`mix.${mix}-water`, 'l', WATER[mix], WATER.source)
  return {
    mix,
    bags,
    parts,
    water: bags === null ? null : derive('batch.water', 'l', 'n · l', { n, l }, (of) => of.n * of.l),
    bulking,
    yield: derive('batch.yield', 'm3', 'D / k', { D: sumOf('batch.dry', 'm3', dry), k }, (of) => of.D / of.k),
  }
}

/** Batches that a use of the list takes, its waste counted in: by the cement, or by the clay where that binds. Null where the use has no such mix. */
export function batchesFor(batch: Batch, needs: readonly Need[], use: string): Derived<'piece'> | null {
  const { bags, parts } = batch
  const wanted = needs.find((one) => one.use === use && one.item === (bags === null ? 'clay' : 'cement'))
  if (wanted === undefined) return null
  const first = parts[0]
  if (bags !== null) {
    const n = typed('batch.bags', '1', bags, 'built.batch.bags')
    const total = wanted.gross as Derived<'kg'>
    return derive('batch.count', 'piece', 'ceil(C / (n · B))', { C: total, n, B: BAG }, (of) =>
      wholeUp(of.C / (of.n * of.B)),
    )
  }
  if (first === undefined) return null
  const total = wanted.gross as Derived<'m3'>
  return derive('batch.count', 'piece', 'ceil(C / V)', { C: total, V: first.volume }, (of) => wholeUp(of.C / of.V))
}

/** Uses of the list that are mixed, with the kind of mix each takes. */
export function mixedUses(needs: readonly Need[]): { readonly use: string; readonly mix: Mix }[] {
  const uses = new Map<string, Mix>()
  for (const { use, item } of needs)
    if ((item === 'cement' || item === 'clay') && use !== 'lining')
      uses.set(use, use === 'joints' || use === 'render' ? 'mortar' : 'concrete')
  return [...uses].map(([use, mix]) => ({ use, mix }))
}

/** Units that one batch lays: the units of the walls shared out over their mortar, waste counted in. */
export function unitsPerBatch(batch: Batch, needs: readonly Need[], laid: Derived): Derived<'piece'> | null {
  const count = batchesFor(batch, needs, 'joints')
  if (count === null || count.value === 0) return null
  const { bags, parts } = batch
  const wanted = needs.find((one) => one.use === 'joints' && one.item === (bags === null ? 'clay' : 'cement'))
  const first = parts[0]
  if (wanted === undefined || first === undefined) return null
  if (bags === null)
    return derive(
      'batch.lays',
      'piece',
      'floor(N · V / C)',
      { N: laid, V: first.volume, C: wanted.gross as Derived<'m3'> },
      (of) => wholeDown((of.N * of.V) / of.C),
    )
  const n = typed('batch.bags', '1', bags, 'built.batch.bags')
  return derive(
    'batch.lays',
    'piece',
    'floor(N · n · B / C)',
    { N: laid, n, B: BAG, C: wanted.gross as Derived<'kg'> },
    (of) => wholeDown((of.N * of.n * of.B) / of.C),
  )
}
