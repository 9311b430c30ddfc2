import type { CutPlace, Head, LayoutChoices } from './contract.ts'
import type { CourseShape } from './course-shape.ts'
import { crossShape, longShape, type Frame } from './frame.ts'
import { bridgeClear, frontKind, frontObstacles, headPlan, lintelForces, type Bearing, type HeadPlan } from './heads.ts'
import { fillersFor, layWall, type Fillers, type LaidShape, type WallRules } from './laid-wall.ts'
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
  quick: ['any', 'ends', 'first'],
  deep: ['any', 'ends', 'first', 'last', 'middle'],
}

/** Which ways of laying a wall to compare. */
export interface Look {
  readonly key: string
  readonly places: readonly CutPlace[]
  readonly starts: readonly number[]
}

export const looking = (effort: Effort): Look => ({
  key: effort,
  places: PLACES[effort],
  starts: effort === 'glance' ? [0] : [0, 1],
})

/** The one way chosen before. */
export const lookingAt = (place: CutPlace, start: number): Look => ({
  key: `${place}${start}`,
  places: [place],
  starts: [start],
})

/** Everything one search needs to know, and what it has already worked out. */
export interface Workshop {
  readonly frame: Frame
  readonly levels: Levels
  readonly rules: WallRules
  readonly head: Head
  readonly loss: number
  readonly fill: Fillers
  readonly heads: Map<string, HeadPlan>
  readonly walls: Map<string, LaidWall>
  readonly shapes: Map<string, CourseShape>
  tried: number
}

export const workshop = (frame: Frame, levels: Levels, rules: WallRules, head: Head, loss: number): Workshop => ({
  frame,
  levels,
  rules,
  head,
  loss,
  fill: fillersFor(rules),
  heads: new Map(),
  walls: new Map(),
  shapes: new Map(),
  tried: 0,
})

const parityOf = (course: number): 0 | 1 => (course & 1) as 0 | 1

const remembered = <T>(map: Map<string, T>, key: string, make: () => T): T => {
  const before = map.get(key)
  if (before !== undefined) return before
  const value = make()
  map.set(key, value)
  return value
}

export const headFor = (shop: Workshop, bearing: Bearing): HeadPlan =>
  remembered(shop.heads, `${bearing.outer},${bearing.inner}`, () =>
    headPlan(shop.frame, shop.levels, shop.head, bearing, shop.rules.along.jointMin),
  )

export const forcedAt = (shop: Workshop, bearing: Bearing, course: number, k: number): boolean =>
  lintelForces(shop.frame, headFor(shop, bearing), course, k, shop.rules.along.jointMin)

/** Tries the starts and cut places given; stops at a wall with no breach and no more cuts than its runs need. */
function bestWall(
  shop: Workshop,
  shapes: readonly CourseShape[],
  starts: readonly number[],
  places: readonly CutPlace[],
): LaidWall {
  const single = starts.length === 1 && places.length === 1
  const least = single ? 0 : fewestCuts(shapes, shop.fill)
  let best: LaidWall | undefined
  for (const start of starts) {
    for (const place of places) {
      shop.tried++
      const laid = layWall(shapes, start, place, shop.rules, shop.fill)
      const score = wallScore(laid, shop.rules, shop.loss)
      if (best === undefined || scoreOrder(score, best.score) < 0) best = { laid, score, place, start }
      if (best.score.breaches === 0 && best.score.cuts <= least) return best
    }
  }
  if (best === undefined) throw new Error('a wall without starts')
  return best
}

const courseNumbers = (levels: Levels): number[] => Array.from({ length: levels.count }, (_, i) => i + 1)

export function frontWall(shop: Workshop, owns: Owns, bearing: Bearing, look: Look): LaidWall {
  const { frame, levels } = shop
  const plan = headFor(shop, bearing)
  const bits = owns.slice(0, 3).join('')
  return remembered(shop.walls, `F${bits}|${bearing.outer},${bearing.inner}|${look.key}`, () => {
    const shapes = courseNumbers(levels).map((course) => {
      const kind = frontKind(levels, plan, course)
      const parity = parityOf(course)
      return remembered(
        shop.shapes,
        `F${bits}${parity}${kind}|${kind === 'head' ? `${bearing.outer},${bearing.inner}` : ''}`,
        () =>
          longShape(
            frame,
            'front',
            parity,
            owns,
            (k) => forcedAt(shop, bearing, course, k),
            frontObstacles(frame, levels, plan, course),
            bridgeClear(frame, levels, plan, course),
          ),
      )
    })
    const first = plan.firstCourse <= plan.lastCourse ? plan.firstCourse : Math.max(1, levels.head)
    return bestWall(shop, shapes, [Math.min(first, levels.count) - 1], look.places)
  })
}

export function backWall(shop: Workshop, owns: Owns, look: Look): LaidWall {
  const bits = owns.slice(3).join('')
  return remembered(shop.walls, `B${bits}${look.key}`, () => {
    const pair = ([0, 1] as const).map((parity) => longShape(shop.frame, 'back', parity, owns, () => false, [], []))
    return pairWall(shop, (course) => pair[parityOf(course)], look)
  })
}

export function crossWall(shop: Workshop, k: number, owns: Owns, bearing: Bearing, look: Look): LaidWall {
  const { frame, levels } = shop
  const corner = k === 0 || k === frame.chambers
  const kind = k === 0 ? 0 : corner ? 2 : 1
  const forced = courseNumbers(levels).filter(
    (course) => (frame.bond === 'english' || owns[kind] !== parityOf(course)) && forcedAt(shop, bearing, course, k),
  )
  const key = `${corner ? 'S' : 'D'}${owns[kind]}${owns[3 + kind]}|${forced.join()}|${look.key}`
  return remembered(shop.walls, key, () => {
    const shapes = new Map<string, CourseShape>()
    const shapeAt = (course: number): CourseShape => {
      const isForced = forced.includes(course)
      const parity = parityOf(course)
      return remembered(shapes, `${parity}${isForced ? 1 : 0}`, () => crossShape(frame, k, parity, owns, isForced))
    }
    return pairWall(shop, shapeAt, look)
  })
}

function pairWall(shop: Workshop, shapeAt: (course: number) => CourseShape | undefined, look: Look): LaidWall {
  const shapes = courseNumbers(shop.levels).flatMap((course) => shapeAt(course) ?? [])
  const starts = look.starts.filter((start) => start < shapes.length)
  return bestWall(shop, shapes, starts, look.places)
}
