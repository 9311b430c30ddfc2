import { planView } from '../../../core/documents/drawings/plan-view.ts'
import { settingOutView } from '../../../core/documents/drawings/setting-out-view.ts'
import { tapeView } from '../../../core/documents/drawings/tape-view.ts'
import { settingOut } from '../../../core/geometry/setting-out.ts'
import type { SettingOutStep } from '../../../core/geometry/setting-out-steps.ts'
import { facingOf } from '../../../core/geometry/wind.ts'
import type { PaperDrawing as PaperDrawn, PaperSheet } from '../../state/paper-actions.ts'
import { stepNumbers } from '../build/set-out-text.ts'
import { PaperDrawing } from './PaperDrawing.tsx'
import type { SheetHand } from './sheet-kind.ts'

/** Pegging out on one sheet: the plan with its tape marks, the lengths to tape, and the steps in order. */
export function settingOutSheet(hand: SheetHand): PaperSheet {
  const { worked, words, ink } = hand
  const { plan, geometry } = worked
  const set = settingOut(geometry, facingOf(plan), plan.place.declinationDeg)
  const drawing = planView(worked, [])
  const markup = ink(<PaperDrawing drawing={drawing} />)
  const front = geometry.tapeRuns.find(({ side }) => side === 'front')
  return {
    title: words.say('sheets.setting-out'),
    blocks: [
      { kind: 'caution', text: words.say('setout.caution.look-up') },
      { kind: 'drawing', markup, mostHighMm: 90, caption: words.say('sheets.figures-in', { unit: plan.show.length }) },
      { kind: 'heading', text: words.say('sheets.tapes') },
      {
        kind: 'table',
        columns: [
          { title: words.say('sheets.from-to'), share: 0.34 },
          { title: words.say('sheets.must-read'), share: 0.33, align: 'right' },
          { title: words.say('sheets.reads'), share: 0.33, align: 'right' },
        ],
        rows: set.tapes.map(({ from, to, planM }) => ({
          cells: [`${from} – ${to}`, words.length(planM), ''],
        })),
      },
      { kind: 'drawing', markup: ink(<PaperDrawing drawing={tapeView(set.pegs, set.tapes, null)} />), mostHighMm: 60 },
      ...(front === undefined
        ? []
        : [
            {
              kind: 'text' as const,
              text: words.say('sheets.running', {
                marks: front.marks.map(({ at }) => words.length(at.value)).join(', '),
              }),
            },
          ]),
      { kind: 'heading', text: words.say('sheets.in-order') },
      {
        kind: 'drawings',
        across: 2,
        mostHighMm: 58,
        each: set.steps.map((step, index) => stepDrawn(step, index, hand)),
      },
      { kind: 'caution', text: words.say('setout.caution.trench-edge') },
    ],
  }
}

/** A step with its drawing, and what to do in the words of the screen. */
function stepDrawn(step: SettingOutStep, index: number, { words, ink }: SheetHand): PaperDrawn {
  const args = stepNumbers(step, words)
  return {
    caption: `${words.number(index + 1)}. ${words.named(`setout.${step.id}.title`, args)}`,
    text: ['text', ...step.notes].map((part) => words.named(`setout.${step.id}.${part}`, args)).join(' '),
    markup: ink(<PaperDrawing drawing={settingOutView(step)} />),
  }
}
