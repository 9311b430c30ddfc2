import { numberFormat, numberLocale, showNumber } from './locale.ts'
import { readNumber } from './read-number.ts'
import { inLine, type Figure, type Show } from './show.ts'

type Currency = Show['currency']

const options = (currency: Currency): Intl.NumberFormatOptions => ({
  style: 'currency',
  currency: currency.code,
  currencyDisplay: 'narrowSymbol',
  minimumFractionDigits: currency.digits,
  maximumFractionDigits: currency.digits,
})

/** The currency's short sign in this locale, or its code where there is none. */
export const currencySign = (currency: Currency): string => signOf(currency).sign

interface Sign {
  readonly sign: string
  readonly isFirst: boolean
}

const signs = new Map<string, Sign>()

function signOf(currency: Currency): Sign {
  const key = `${numberLocale()}|${currency.code}`
  const known = signs.get(key)
  if (known !== undefined) return known
  const parts = numberFormat(options(currency)).formatToParts(0)
  const at = parts.findIndex((part) => part.type === 'currency')
  const text = (parts[at]?.value ?? currency.code).replaceAll('\u202f', '\u00a0')
  const made = { sign: text, isFirst: at < parts.findIndex((part) => part.type === 'integer') }
  signs.set(key, made)
  return made
}

/** Whole minor units as figure and sign: 10 800 pesewas are 108 and the sign of the cedi, 10 850 are 108.50. */
export function showMoney(minor: number, currency: Currency): Figure {
  const { sign, isFirst } = signOf(currency)
  const isWhole = minor % 10 ** currency.digits === 0
  return { figure: isWhole ? amount(minor, currency, 0) : amount(minor, currency), unit: sign, isUnitFirst: isFirst }
}

/** The figure alone: minor units over ten to the number of digits; with all its digits, so that a column stands in line. */
export const amount = (minor: number, currency: Currency, places = currency.digits): string =>
  showNumber(minor / 10 ** currency.digits, places, places)

/** Money in a line of words. */
export const moneyText = (minor: number, currency: Currency): string => inLine(showMoney(minor, currency))

/** What someone typed as money, in whole minor units; null where it is no amount or finer than the currency has. */
export function readMoney(typed: string, currency: Currency): number | null {
  const bare = typed
    .replaceAll(/\s/g, '\u00a0')
    .replace(currencySign(currency), '')
    .replace(new RegExp(`\\b${currency.code}\\b`, 'i'), '')
  const value = readNumber(bare)
  if (value === null) return null
  const minor = value * 10 ** currency.digits
  const whole = Math.round(minor)
  return Math.abs(minor - whole) > Math.max(1e-6, 4 * Number.EPSILON * Math.abs(minor)) ? null : whole
}
