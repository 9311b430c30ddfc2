import { cited, derive, sumOf, typed, type Derived } from '../basics/derived.ts'
import type { Finding } from '../basics/finding.ts'
import type { Range } from '../basics/range.ts'
import { drying } from '../fish/drying.ts'
import { FISH_DATA } from '../fish/fish-data.ts'
import type { Firing, Plan } from '../plan/schema.ts'
import { logFindings } from './firing-log-findings.ts'

/** One firing of the log beside what was to be expected of it. What was not weighed or paid gives null, never zero. */
export interface LoggedFiring {
  readonly id: string
  readonly firing: Firing
  /** Product over fish as landed, kg/kg. */
  readonly yieldOfFresh: Derived<'kg/kg'> | null
  /** Wood per kilogram of fish as landed, and of product. */
  readonly woodPerFresh: Derived<'kg/kg'> | null
  readonly woodPerProduct: Derived<'kg/kg'> | null
  readonly net: Derived<'money'> | null
  readonly expectedProduct: Range<'kg'>
  /** The same on a kilogram of fish as landed. */
  readonly expectedYield: Range<'kg/kg'> | null
  readonly yieldIs: Against | null
  readonly woodIs: Against | null
}

/** A measured figure against the two ends of what was expected. */
export type Against = 'below' | 'within' | 'above'

export interface FiringLog {
  /** In order of days; firings of one day in order of their ids. */
  readonly firings: readonly LoggedFiring[]
  readonly fresh: Derived<'kg'>
  readonly product: Derived<'kg'>
  readonly wood: Derived<'kg'>
  /** Over the firings that were weighed: product and wood on a kilogram of their own fish. */
  readonly yieldOfFresh: Derived<'kg/kg'> | null
  readonly woodPerFresh: Derived<'kg/kg'> | null
  readonly expectedWood: Range<'kg/kg'>
  /** Over all firings whose money is known. */
  readonly net: Derived<'money'>
  readonly netOf: number
  /** Entries that cannot be, or hardly: more out than in, days that cross. Kept as typed. */
  readonly findings: readonly Finding[]
}

/** The log of a plan; `today` comes from outside, to tell days that are yet to come. */
export function firingLog(plan: Plan, today: string | null = null): FiringLog {
  const firings = Object.entries(plan.run.firings)
    .toSorted(([idA, a], [idB, b]) => byText(a.day, b.day) || byText(idA, idB))
    .map(([id, firing]) => logged(plan, id, firing))
  const nets = firings.flatMap((one) => one.net ?? [])
  const masses = (id: string, field: Weighed, of = firings) =>
    sumOf(
      id,
      'kg',
      of.flatMap((one) => massOf(one.id, one.firing, field) ?? []),
    )
  const product = masses('log.product-all', 'productKg')
  const wood = masses('log.wood-all', 'woodKg')
  const freshWhere = (field: Weighed) =>
    masses(
      'log.fresh-weighed',
      'freshKg',
      firings.filter(({ firing }) => firing[field] !== null),
    )
  const { ratioLow, ratioHigh, ratioSource } = FISH_DATA.wood
  return {
    firings,
    fresh: masses('log.fresh-all', 'freshKg'),
    product,
    wood,
    yieldOfFresh: ratio('log.yield-all', product, freshWhere('productKg')),
    woodPerFresh: ratio('log.wood-per-fresh-all', wood, freshWhere('woodKg')),
    expectedWood: {
      low: cited('wood.ratio-low', 'kg/kg', ratioLow, ratioSource),
      high: cited('wood.ratio-high', 'kg/kg', ratioHigh, ratioSource),
    },
    net: sumOf('log.net-all', 'money', nets),
    netOf: nets.length,
    findings: firings.flatMap(({ firing }) => logFindings(plan, firing, today)),
  }
}

type Weighed = 'freshKg' | 'productKg' | 'woodKg'

const byText = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0)

const LOG_IDS = { freshKg: 'log.fresh', productKg: 'log.product', woodKg: 'log.wood' } as const

function massOf(id: string, firing: Firing, field: Weighed): Derived<'kg'> | null {
  const value = firing[field]
  return value === null ? null : typed(LOG_IDS[field], 'kg', value, `run.firings.${id}.${field}`, { day: firing.day })
}

function ratio(id: string, over: Derived<'kg'> | null, under: Derived<'kg'> | null): Derived<'kg/kg'> | null {
  if (over === null || under === null || under.value === 0) return null
  return derive(id, 'kg/kg', 'a / b', { a: over, b: under }, (v) => v.a / v.b)
}

const against = (value: number, low: number, high: number): Against =>
  value < low * (1 - 1e-9) ? 'below' : value > high * (1 + 1e-9) ? 'above' : 'within'

function logged(plan: Plan, id: string, firing: Firing): LoggedFiring {
  const fresh = typed('log.fresh', 'kg', firing.freshKg, `run.firings.${id}.freshKg`, { day: firing.day })
  const product = massOf(id, firing, 'productKg')
  const wood = massOf(id, firing, 'woodKg')
  const woodPerFresh = ratio('log.wood-per-fresh', wood, fresh)
  const expectedProduct = drying(plan, fresh).productRange
  const least = ratio('log.expected-yield', expectedProduct.low, fresh)
  const most = ratio('log.expected-yield', expectedProduct.high, fresh)
  const { ratioLow, ratioHigh } = FISH_DATA.wood
  return {
    id,
    firing,
    yieldOfFresh: ratio('log.yield', product, fresh),
    woodPerFresh,
    woodPerProduct: ratio('log.wood-per-product', wood, product),
    net: netOf(id, firing),
    expectedProduct,
    expectedYield: least && most && { low: least, high: most },
    yieldIs: product === null ? null : against(product.value, expectedProduct.low.value, expectedProduct.high.value),
    woodIs: woodPerFresh === null ? null : against(woodPerFresh.value, ratioLow, ratioHigh),
  }
}

/** What a firing left, once what it brought and every cost of it are written down. */
function netOf(id: string, firing: Firing): Derived<'money'> | null {
  const { salesMinor, fishCostMinor, woodCostMinor, otherCostMinor } = firing
  if (salesMinor === null || fishCostMinor === null || woodCostMinor === null || otherCostMinor === null) return null
  const of = (key: string, value: number, field: string) => typed(key, 'money', value, `run.firings.${id}.${field}`)
  return derive(
    'log.net',
    'money',
    's − f − w − o',
    {
      s: of('log.sales', salesMinor, 'salesMinor'),
      f: of('log.fish-cost', fishCostMinor, 'fishCostMinor'),
      w: of('log.wood-cost', woodCostMinor, 'woodCostMinor'),
      o: of('log.other-cost', otherCostMinor, 'otherCostMinor'),
    },
    (v) => v.s - v.f - v.w - v.o,
  )
}
