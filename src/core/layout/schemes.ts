import type { Head } from './contract.ts'
import type { CutPlace, LayoutChoices } from './layout-choices.ts'
import type { CourseShape } from './course-shape.ts'
import { crossShape, junctionAt, longShape, withChambers, type Frame } from './frame.ts'
import {
  bridgeClear,
  frontKind,
  frontObstacles,
  headPlan,
  lintelCovers,
  lintelForces,
  type Bearing,
  type HeadPlan,
} from './heads.ts'
import { layWall, relaid, type LaidShape } from './laid-wall.ts'
import { fillersFor, type Fillers, type WallRules } from './remembered-fills.ts'
import type { Levels } from './levels.ts'
import { fewestCuts, scoreOrder, wallScore, type WallScore } from './wall-score.ts'

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
  heads: new Map(),
  walls: new Map(),
  shapes: new Map(),
  tried: 0,
})

/** The same walls round fewer chambers. */
export const withFewer = ({ frame, levels, rules, head, loss, sought }: Workshop, chambers: number): Workshop =>
  workshop(withChambers(frame, chambers), levels, rules, head, loss, sought)

const parityOf = (course: number): 0 | 1 => (course & 1) as 0 | 1

const remembered = <T>(map: Map<string, T>, key: string, make: () => T): T => {
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

/**
 * Who runs through the junctions in a course. A lintel an even number of courses deep that no cross wall can come through beside
 * would leave three courses alike: over it the front's courses change places there.
 */
function ownsAt(shop: Workshop, owns: Owns, bearing: Bearing, course: number): Owns {
  const { frame } = shop
  const { firstCourse, lastCourse } = headFor(shop, bearing)
  const deep = lastCourse - firstCourse + 1
  if (course <= lastCourse || deep <= 0 || deep % 2 === 1 || frame.bond === 'english') return owns
  return owns.map((parity, kind) => {
    const k = kind === 0 ? 0 : kind === 1 ? 1 : frame.chambers
    return kind < 3 && forcedAt(shop, bearing, lastCourse, k) ? (parity === 0 ? 1 : 0) : parity
  })
}

const forcedAt = (shop: Workshop, bearing: Bearing, course: number, k: number): boolean =>
  lintelForces(shop.frame, headFor(shop, bearing), course, k, shop.rules.along.jointMin)

const sameCounts = (a: WallScore, b: WallScore): boolean =>
  Math.abs(a.units - b.units) < 1e-9 && a.breaches === b.breaches && a.cuts === b.cuts && a.whole === b.whole

/** Ways of laying a wall from the starts and cut places given, best first; stops at one with no breach and no spare cut. */
function waysOf(
  shop: Workshop,
  shapesFor: (place: CutPlace) => readonly CourseShape[],
  starts: readonly number[],
  places: readonly CutPlace[],
  look: Look,
): LaidWall[] {
  const single = look.keep === 1 && starts.length * places.length === 1
  const least = single ? 0 : fewestCuts(shapesFor('any'), shop.fill)
  const ways: LaidWall[] = []
  for (const place of places) {
    const shapes = shapesFor(place)
    for (const start of place === 'any' || look.thorough ? starts : starts.slice(0, 1)) {
      shop.tried++
      let laid = layWall(shapes, start, place, shop.rules, shop.fill)
      let score = wallScore(laid, shop.rules, shop.loss)
      const isBetter = (tried: readonly LaidShape[]): boolean => {
        const triedScore = wallScore(tried, shop.rules, shop.loss)
        if (scoreOrder(triedScore, score, shop.sought) >= 0) return false
        score = triedScore
        return true
      }
      for (let round = 0; round < look.rounds && (look.thorough || score.breaches > 0); round++)
        laid = relaid(laid, shop.rules, shop.fill, look.thorough ? 'all' : 'broken', isBetter)
      if (!ways.some((way) => sameCounts(way.score, score))) ways.push({ laid, score, place, start })
      if (!look.thorough && score.breaches === 0 && score.cuts <= least) return [{ laid, score, place, start }]
    }
  }
  return ways.sort((a, b) => scoreOrder(a.score, b.score, shop.sought)).slice(0, look.keep)
}

/** Laying in bays is another way only where there are bays. */
function placesFor(shop: Workshop, { places }: Look, long: boolean): readonly CutPlace[] {
  // Cuts at both ends seldom better a wall of headers, where closers decide.
  const useful = shop.frame.bond === 'stretcher' ? places : places.filter((place) => place !== 'ends')
  if (long && shop.frame.chambers > 1 && useful.length > 0) return useful
  const others = places.filter((place) => !isBays(place))
  return others.length === 0 ? ['any'] : others
}

const isBays = (place: CutPlace): boolean => place === 'bays' || place === 'half-bays'

/** Ways of laying the front wall, best first, remembered. */
export function frontWall(shop: Workshop, owns: Owns, bearing: Bearing, look: Look): LaidWall[] {
  const { frame, levels } = shop
  const plan = headFor(shop, bearing)
  const bits = owns.slice(0, 3).join('')
  const bearings = `${bearing.outer},${bearing.inner}`
  return remembered(shop.walls, `F${bits}|${bearings}|${look.key}`, () => {
    const shapesFor = (place: CutPlace): CourseShape[] =>
      shop.courses.map((course) => {
        const kind = frontKind(levels, plan, course)
        const parity = parityOf(course)
        const clear = kind === 'plain' || kind === 'bridge'
        const bays = clear && isBays(place) ? place : 'any'
        const there = ownsAt(shop, owns, bearing, course)
        const key = `F${there.slice(0, 3).join('')}${parity}${kind}${bays}|${kind === 'head' ? bearings : ''}`
        return remembered(shop.shapes, key, () =>
          longShape(
            frame,
            'front',
            parity,
            there,
            (k) => forcedAt(shop, bearing, course, k),
            frontObstacles(frame, levels, plan, course),
            bridgeClear(frame, levels, plan, course),
            bays,
          ),
        )
      })
    const first = plan.firstCourse <= plan.lastCourse ? plan.firstCourse : Math.max(1, levels.head)
    return waysOf(shop, shapesFor, [Math.min(first, levels.count) - 1], placesFor(shop, look, true), look)
  })
}

/** Ways of laying the back wall, best first, remembered. */
export function backWall(shop: Workshop, owns: Owns, look: Look): LaidWall[] {
  const bits = owns.slice(3).join('')
  return remembered(shop.walls, `B${bits}${look.key}`, () => {
    const shapesFor = (place: CutPlace): CourseShape[] => {
      const bays = isBays(place) ? place : 'any'
      const [even, odd] = ([0, 1] as const).map((parity) =>
        remembered(shop.shapes, `B${bits}${parity}${bays}`, () =>
          longShape(shop.frame, 'back', parity, owns, () => false, [], [], bays),
        ),
      )
      return shop.courses.flatMap((course) => (parityOf(course) === 0 ? even : odd) ?? [])
    }
    return waysOf(shop, shapesFor, startsFor(shop, look), placesFor(shop, look, true), look)
  })
}

/** A wall of one course starts there. */
function startsFor(shop: Workshop, look: Look): readonly number[] {
  const starts = look.starts.filter((start) => start < shop.levels.count)
  return starts.length === 0 ? [0] : starts
}

/** Ways of laying the wall before chamber k (the last: after it), best first, remembered. */
export function crossWall(shop: Workshop, k: number, owns: Owns, bearing: Bearing, look: Look): LaidWall[] {
  const { frame } = shop
  const corner = k === 0 || k === frame.chambers
  const kind = k === 0 ? 0 : corner ? 2 : 1
  const covers = lintelCovers(frame, headFor(shop, bearing), junctionAt(frame, k), shop.rules.along.jointMax)
  const isNatural = (course: number): boolean => !covers && frame.bond !== 'english' && owns[kind] === parityOf(course)
  const forced = shop.courses.filter((course) => forcedAt(shop, bearing, course, k) && !isNatural(course))
  const front = covers ? 'lintel' : 'long'
  const turns = ownsAt(shop, owns, bearing, Infinity)[kind] !== owns[kind]
  const key = `${covers ? 'L' : ''}${turns ? 'T' : ''}${corner ? 'S' : 'D'}${owns[kind]}${owns[3 + kind]}|${forced.join()}|${look.key}`
  return remembered(shop.walls, key, () => {
    const shapes = new Map<string, CourseShape>()
    const courses = shop.courses.map((course) => {
      const isForced = forced.includes(course)
      const parity = parityOf(course)
      const there = ownsAt(shop, owns, bearing, course)
      return remembered(shapes, `${parity}${isForced ? 1 : 0}${there[kind]}`, () =>
        crossShape(frame, k, parity, there, isForced ? { front } : {}),
      )
    })
    return waysOf(shop, () => courses, startsFor(shop, look), placesFor(shop, look, false), look)
  })
}
