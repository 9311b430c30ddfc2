import type { CuttingPlan } from '../../../core/cutting/length-job.ts'
import type { RollPlan } from '../../../core/cutting/roll-job.ts'
import type { CutUp, SheetPlan } from '../../../core/cutting/sheet-job.ts'
import { bareFigure } from '../../drawings/use-writing.ts'
import { inLine } from '../../words/show.ts'
import type { Words } from '../../words/words.ts'

/** Marks in one pull of the tape, in the order in which they are met: figures as on the drawing beside them, their unit said once. */
export function marksText(marksM: readonly number[], { show: { length } }: Words): string {
  const figures = marksM.map((markM) => bareFigure(markM, length)).join(' · ')
  return inLine({ figure: figures, unit: length === 'ft-in' ? '' : length })
}

/** Cuts of a sheet or section in order: what lies on the bench, which way the saw goes, where to mark. */
export const cutSteps = ({ cuts }: CutUp, words: Words): readonly string[] =>
  cuts.map(({ part, along, marksM, lengthM, widthM }) =>
    words.say('cut.step', {
      part: part === '' ? 'whole' : part,
      size: words.sizes(lengthM, widthM),
      side: words.length(along === 'length' ? lengthM : widthM),
      marks: marksText(marksM, words),
    }),
  )

/** How sure it is that nothing cheaper exists, with the bound in figures. */
export function proofText({ gap, measure, cost, lowerBound }: CuttingPlan | SheetPlan, words: Words): string {
  const amount = (value: number) =>
    measure === 'money' ? words.money(value) : measure === 'length' ? words.length(value) : words.inLine(value, 'm2')
  return proof(gap, amount(cost), amount(lowerBound), words)
}

export const rollProofText = ({ gap, boughtM, leastBoughtM }: RollPlan, words: Words): string =>
  proof(gap, words.length(boughtM), words.length(leastBoughtM), words)

const proof = (gap: number, cost: string, bound: string, { say, share }: Words): string =>
  gap === 0 ? say('cut.proven', { bound }) : say('cut.not-proven', { cost, bound, gap: share(gap) })
