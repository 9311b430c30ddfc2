import type { Step } from '../../../core/schedule/schedule.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { showIsoDays } from '../../words/dates.ts'
import type { Words } from '../../words/words.ts'
import { figuresOf, lineOf } from './figures.ts'

/** What a step is called, with the level it rises to where the wall goes up in lifts. */
export function stepName(step: Step, { say, named, length }: Words): string {
  const name = named(`task.${step.kind}`)
  return step.toM === undefined ? name : say('build.up-to', { name, level: length(step.toM) })
}

/** Days by the calendar where there is one, else counted from the first. */
export function stepDays({ start, end, startDay, endDay }: Step, { say, number }: Words): string {
  if (startDay !== null && endDay !== null) return showIsoDays(startDay, endDay)
  const first = Math.floor(start + 1e-6) + 1
  const last = Math.max(first, Math.ceil(end - 1e-6))
  return first === last
    ? say('build.day', { day: number(first) })
    : say('build.days', { from: number(first), to: number(last) })
}

/** A step as it is read aloud: what it is, what to do, what to mind. */
export function stepSpoken(step: Step, worked: WorkedOut, words: Words): string {
  const figures = figuresOf(step.kind, worked).map(({ label, of }) => `${label}: ${words.inLine(of.value, of.unit)}`)
  const cautions = step.cautions.map((caution) => words.named(`task-caution.${caution}`))
  return [stepName(step, words), ...figures, lineOf(step.kind, worked, words), ...cautions]
    .filter((text) => text !== null)
    .join('. ')
}
