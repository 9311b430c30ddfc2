import type { Unit } from '../../core/basics/unit.ts'
import { say } from './catalogue.ts'
import { FOOT_M, readLength, showLength } from './length.ts'
import { showNumber, showRounded } from './locale.ts'
import { readMass, showMass } from './mass.ts'
import { readMoney, showMoney } from './money.ts'
import { readNumber } from './read-number.ts'
import type { Figure, Show } from './show.ts'

type Shown = (value: number, show: Show) => Figure

const bare: Shown = (value) => ({ figure: showSmall(value), unit: '' })

/** Units that are not simply their sign after the number. */
const WAYS: Partial<Record<Unit, Shown>> = {
  m: (value, show) => showLength(value, show),
  kg: showMass,
  money: (value, show) => showMoney(value, show.currency),
  'money/kg': (value, show) => {
    const { figure, unit } = showMoney(Math.round(value), show.currency)
    return { figure, unit: `${unit}/kg` }
  },
  m2: (value, show) =>
    show.length === 'ft-in'
      ? { figure: showSmall(value / FOOT_M ** 2), unit: say('unit.ft2') }
      : { figure: showSmall(value), unit: say('unit.m2') },
  m3: (value, show) =>
    show.length === 'ft-in'
      ? { figure: showSmall(value / FOOT_M ** 3), unit: say('unit.ft3') }
      : { figure: showSmall(value), unit: say('unit.m3') },
  '1': bare,
  'kg/kg': bare,
  'm3/m3': bare,
  piece: (value) => ({ figure: showNumber(value, 2), unit: '' }),
  day: (value) => ({ figure: showNumber(value, 1), unit: say('unit.day', { count: value }) }),
  h: (value) => ({ figure: showNumber(value, 1), unit: say('unit.h') }),
  deg: (value) => ({ figure: `${showNumber(value, 1)}°`, unit: '' }),
  degC: (value) => ({ figure: showNumber(value, 0), unit: '°C' }),
}

/** Large forces, pressures and energies go by the thousand. */
const PREFIXED: ReadonlySet<Unit> = new Set<Unit>(['N', 'N/m', 'N/m3', 'Pa', 'J', 'J/kg', 'W'])

/** A number of the core, in SI, as this reader wants to see it. */
export function showFigure(value: number, unit: Unit, show: Show): Figure {
  const way = WAYS[unit]
  if (way !== undefined) return way(value, show)
  return PREFIXED.has(unit) ? withPrefix(value, unit) : { figure: showRounded(value, 4), unit: signOf(unit) }
}

/** A unit's sign as every language writes it: kg/m3 is kg/m³, pieces to the square metre are /m². */
const signOf = (unit: Unit): string =>
  unit.replace('piece', '').replaceAll('2', '²').replaceAll('3', '³').replaceAll('4', '⁴')

function withPrefix(value: number, unit: Unit): Figure {
  const size = Math.abs(value)
  if (size >= 1e6) return { figure: showRounded(value / 1e6), unit: `M${signOf(unit)}` }
  if (size >= 1e3) return { figure: showRounded(value / 1e3), unit: `k${signOf(unit)}` }
  return { figure: showRounded(value), unit: signOf(unit) }
}

/** Two places, or three figures that matter where it is small. */
const showSmall = (value: number): string => (Math.abs(value) >= 1 ? showNumber(value, 2) : showRounded(value))

/** A share as a percentage: 0.05 is 5 %. */
export const showShare = (share: number): Figure => ({ figure: showNumber(share * 100, 1), unit: '%' })

/** What someone typed for a number of the core, in SI; null where it is none. */
export function readFigure(typed: string, unit: Unit, show: Show): number | null {
  if (unit === 'm') return readLength(typed, show)
  if (unit === 'kg') return readMass(typed, show)
  if (unit === 'money') return readMoney(typed, show.currency)
  return readNumber(typed.replace(/[a-z°²³/%]+$/i, ''))
}

/** What someone typed for a share, with or without the sign: 5, 5 % and 5,0% are all 0.05. */
export function readShare(typed: string): number | null {
  const value = readNumber(typed.replace('%', ''))
  return value === null ? null : value / 100
}
