import { cited, derive, typed, type Derived } from '../basics/derived.ts'
import type { Range } from '../basics/range.ts'
import { FISH_DATA } from '../fish/fish-data.ts'
import type { Drying } from '../fish/drying.ts'
import type { Plan } from '../plan/schema.ts'
import { boilOffHeat, fishHeat, groundHeat, vapourHeat, wallHeatDrawn } from './heat-needs.ts'
import { dryingAir } from './humid-air.ts'
import { modelled } from './modelled.ts'

export interface HeatShare {
  readonly to: 'fish' | 'vapour' | 'walls' | 'ground' | 'air'
  readonly share: Derived<'1'>
}

/** Where the heat of one firing goes, J, at one end of what is known. */
export interface HeatBudget {
  readonly fish: Derived<'J'>
  readonly vapour: Derived<'J'>
  readonly walls: Derived<'J'>
  readonly ground: Derived<'J'>
  readonly air: Derived<'J'>
  readonly total: Derived<'J'>
  /** Where it goes, as shares of the total, in the order fish, vapour, walls, ground, air. */
  readonly shares: readonly HeatShare[]
  readonly wood: Derived<'kg'>
  /** Part of the wood's heat that boils the water off: comparable with published efficiencies of kilns. */
  readonly efficiency: Derived<'1'>
}

/** Wood for one firing by two routes that know nothing of each other. */
export interface Fuel {
  readonly heatOfWood: Derived<'J/kg'>
  /** By published wood per kilogram of fresh fish: the block kiln of the accounts, and its open grill. */
  readonly byRatio: Range<'kg'>
  /** By what the heat must do: warm walls and slow air at the low end; cold walls and wasteful air at the high end. */
  readonly byEnergy: { readonly low: HeatBudget; readonly high: HeatBudget }
  /** Dry wood to keep under cover, at the high end of the ratio, and the room it takes when stacked. */
  readonly store: { readonly days: Derived<'1'>; readonly mass: Derived<'kg'>; readonly volume: Derived<'m3'> }
}

const { wood, air } = FISH_DATA

/** Net heat of burning wood, J/kg, by its moisture (wet basis, share of 1): 19 − 0.214 · M MJ/kg with M in per cent. */
export function heatOfWood(moisture: Derived<'1'>): Derived<'J/kg'> {
  const dry = cited('wood.ncv-dry', 'J/kg', wood.ncvDry, wood.ncvSource)
  const slope = cited('wood.ncv-slope', 'J/kg', wood.ncvSlope, wood.ncvSource)
  return derive('wood.ncv', 'J/kg', 'H − k · M', { H: dry, k: slope, M: moisture }, (v) => v.H - v.k * v.M)
}

/** Wood for one firing of so much fish, dried as told. The fish is that of one firing. */
export function fuel(plan: Plan, dried: Drying): Fuel {
  const moisture = typed('wood.moisture', '1', plan.firing.woodMoisture, 'firing.woodMoisture')
  const ncv = heatOfWood(moisture)
  const byRatio = (id: string, ratio: number) => {
    const r = cited(id, 'kg/kg', ratio, wood.ratioSource)
    return derive('wood.by-ratio', 'kg', 'W · r', { W: dried.fresh, r }, (v) => v.W * v.r)
  }
  const ratio = { low: byRatio('wood.ratio-low', wood.ratioLow), high: byRatio('wood.ratio-high', wood.ratioHigh) }
  return {
    heatOfWood: ncv,
    byRatio: ratio,
    byEnergy: { low: heatBudget(plan, dried, ncv, 'low'), high: heatBudget(plan, dried, ncv, 'high') },
    store: woodStore(plan, ratio.high),
  }
}

