import type { SettingOutStep } from '../../../core/geometry/setting-out-steps.ts'
import type { Words } from '../../words/words.ts'

/** Nobody tapes finer than a millimetre. */
const wholeMm = (lengthM: number): number => Math.round(lengthM * 1000) / 1000

/** The numbers of a step as its sentences say them. */
export const stepNumbers = ({ numbers }: SettingOutStep, { inLine }: Words): Record<string, string> =>
  Object.fromEntries(
    Object.entries(numbers).map(([name, { value, unit }]) => [
      name,
      inLine(unit === 'm' ? wholeMm(value) : value, unit),
    ]),
  )
