import type { Shape } from '../../core/documents/drawings/drawing.ts'
import type { Paper } from './paper.ts'

type FlagShape = Extract<Shape, { kind: 'flag' }>

export interface PlacedFlag {
  readonly xU: number
  readonly yU: number
  readonly level: FlagShape['level']
  /** Lowest number of the findings that stand here. */
  readonly number: number
  readonly more: boolean
}

/** Flags nearer than this would cover each other. */
const FLAG_ROOM = 26
const MOST_FLAGS = 6

/** Findings at nearly the same place share one flag, with the first of their numbers; only the first few places are flagged. */
export function placedFlags(shapes: readonly Shape[], paper: Paper): readonly PlacedFlag[] {
  const placed: PlacedFlag[] = []
  for (const flag of shapes) {
    if (flag.kind !== 'flag') continue
    const xU = Math.min(Math.max(paper.x(flag.at[0]), 14), paper.widthU - 14)
    const yU = Math.min(Math.max(paper.y(flag.at[1]), 14), paper.heightU - 14)
    const near = placed.findIndex((one) => Math.hypot(one.xU - xU, one.yU - yU) < FLAG_ROOM)
    const first = placed[near]
    if (first !== undefined) placed[near] = { ...first, more: true }
    else if (placed.length < MOST_FLAGS) placed.push({ xU, yU, level: flag.level, number: flag.number, more: false })
  }
  return placed
}