function heatBudget(plan: Plan, dried: Drying, ncv: Derived<'J/kg'>, end: 'low' | 'high'): HeatBudget {
  const fish = fishHeat(plan, dried.dressed)
  const vapour = vapourHeat(plan, dried.waterOut)
  const walls = wallHeatDrawn(plan, end)
  const ground = groundHeat(plan, end)
  const draught = airHeat(plan, dried.waterOut, end)
  const total = derive(
    'heat.total',
    'J',
    'F + V + A + G + L',
    { F: fish, V: vapour, A: walls, G: ground, L: draught },
    (v) => v.F + v.V + v.A + v.G + v.L,
  )
  const burnt = end === 'low' ? wood.burntHigh : wood.burntLow
  const eta = cited('wood.burnt', '1', burnt, wood.burntSource)
  const mass = derive('wood.by-energy', 'kg', 'Q / (H · e)', { Q: total, H: ncv, e: eta }, (v) => v.Q / (v.H * v.e))
  return {
    fish,
    vapour,
    walls,
    ground,
    air: draught,
    total,
    shares: [
      shareOf('fish', fish, total),
      shareOf('vapour', vapour, total),
      shareOf('walls', walls, total),
      shareOf('ground', ground, total),
      shareOf('air', draught, total),
    ],
    wood: mass,
    efficiency: efficiencyOf(
      boilOffHeat(dried.waterOut, typed('firing.air', 'degC', plan.firing.airDegC, 'firing.airDegC')),
      mass,
      ncv,
    ),
  }
}

const shareOf = (to: HeatShare['to'], heat: Derived<'J'>, total: Derived<'J'>): HeatShare => ({
  to,
  share: derive('heat.share', '1', 'q / Q', { q: heat, Q: total }, (v) => v.q / v.Q, { args: { to: `heat-to.${to}` } }),
})

/** Heat that boils the water off over heat in the wood. */
export const efficiencyOf = (useful: Derived<'J'>, mass: Derived<'kg'>, ncv: Derived<'J/kg'>): Derived<'1'> =>
  derive('wood.efficiency', '1', 'U / (m · H)', { U: useful, m: mass, H: ncv }, (v) => v.U / (v.m * v.H))

/**
 * Heat that the air carries out besides its vapour, J: the air that takes up the water leaves warmer than it came. Little of it where it leaves
 * three quarters full, much where it leaves a quarter full; no figure for this was found in print.
 */
function airHeat(plan: Plan, waterOut: Derived<'kg'>, end: 'low' | 'high'): Derived<'J'> {
  const { airDegC, airHumidity, dryDegC } = plan.firing
  const damp = dryingAir(airDegC, airHumidity, dryDegC)
  const share = end === 'low' ? air.pickUpHigh : air.pickUpLow
  const filled = cited('air.fullness', '1', share, air.source)
  const from = {
    T: typed('firing.air', 'degC', airDegC, 'firing.airDegC'),
    H: typed('firing.humidity', '1', airHumidity, 'firing.airHumidity'),
    D: typed('firing.dry-temperature', 'degC', dryDegC, 'firing.dryDegC'),
  }
  const pickUp = modelled('air.pick-up', 'kg/kg', damp.mostPickUp, from)
  const mass = derive('air.mass', 'kg', 'E / (f · x)', { E: waterOut, f: filled, x: pickUp }, (v) => v.E / (v.f * v.x))
  const given = modelled('air.heat-in', 'J/kg', damp.heatIn, from)
  const left = modelled('air.heat-full', 'J/kg', damp.heatLeft, from)
  return derive(
    'heat.air',
    'J',
    'm · (q − f · (q − r))',
    { m: mass, q: given, f: filled, r: left },
    (v) => v.m * (v.q - v.f * (v.q - v.r)),
  )
}

function woodStore(plan: Plan, perFiring: Derived<'kg'>): Fuel['store'] {
  const days = cited('wood.store-days', '1', wood.storeDays, wood.storeSource)
  const firings = typed('catch.firings', '1', plan.catch.firingsPerDay, 'catch.firingsPerDay')
  const mass = derive('wood.store', 'kg', 'd · s · m', { d: days, s: firings, m: perFiring }, (v) => v.d * v.s * v.m)
  const stacked = cited('wood.stacked', 'kg/m3', wood.stackedKgM3, wood.stackedSource)
  return { days, mass, volume: derive('wood.store-volume', 'm3', 'm / k', { m: mass, k: stacked }, (v) => v.m / v.k) }
}
