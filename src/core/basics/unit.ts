/**
 * Units that a worked-out number can have inside the core: SI, with the few that have no SI form (pieces, money, days).
 * Each is its exponents over the base dimensions and its factor to the coherent unit, so that a test can prove the unit of every result from its inputs.
 */
export interface Dimension {
  readonly length?: number
  readonly mass?: number
  readonly time?: number
  readonly temperature?: number
  readonly money?: number
  /** One coherent SI unit holds this many of the unit: 1 m³ is 1000 l, so l has 0.001. */
  readonly factor?: number
}

/** Every unit by its name, with what it is made of. */
export const UNITS = {
  '1': {},
  piece: {},
  deg: {},
  m: { length: 1 },
  m2: { length: 2 },
  m3: { length: 3 },
  'm3/m3': {},
  l: { length: 3, factor: 0.001 },
  kg: { mass: 1 },
  m4: { length: 4 },
  'kg/m': { mass: 1, length: -1 },
  'kg/m2': { mass: 1, length: -2 },
  'kgK/m3': { mass: 1, length: -3, temperature: 1 },
  'kg/m3': { mass: 1, length: -3 },
  'kg/kg': {},
  'piece/m2': { length: -2 },
  'piece/kg': { mass: -1 },
  s: { time: 1 },
  h: { time: 1, factor: 3600 },
  day: { time: 1, factor: 86_400 },
  's/h': { factor: 1 / 3600 },
  'h/m2': { time: 1, length: -2, factor: 3600 },
  'h/piece': { time: 1, factor: 3600 },
  'h/day': { factor: 1 / 24 },
  'h/m3': { time: 1, length: -3, factor: 3600 },
  'm2/h': { length: 2, time: -1, factor: 1 / 3600 },
  N: { mass: 1, length: 1, time: -2 },
  'N/m': { mass: 1, time: -2 },
  'N/m3': { mass: 1, length: -2, time: -2 },
  Pa: { mass: 1, length: -1, time: -2 },
  J: { mass: 1, length: 2, time: -2 },
  'J/kg': { length: 2, time: -2 },
  'J/m2': { mass: 1, time: -2 },
  'J/kgK': { length: 2, time: -2, temperature: -1 },
  W: { mass: 1, length: 2, time: -3 },
  'W/mK': { mass: 1, length: 1, time: -3, temperature: -1 },
  'W/m2K': { mass: 1, time: -3, temperature: -1 },
  'm2K/W': { mass: -1, time: 3, temperature: 1 },
  'W/m2': { mass: 1, time: -3 },
  'W/K': { mass: 1, length: 2, time: -3, temperature: -1 },
  'm/s': { length: 1, time: -1 },
  'm/s2': { length: 1, time: -2 },
  'm3/s': { length: 3, time: -1 },
  'm2/s': { length: 2, time: -1 },
  K: { temperature: 1 },
  degC: { temperature: 1 },
  money: { money: 1 },
  'money/kg': { money: 1, mass: -1 },
  'money/day': { money: 1, time: -1, factor: 1 / 86_400 },
} as const satisfies Record<string, Dimension>

export type Unit = keyof typeof UNITS
