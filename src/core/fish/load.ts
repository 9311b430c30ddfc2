import { lotsFor } from '../basics/count.ts'
import { derive, typed, type Derived } from '../basics/derived.ts'
import type { Finding } from '../basics/finding.ts'
import { LIMITS } from '../plan/limits.ts'
import type { Plan } from '../plan/schema.ts'
import { dressedFish } from './dressed-fish.ts'
import { drying, type Drying } from './drying.ts'
import { dryingFindings } from './drying-findings.ts'
import { loadFindings } from './load-findings.ts'
import { TALL_STACK, TALLEST_STACK } from './tray-findings.ts'
import { fishPerTray } from './tray-load.ts'
import { traySizes } from './tray-sizes.ts'

/** A day of one season: fish as landed and dressed, and how full it makes the kiln (1 = full). */
export interface SeasonLoad {
  readonly season: 'usual' | 'peak' | 'lean'
  readonly fresh: Derived<'kg'>
  readonly dressed: Derived<'kg'>
  readonly fullness: Derived<'1'>
}

/** Chambers against trays: what each number of chambers asks of its stacks. */
export interface ChamberTrade {
  readonly chambers: number
  readonly traysPerChamber: number
  readonly level: 'usual' | 'tall' | 'too-tall'
}

/** What the kiln takes and what the catch asks of it; masses are of dressed fish unless they say fresh. */
export interface FishLoad {
  readonly perTray: Derived<'kg'>
  readonly perChamber: Derived<'kg'>
  /** Dressed fish in one firing, and in a day of all its firings, with every tray full. */
  readonly perFiring: Derived<'kg'>
  readonly perDay: Derived<'kg'>
  /** Fish as landed that a full day takes. */
  readonly freshPerDay: Derived<'kg'>
  /** What one firing with every tray full turns into. */
  readonly fullFiring: Drying
  readonly seasons: readonly SeasonLoad[]
  /** Trays in one firing, and chambers, that the greatest day needs. */
  readonly traysNeeded: Derived<'piece'>
  readonly chambersNeeded: Derived<'piece'>
  readonly trade: readonly ChamberTrade[]
  readonly findings: readonly Finding[]
}

/** The greatest day that the kiln is asked to carry, kg as landed. */
const greatestDay = ({ catch: fish }: Plan): Derived<'kg'> =>
  fish.peakKgPerDay !== null && fish.peakKgPerDay > fish.freshKgPerDay
    ? typed('catch.peak', 'kg', fish.peakKgPerDay, 'catch.peakKgPerDay')
    : typed('catch.usual', 'kg', fish.freshKgPerDay, 'catch.freshKgPerDay')

/** Fish on a tray, in a chamber and in a firing, kg, and trays, firings and chambers for the catch of a day. */
export function fishLoad(plan: Plan): FishLoad {
  const { catch: fish, chambers, trays } = plan
  const perTray = fishPerTray(plan, traySizes(plan))
  const k = typed('tray.per-chamber', 'piece', trays.perChamber, 'trays.perChamber')
  const n = typed('chamber-count', 'piece', chambers.count, 'chambers.count')
  const firings = typed('catch.firings', '1', fish.firingsPerDay, 'catch.firingsPerDay')
  const loss = typed('catch.dressing-loss', '1', fish.dressingLoss, 'catch.dressingLoss')
  const perChamber = derive('load.per-chamber', 'kg', 'k · F', { k, F: perTray }, (v) => v.k * v.F)
  const perFiring = derive('load.per-firing', 'kg', 'n · C', { n, C: perChamber }, (v) => v.n * v.C)
  const perDay = derive('load.per-day', 'kg', 's · B', { s: firings, B: perFiring }, (v) => v.s * v.B)
  const season = (name: SeasonLoad['season'], field: string, freshKg: number): SeasonLoad => {
    const fresh = typed(`catch.${name}`, 'kg', freshKg, field)
    const dressed = dressedFish(plan, fresh)
    return {
      season: name,
      fresh,
      dressed,
      fullness: derive('load.fullness', '1', 'D / Q', { D: dressed, Q: perDay }, (v) => v.D / v.Q),
    }
  }
  const seasons = [season('usual', 'catch.freshKgPerDay', fish.freshKgPerDay)]
  if (fish.peakKgPerDay !== null) seasons.push(season('peak', 'catch.peakKgPerDay', fish.peakKgPerDay))
  if (fish.leanKgPerDay !== null) seasons.push(season('lean', 'catch.leanKgPerDay', fish.leanKgPerDay))
  const greatest = dressedFish(plan, greatestDay(plan))
  const traysNeeded = derive(
    'load.trays-needed',
    'piece',
    'ceil(D / (s · F))',
    { D: greatest, s: firings, F: perTray },
    (v) => lotsFor(v.D, v.s * v.F),
  )
  const freshPerFiring = derive(
    'load.fresh-per-firing',
    'kg',
    'B / (1 − x)',
    { B: perFiring, x: loss },
    (v) => v.B / (1 - v.x),
  )
  const load = {
    perTray,
    perChamber,
    perFiring,
    perDay,
    freshPerDay: derive('load.fresh-per-day', 'kg', 'Q / (1 − x)', { Q: perDay, x: loss }, (v) => v.Q / (1 - v.x)),
    fullFiring: drying(plan, freshPerFiring),
    seasons,
    traysNeeded,
    chambersNeeded: derive('load.chambers-needed', 'piece', 'ceil(T / k)', { T: traysNeeded, k }, (v) =>
      lotsFor(v.T, v.k),
    ),
    trade: tradeOf(traysNeeded.value),
  }
  return { ...load, findings: [...loadFindings(plan, load), ...dryingFindings(plan)] }
}

/** Every number of chambers that the product draws, with the stack that carries the greatest day in it. */
function tradeOf(traysNeeded: number): ChamberTrade[] {
  return Array.from({ length: LIMITS['chambers.count'].max }, (_, index) => {
    const traysPerChamber = lotsFor(traysNeeded, index + 1)
    const level = traysPerChamber > TALLEST_STACK ? 'too-tall' : traysPerChamber > TALL_STACK ? 'tall' : 'usual'
    return { chambers: index + 1, traysPerChamber, level }
  })
}

/** The choice "choose for me": fewest chambers of the plan's clear side and stack that carry the greatest day; `carries` is false where not even the most do. */
export function chambersFor(plan: Plan): { readonly count: number; readonly carries: boolean } {
  const needed = fishLoad(plan).chambersNeeded.value
  const most = LIMITS['chambers.count'].max
  return { count: Math.min(Math.max(needed, 1), most), carries: needed <= most }
}
