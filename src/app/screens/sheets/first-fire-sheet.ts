import { firingTimetable } from '../../../core/fish/timetable.ts'
import type { PaperSheet } from '../../state/paper-actions.ts'
import { showHours } from '../../words/dates.ts'
import { CAUTIONS } from '../run/cautions.ts'
import { turnText } from '../run/turn-text.ts'
import type { SheetHand } from './sheet-kind.ts'

/** The sheet that hangs by the kiln: the first small fires, a firing hour by hour, and what to mind every time. */
export function firstFireSheet({ worked, words }: SheetHand): PaperSheet {
  return {
    title: words.say('sheets.first-fire'),
    blocks: [
      { kind: 'heading', text: words.say('task.first-fires') },
      { kind: 'text', text: words.say('sheets.first-fires-text') },
      { kind: 'heading', text: words.say('run.timetable') },
      {
        kind: 'table',
        columns: [
          { title: words.say('sheets.hour'), share: 0.16 },
          { title: words.say('sheets.do'), share: 0.5 },
          { title: words.say('sheets.stack'), share: 0.34 },
        ],
        rows: firingTimetable(worked.plan).map((step) => ({
          cells: [
            showHours(step.atHours),
            turnText(step, words),
            step.order.map((tray) => words.number(tray)).join(' '),
          ],
        })),
      },
      { kind: 'heading', text: words.say('run.cautions') },
      ...CAUTIONS.map((caution) => ({ kind: 'caution' as const, text: words.say(`run.caution.${caution}`) })),
    ],
  }
}
