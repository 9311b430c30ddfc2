import { planView } from '../../../core/documents/drawings/plan-view.ts'
import { settingOut } from '../../../core/geometry/setting-out.ts'
import type { SettingOutStep } from '../../../core/geometry/setting-out-steps.ts'
import { facingOf } from '../../../core/geometry/wind.ts'
import type { PaperBlock, PaperSheet } from '../../state/paper-actions.ts'
import { stepNumbers } from '../build/set-out-text.ts'
import { PaperDrawing } from './PaperDrawing.tsx'
import type { Words } from '../../words/words.ts'
import type { SheetHand } from './sheet-kind.ts'

/** Pegging out on one sheet: the plan with its tape marks, the lengths to tape, and the steps in order. */
export function settingOutSheet({ worked, words, ink }: SheetHand): PaperSheet {
  const { plan, geometry } = worked
  const set = settingOut(geometry, facingOf(plan), plan.place.declinationDeg)
  const drawing = planView(worked, [])
  const markup = ink(<PaperDrawing drawing={drawing} />)
  const front = geometry.tapeRuns.find(({ side }) => side === 'front')
  return {
    title: words.say('sheets.setting-out'),
    blocks: [
      { kind: 'caution', text: words.say('setout.caution.look-up') },
      { kind: 'drawing', markup, mostHighMm: 105, caption: words.say('sheets.figures-in', { unit: plan.show.length }) },
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
      ...set.steps.flatMap((step, index) => stepBlocks(step, index, words)),
    ],
  }
}

function stepBlocks(step: SettingOutStep, index: number, words: Words): PaperBlock[] {
  const args = stepNumbers(step, words)
  const blocks: PaperBlock[] = [
    { kind: 'text', text: `${words.number(index + 1)}. ${words.named(`setout.${step.id}.title`, args)}`, strong: true },
    { kind: 'text', text: words.named(`setout.${step.id}.text`, args) },
  ]
  for (const note of step.notes) blocks.push({ kind: 'text', text: words.named(`setout.${step.id}.${note}`, args) })
  if (step.caution !== null && step.caution !== 'look-up')
    blocks.push({ kind: 'caution', text: words.named(`setout.caution.${step.caution}`) })
  return blocks
}
