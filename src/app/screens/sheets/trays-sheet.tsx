import { trayCornerView, traySeatView, trayView } from '../../../core/documents/drawings/tray-view.ts'
import type { CuttingPlan } from '../../../core/cutting/length-job.ts'
import type { Drawing } from '../../../core/documents/drawings/drawing.ts'
import type { PaperBlock, PaperRow, PaperSheet } from '../../state/paper-actions.ts'
import { PaperDrawing } from './PaperDrawing.tsx'
import type { Words } from '../../words/words.ts'
import type { SheetHand } from './sheet-kind.ts'

/** Trays and what is cut for them: the tray as drawn, its pieces, and every board and bar with its marks in running measure. */
export function traysSheet({ worked, words, ink }: SheetHand): PaperSheet {
  const { plan, tray, purchase } = worked
  const draw = (drawing: Drawing) => ink(<PaperDrawing drawing={drawing} />)
  return {
    title: words.say('sheets.trays'),
    blocks: [
      {
        kind: 'text',
        text: words.say('sheets.trays-intro', {
          count: words.number(tray.count.value),
          side: words.length(tray.side.value),
        }),
        strong: true,
      },
      {
        kind: 'drawings',
        across: 2,
        each: [
          { caption: words.say('sheets.tray-above'), markup: draw(trayView(worked)) },
          { caption: words.say('sheets.tray-corner'), markup: draw(trayCornerView(worked)) },
        ],
      },
      { kind: 'drawing', markup: draw(traySeatView(worked)), mostHighMm: 70, caption: words.say('sheets.tray-seat') },
      { kind: 'heading', text: words.say('sheets.pieces') },
      {
        kind: 'table',
        columns: [
          { title: words.say('sheets.piece'), share: 0.4 },
          { title: words.say('sheets.each-tray'), share: 0.2, align: 'right' },
          { title: words.say('sheets.all'), share: 0.2, align: 'right' },
          { title: words.say('sheets.length'), share: 0.2, align: 'right' },
        ],
        rows: tray.pieces.map(({ kind, perTray, length }) => ({
          cells: [
            words.named(`piece.${kind}`),
            words.number(perTray),
            words.number(perTray * tray.count.value),
            words.length(length.value),
          ],
        })),
      },
      ...[...purchase.cutting].flatMap(([item, cutting]) => cuttingBlocks(words.named(`item.${item}`), cutting, words)),
      { kind: 'text', text: words.say('sheets.kerf', { kerf: words.length(plan.trays.kerfM) }) },
      { kind: 'caution', text: words.say('task-caution.saw') },
    ],
  }
}

/** One table an item: how many bars so, where to mark each from its hooked end, what is left over. */
function cuttingBlocks(name: string, { patterns }: CuttingPlan, words: Words): PaperBlock[] {
  if (patterns.length === 0) return []
  const rows = patterns.map((pattern): PaperRow => ({
    box: true,
    cells: [
      `${words.number(pattern.times)} × ${words.length(pattern.stockLengthM)}`,
      pattern.marksM.map((markM) => words.length(markM)).join(' · '),
      words.length(pattern.offcutM),
    ],
  }))
  return [
    { kind: 'heading', text: words.say('sheets.cut-of', { item: name }) },
    {
      kind: 'table',
      columns: [
        { title: words.say('sheets.boards'), share: 0.26 },
        { title: words.say('sheets.mark-at'), share: 0.54 },
        { title: words.say('sheets.left'), share: 0.2, align: 'right' },
      ],
      rows,
    },
  ]
}
