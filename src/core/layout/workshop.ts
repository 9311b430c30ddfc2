import type { Head } from './contract.ts'
import type { CourseShape } from './course-shape.ts'
import { withChambers, type Frame } from './frame.ts'
import { headPlan, type Bearing, type HeadPlan } from './heads.ts'
import type { LaidShape } from './laid-wall.ts'
import type { CutPlace, LayoutChoices } from './layout-choices.ts'
import type { Levels } from './levels.ts'
import type { PairMemory } from './pair-laying.ts'
import { fillersFor, type Fillers, type WallRules } from './remembered-fills.ts'
import type { WallScore } from './wall-score.ts'

export interface LaidWall {
  readonly laid: readonly LaidShape[]
  readonly score: WallScore
  readonly place: CutPlace
  readonly start: number
}

export type Owns = LayoutChoices['owns']

/** How hard to look: one way of laying each wall, a few, or all of them. */
export type Effort = 'glance' | 'quick' | 'deep'

const PLACES: Readonly<Record<Effort, readonly CutPlace[]>> = {
  glance: ['any'],
  quick: ['any', 'bays', 'half-bays', 'ends'],
  deep: ['any', 'bays', 'half-bays', 'ends', 'first', 'last', 'middle'],
}

const ROUNDS: Readonly<Record<Effort, number>> = { glance: 0, quick: 1, deep: 3 }

const KEPT: Readonly<Record<Effort, number>> = { glance: 1, quick: 4, deep: 10 }

/** Which ways of laying a wall to compare. */
export interface Look {
  readonly key: string
  readonly places: readonly CutPlace[]
  readonly starts: readonly number[]
  /** Times each course is laid again between its neighbours. */
  readonly rounds: number
  /** Also where no lap is short. */
  readonly thorough: boolean
  /** Ways kept for pairing cuts across walls. */
  readonly keep: number
}

/** The look that an effort affords. */
export const looking = (effort: Effort): Look => ({
  key: effort,
  places: PLACES[effort],
  starts: effort === 'glance' ? [0] : [0, 1],
  keep: KEPT[effort],
  rounds: ROUNDS[effort],
  thorough: effort === 'deep',
})

/** The one way chosen before. */
export const lookingAt = (place: CutPlace, start: number, thorough: boolean): Look => ({
  key: `${place}${start}`,
  places: [place],
  starts: [start],
  keep: 1,
  rounds: ROUNDS[thorough ? 'deep' : 'quick'],
  thorough,
})

/** Everything one search needs to know, and what it has already worked out. */
export interface Workshop {
  readonly frame: Frame
  readonly levels: Levels
  /** Course numbers from the lowest up. */
  readonly courses: readonly number[]
  readonly rules: WallRules
  readonly head: Head
  readonly loss: number
  readonly sought: 'units' | 'cuts'
  readonly fill: Fillers
  readonly pairs: PairMemory
  readonly heads: Map<string, HeadPlan>
  readonly walls: Map<string, LaidWall[]>
  readonly shapes: Map<string, CourseShape>
  tried: number
}

/** An empty workshop for one search. */
export const workshop = (
  frame: Frame,
  levels: Levels,
  rules: WallRules,
  head: Head,
  loss: number,
  sought: 'units' | 'cuts',
): Workshop => ({
  frame,
  levels,
  courses: Array.from({ length: levels.count }, (_, i) => i + 1),
  rules,
  head,
  loss,
  sought,
  fill: fillersFor(rules),
  pairs: new Map(),
  heads: new Map(),
  walls: new Map(),
  shapes: new Map(),
  tried: 0,
})

/** The same walls round fewer chambers. */
export const withFewer = ({ frame, levels, rules, head, loss, sought }: Workshop, chambers: number): Workshop =>
  workshop(withChambers(frame, chambers), levels, rules, head, loss, sought)

/** What the map holds under a key, made where it holds nothing. */
export const remembered = <T>(map: Map<string, T>, key: string, make: () => T): T => {
  const before = map.get(key)
  if (before !== undefined) return before
  const value = make()
  map.set(key, value)
  return value
}

/** The head for a bearing, worked out once. */
export const headFor = (shop: Workshop, bearing: Bearing): HeadPlan =>
  remembered(shop.heads, `${bearing.outer},${bearing.inner}`, () =>
    headPlan(shop.frame, shop.levels, shop.head, bearing, shop.rules.along.jointMin),
  )
