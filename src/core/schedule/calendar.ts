import { wholeDown, wholeUp } from '../basics/count.ts'
import type { Plan } from '../plan/schema.ts'
import { dayNumber, weekdayOf } from './day-number.ts'

/** What a day of the building is: for work, for rest, or lost to rain for work outdoors. */
export type DayKind = 'work' | 'rest' | 'rain'

/**
 * Time of the building in days: 2.5 is the middle of the third day's working hours. Time only ever runs on, so that whoever starts later never ends earlier.
 */
export interface Calendar {
  readonly kindOf: (day: number) => DayKind
  /** End of so many working days that begin at a time; a piece of a day is worked where it falls. */
  readonly workFrom: (
    atDays: number,
    workDays: number,
    outdoors: boolean,
  ) => { readonly start: number; readonly end: number }
  /** Whole days of waiting after a time: the day in which the work ended does not count. */
  readonly waitFrom: (atDays: number, days: number) => number
}

/** Without a start the first day counts as a Monday. */
const MONDAY = 1

/** Days of work, rest and rain counted from the start day; without one the first counts as a Monday. */
export function calendarOf({ build }: Plan): Calendar {
  const startNumber = build.startDay === null ? null : dayNumber(build.startDay)
  const firstWeekday = startNumber === null ? MONDAY : weekdayOf(startNumber)
  const rest = new Set(build.restWeekdays)
  const lost = new Set(build.lostDays.map((text) => (dayNumber(text) ?? Number.NaN) - (startNumber ?? Number.NaN)))
  // Rainy days spread evenly: the share of them that has passed grows by a whole one.
  const rains = (day: number) =>
    wholeDown((day + 1) * build.rainShare) > wholeDown(day * build.rainShare) || lost.has(day)
  const kindOf = (day: number): DayKind => (rest.has((firstWeekday + day) % 7) ? 'rest' : rains(day) ? 'rain' : 'work')
  const canWork = (day: number, outdoors: boolean) => {
    const kind = kindOf(day)
    return kind === 'work' || (kind === 'rain' && !outdoors)
  }
  return {
    kindOf,
    workFrom: (atDays, workDays, outdoors) => {
      let day = wholeDown(atDays)
      let used = atDays - day
      while (!canWork(day, outdoors)) {
        day++
        used = 0
      }
      const start = day + used
      let left = workDays
      while (left > 1 - used + 1e-9) {
        left -= 1 - used
        used = 0
        do day++
        while (!canWork(day, outdoors))
      }
      return { start, end: day + used + left }
    },
    waitFrom: (atDays, days) => wholeUp(atDays) + days,
  }
}
