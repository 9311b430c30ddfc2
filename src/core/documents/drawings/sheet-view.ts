import type { CutSheet, SheetCut } from '../../cutting/sheet-job.ts'
import type { RollPlan } from '../../cutting/roll-job.ts'
import { rectangle, type Drawing, type Shape } from './drawing.ts'

const ROLL = 'roll'

/** Sections of a roll that are cut further than across it, each as the sheet it is once it lies on the bench. */
export const sectionsOf = ({
  widthM,
  plan,
}: {
  readonly widthM: number
  readonly plan: RollPlan
}): readonly CutSheet[] =>
  plan.sections.filter(({ cuts }) => cuts.length > 0).map((section) => ({ ...section, key: ROLL, widthM }))

/** One way to cut a sheet or a section of a roll: pieces with their sides, offcuts hatched, and every cut with its place in the order. */
export function sheetView(sheet: CutSheet): Drawing {
  const { lengthM, widthM, times, pieces, offcuts } = sheet
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
    ...sheet.cuts.flatMap((cut, index) => cutNumbers(sheet, cut, index + 1)),
    alongBottom(sheet),
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
      key: sheet.key === ROLL ? 'drawing.sections' : 'drawing.sheets',
      args: { times },
      lane: { side: 'top', lane: 0 },
    },
  ]
  return {
    box: { x0M: 0, x1M: lengthM, y0M: 0, y1M: widthM },
    shapes,
    label: {
      key: sheet.key === ROLL ? 'drawing.roll-length-label' : 'drawing.sheet-label',
      args: { times, length: { lengthM }, width: { lengthM: widthM }, pieces: pieces.length },
    },
  }
}

/** What is cut first is marked in one pull of the tape where it runs along the sheet; else the sheet's length stands there. */
function alongBottom({ lengthM, cuts }: CutSheet): Shape {
  const [first] = cuts
  if (first?.part === '' && first.along === 'length')
    return { kind: 'running', side: 'bottom', lane: 0, marksM: [...new Set([0, ...first.marksM, lengthM])] }
  return {
    kind: 'dimension',
    axis: 'x',
    fromM: 0,
    toM: lengthM,
    place: { side: 'bottom', lane: 0 },
    value: { lengthM },
  }
}

/** The number of a step of cutting on each of its lines. */
function cutNumbers(sheet: CutSheet, { part, along, marksM, lengthM, widthM }: SheetCut, number: number): Shape[] {
  const own = [...sheet.pieces, ...sheet.offcuts].filter(
    (one) => part === '' || one.part === part || one.part.startsWith(`${part}.`),
  )
  const x0M = Math.min(...own.map(({ xM }) => xM))
  const y0M = Math.min(...own.map(({ yM }) => yM))
  return marksM.map((markM) => ({
    kind: 'text',
    at: along === 'length' ? [x0M + markM, y0M + 0.5 * widthM] : [x0M + 0.5 * lengthM, y0M + markM],
    text: number,
    size: 'small',
    order: true,
  }))
}
