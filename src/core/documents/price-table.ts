import { byText } from '../basics/order.ts'
import { offerMark, PRICE_BOOK_FORMAT, PRICE_BOOK_VERSION, type PriceBook } from '../plan/price-book.ts'
import { LIMITS, MOST_MONEY_MINOR } from '../plan/limits.ts'
import { offerSchema, type Offer } from '../plan/schema.ts'
import { isItemKey } from '../quantities/items.ts'
import { dayNumber } from '../schedule/day-number.ts'
import { plainCell, readCsv, writeCsv, type Separator } from './csv.ts'

/** Columns of a price table, in the order they are written. Prices are in whole money (1.50), not minor units. */
const PRICE_COLUMNS = [
  'item',
  'variant',
  'lot_size',
  'lot',
  'width_m',
  'price',
  'currency',
  'seller',
  'seller_name',
  'place',
  'seen',
  'least_lots',
  'trip_price',
  'trip_lots',
] as const
type Column = (typeof PRICE_COLUMNS)[number]

/** What is wrong with a line of a table; the other lines are good all the same. */
export type TableProblem =
  | { readonly kind: 'empty' }
  | { readonly kind: 'no-header' }
  | { readonly kind: 'column-missing'; readonly column: Column }
  | { readonly kind: 'quote-open'; readonly line: number }
  | { readonly kind: 'too-many-lines'; readonly most: number }
  | { readonly kind: 'cells'; readonly line: number; readonly found: number; readonly wanted: number }
  | {
      readonly kind: 'unknown-item' | 'unknown-lot' | 'unknown-seller' | 'not-a-date'
      readonly line: number
      readonly text: string
    }
  | {
      readonly kind: 'not-a-number' | 'out-of-range' | 'too-fine'
      readonly line: number
      readonly column: Column
      readonly text: string
    }
  | { readonly kind: 'formula' | 'too-long'; readonly line: number; readonly column: Column }
  | { readonly kind: 'mixed-currency'; readonly line: number; readonly text: string; readonly wanted: string }
  | { readonly kind: 'duplicate'; readonly line: number; readonly firstLine: number }

export interface PriceTable {
  readonly book: PriceBook
  readonly problems: readonly TableProblem[]
}

const MOST_LINES = 5000
const LABEL_MOST = 80
const LOTS: readonly string[] = offerSchema.shape.lotName.options
const SELLERS: readonly string[] = offerSchema.shape.seller.options

/** Price book to a table that any spreadsheet opens; nothing in it can run as a formula. */
export function priceTable(book: PriceBook): string {
  const { code, digits } = book.currency
  const rows = Object.entries(book.offers)
    .toSorted(([a], [b]) => byText(a, b))
    .map(([, offer]) => [
      offer.item,
      offer.variant ?? '',
      String(offer.lotSize),
      offer.lotName,
      offer.widthM === 0 ? '' : String(offer.widthM),
      offer.priceMinor === null ? '' : majorText(offer.priceMinor, digits),
      code,
      offer.seller,
      offer.sellerName,
      offer.place,
      offer.seen ?? '',
      String(offer.leastLots),
      majorText(offer.transportMinor, digits),
      String(offer.tripLots),
    ])
  return writeCsv([PRICE_COLUMNS, ...rows], ',')
}

/** Minor units as whole money with a point: 1050 in a currency of two digits is 10.50. Exact: digits are moved, nothing is divided. */
export function majorText(minor: number, digits: number): string {
  const text = String(minor).padStart(digits + 1, '0')
  return digits === 0 ? text : `${text.slice(0, -digits)}.${text.slice(-digits)}`
}

/** Reads a table of prices in one currency; ids of the offers are made by `idOf` from the number of the line. */
export function readPriceTable(
  text: string,
  name: string,
  currency: PriceBook['currency'],
  idOf: (line: number) => string,
): PriceTable {
  const offers: Record<string, Offer> = {}
  const problems: TableProblem[] = []
  const book = (): PriceTable => ({
    book: { format: PRICE_BOOK_FORMAT, version: PRICE_BOOK_VERSION, name, example: false, currency, offers },
    problems,
  })
  if (text.trim() === '') return { ...book(), problems: [{ kind: 'empty' }] }
  const separator = separatorOf(text)
  if (separator === null) return { ...book(), problems: [{ kind: 'no-header' }] }
  const { rows, openQuote } = readCsv(text, separator)
  if (openQuote !== null) problems.push({ kind: 'quote-open', line: openQuote })
  const [header, ...lines] = rows
  const at = new Map((header?.cells ?? []).map((cell, index) => [cell.trim().toLowerCase(), index]))
  for (const column of ['item', 'lot_size', 'price'] as const)
    if (!at.has(column)) problems.push({ kind: 'column-missing', column })
  if (problems.some((problem) => problem.kind === 'column-missing')) return book()
  if (lines.length > MOST_LINES) problems.push({ kind: 'too-many-lines', most: MOST_LINES })
  const seen = new Map<string, number>()
  for (const { line, cells } of lines.slice(0, MOST_LINES)) {
    // What a never-closed quote has swallowed is no line of prices.
    if (openQuote !== null && line >= openQuote) break
    if (cells.length > at.size) {
      problems.push({ kind: 'cells', line, found: cells.length, wanted: at.size })
      continue
    }
    const cell = (column: Column) => plainCell((cells[at.get(column) ?? -1] ?? '').trim())
    const found = offerOf(cell, line, currency)
    if ('problems' in found) {
      problems.push(...found.problems)
      continue
    }
    const { offer } = found
    const same = offerMark(offer)
    const firstLine = seen.get(same)
    if (firstLine !== undefined) problems.push({ kind: 'duplicate', line, firstLine })
    else {
      seen.set(same, line)
      offers[idOf(line)] = offer
    }
  }
  return book()
}

