import { dateFormat } from './locale.ts'

const tidy = (text: string) => text.replaceAll('\u202f', '\u00a0')

/** The hour by this phone's clock: 10:42. */
const showTime = (atMs: number): string =>
  tidy(
    dateFormat({
      hour: '2-digit',
      minute: '2-digit',
      hourCycle: 'h23',
    }).format(atMs),
  )

/** A day with its year: 12 May 2026. */
export const showDay = (atMs: number): string =>
  tidy(
    dateFormat({
      day: 'numeric',
      month: 'long',
      year: 'numeric',
    }).format(atMs),
  )

/** The hour for today, the day for any other day. */
export function showWhen(atMs: number, nowMs: number): string {
  return new Date(atMs).toDateString() === new Date(nowMs).toDateString() ? showTime(atMs) : showDay(atMs)
}

/** A day kept as 2026-05-12, without a clock: it is the same day in every time zone. */
export function showIsoDay(isoDay: string): string {
  const date = dateOf(isoDay)
  return date === null ? isoDay : showDay(date.getTime())
}

function dateOf(isoDay: string): Date | null {
  const [year, month, day] = isoDay.split('-').map(Number)
  if (year === undefined || month === undefined || day === undefined) return null
  const date = new Date(year, month - 1, day)
  // The 31st of February would turn into a day of March.
  return date.getDate() === day ? date : null
}

/** A day without its year, short: 12 May. */
export function showShortDay(isoDay: string): string {
  const date = dateOf(isoDay)
  if (date === null) return isoDay
  return tidy(dateFormat({ day: 'numeric', month: 'short' }).format(date))
}

/** From one day to another, with what they share said once: 16 – 23 March 2026. */
export function showIsoDays(fromIso: string, toIso: string): string {
  const [from, to] = [dateOf(fromIso), dateOf(toIso)]
  if (from === null || to === null) return `${fromIso} – ${toIso}`
  return tidy(
    dateFormat({
      day: 'numeric',
      month: 'long',
      year: 'numeric',
    }).formatRange(from, to),
  )
}

/** Today by this phone's clock, as 2026-05-12. */
export function todayIso(now = new Date()): string {
  const two = (part: number) => String(part).padStart(2, '0')
  return `${String(now.getFullYear())}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}

/** Hours and minutes since the fire was lit: 1.25 h is 1:15. */
export function showHours(hours: number): string {
  const minutes = Math.round(hours * 60)
  return `${String(Math.floor(minutes / 60))}:${String(minutes % 60).padStart(2, '0')}`
}
