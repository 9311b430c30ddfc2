import type { PaperRow, PaperSheet } from '../../state/paper-actions.ts'
import { showIsoDay } from '../../words/dates.ts'
import { DaysChart } from '../build/DaysDrawing.tsx'
import { stepDays, stepName } from '../build/step-text.ts'
import type { SheetHand } from './sheet-kind.ts'

/** The work in order with its days, hands and cautions. */
export function scheduleSheet({ worked, words, ink }: SheetHand): PaperSheet {
  const { schedule } = worked
  const cautions = [...new Set(schedule.steps.flatMap((step) => step.cautions))]
  const rows = schedule.steps.map((step): PaperRow => ({
    box: true,
    cells: [stepName(step, words), stepDays(step, words), ''],
  }))
  return {
    title: words.say('sheets.schedule'),
    blocks: [
      {
        kind: 'text',
        strong: true,
        text:
          schedule.readyDay === null
            ? words.say('sheets.ready-after', { days: words.inLine(schedule.length.value, 'day') })
            : words.say('build.ready-on', { day: showIsoDay(schedule.readyDay) }),
      },
      {
        kind: 'table',
        columns: [
          { title: words.say('sheets.step'), share: 0.46 },
          { title: words.say('sheets.days'), share: 0.27 },
          { title: words.say('sheets.done-by'), share: 0.27 },
        ],
        rows,
      },
      { kind: 'drawing', markup: ink(<DaysChart schedule={schedule} />), caption: words.named('drawing.days') },
      ...cautions.map((caution) => ({ kind: 'caution' as const, text: words.named(`task-caution.${caution}`) })),
    ],
  }
}
