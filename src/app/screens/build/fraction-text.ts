import { showNumber } from '../../words/locale.ts'

const QUARTERS = ['', '¼', '½', '¾'] as const

/** A count of pans to the nearest quarter, as one says it: 2¼. */
export function quartersText(value: number): string {
  const quarters = Math.round(value * 4)
  const whole = Math.trunc(quarters / 4)
  const rest = QUARTERS[quarters % 4] ?? ''
  return whole === 0 && rest !== '' ? rest : `${showNumber(whole)}${rest}`
}
