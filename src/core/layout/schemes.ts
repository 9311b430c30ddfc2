import type { CourseShape } from './course-shape.ts'
import { crossShape, junctionAt, longShape } from './frame.ts'
import { bridgeClear, frontKind, frontObstacles, lintelCovers, lintelForces, type Bearing } from './heads.ts'
import type { CutPlace } from './layout-choices.ts'
import { isBays, placesFor, startsFor, waysOf } from './wall-ways.ts'
import { headFor, remembered, type LaidWall, type Look, type Owns, type Workshop } from './workshop.ts'

const parityOf = (course: number): 0 | 1 => (course & 1) as 0 | 1

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
