import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { showHours, showIsoDay, showIsoDays, showWhen, todayIso } from '../../../src/app/words/dates.ts'
import { setNumberLocale } from '../../../src/app/words/locale.ts'

const plain = (text: string) => text.replaceAll(/[\u00a0\u2009\u202f]/g, ' ')

beforeEach(() => setNumberLocale('en-GB'))
afterEach(() => setNumberLocale('en'))

describe('days and hours', () => {
  it('keep a day the same day in every time zone', () => {
    expect(showIsoDay('2026-05-12')).toBe('12 May 2026')
    expect(todayIso(new Date(2026, 4, 12, 23, 59))).toBe('2026-05-12')
    expect(showIsoDay('some day')).toBe('some day')
  })

  it('say once what two days share', () => {
    expect(plain(showIsoDays('2026-03-16', '2026-03-23'))).toMatch(/^16 ?– ?23 March 2026$/)
    expect(plain(showIsoDays('2026-03-16', '2026-03-16'))).toBe('16 March 2026')
  })

  it('tell the hour today and the day before today', () => {
    const noon = new Date(2026, 4, 12, 12, 5).getTime()
    expect(showWhen(noon, noon + 3_600_000)).toBe('12:05')
    expect(showWhen(noon, noon + 86_400_000)).toBe('12 May 2026')
  })

  it('write hours since the fire was lit as a clock does', () => {
    expect(showHours(0)).toBe('0:00')
    expect(showHours(1.25)).toBe('1:15')
    expect(showHours(12.5)).toBe('12:30')
  })
})
