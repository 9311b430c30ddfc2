import type { PaperSheet } from '../../state/paper-actions.ts'
import type { SheetHand } from './sheet-kind.ts'

/** The gauge rod as a table and at full size: the top of every course from the footing up, to be glued on a straight board. */
export function gaugeRodSheet({ worked, words }: SheetHand): PaperSheet {
  const { courses } = worked.layout
  const footM = courses[0]?.zBottomM ?? 0
  const bedM = worked.coursing.choice.plan.bedM
  const datumM = footM - bedM
  const marks = courses.map(({ index, zTopM }) => ({
    atMm: (zTopM - datumM) * 1000,
    text: `${words.number(index)}  ${words.length(zTopM)}`,
  }))
  return {
    title: words.say('sheets.gauge-rod'),
    blocks: [
      {
        kind: 'text',
        text: words.say('sheets.rod-intro', {
          unit: words.length(worked.plan.walls.unit.heightM),
          joint: words.length(bedM),
        }),
      },
      {
        kind: 'table',
        columns: [
          { title: words.say('sheets.course'), share: 0.3 },
          { title: words.say('sheets.over-footing'), share: 0.35, align: 'right' },
          { title: words.say('sheets.over-ground'), share: 0.35, align: 'right' },
        ],
        rows: courses.map(({ index, zTopM }) => ({
          cells: [words.number(index), words.length(zTopM - datumM), words.length(zTopM)],
        })),
      },
      { kind: 'text', text: words.say('sheets.rod-full-size'), strong: true },
      {
        kind: 'rod',
        marksMm: [{ atMm: 0, text: words.say('sheets.rod-foot') }, ...marks],
        joinText: words.say('sheets.strip'),
      },
    ],
  }
}
