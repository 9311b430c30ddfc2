import type { CutPattern } from '../../cutting/length-job.ts'
import type { CutSheet } from '../../cutting/sheet-job.ts'
import { rectangle, type Drawing, type Shape } from './drawing.ts'

/** A board is drawn this many times wider than it is, or nobody could write on it. */
const BOARD_SHARE = 0.075

/** One way to cut a board: its pieces with their lengths, what is left over, and where to mark in one pull of the tape from the hooked end. */
export function boardView({ stockLengthM, times, pieces, marksM, offcutM, kerfM }: CutPattern): Drawing {
  const highM = BOARD_SHARE * stockLengthM
  const sawM = marksM.length > 0 ? kerfM / marksM.length : 0
  const shapes: Shape[] = []
  let atM = 0
  for (const { lengthM } of pieces) {
    shapes.push(
      { kind: 'area', ink: 'unit', rings: [rectangle(atM, 0, atM + lengthM, highM)] },
      { kind: 'text', at: [atM + lengthM / 2, highM / 2], text: { lengthM }, roomM: lengthM },
    )
    atM += lengthM + sawM
  }
  if (offcutM > 0)
    shapes.push(
      { kind: 'area', ink: 'offcut', rings: [rectangle(stockLengthM - offcutM, 0, stockLengthM, highM)] },
      {
        kind: 'text',
        at: [stockLengthM - offcutM / 2, highM / 2],
        text: { lengthM: offcutM },
        roomM: offcutM,
      },
    )
  shapes.push(
    { kind: 'running', side: 'bottom', lane: 0, marksM: [0, ...marksM, stockLengthM] },
    {
      kind: 'words',
      at: [stockLengthM / 2, 0],
      key: 'drawing.boards',
      args: { times, length: { lengthM: stockLengthM, alone: true } },
      lane: { side: 'top', lane: 0 },
    },
  )
  return {
    box: { x0M: 0, x1M: stockLengthM, y0M: 0, y1M: highM },
    shapes,
    label: {
      key: 'drawing.board-label',
      args: {
        times,
        length: { lengthM: stockLengthM },
        pieces: pieces.length,
        offcut: { lengthM: offcutM },
      },
    },
  }
}

/** One way to cut a sheet or a roll: pieces with their sides, offcuts hatched; the cuts are edge to edge. */
export function sheetView({ lengthM, widthM, times, pieces, offcuts }: CutSheet): Drawing {
  const shapes: Shape[] = [
    ...offcuts.map((part): Shape => ({
      kind: 'area',
      ink: 'offcut',
      rings: [rectangle(part.xM, part.yM, part.xM + part.lengthM, part.yM + part.widthM)],
    })),
    ...pieces.flatMap((part): Shape[] => [
      {
        kind: 'area',
        ink: 'unit',
        rings: [rectangle(part.xM, part.yM, part.xM + part.lengthM, part.yM + part.widthM)],
      },
      {
        kind: 'text',
        at: [part.xM + part.lengthM / 2, part.yM + 0.12 * part.widthM],
        text: { lengthM: part.lengthM },
        size: 'small',
        roomM: part.lengthM,
        highM: 0.2 * part.widthM,
      },
      {
        kind: 'text',
        at: [part.xM + 0.1 * part.lengthM, part.yM + 0.55 * part.widthM],
        text: { lengthM: part.widthM },
        size: 'small',
        turned: true,
        roomM: 0.8 * part.widthM,
        highM: 0.2 * part.lengthM,
      },
    ]),
    { kind: 'area', ink: 'outline', rings: [rectangle(0, 0, lengthM, widthM)] },
    {
      kind: 'dimension',
      axis: 'x',
      fromM: 0,
      toM: lengthM,
      place: { side: 'bottom', lane: 0 },
      value: { lengthM },
    },
    {
      kind: 'dimension',
      axis: 'y',
      fromM: 0,
      toM: widthM,
      place: { side: 'left', lane: 0 },
      value: { lengthM: widthM },
    },
    {
      kind: 'words',
      at: [lengthM / 2, 0],
      key: 'drawing.sheets',
      args: { times },
      lane: { side: 'top', lane: 0 },
    },
  ]
  return {
    box: { x0M: 0, x1M: lengthM, y0M: 0, y1M: widthM },
    shapes,
    label: {
      key: 'drawing.sheet-label',
      args: { times, length: { lengthM }, width: { lengthM: widthM }, pieces: pieces.length },
    },
  }
}
