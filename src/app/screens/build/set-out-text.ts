import type { SettingOutStep } from '../../../core/geometry/setting-out-steps.ts'
import type { Words } from '../../words/words.ts'

/** Nobody tapes finer than a millimetre. */
const wholeMm = (lengthM: number): number => Math.round(lengthM * 1000) / 1000

/** The numbers of a step as its sentences say them, and the marks of its one pull of the tape. */
export function stepNumbers({ numbers, diagram }: SettingOutStep, { inLine, figure }: Words): Record<string, string> {
  const marks = diagram.running.map((markM) => figure(wholeMm(markM), 'm').figure)
  const last = diagram.running.at(-1)
  return {
    ...Object.fromEntries(
      Object.entries(numbers).map(([name, { value, unit }]) => [
        name,
        inLine(unit === 'm' ? wholeMm(value) : value, unit),
      ]),
    ),
    ...(last !== undefined && { marks: [...marks.slice(0, -1), inLine(wholeMm(last), 'm')].join(', ') }),
  }
}