/** The separator whose header has the needed columns, or null where none has. */
function separatorOf(text: string): Separator | null {
  const first =
    text
      .replace(/^\uFEFF/, '')
      .split(/\r?\n|\r/)
      .find((line) => line.trim() !== '') ?? ''
  const names = (separator: Separator) =>
    first.split(separator).map((cell) => cell.trim().replaceAll('"', '').toLowerCase())
  return (
    ([',', ';', '\t'] as const).find((separator) => names(separator).filter((name) => isColumn(name)).length >= 2) ??
    null
  )
}

const isColumn = (name: string): name is Column => (PRICE_COLUMNS as readonly string[]).includes(name)

type CellOf = (column: Column) => string

function offerOf(
  cell: CellOf,
  line: number,
  currency: PriceBook['currency'],
): { offer: Offer } | { problems: TableProblem[] } {
  const problems: TableProblem[] = []
  const number = (column: Column, least: number, most: number, ifEmpty: number): number => {
    const text = cell(column)
    if (text === '') return ifEmpty
    const value = readDecimal(text)
    if (value === null) problems.push({ kind: /^[=@]/.test(text) ? 'formula' : 'not-a-number', line, column, text })
    else if (value < least || value > most) problems.push({ kind: 'out-of-range', line, column, text })
    return value ?? ifEmpty
  }
  const money = (column: Column): number | null => {
    const text = cell(column)
    if (text === '') return null
    const decimal = decimalText(text)
    if (decimal === null) {
      problems.push({ kind: /^[=@]/.test(text) ? 'formula' : 'not-a-number', line, column, text })
      return null
    }
    const minor = minorFrom(decimal, currency.digits)
    if (minor === 'too-fine') problems.push({ kind: 'too-fine', line, column, text })
    else if (minor < 0 || minor > MOST_MONEY_MINOR) problems.push({ kind: 'out-of-range', line, column, text })
    else return minor
    return null
  }
  const whole = (column: Column, least: number, most: number, ifEmpty: number): number => {
    const value = number(column, least, most, ifEmpty)
    if (!Number.isInteger(value)) problems.push({ kind: 'not-a-number', line, column, text: cell(column) })
    return value
  }
  const label = (column: Column): string => {
    const text = cell(column)
    if (text.length > LABEL_MOST) problems.push({ kind: 'too-long', line, column })
    return text
  }
  const item = cell('item')
  if (!isItemKey(item)) problems.push({ kind: 'unknown-item', line, text: item })
  const lotName = cell('lot') === '' ? 'piece' : cell('lot')
  if (!LOTS.includes(lotName)) problems.push({ kind: 'unknown-lot', line, text: lotName })
  const seller = cell('seller') === '' ? 'hardware' : cell('seller')
  if (!SELLERS.includes(seller)) problems.push({ kind: 'unknown-seller', line, text: seller })
  const code = cell('currency')
  if (code !== '' && code.toUpperCase() !== currency.code)
    problems.push({ kind: 'mixed-currency', line, text: code, wanted: currency.code })
  const day = cell('seen')
  if (day !== '' && dayNumber(day) === null) problems.push({ kind: 'not-a-date', line, text: day })
  const lotSize = number('lot_size', LIMITS['offer.lotSize'].min, LIMITS['offer.lotSize'].max, 1)
  const variant = label('variant')
  const offer = {
    item,
    ...(variant !== '' && { variant }),
    lotSize,
    lotName: lotName as Offer['lotName'],
    priceMinor: money('price'),
    seller: seller as Offer['seller'],
    sellerName: label('seller_name'),
    place: label('place'),
    seen: day === '' ? null : day,
    leastLots: whole('least_lots', 1, LIMITS['offer.leastLots'].max, 1),
    transportMinor: money('trip_price') ?? 0,
    tripLots: whole('trip_lots', 0, LIMITS['offer.tripLots'].max, 0),
    widthM: number('width_m', 0, 10, 0),
    chosen: false,
  }
  return problems.length > 0 ? { problems } : { offer }
}

/**
 * A number as spreadsheets write it: spaces between groups, a point, or a comma where commas do not part the cells. A comma followed by three
 * digits alone could be either; it is refused and not guessed.
 */
export function readDecimal(text: string): number | null {
  const decimal = decimalText(text)
  return decimal === null ? null : Number(decimal)
}

/** The same number written plainly, with a point. */
function decimalText(text: string): string | null {
  const tight = text.replaceAll(/[\s\u00A0\u202F]/g, '')
  if (/^-?\d+(\.\d+)?$/.test(tight)) return tight
  if (!/^-?\d+,\d+$/.test(tight) || /^-?\d+,\d{3}$/.test(tight)) return null
  return tight.replace(',', '.')
}

/** Whole money as minor units, digit by digit: no fraction is ever rounded. */
function minorFrom(decimal: string, digits: number): number | 'too-fine' {
  const [whole = '0', fraction = ''] = decimal.split('.')
  if (/[1-9]/.test(fraction.slice(digits))) return 'too-fine'
  // Adding nothing makes a written −0 the 0 it is.
  return Number(`${whole}${fraction.slice(0, digits).padEnd(digits, '0')}`) + 0
}
