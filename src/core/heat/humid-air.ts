/** Air of the place and what it can carry away. Pressures in Pa, temperatures in °C, humidity ratio in kg of vapour per kg of dry air. */
const SEA_LEVEL_PA = 101_325
const VAPOUR_OVER_AIR = 0.62198
const AIR_HEAT = 1006
const VAPOUR_HEAT = 1860
const LATENT_AT_ZERO = 2.5009e6
const LATENT_SLOPE = 2360

/** Saturation pressure over water: Magnus form with the constants of the WMO instrument guide, from memory; within 0.5 % from 0 to 100 °C is not claimed above 60 °C. */
export const saturationPa = (degC: number): number => 611.2 * Math.exp((17.62 * degC) / (243.12 + degC))

/** Water in air, kg a kg of dry air, from the pressure of its vapour, Pa: x = 0.622 · p / (P − p). */
export const humidityRatio = (vapourPa: number): number => (VAPOUR_OVER_AIR * vapourPa) / (SEA_LEVEL_PA - vapourPa)

export interface DryingAir {
  /** Vapour in the air of the place, kg/kg, unchanged by heating. */
  readonly ratioIn: number
  /** Temperature to which the heated air cools if it soaks itself full over the fish, °C. */
  readonly wetBulbDegC: number
  /** Water that a kilogram of heated air takes up when it leaves full, kg/kg. */
  readonly mostPickUp: number
  /** Heat to warm a kilogram of it, J/kg, and the part that is still in it when it leaves full. */
  readonly heatIn: number
  readonly heatLeft: number
}

/**
 * Air heated from the place to the drying stage, then cooled along adiabatic saturation: what it gains in vapour it pays in warmth.
 * Bisection on (c + v · w) · (T − Tw) = r(Tw) · (ws(Tw) − w), whose two sides cross once.
 */
export function dryingAir(airDegC: number, humidity: number, dryDegC: number): DryingAir {
  const ratioIn = humidityRatio(humidity * saturationPa(airDegC))
  const heat = AIR_HEAT + VAPOUR_HEAT * ratioIn
  let low = Math.min(0, airDegC)
  let high = dryDegC
  for (let turn = 0; turn < 50; turn++) {
    const middle = (low + high) / 2
    const taken = (LATENT_AT_ZERO - LATENT_SLOPE * middle) * (humidityRatio(saturationPa(middle)) - ratioIn)
    if (heat * (dryDegC - middle) > taken) low = middle
    else high = middle
  }
  const wetBulbDegC = (low + high) / 2
  return {
    ratioIn,
    wetBulbDegC,
    mostPickUp: Math.max(humidityRatio(saturationPa(wetBulbDegC)) - ratioIn, 0),
    heatIn: heat * (dryDegC - airDegC),
    heatLeft: heat * (wetBulbDegC - airDegC),
  }
}
