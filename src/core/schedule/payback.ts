import { lotsFor } from '../basics/count.ts'
import { cited, counted, derive, typed, type Derived } from '../basics/derived.ts'
import type { Costs } from '../costs/costs.ts'
import { FISH_DATA } from '../fish/fish-data.ts'
import type { FishLoad } from '../fish/load.ts'
import type { Plan } from '../plan/schema.ts'
import { firingAccount, type FiringAccount } from './firing-account.ts'
import type { FiringLog } from './firing-log.ts'

/** When the kiln has paid for itself and what it adds to a kilogram of product, on usual days, at one end of the wood's range. */
export interface Payback {
  readonly account: FiringAccount
  /** False while things of the kiln have no price: the cost to bring back is then not the whole. */
  readonly complete: boolean
  /** Firings that bring back the kiln's cost; null where a firing leaves nothing. */
  readonly firings: Derived<'piece'> | null
  /** Firing days, at the plan's firings a day. */
  readonly days: Derived<'day'> | null
  /** Kiln and trays spread over their own lives, in a year and on a kilogram of product. */
  readonly yearly: Derived<'money'>
  readonly perKilogram: Derived<'money/kg'>
  /** Fish, wood, all else and the kiln on a kilogram of product: below this price the work earns nothing. */
  readonly costPerKilogram: Derived<'money/kg'>
}

/** What the log itself says: how much of the kiln's cost is back, and how many more firings like those so far. */
export interface PaidBack {
  readonly left: Derived<'money'>
  readonly mean: Derived<'money'>
  /** Null where firings have left nothing so far. */
  readonly more: Derived<'piece'> | null
}

/** Null while no firing has all its money written down. */
export function paidBack(log: Pick<FiringLog, 'net' | 'netOf'>, costs: Pick<Costs, 'total'>): PaidBack | null {
  if (log.netOf === 0) return null
  const n = counted('log.net-count', 'piece', log.netOf)
  const mean = derive('log.net-mean', 'money', 'S / n', { S: log.net, n }, (v) => v.S / v.n)
  const left = derive('payback.left', 'money', 'max(0, C − S)', { C: costs.total, S: log.net }, (v) =>
    Math.max(0, v.C - v.S),
  )
  const more =
    mean.value > 0
      ? derive('payback.more', 'piece', 'ceil(L / m)', { L: left, m: mean }, (v) => lotsFor(v.L, v.m))
      : null
  return { left, mean, more }
}

/** Null while prices are missing. Figures rest on usual days; lean days bring less. */
export function payback(plan: Plan, load: FishLoad, costs: Costs, end: 'low' | 'high'): Payback | null {
  const usual = load.seasons[0]
  if (usual === undefined) return null
  const masses = usualFiring(plan, load, usual.fresh, end)
  const account = firingAccount(plan, masses)
  if (account === null) return null
  const { run } = plan
  const trayCost =
    costs.sections.find((one) => one.section === 'trays')?.cost ?? counted('payback.no-trays', 'money', 0)
  const firings =
    account.net.value > 0
      ? derive('payback.firings', 'piece', 'ceil(C / n)', { C: costs.total, n: account.net }, (v) => lotsFor(v.C, v.n))
      : null
  const perDay = typed('catch.firings', '1', plan.catch.firingsPerDay, 'catch.firingsPerDay')
  const oneDay = cited('one-day', 'day', 1, 'si')
  const days =
    firings &&
    derive(
      'payback.days',
      'day',
      'ceil(N / s) · d',
      { N: firings, s: perDay, d: oneDay },
      (v) => lotsFor(v.N, v.s) * v.d,
    )
  const kilnYears = typed('run.kiln-life', '1', run.kilnLifeYears, 'run.kilnLifeYears')
  const trayYears = typed('run.tray-life', '1', run.trayLifeYears, 'run.trayLifeYears')
  const yearly = derive(
    'payback.yearly',
    'money',
    '(C − t) / K + t / T',
    { C: costs.total, t: trayCost, K: kilnYears, T: trayYears },
    (v) => (v.C - v.t) / v.K + v.t / v.T,
  )
  const firingDays = typed('run.firing-days', '1', run.firingDaysPerYear, 'run.firingDaysPerYear')
  const perKilogram = derive(
    'payback.per-kilogram',
    'money/kg',
    'Y / (d · s · P)',
    { Y: yearly, d: firingDays, s: perDay, P: masses.product },
    (v) => v.Y / (v.d * v.s * v.P),
  )
  const costPerKilogram = derive(
    'payback.cost-per-kilogram',
    'money/kg',
    'c / P + k',
    { c: account.cost, P: masses.product, k: perKilogram },
    (v) => v.c / v.P + v.k,
  )
  return { account, complete: costs.unpriced.length === 0, firings, days, yearly, perKilogram, costPerKilogram }
}

/** Masses of one firing on a usual day: the day's fish shared over its firings. */
function usualFiring(plan: Plan, load: FishLoad, day: Derived<'kg'>, end: 'low' | 'high') {
  const s = typed('catch.firings', '1', plan.catch.firingsPerDay, 'catch.firingsPerDay')
  const fresh = derive('payback.fresh', 'kg', 'W / s', { W: day, s }, (v) => v.W / v.s)
  const product = derive(
    'payback.product',
    'kg',
    'W · y',
    { W: fresh, y: load.fullFiring.yieldOfFresh },
    (v) => v.W * v.y,
  )
  const { ratioLow, ratioHigh, ratioSource } = FISH_DATA.wood
  const r = cited(`wood.ratio-${end}`, 'kg/kg', end === 'low' ? ratioLow : ratioHigh, ratioSource)
  return { fresh, product, wood: derive('payback.wood', 'kg', 'W · r', { W: fresh, r }, (v) => v.W * v.r) }
}
