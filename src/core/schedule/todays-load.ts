import { lotsFor } from '../basics/count.ts'
import { cited, counted, derive, typed, type Derived } from '../basics/derived.ts'
import type { Finding } from '../basics/finding.ts'
import type { Range } from '../basics/range.ts'
import { drying, type Drying } from '../fish/drying.ts'
import { FISH_DATA } from '../fish/fish-data.ts'
import type { FishLoad } from '../fish/load.ts'
import { firingTimetable, type FiringStep } from '../fish/timetable.ts'
import type { Plan } from '../plan/schema.ts'

/** Today's fish on this kiln: what to load, for how long, with how much wood, and what to expect of it. */
export interface TodaysLoad {
  readonly dried: Drying
  readonly trays: Derived<'piece'>
  readonly chambers: Derived<'piece'>
  readonly firings: Derived<'piece'>
  /** Wood for all of today's fish, by the published ratio. */
  readonly wood: Range<'kg'>
  readonly timetable: readonly FiringStep[]
  readonly findings: readonly Finding[]
}

/** More fish than the day's firings take: what is left must be kept cold or sold fresh. */
const tooMuch = (dried: Drying, load: FishLoad): Finding => ({
  level: 'problem',
  kind: 'today-too-much',
  args: {
    over: { value: dried.dressed.value - load.perDay.value, unit: 'kg' },
    takes: { value: load.perDay.value, unit: 'kg' },
  },
  card: 'catch',
  remedies: [],
})

/** What today's fish needs: trays, chambers and firings, and the product to expect, kg. */
export function todaysLoad(plan: Plan, load: FishLoad, freshKg: number): TodaysLoad {
  const fresh = counted('today.fresh', 'kg', freshKg)
  const dried = drying(plan, fresh)
  const k = typed('tray.per-chamber', 'piece', plan.trays.perChamber, 'trays.perChamber')
  const n = typed('chamber-count', 'piece', plan.chambers.count, 'chambers.count')
  const trays = derive('today.trays', 'piece', 'ceil(D / F)', { D: dried.dressed, F: load.perTray }, (v) =>
    lotsFor(v.D, v.F),
  )
  const firings = derive('today.firings', 'piece', 'ceil(T / (n · k))', { T: trays, n, k }, (v) =>
    lotsFor(v.T, v.n * v.k),
  )
  const chambers = derive('today.chambers', 'piece', 'min(n, ceil(T / k))', { T: trays, n, k }, (v) =>
    Math.min(v.n, lotsFor(v.T, v.k)),
  )
  const { ratioLow, ratioHigh, ratioSource } = FISH_DATA.wood
  const wood = (id: string, ratio: number) =>
    derive('today.wood', 'kg', 'W · r', { W: fresh, r: cited(id, 'kg/kg', ratio, ratioSource) }, (v) => v.W * v.r)
  return {
    dried,
    trays,
    chambers,
    firings,
    wood: { low: wood('wood.ratio-low', ratioLow), high: wood('wood.ratio-high', ratioHigh) },
    timetable: firingTimetable(plan),
    findings: dried.dressed.value > load.perDay.value * (1 + 1e-9) ? [tooMuch(dried, load)] : [],
  }
}
