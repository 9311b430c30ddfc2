import type { FiringStep } from '../../../core/fish/timetable.ts'
import type { Words } from '../../words/words.ts'

/** What is done at one step of a firing, for the screen and for the sheet beside the kiln. */
export function turnText(step: FiringStep, { say, inLine, number }: Words): string {
  const heat = inLine(step.gasDegC, 'degC')
  switch (step.action) {
    case 'light':
      return say('run.do.light')
    case 'load':
      return say('run.do.load', { heat })
    case 'turn':
      return say('run.do.turn', { count: step.moves, lowest: number(step.moves) })
    case 'bank':
      return say('run.do.bank', { heat })
    case 'unload':
      return say('run.do.unload')
    default:
      return step.action satisfies never
  }
}
