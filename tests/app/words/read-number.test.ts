import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { setNumberLocale, showNumber } from '../../../src/app/words/locale.ts'
import { readNumber } from '../../../src/app/words/read-number.ts'

afterEach(() => setNumberLocale('en'))

describe('a typed number', () => {
  beforeEach(() => setNumberLocale('en'))

  it.each([
    ['0.68', 0.68],
    ['0,68', 0.68],
    ['680', 680],
    [' 1 234,5 ', 1234.5],
    ['1,234.5', 1234.5],
    ['1.234,5', 1234.5],
    ['1,234,567', 1_234_567],
    ['12’000', 12_000],
    ['−3.5', -3.5],
    ['+4', 4],
    ['.5', 0.5],
    ['0.500', 0.5],
  ])('%s is %d', (typed, value) => {
    expect(readNumber(typed)).toBe(value)
  })

  it.each(['', ' ', 'abc', '1e3', '1..2', '1,23,4', '12a', '--4', '1,234.5.6', 'NaN', 'Infinity', '٣'])(
    '%j is none',
    (typed) => {
      expect(readNumber(typed)).toBeNull()
    },
  )

  // How a group of thousands is told from a decimal mark is a choice of ours, in line with the locale's marks in Unicode CLDR.
  it('takes the locale’s own group mark before three digits for thousands, the other for the decimal mark', () => {
    expect(readNumber('1,500')).toBe(1500)
    expect(readNumber('1.500')).toBe(1.5)
    setNumberLocale('de')
    expect(readNumber('1.500')).toBe(1500)
    expect(readNumber('1,500')).toBe(1.5)
    setNumberLocale('fr')
    expect(readNumber('1.500')).toBe(1.5)
    expect(readNumber('1,500')).toBe(1.5)
    expect(readNumber('1\u202f500,25')).toBe(1500.25)
  })

  it('reads back what it shows, in several locales', () => {
    for (const locale of ['en', 'fr', 'de', 'pt', 'sw', 'de-CH', 'ar-EG', 'hi']) {
      setNumberLocale(locale)
      for (const value of [0, 5, 0.5, 12.25, 1234.5, 1_234_567.25, -1234.5])
        expect(readNumber(showNumber(value))).toBe(value)
    }
  })
})
