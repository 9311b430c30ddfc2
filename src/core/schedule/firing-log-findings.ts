import type { Finding } from '../basics/finding.ts'
import type { Firing, Plan } from '../plan/schema.ts'
import { dayNumber } from './day-number.ts'

const logFinding = (level: Finding['level'], kind: string, args: Finding['args']): Finding => ({
  level,
  kind,
  args,
  card: 'catch',
  remedies: [],
})

/** What cannot be, or hardly, of one firing as written: more out than in, no such day, a day yet to come, or one before the building began. */
export function logFindings({ build }: Plan, firing: Firing, today: string | null): Finding[] {
  const { day, freshKg } = firing
  const productKg = firing.productKg ?? 0
  const found: Finding[] = []
  if (productKg > freshKg)
    found.push(
      logFinding('problem', 'more-out-than-in', {
        day,
        fresh: { value: freshKg, unit: 'kg' },
        product: { value: productKg, unit: 'kg' },
      }),
    )
  if (dayNumber(day) === null) found.push(logFinding('problem', 'firing-no-such-day', { day }))
  else if (today !== null && day > today) found.push(logFinding('caution', 'firing-to-come', { day }))
  else if (build.startDay !== null && day < build.startDay)
    found.push(logFinding('caution', 'firing-before-building', { day, start: build.startDay }))
  return found
}
