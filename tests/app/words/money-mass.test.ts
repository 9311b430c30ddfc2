import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { setNumberLocale } from '../../../src/app/words/locale.ts'
import { readMass, showMass } from '../../../src/app/words/mass.ts'
import { moneyText, readMoney, showMoney } from '../../../src/app/words/money.ts'
import { inLine } from '../../../src/app/words/show.ts'

const xof = { code: 'XOF', digits: 0 }
const ghs = { code: 'GHS', digits: 2 }

beforeEach(() => setNumberLocale('en'))
afterEach(() => setNumberLocale('en'))

describe('money', () => {
  // Digits of the minor unit by ISO 4217: XOF 0, GHS 2.
  it('shows whole minor units with the digits of the currency', () => {
    expect(showMoney(108_050, xof).figure).toBe('108,050')
    expect(showMoney(10_850, ghs).figure).toBe('108.50')
    expect(moneyText(10_850, ghs)).toContain('108.50')
    expect(showMoney(10_800, ghs).figure).toBe('108')
  })

  it('reads what was typed to the minor unit, in either separator, with or without the sign', () => {
    expect(readMoney('108 050', xof)).toBe(108_050)
    expect(readMoney('108,5', ghs)).toBe(10_850)
    expect(readMoney('108.50', ghs)).toBe(10_850)
    expect(readMoney(`${showMoney(0, ghs).unit} 7`, ghs)).toBe(700)
    expect(readMoney('7 GHS', ghs)).toBe(700)
  })

  it('takes nothing finer than the currency has, and no words', () => {
    expect(readMoney('10.5', xof)).toBeNull()
    expect(readMoney('1.005', ghs)).toBeNull()
    expect(readMoney('a lot', ghs)).toBeNull()
    expect(readMoney('', ghs)).toBeNull()
  })
})

describe('mass', () => {
  // 0.45359237 kg to the pound exactly, international yard and pound agreement of 1959.
  it('converts by the exact pound', () => {
    expect(inLine(showMass(45.359237, { mass: 'lb' }))).toBe('100\u00a0lb')
    expect(readMass('1', { mass: 'lb' })).toBe(0.45359237)
    expect(readMass('2 lb', { mass: 'kg' })).toBe(0.90718474)
  })

  it('reads grams and tonnes where they are written', () => {
    expect(readMass('500 g', { mass: 'kg' })).toBe(0.5)
    expect(readMass('1,5 t', { mass: 'lb' })).toBe(1500)
    expect(readMass('80', { mass: 'kg' })).toBe(80)
    expect(readMass('many', { mass: 'kg' })).toBeNull()
  })
})
