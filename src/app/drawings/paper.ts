import { writtenLevel, type Writing } from './writing.ts'
import type { Box, Drawing, Point, Shape, Side } from '../../core/documents/drawings/drawing.ts'

/** Paper units are CSS pixels at a sheet 320 wide, where figures are 15 high: 16 px on a 360 px phone. */
export const SHEET_WIDTH = 320
const FIGURE_HEIGHT = 15
const MARGIN = 12
const LANE = 25
const RUNNING_LANE = 66
/** Of a running mark: its stroke, and clear of what comes after its figure. */
const RUNNING_SIGN = 22
const LEVELS_WIDTH = 66
/** Of a level's line: what stands before its figure and after it. */
const LEVEL_SIGN = 15

/** Where the model lies on the paper, and how far out each lane of each side is. */
export interface Paper {
  readonly widthU: number
  readonly heightU: number
  readonly unitsPerM: number
  /** Where the signs of the levels stand. */
  readonly levelsXU: number
  readonly x: (xM: number) => number
  readonly y: (yM: number) => number
  /** Back from the paper to the model. */
  readonly modelAt: (xU: number, yU: number) => Point
  /** Distance across the paper at which a lane of a side runs: x for left and right, y for top and bottom. */
  readonly lane: (side: Side, lane: number) => number
}

interface Lanes {
  readonly top: number
  readonly bottom: number
  readonly left: number
  readonly right: number
}

const laneOf = (shape: Shape, writing: Writing): { side: Side; lane: number; deepU?: number } | null => {
  if (shape.kind === 'dimension' && 'side' in shape.place) return { side: shape.place.side, lane: shape.place.lane }
  if (shape.kind === 'running') {
    const widestU = Math.max(...shape.marksM.map((markM) => figureWidth(writing.figure(markM))))
    return { side: shape.side, lane: shape.lane, deepU: Math.max(RUNNING_LANE, widestU + RUNNING_SIGN) }
  }
  if (shape.kind === 'wind') return shape.lane
  if (shape.kind === 'words' && shape.lane) return shape.lane
  return null
}

/** Depth of every lane by side: a lane of running marks is deeper, since its figures stand upright along it. */
function laneDepths(shapes: readonly Shape[], writing: Writing): Record<Side, number[]> {
  const depths: Record<Side, number[]> = { top: [], bottom: [], left: [], right: [] }
  for (const shape of shapes) {
    const used = laneOf(shape, writing)
    if (used === null) continue
    const side = depths[used.side]
    while (side.length <= used.lane) side.push(LANE)
    if (used.deepU !== undefined) side[used.lane] = Math.max(used.deepU, side[used.lane] ?? 0)
  }
  return depths
}

const total = (depths: readonly number[]): number => depths.reduce((sum, depth) => sum + depth, 0)

/** Room for the levels at the right: as wide as the widest of their figures. */
const levelsWidth = (shapes: readonly Shape[], writing: Writing): number => {
  const figures = shapes.flatMap((shape) => (shape.kind === 'level' ? [writtenLevel(shape.valueM, writing)] : []))
  return figures.length === 0 ? 0 : Math.max(LEVELS_WIDTH, ...figures.map((text) => figureWidth(text) + LEVEL_SIGN))
}

/** Fits a drawing on a sheet: as wide as it can be, no higher than `mostHighU`, to one scale in both directions. */
export function paperFor(drawing: Drawing, writing: Writing, widthU = SHEET_WIDTH, mostHighU = 300): Paper {
  const depths = laneDepths(drawing.shapes, writing)
  const levelsU = levelsWidth(drawing.shapes, writing)
  const margins: Lanes = {
    top: MARGIN + total(depths.top),
    bottom: MARGIN + total(depths.bottom),
    left: MARGIN + total(depths.left),
    right: MARGIN + total(depths.right) + levelsU,
  }
  const { x0M, y0M, x1M, y1M }: Box = drawing.box
  const roomU = widthU - margins.left - margins.right
  const unitsPerM = Math.min(roomU / (x1M - x0M), mostHighU / (y1M - y0M))
  const slackU = roomU - (x1M - x0M) * unitsPerM
  const leftU = margins.left + slackU / 2
  const bottomU = margins.top + (y1M - y0M) * unitsPerM
  const x = (xM: number) => leftU + (xM - x0M) * unitsPerM
  const y = (yM: number) => bottomU - (yM - y0M) * unitsPerM
  const lane = (side: Side, index: number): number => {
    const before = total(depths[side].slice(0, index))
    switch (side) {
      case 'top':
        return y(y1M) - before - 10
      case 'bottom':
        return y(y0M) + before + 19
      case 'left':
        return x(x0M) - before - 9
      case 'right':
        return x(x1M) + before + 20
      default:
        return side satisfies never
    }
  }
  const modelAt = (xU: number, yU: number): Point => [x0M + (xU - leftU) / unitsPerM, y0M + (bottomU - yU) / unitsPerM]
  const levelsXU = widthU - Math.max(0, levelsU - 4)
  return { widthU, heightU: bottomU + margins.bottom, unitsPerM, levelsXU, x, y, modelAt, lane }
}

/** Width of a figure on the paper, near enough to decide whether it fits: tabular digits are 0.56 of the height, marks and spaces less. */
export const figureWidth = (text: string, heightU = FIGURE_HEIGHT): number =>
  (text.length - 0.4 * (text.match(/[\s′″/.,]/g)?.length ?? 0)) * heightU * 0.56

/** Paper units a metre at which a brick's length can be read inside it, and at which a chamber's can inside the chamber. */
const UNITS_READABLE = 150
const CHAMBERS_READABLE = 100

/** Width of a sheet on which even the small figures can be read: those inside short units where `small`, else those of chambers. */
export const readableWidth = ({ box }: Drawing, small: boolean): number =>
  Math.max(
    SHEET_WIDTH,
    (box.x1M - box.x0M) * (small ? UNITS_READABLE : CHAMBERS_READABLE) + (small ? 2 : 1) * LEVELS_WIDTH,
  )
