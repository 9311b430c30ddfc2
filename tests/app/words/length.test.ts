import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { readLength, showLength } from '../../../src/app/words/length.ts'
import { setNumberLocale } from '../../../src/app/words/locale.ts'
import { inLine, type Show } from '../../../src/app/words/show.ts'

type LengthShow = Show['length']

beforeEach(() => setNumberLocale('en'))
afterEach(() => setNumberLocale('en'))

const shown = (lengthM: number, length: LengthShow) => inLine(showLength(lengthM, { length })).replaceAll('\u00a0', ' ')

describe('a length as shown', () => {
  // Foot and inch: 0.3048 m and 0.0254 m exactly, international yard and pound agreement of 1959 (NIST Handbook 44, appendix C).
  it.each<[number, LengthShow, string]>([
    [0.68, 'mm', '680 mm'],
    [0.1025, 'mm', '102.5 mm'],
    [0.68, 'cm', '68 cm'],
    [0.68, 'm', '0.68 m'],
    [2.0942, 'm', '2.094 m'],
    [34.8, 'mm', '34.8 m'],
    [0.3048, 'ft-in', '1 ft'],
    [0.3048 * 2 + 0.0254 * 3.5, 'ft-in', '2 ft 3 1/2 in'],
    [0.0254 / 4, 'ft-in', '1/4 in'],
    [0.0254 * 11.99, 'ft-in', '1 ft'],
    [0, 'ft-in', '0 in'],
    [-0.34, 'mm', '−340 mm'],
  ])('%d m in %s is %s', (lengthM, show, text) => {
    expect(shown(lengthM, show)).toBe(text)
  })
})

describe('a length as typed', () => {
  it.each<[string, LengthShow, number]>([
    ['680', 'mm', 0.68],
    ['68', 'cm', 0.68],
    ['0.68', 'm', 0.68],
    ['0,68', 'm', 0.68],
    ['0.68 m', 'mm', 0.68],
    ['68cm', 'm', 0.68],
    ['1 m 20 cm', 'mm', 1.2],
    ['2 ft 3 1/2 in', 'mm', 0.3048 * 2 + 0.0254 * 3.5],
    [`2' 3.5"`, 'ft-in', 0.3048 * 2 + 0.0254 * 3.5],
    ['2 ft 3-1/2', 'ft-in', 0.3048 * 2 + 0.0254 * 3.5],
    ['3 1/2 in', 'm', 0.0254 * 3.5],
    ['1/2 in', 'm', 0.0254 / 2],
    ['2', 'ft-in', 0.3048 * 2],
    ['-340', 'mm', -0.34],
  ])('%s, bare numbers in %s', (typed, length, lengthM) => {
    expect(readLength(typed, { length })).toBeCloseTo(lengthM, 12)
  })

  it.each(['', 'wide', '3 in 2 ft', '1/0 in', '12 miles', '3 in 4 in', '1..2 m'])('%j is none', (typed) => {
    expect(readLength(typed, { length: 'mm' })).toBeNull()
  })

  it('reads back what it shows, to the finest line of the tape', () => {
    const finest: Record<LengthShow, number> = { mm: 0.0001, cm: 0.001, m: 0.001, 'ft-in': 0.0254 / 16 }
    for (const length of ['mm', 'cm', 'm', 'ft-in'] as const)
      for (let lengthM = 0.011; lengthM < 5; lengthM += 0.0473) {
        const back = readLength(inLine(showLength(lengthM, { length })), { length })
        expect(back).not.toBeNull()
        expect(Math.abs((back ?? 0) - lengthM)).toBeLessThanOrEqual(finest[length] / 2 + 1e-12)
      }
  })
})
