/** Numbers, money and dates follow the phone's language; words follow the catalogue. `en` where the phone does not say. */
let locale = typeof navigator === 'undefined' ? 'en' : navigator.language || 'en'

export const numberLocale = (): string => locale

/** Another language for numbers, as a settings screen or a test chooses it. */
export function setNumberLocale(tag: string): void {
  locale = tag
}

export interface Separators {
  readonly group: string
  readonly decimal: string
}

/** The marks this locale writes in 12 345.6: what groups the thousands and what begins the fraction. */
export function separators(): Separators {
  const parts = numberFormat({ useGrouping: true }).formatToParts(1_234_567.8)
  const mark = (type: string, otherwise: string) => parts.find((part) => part.type === type)?.value ?? otherwise
  return { group: mark('group', ' '), decimal: mark('decimal', '.') }
}

function keptIn<Options, Format>(
  formats: Map<string, Format>,
  Made: new (locale: string, options: Options & { numberingSystem: 'latn' }) => Format,
  options: Options,
): Format {
  const key = `${locale}|${JSON.stringify(options)}`
  const kept = formats.get(key)
  if (kept !== undefined) return kept
  const made = new Made(locale, { ...options, numberingSystem: 'latn' })
  formats.set(key, made)
  return made
}

const numberFormats = new Map<string, Intl.NumberFormat>()

/** `Intl.NumberFormat` objects are dear to make and cheap to keep. Digits are 0 to 9 in every locale, as on tapes, bags and coins. */
export function numberFormat(options: Intl.NumberFormatOptions): Intl.NumberFormat {
  return keptIn(numberFormats, Intl.NumberFormat, options)
}

const dateFormats = new Map<string, Intl.DateTimeFormat>()

/** The same for days and hours, which are dearer still. */
export function dateFormat(options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  return keptIn(dateFormats, Intl.DateTimeFormat, options)
}

/** A thin no-break space disappears in some faces at figure size; a full one does not. */
const visible = (text: string) => text.replaceAll('\u202f', '\u00a0').replaceAll('-', '−')

/** A plain number in the reader's digits and separators. */
export function showNumber(value: number, most = 2, least = 0): string {
  return visible(
    numberFormat({ maximumFractionDigits: most, minimumFractionDigits: least }).format(value === 0 ? 0 : value),
  )
}

/** The same ungrouped up to 9999, as the trade writes millimetres. */
export function showMeasure(value: number, most: number, least = 0): string {
  const options = { maximumFractionDigits: most, minimumFractionDigits: least, useGrouping: 'min2' } as const
  return visible(numberFormat(options).format(value === 0 ? 0 : value))
}

/** Three figures that matter: for physics, where the fourth is not known. */
export function showRounded(value: number, figures = 3): string {
  return visible(numberFormat({ maximumSignificantDigits: figures }).format(value === 0 ? 0 : value))
}
