import { numberLocale } from './locale.ts'
import type { Show } from './show.ts'

type Currency = Show['currency']

/** Currencies offered, with the digits of their minor unit by ISO 4217, and the regions (ISO 3166) that use them. */
const CURRENCIES: Readonly<Record<string, { readonly digits: number; readonly regions: string }>> = {
  XOF: { digits: 0, regions: 'BJ BF CI GW ML NE SN TG' },
  XAF: { digits: 0, regions: 'CM CF TD CG GQ GA' },
  GHS: { digits: 2, regions: 'GH' },
  NGN: { digits: 2, regions: 'NG' },
  SLE: { digits: 2, regions: 'SL' },
  LRD: { digits: 2, regions: 'LR' },
  GMD: { digits: 2, regions: 'GM' },
  GNF: { digits: 0, regions: 'GN' },
  MRU: { digits: 2, regions: 'MR' },
  CDF: { digits: 2, regions: 'CD' },
  AOA: { digits: 2, regions: 'AO' },
  KES: { digits: 2, regions: 'KE' },
  TZS: { digits: 2, regions: 'TZ' },
  UGX: { digits: 0, regions: 'UG' },
  RWF: { digits: 0, regions: 'RW' },
  BIF: { digits: 0, regions: 'BI' },
  MWK: { digits: 2, regions: 'MW' },
  ZMW: { digits: 2, regions: 'ZM' },
  MZN: { digits: 2, regions: 'MZ' },
  MGA: { digits: 2, regions: 'MG' },
  ETB: { digits: 2, regions: 'ET' },
  ZAR: { digits: 2, regions: 'ZA' },
  INR: { digits: 2, regions: 'IN' },
  BDT: { digits: 2, regions: 'BD' },
  LKR: { digits: 2, regions: 'LK' },
  PHP: { digits: 2, regions: 'PH' },
  IDR: { digits: 2, regions: 'ID' },
  BRL: { digits: 2, regions: 'BR' },
  EUR: { digits: 2, regions: 'AT BE CY DE EE ES FI FR GR HR IE IT LT LU LV MT NL PT SI SK' },
  GBP: { digits: 2, regions: 'GB' },
  USD: { digits: 2, regions: 'US' },
}

export const CURRENCY_CODES = Object.keys(CURRENCIES)

/** A currency by its code; one that is not offered keeps two digits. */
export const currencyOf = (code: string): Currency => ({ code, digits: CURRENCIES[code]?.digits ?? 2 })

/** The currency of the region in the phone's language tag (fr-SN: XOF); the dollar where the tag names none that is offered. */
export function localCurrency(tag = numberLocale()): Currency {
  const region = regionOf(tag)
  const found = Object.entries(CURRENCIES).find(([, { regions }]) => regions.split(' ').includes(region))
  return currencyOf(found?.[0] ?? 'USD')
}

function regionOf(tag: string): string {
  try {
    return new Intl.Locale(tag).region ?? ''
  } catch {
    return ''
  }
}

/** Its name in the reader's language, with its code, for a list. */
export function currencyName(code: string): string {
  const name = new Intl.DisplayNames([numberLocale()], { type: 'currency', fallback: 'code' }).of(code)
  return name === undefined || name === code ? code : `${name} (${code})`
}
