import { lotsFor, wholeDown } from '../basics/count.ts'
import { findingsOn, type Finding, type FindingArg, type Remedy } from '../basics/finding.ts'
import { LIMITS } from '../plan/limits.ts'
import type { Plan } from '../plan/schema.ts'
import { FISH_DATA } from './fish-data.ts'
import type { FishLoad } from './load.ts'
import { TALL_STACK } from './tray-findings.ts'

const kilograms = (value: number): FindingArg => ({ value, unit: 'kg' })
const DAY_HOURS = 24

const finding = findingsOn('catch')

/** Does the kiln carry the catch, are the seasons in order, and do the firings fit in a day? */
export function loadFindings(plan: Plan, load: Omit<FishLoad, 'findings'>): Finding[] {
  const { catch: fish, firing } = plan
  const found: Finding[] = []
  const greatest = load.seasons.reduce((most, one) => (one.dressed.value > most.dressed.value ? one : most))
  const args = {
    fish: kilograms(greatest.dressed.value),
    takes: kilograms(load.perDay.value),
    fullness: greatest.fullness.value,
  }
  if (greatest.fullness.value > 1 + 1e-9)
    found.push(finding('problem', 'catch-too-much', args, waysToCarry(plan, load)))
  else found.push(finding('good', 'catch-carried', args, fewerChambers(plan, load)))
  found.push(...loadingFindings(plan))
  if (fish.peakKgPerDay !== null && fish.peakKgPerDay < fish.freshKgPerDay)
    found.push(
      finding(
        'problem',
        'peak-below-usual',
        { peak: kilograms(fish.peakKgPerDay), usual: kilograms(fish.freshKgPerDay) },
        [{ kind: 'clear-peak', args: {}, set: { 'catch.peakKgPerDay': null } }],
      ),
    )
  if (fish.leanKgPerDay !== null && fish.leanKgPerDay > fish.freshKgPerDay)
    found.push(
      finding(
        'problem',
        'lean-above-usual',
        { lean: kilograms(fish.leanKgPerDay), usual: kilograms(fish.freshKgPerDay) },
        [{ kind: 'clear-lean', args: {}, set: { 'catch.leanKgPerDay': null } }],
      ),
    )
  const hours = firing.cookHours + firing.dryHours
  if (hours * fish.firingsPerDay > DAY_HOURS) {
    const fit = wholeDown(DAY_HOURS / hours)
    found.push(
      finding(
        'problem',
        'firings-over-day',
        { firings: fish.firingsPerDay, hours },
        fit < 1 ? [] : [{ kind: 'set-firings', args: { firings: fit }, set: { 'catch.firingsPerDay': fit } }],
      ),
    )
  }
  return found
}

/** The load against what was published for its own way of loading. */
function loadingFindings({ catch: fish }: Plan): Finding[] {
  const { layerFromKgM2, layerToKgM2, packedMostKg } = FISH_DATA.loading
  if (fish.loading === 'packed') {
    if (fish.loadKgPerTray <= packedMostKg) return []
    return [
      finding('caution', 'packed-heavy', { load: kilograms(fish.loadKgPerTray), most: kilograms(packedMostKg) }, [
        { kind: 'set-load', args: { load: kilograms(packedMostKg) }, set: { 'catch.loadKgPerTray': packedMostKg } },
      ]),
    ]
  }
  const near = fish.loadKgPerM2 < layerFromKgM2 ? layerFromKgM2 : layerToKgM2
  if (fish.loadKgPerM2 >= layerFromKgM2 && fish.loadKgPerM2 <= layerToKgM2) return []
  const args = { load: kilograms(fish.loadKgPerM2), from: kilograms(layerFromKgM2), to: kilograms(layerToKgM2) }
  return [
    finding('caution', 'layer-load', args, [
      { kind: 'set-load', args: { load: kilograms(near) }, set: { 'catch.loadKgPerM2': near } },
    ]),
  ]
}

/** Three ways to carry a catch that is too much: more chambers, taller stacks, another firing a day. */
function waysToCarry(plan: Plan, load: Omit<FishLoad, 'findings'>): Remedy[] {
  const ways: Remedy[] = []
  const chambers = load.chambersNeeded.value
  if (chambers <= LIMITS['chambers.count'].max)
    ways.push({ kind: 'set-chambers', args: { chambers }, set: { 'chambers.count': chambers } })
  const trays = lotsFor(load.traysNeeded.value, plan.chambers.count)
  if (trays <= TALL_STACK) ways.push({ kind: 'set-per-chamber', args: { trays }, set: { 'trays.perChamber': trays } })
  const firings = plan.catch.firingsPerDay + 1
  const hours = plan.firing.cookHours + plan.firing.dryHours
  const enough =
    load.perFiring.value * firings >= load.traysNeeded.value * plan.catch.firingsPerDay * load.perTray.value
  if (enough && firings <= LIMITS['catch.firingsPerDay'].max && hours * firings <= DAY_HOURS)
    ways.push({ kind: 'set-firings', args: { firings }, set: { 'catch.firingsPerDay': firings } })
  return ways
}

function fewerChambers(plan: Plan, load: Omit<FishLoad, 'findings'>): Remedy[] {
  const chambers = load.chambersNeeded.value
  if (chambers >= plan.chambers.count || chambers < 1) return []
  return [{ kind: 'set-chambers', args: { chambers }, set: { 'chambers.count': chambers } }]
}
