import { trayCornerView, traySeatView, trayView } from '../../../core/documents/drawings/tray-view.ts'
import { boardView, rollViews } from '../../../core/documents/drawings/cutting-view.ts'
import { sectionsOf, sheetView } from '../../../core/documents/drawings/sheet-view.ts'
import type { CutPattern, CuttingPlan } from '../../../core/cutting/length-job.ts'
import type { CutSheet } from '../../../core/cutting/sheet-job.ts'
import type { FlatPlan } from '../../../core/purchase/flat-lines.ts'
import type { Drawing } from '../../../core/documents/drawings/drawing.ts'
import type { PaperBlock, PaperRow, PaperSheet } from '../../state/paper-actions.ts'
import { cutSteps, marksText, proofText, rollProofText } from '../cutting/cut-text.ts'
import { PaperDrawing } from './PaperDrawing.tsx'
import type { Words } from '../../words/words.ts'
import type { SheetHand } from './sheet-kind.ts'

/** Trays and what is cut for them: the tray as drawn, its pieces, and every board and bar with its marks in running measure. */
export function traysSheet({ worked, words, ink }: SheetHand): PaperSheet {
  const { plan, tray, purchase } = worked
  const draw = (drawing: Drawing) => ink(<PaperDrawing drawing={drawing} />)
  const pieceRow = (name: string, each: number, size: string): PaperRow => ({
    cells: [name, words.number(each), words.number(each * tray.count.value), size],
  })
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
        mostHighMm: 66,
        each: [
          { caption: words.say('sheets.tray-above'), markup: draw(trayView(worked)) },
          { caption: words.say('sheets.tray-corner'), markup: draw(trayCornerView(worked)) },
        ],
      },
      { kind: 'drawing', markup: draw(traySeatView(worked)), mostHighMm: 64, caption: words.say('sheets.tray-seat') },
      { kind: 'heading', text: words.say('sheets.pieces') },
      {
        kind: 'table',
        columns: [
          { title: words.say('sheets.piece'), share: 0.4 },
          { title: words.say('sheets.each-tray'), share: 0.2, align: 'right' },
          { title: words.say('sheets.all'), share: 0.2, align: 'right' },
          { title: words.say('sheets.length'), share: 0.2, align: 'right' },
        ],
        rows: [
          ...tray.pieces.map(({ kind, perTray, length }) =>
            pieceRow(words.named(`piece.${kind}`), perTray, words.length(length.value)),
          ),
          pieceRow(words.named('item.mesh'), 1, words.sizes(tray.mesh.value, tray.mesh.value)),
          pieceRow(words.named('item.nails'), tray.fixings.nails.value, ''),
          pieceRow(words.named('item.staples'), tray.fixings.staples.value, ''),
        ],
      },
      {
        kind: 'text',
        text: [tray.mass.empty, tray.mass.loaded]
          .map((of) => `${words.nameOf(of)}: ${words.inLine(of.value, of.unit)}`)
          .join(' · '),
      },
      ...tray.findings
        .filter(({ kind }) => kind === 'tray-needs-two' || kind === 'tray-too-heavy')
        .map((lift): PaperBlock => ({ kind: 'caution', text: words.finding(lift) })),
      ...[...purchase.cutting].flatMap(([item, cutting]) =>
        boardBlocks(words.named(`item.${item}`), cutting, words, draw),
      ),
      ...[...purchase.flat].flatMap(([item, flat]) => flatBlocks(words.named(`item.${item}`), flat, words, draw)),
      { kind: 'text', text: words.say('sheets.kerf', { kerf: words.length(plan.trays.kerfM) }) },
      { kind: 'caution', text: words.say('task-caution.saw') },
    ],
  }
}

type Draw = (drawing: Drawing) => string
const BOARD_MM = 34
const SHEET_MM = 75

const heading = (name: string, words: Words): PaperBlock => ({
  kind: 'heading',
  text: words.say('sheets.cut-of', { item: name }),
})

/** One table an item: how many bars so, where to mark each from its hooked end, what is left over; then each bar drawn with its marks. */
function boardBlocks(name: string, plan: CuttingPlan, words: Words, draw: Draw): PaperBlock[] {
  const { patterns } = plan
  if (patterns.length === 0) return []
  return [
    heading(name, words),
    { kind: 'text', text: proofText(plan, words) },
    markTable(patterns, words),
    ...patterns.map((pattern): PaperBlock => ({
      kind: 'drawing',
      markup: draw(boardView(pattern)),
      mostHighMm: BOARD_MM,
    })),
  ]
}

function markTable(patterns: readonly CutPattern[], words: Words): PaperBlock {
  const rows = patterns.map((pattern): PaperRow => ({
    box: true,
    cells: [
      `${words.number(pattern.times)} × ${words.length(pattern.stockLengthM)}`,
      marksText(pattern.marksM, words),
      words.length(pattern.offcutM),
    ],
  }))
  return {
    kind: 'table',
    columns: [
      { title: words.say('sheets.boards'), share: 0.26 },
      { title: words.say('sheets.mark-at'), share: 0.54 },
      { title: words.say('sheets.left'), share: 0.2, align: 'right' },
    ],
    rows,
  }
}

/** Rolls by their marks and as one strip, sheets and sections by every cut in order. */
function flatBlocks(name: string, flat: FlatPlan, words: Words, draw: Draw): PaperBlock[] {
  if (flat.kind === 'sheets')
    return flat.plan.sheets.length === 0
      ? []
      : [
          heading(name, words),
          { kind: 'text', text: proofText(flat.plan, words) },
          ...flat.plan.sheets.flatMap((sheet) => sheetBlocks(sheet, words, draw)),
        ]
  return [
    heading(name, words),
    ...flat.rolls.flatMap(({ widthM, plan }): PaperBlock[] => [
      { kind: 'text', text: rollProofText(plan, words) },
      markTable(plan.rolls, words),
      ...plan.rolls
        .flatMap(rollViews)
        .map((drawing): PaperBlock => ({ kind: 'drawing', markup: draw(drawing), mostHighMm: BOARD_MM })),
      ...sectionsOf({ widthM, plan }).flatMap((section) => sheetBlocks(section, words, draw)),
    ]),
  ]
}

const sheetBlocks = (sheet: CutSheet, words: Words, draw: Draw): PaperBlock[] => [
  { kind: 'drawing', markup: draw(sheetView(sheet)), mostHighMm: SHEET_MM },
  ...cutSteps(sheet, words).map((step, index): PaperBlock => ({
    kind: 'text',
    text: `${words.number(index + 1)}. ${step}`,
  })),
]
