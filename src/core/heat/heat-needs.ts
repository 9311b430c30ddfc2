import { cited, derive, typed, type Derived } from '../basics/derived.ts'
import { FISH_DATA } from '../fish/fish-data.ts'
import { firingTime } from '../fish/timetable.ts'
import { PI } from '../fish/tray-mass.ts'
import type { Plan } from '../plan/schema.ts'
import { wallHeat } from './firing-heat.ts'
import { HEAT_DATA, materialOf } from './heat-data.ts'
import { modelled } from './modelled.ts'
import { wallFaces } from './wall-faces.ts'

const { water } = FISH_DATA
const BOILING = 100

/** Specific heat of fish by its moisture, J/kgK: water's and dry matter's by their shares (Earle, appendix 7). */
export function fishSpecificHeat(moisture: Derived<'1'>): Derived<'J/kgK'> {
  const wet = cited('water.heat', 'J/kgK', water.heat, water.heatSource)
  const dry = cited('solids.heat', 'J/kgK', water.solidsHeat, water.heatSource)
  return derive(
    'fish.heat',
    'J/kgK',
    'w · p + s · (1 − p)',
    { w: wet, s: dry, p: moisture },
    (v) => v.w * v.p + v.s * (1 - v.p),
    { source: 'earle' },
  )
}

/** Where the fish gets to while it cooks: as hot as the gas, but no hotter than boiling water. */
const cookedAt = ({ firing }: Plan): Derived<'K'> => {
  const warmer = Math.min(firing.cookDegC, BOILING) - firing.airDegC
  return modelled('fish.warming', 'K', warmer, {
    T: typed('firing.cook-temperature', 'degC', firing.cookDegC, 'firing.cookDegC'),
    A: typed('firing.air', 'degC', firing.airDegC, 'firing.airDegC'),
  })
}

/** Heat to warm the dressed fish, its water included, J. */
export function fishHeat(plan: Plan, dressed: Derived<'kg'>): Derived<'J'> {
  const moisture = typed('catch.moisture-fresh', '1', plan.catch.moistureFresh, 'catch.moistureFresh')
  return derive(
    'heat.fish',
    'J',
    'D · c · t',
    { D: dressed, c: fishSpecificHeat(moisture), t: cookedAt(plan) },
    (v) => v.D * v.c * v.t,
  )
}

/** Latent heat of water, J/kg, at a temperature: 2500.9 − 2.36 · T kJ/kg. */
export const latentHeat = (at: number): Derived<'J/kg'> =>
  modelled('water.latent', 'J/kg', water.latentAtZero - water.latentSlope * at, {
    z: cited('water.latent-zero', 'J/kg', water.latentAtZero, water.latentSource),
    T: cited('water.latent-at', 'degC', at, 'common-practice'),
  })

/** Heat that would warm so much water from a temperature and boil it off at 100 °C, J: the useful heat of published kiln efficiencies. */
export function boilOffHeat(waterOut: Derived<'kg'>, from: Derived<'degC'>): Derived<'J'> {
  const c = cited('water.heat', 'J/kgK', water.heat, water.heatSource)
  const warming = modelled('water.warming', 'K', BOILING - from.value, { T: from })
  return derive(
    'heat.boil-off',
    'J',
    'E · (c · t + r)',
    { E: waterOut, c, t: warming, r: latentHeat(BOILING) },
    (v) => v.E * (v.c * v.t + v.r),
  )
}

/** Heat to turn the water into vapour, J. It dries off near the drying temperature; what warmed it is in the fish's own heat. */
export const vapourHeat = (plan: Plan, waterOut: Derived<'kg'>): Derived<'J'> =>
  derive('heat.vapour', 'J', 'E · r', { E: waterOut, r: latentHeat(plan.firing.dryDegC) }, (v) => v.E * v.r)

/** Heat that walls draw from the fire, J. Low: firing after firing, gas as hot as at the fish. High: from cold, gas hotter beside the flame. */
export function wallHeatDrawn(plan: Plan, end: 'low' | 'high'): Derived<'J'> {
  const { hotterLowK, hotterHighK } = HEAT_DATA.fireZone
  const { outer, shared } = wallHeat(plan, plan.walls.fill, end === 'low' ? hotterLowK : hotterHighK)
  const faces = wallFaces(plan)
  const from = { h: typed('firing.dry-hours', 'h', plan.firing.dryHours, 'firing.dryHours') }
  const which = end === 'low' ? 'repeated' : 'cold'
  const drawn = modelled('heat.outer-drawn', 'J/m2', outer[which].drawnJm2, from)
  const between = modelled('heat.shared-drawn', 'J/m2', shared[which].drawnJm2, from)
  return derive(
    'heat.walls',
    'J',
    'A · q + B · p',
    { A: faces.outer, q: drawn, B: faces.shared, p: between },
    (v) => v.A * v.q + v.B * v.p,
  )
}

/** Heat into the ground under the hearth, J: a deep solid whose face is as hot as the gas, which overstates it: 2 · λ · ΔT · √(t / (π · α)). */
export function groundHeat(plan: Plan, end: 'low' | 'high'): Derived<'J'> {
  const { conductivity, density, heat, source } = materialOf('ground')
  const hotter = end === 'low' ? HEAT_DATA.fireZone.hotterLowK : HEAT_DATA.fireZone.hotterHighK
  const { cookDegC, cookHours, dryDegC, dryHours, airDegC } = plan.firing
  const mean = (cookDegC * cookHours + dryDegC * dryHours) / (cookHours + dryHours) + hotter - airDegC
  const hours = firingTime(plan)
  const seconds = derive(
    'firing.seconds',
    's',
    't · k',
    { t: hours, k: cited('hour', 's/h', 3600, 'si') },
    (v) => v.t * v.k,
  )
  const alpha = modelled('ground.diffusivity', 'm2/s', conductivity / (density * heat), {
    rho: cited('ground.density', 'kg/m3', density, source),
    c: cited('ground.heat', 'J/kgK', heat, source),
  })
  return derive(
    'heat.ground',
    'J',
    'A · 2 · k · T · sqrt(s / (pi · a))',
    {
      A: wallFaces(plan).hearth,
      k: cited('ground.conductivity', 'W/mK', conductivity, source),
      T: modelled('ground.warming', 'K', Math.max(mean, 0), { t: hours }),
      s: seconds,
      pi: PI,
      a: alpha,
    },
    (v) => v.A * 2 * v.k * v.T * Math.sqrt(v.s / (v.pi * v.a)),
  )
}
