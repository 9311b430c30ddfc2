import type { Unit } from '../../core/basics/unit.ts'
import { say } from './catalogue.ts'
import { FOOT_M, readLength, showLength } from './length.ts'
import { showNumber, showRounded } from './locale.ts'
import { readMass, showMass } from './mass.ts'
import { readMoney, showMoney } from './money.ts'
import { readNumber } from './read-number.ts'
import type { Figure, Show } from './show.ts'

/** A number of the core, in SI, as this reader wants to see it. */
export function showFigure(value: number, unit: Unit, show: Show): Figure {
  switch (unit) {
    case 'm':
      return showLength(value, show)
    case 'kg':
      return showMass(value, show)
    case 'money':
      return showMoney(value, show.currency)
    case 'money/kg':
      return showMoneyPerKg(value, show)
    case 'm2':
      return show.length === 'ft-in'
        ? { figure: showSmall(value / FOOT_M ** 2), unit: say('unit.ft2') }
        : { figure: showSmall(value), unit: say('unit.m2') }
    case 'm3':
      return show.length === 'ft-in'
        ? { figure: showSmall(value / FOOT_M ** 3), unit: say('unit.ft3') }
        : { figure: showSmall(value), unit: say('unit.m3') }
    case '1':
    case 'kg/kg':
    case 'm3/m3':
      return { figure: showSmall(value), unit: '' }
    case 'piece':
      return { figure: showNumber(value, 2), unit: '' }
    case 'day':
      return { figure: showNumber(value, 1), unit: say('unit.day', { count: value }) }
    case 'h':
      return { figure: showNumber(value, 1), unit: say('unit.h') }
    case 'deg':
      return { figure: `${showNumber(value, 1)}°`, unit: '' }
    case 'degC':
      return { figure: showNumber(value, 0), unit: '°C' }
    case 'N':
    case 'N/m':
    case 'N/m3':
    case 'Pa':
    case 'J':
    case 'J/kg':
    case 'W':
      return withPrefix(value, unit)
    default:
      return { figure: showRounded(value, 4), unit: UNIT_WORDS[unit] }
  }
}

/** Signs of units that every language writes alike. */
const UNIT_WORDS = {
  'kg/m': 'kg/m',
  'kg/m2': 'kg/m²',
  'kg/m3': 'kg/m³',
  'piece/m2': '/m²',
  'piece/kg': '/kg',
  s: 's',
  'h/m3': 'h/m³',
  'm2/h': 'm²/h',
  'J/kgK': 'J/kgK',
  'W/mK': 'W/mK',
  'W/m2K': 'W/m²K',
  'm2K/W': 'm²K/W',
  K: 'K',
  N: 'N',
  'N/m': 'N/m',
  'N/m3': 'N/m³',
  Pa: 'Pa',
  J: 'J',
  'J/kg': 'J/kg',
  W: 'W',
} as const

type PlainUnit = keyof typeof UNIT_WORDS

function withPrefix(value: number, unit: PlainUnit): Figure {
  const size = Math.abs(value)
  if (size >= 1e6) return { figure: showRounded(value / 1e6), unit: `M${UNIT_WORDS[unit]}` }
  if (size >= 1e3) return { figure: showRounded(value / 1e3), unit: `k${UNIT_WORDS[unit]}` }
  return { figure: showRounded(value), unit: UNIT_WORDS[unit] }
}

/** Two places, or three figures that matter where it is small. */
const showSmall = (value: number): string => (Math.abs(value) >= 1 ? showNumber(value, 2) : showRounded(value))

function showMoneyPerKg(value: number, show: Show): Figure {
  const { figure, unit } = showMoney(Math.round(value), show.currency)
  return { figure, unit: `${unit}/kg` }
}

/** A share as a percentage: 0.05 is 5 %. */
export const showShare = (share: number): Figure => ({ figure: showNumber(share * 100, 1), unit: '%' })

/** What someone typed for a number of the core, in SI; null where it is none. */
export function readFigure(typed: string, unit: Unit, show: Show): number | null {
  switch (unit) {
    case 'm':
      return readLength(typed, show)
    case 'kg':
      return readMass(typed, show)
    case 'money':
      return readMoney(typed, show.currency)
    default:
      return readNumber(typed.replace(/[a-z°²³/%]+$/i, ''))
  }
}

/** What someone typed for a share, with or without the sign: 5, 5 % and 5,0% are all 0.05. */
export function readShare(typed: string): number | null {
  const value = readNumber(typed.replace('%', ''))
  return value === null ? null : value / 100
}
