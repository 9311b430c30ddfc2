import { wholeDown } from '../basics/count.ts'

/** Days by number, so that they can be added: 0 is 1 January 1970, a Thursday. The calendar is the Gregorian one, with no clock and no time zone. */

const DAYS_IN_ERA = 146_097
const YEARS_IN_ERA = 400
const ERA_OF_1970 = 719_468

/** Number of a day written as 2026-03-01, or null where the calendar has no such day. */
export function dayNumber(text: string): number | null {
  const [year, month, day] = text.split('-').map(Number)
  if (year === undefined || month === undefined || day === undefined) return null
  const shifted = month <= 2 ? year - 1 : year
  const era = wholeDown(shifted / YEARS_IN_ERA)
  const yearOfEra = shifted - era * YEARS_IN_ERA
  const dayOfYear = wholeDown((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1
  const dayOfEra = yearOfEra * 365 + wholeDown(yearOfEra / 4) - wholeDown(yearOfEra / 100) + dayOfYear
  const number = era * DAYS_IN_ERA + dayOfEra - ERA_OF_1970
  return dayText(number) === text ? number : null
}

/** The day as text, 2026-03-01. */
export function dayText(number: number): string {
  const shifted = number + ERA_OF_1970
  const era = wholeDown(shifted / DAYS_IN_ERA)
  const dayOfEra = shifted - era * DAYS_IN_ERA
  const yearOfEra = wholeDown(
    (dayOfEra - wholeDown(dayOfEra / 1460) + wholeDown(dayOfEra / 36_524) - wholeDown(dayOfEra / 146_096)) / 365,
  )
  const dayOfYear = dayOfEra - (365 * yearOfEra + wholeDown(yearOfEra / 4) - wholeDown(yearOfEra / 100))
  const shiftedMonth = wholeDown((5 * dayOfYear + 2) / 153)
  const day = dayOfYear - wholeDown((153 * shiftedMonth + 2) / 5) + 1
  const month = shiftedMonth < 10 ? shiftedMonth + 3 : shiftedMonth - 9
  const year = yearOfEra + era * YEARS_IN_ERA + (month <= 2 ? 1 : 0)
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`
}

/** 0 = Sunday … 6 = Saturday. */
export const weekdayOf = (number: number): number => (((number + 4) % 7) + 7) % 7
