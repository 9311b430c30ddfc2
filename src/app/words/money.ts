import { numberFormat, showNumber } from './locale.ts'
import { readNumber } from './read-number.ts'
import type { Figure, Show } from './show.ts'

type Currency = Show['currency']

const options = (currency: Currency): Intl.NumberFormatOptions => ({
  style: 'currency',
  currency: currency.code,
  currencyDisplay: 'narrowSymbol',
  minimumFractionDigits: currency.digits,
  maximumFractionDigits: currency.digits,
})

/** The currency's short sign in this locale, or its code where there is none. */
export function currencySign(currency: Currency): string {
  const sign = numberFormat(options(currency))
    .formatToParts(0)
    .find((part) => part.type === 'currency')?.value
  return (sign ?? currency.code).replaceAll('\u202f', '\u00a0')
}

/** Whole minor units as figure and sign: 10 800 pesewas are 108.00 and the sign of the cedi. */
export function showMoney(minor: number, currency: Currency): Figure {
  return { figure: amount(minor, currency), unit: currencySign(currency) }
}

/** The figure alone: minor units over ten to the number of digits, with all its digits. */
export const amount = (minor: number, currency: Currency): string =>
  showNumber(minor / 10 ** currency.digits, currency.digits, currency.digits)

/** Money in a line of words, with the sign on the side where this locale writes it. */
export const moneyText = (minor: number, currency: Currency): string =>
  numberFormat(options(currency))
    .format(minor / 10 ** currency.digits)
    .replaceAll('\u202f', '\u00a0')
    .replaceAll('-', '−')

/** What someone typed as money, in whole minor units; null where it is no amount or finer than the currency has. */
export function readMoney(typed: string, currency: Currency): number | null {
  const bare = typed.replace(currencySign(currency), '').replace(new RegExp(`\\b${currency.code}\\b`, 'i'), '')
  const value = readNumber(bare)
  if (value === null) return null
  const minor = value * 10 ** currency.digits
  const whole = Math.round(minor)
  return Math.abs(minor - whole) > 1e-6 * Math.max(1, Math.abs(minor)) ? null : whole
}
