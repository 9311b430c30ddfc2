import type { Finding } from '../basics/finding.ts'
import type { Plan } from '../plan/schema.ts'
import type { SourceId } from '../sources/sources.ts'
import { angleBetween, asBearing, type Facing } from './wind.ts'

export type NeighbourField = 'houseM' | 'thatchM' | 'boundaryM' | 'fuelStoreM' | 'treesM'

/** Distance kept from what can burn, by analogy with fire codes for open flames; local rules go before it. */
export interface KeptDistance {
  readonly field: NeighbourField
  readonly leastM: number
  readonly level: 'problem' | 'caution'
  readonly source: SourceId
}

/** 3 m: open-flame cooking, IFC 308. 8 m from thatch: small open fires, 7.6 m, IFC 307. A boundary may one day carry a house. */
export const KEPT_DISTANCES: readonly KeptDistance[] = [
  { field: 'thatchM', leastM: 8, level: 'problem', source: 'ifc' },
  { field: 'houseM', leastM: 3, level: 'problem', source: 'ifc' },
  { field: 'fuelStoreM', leastM: 3, level: 'problem', source: 'ifc' },
  { field: 'treesM', leastM: 3, level: 'caution', source: 'ifc' },
  { field: 'boundaryM', leastM: 3, level: 'caution', source: 'ifc' },
]

/** A house nearer than this in the smoke's way is worth a word, m: judgement. */
const SMOKE_REACHES_M = 50
/** Half the width of the smoke's way. */
const SMOKE_SPREAD_DEG = 45

/** Distances too short, smoke that blows to the nearest house, winds behind the front. */
export function placeFindings({ place }: Plan, facing: Facing): Finding[] {
  const findings: Finding[] = []
  const tell = (level: Finding['level'], kind: string, args: Finding['args'], remedies: Finding['remedies'] = []) =>
    findings.push({ level, kind: `place.${kind}`, args, card: 'place', remedies })
  for (const { field, leastM, level } of KEPT_DISTANCES) {
    const distanceM = place[field]
    if (distanceM !== null && distanceM < leastM)
      tell(level, `near-${field.slice(0, -1)}`, {
        distance: { value: distanceM, unit: 'm' },
        least: { value: leastM, unit: 'm' },
        short: { value: leastM - distanceM, unit: 'm' },
      })
  }
  const unmeasured = KEPT_DISTANCES.filter(({ field }) => place[field] === null).length
  if (unmeasured > 0) tell('caution', 'distances-unmeasured', { count: unmeasured })
  const winds = { day: place.windDayDeg, night: place.windNightDeg }
  for (const time of ['day', 'night'] as const) {
    const wind = winds[time]
    if (wind !== null && smokeReaches(place, wind))
      tell('caution', `smoke-to-house-${time}`, { bearing: { value: asBearing(wind + 180), unit: 'deg' } })
    if (facing[time] === 'from-behind' && facing.rule === 'into-wind') tell('caution', `wind-behind-${time}`, {})
  }
  if (facing.front === null) tell('caution', 'facing-unknown', {})
  else if (facing.rule === 'lee')
    tell('caution', 'facing-lee', {}, [{ kind: 'place.face-wind', args: {}, set: { 'place.facing': 'into-wind' } }])
  return findings
}

const smokeReaches = ({ houseM, houseDeg }: Plan['place'], windDeg: number): boolean =>
  houseDeg !== null && (houseM ?? 0) < SMOKE_REACHES_M && angleBetween(houseDeg, windDeg + 180) <= SMOKE_SPREAD_DEG
