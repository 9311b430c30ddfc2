import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import '../../../src/app/words/add-plan-words.ts'
import { currencyOf, localCurrency } from '../../../src/app/words/currencies.ts'
import { readFigure, readShare, showFigure, showShare } from '../../../src/app/words/figure.ts'
import { setNumberLocale } from '../../../src/app/words/locale.ts'
import { DEFAULT_SHOW, inLine } from '../../../src/app/words/show.ts'
import { wordsFor } from '../../../src/app/words/words.ts'
import { UNITS, type Unit } from '../../../src/core/basics/unit.ts'

const plain = (text: string) => text.replaceAll('\u00a0', ' ')
const words = wordsFor(DEFAULT_SHOW)

beforeEach(() => setNumberLocale('en'))
afterEach(() => setNumberLocale('en'))

describe('figures of the core', () => {
  it('have a sign in every unit that the core knows', () => {
    const signless = (Object.keys(UNITS) as Unit[]).filter(
      (unit) => !/\d/.test(inLine(showFigure(1234.5, unit, DEFAULT_SHOW))),
    )
    expect(signless).toEqual([])
    expect(plain(inLine(showFigure(1700, 'kg/m3', DEFAULT_SHOW)))).toBe('1,700 kg/m³')
    expect(plain(inLine(showFigure(71_800, 'Pa', DEFAULT_SHOW)))).toBe('71.8 kPa')
    expect(plain(inLine(showFigure(0.549, 'm3', DEFAULT_SHOW)))).toBe('0.549 m³')
  })

  // Square and cubic foot from the foot of 0.3048 m: 0.09290304 m² and 0.028316846592 m³ exactly.
  it('turn areas and volumes to feet where lengths are in feet', () => {
    const feet = { ...DEFAULT_SHOW, length: 'ft-in' as const }
    expect(plain(inLine(showFigure(0.09290304, 'm2', feet)))).toBe('1 ft²')
    expect(plain(inLine(showFigure(0.028316846592 * 2, 'm3', feet)))).toBe('2 ft³')
  })

  it('read back what is typed, with or without its unit', () => {
    expect(readFigure('0.5 m³', 'm3', DEFAULT_SHOW)).toBe(0.5)
    expect(readFigure('90 °C', 'degC', DEFAULT_SHOW)).toBe(90)
    expect(readFigure('much', 'h', DEFAULT_SHOW)).toBeNull()
    expect(readShare('5 %')).toBe(0.05)
    expect(plain(inLine(showShare(0.125)))).toBe('12.5 %')
  })
})

describe('sizes', () => {
  it('say the unit once', () => {
    expect(plain(words.sizes(0.45, 0.15, 0.225))).toBe('450 × 150 × 225 mm')
  })
})

describe('findings and remedies', () => {
  it('put numbers with their units into the words, in the reader’s unit', () => {
    const args = { setback: { value: 0.005, unit: 'm' as const }, least: { value: 0.01, unit: 'm' as const } }
    expect(plain(words.finding({ kind: 'rail-near-fire', args }))).toContain(
      '5 mm back from the fire face, less than the 10 mm',
    )
    const feet = wordsFor({ ...DEFAULT_SHOW, length: 'ft-in' })
    expect(plain(feet.finding({ kind: 'rail-near-fire', args }))).toContain('3/16 in back')
  })

  it('tell how far a neighbour stands in metres, though blocks are in millimetres', () => {
    const metres = (value: number) => ({ value, unit: 'm' as const })
    const args = { distance: metres(5), least: metres(8), short: metres(3) }
    expect(plain(words.finding({ kind: 'place.near-thatch', args }))).toMatch(/^Thatch is 5(\.0+)? m away/)
  })

  it('bend by number', () => {
    expect(words.remedy({ kind: 'set-chambers', args: { chambers: 1 } })).toBe('Build 1 chamber')
    expect(words.remedy({ kind: 'set-chambers', args: { chambers: 3 } })).toBe('Build 3 chambers')
  })

  it('name things that stand as message keys', () => {
    expect(words.nameOf({ id: 'need.gross', args: { item: 'item.cement' }, value: 1, unit: 'kg', inputs: {} })).toBe(
      'Cement with waste',
    )
  })
})

describe('the currency of a place', () => {
  // Currencies of regions and their digits: ISO 4217.
  it.each([
    ['fr-SN', 'XOF', 0],
    ['en-GH', 'GHS', 2],
    ['sw-TZ', 'TZS', 2],
    ['en-UG', 'UGX', 0],
    ['pt-MZ', 'MZN', 2],
    ['en', 'USD', 2],
    ['not a tag', 'USD', 2],
  ])('%s counts in %s with %d digits', (tag, code, digits) => {
    expect(localCurrency(tag)).toEqual({ code, digits })
  })

  it('of a code that is not offered keeps two digits', () => {
    expect(currencyOf('ZZZ')).toEqual({ code: 'ZZZ', digits: 2 })
  })
})
