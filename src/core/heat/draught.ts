import { cited, derive, typed, type Derived } from '../basics/derived.ts'
import { GRAVITY } from '../fish/tray-mass.ts'
import type { TrayFrame } from '../fish/tray-frame.ts'
import type { Plan } from '../plan/schema.ts'
import { HEAT_DATA } from './heat-data.ts'

const KELVIN = cited('kelvin', 'K', 273.15, 'si')

/** Degrees Celsius as kelvin. */
const absolute = (id: string, celsius: Derived<'degC'>): Derived<'K'> =>
  derive(id, 'K', 'T + z', { T: celsius, z: KELVIN }, (v) => v.T + v.z)

/** Pull of a warm column of height h, Pa: 353 · g · h · (1 / To − 1 / Ti), absolute temperatures, air at sea level. */
export const draughtOf = (height: Derived<'m'>, outside: Derived<'degC'>, inside: Derived<'degC'>): Derived<'Pa'> => {
  const k = cited('draught-constant', 'kgK/m3', HEAT_DATA.draught.constant, HEAT_DATA.draught.source)
  return derive(
    'draught',
    'Pa',
    'k · g · h · (1 / To − 1 / Ti)',
    { k, g: GRAVITY, h: height, To: absolute('air-absolute', outside), Ti: absolute('gas-absolute', inside) },
    (v) => v.k * v.g * v.h * (1 / v.To - 1 / v.Ti),
    { source: 'draught-formula' },
  )
}

/** Pull of the kiln while it dries: from the middle of the fire opening to the top of the stack. A breeze at the opening outweighs it. */
export function kilnDraught(plan: Plan, frame: TrayFrame): Derived<'Pa'> {
  const opening = typed('opening-height', 'm', plan.openings.heightM, 'openings.heightM')
  const height = derive('draught-height', 'm', 'z − o / 2', { z: frame.topHeight, o: opening }, (v) => v.z - v.o / 2)
  return draughtOf(
    height,
    typed('firing.air', 'degC', plan.firing.airDegC, 'firing.airDegC'),
    typed('firing.dry-temperature', 'degC', plan.firing.dryDegC, 'firing.dryDegC'),
  )
}

/** A light breeze, 2 m/s, stopped by the front: ρ · v² / 2. It outweighs the draught of so low a kiln, which is why the side of the wind matters. */
export const breezePressure = (): Derived<'Pa'> =>
  derive(
    'breeze',
    'Pa',
    'r · v^2 / 2',
    { r: cited('air-density', 'kg/m3', 1.16, 'memory'), v: cited('breeze-speed', 'm/s', 2, 'common-practice') },
    (of) => (of.r * of.v ** 2) / 2,
  )
