import type { Chosen, WholeLaid } from './whole-laying.ts'
import { wholeOrder, wholeScore } from './whole-laying.ts'
import type { RunExchange } from './layout-choices.ts'
import { besides, laidWith, perpendsNear, type LaidShape } from './laid-wall.ts'
import { fillWith, otherFills, type Fill } from './run-filling.ts'
import type { LaidWall, Workshop } from './workshop.ts'
import { wallScore } from './wall-score.ts'

export const WALL_NAMES = ['front', 'back', 'left', 'right', 'divider'] as const

/** The wall with one run of a course, and of all courses laid like it, filled otherwise. */
function refilled(shop: Workshop, wall: LaidWall, course: LaidShape, track: number, run: number, fill: Fill): LaidWall {
  const fills = course.fills.map((row, t) => (t === track ? row.map((one, r) => (r === run ? fill : one)) : row))
  const again = laidWith(course.shape, fills, shop.rules)
  const laid = wall.laid.map((one) => (one === course ? again : one))
  return { ...wall, laid, score: wallScore(laid, shop.rules, shop.loss) }
}

/** Lengths that the offcuts of the pieces now cut would give, longest first, and those a unit gives two or three of. */
function lengthsWanted(shop: Workshop, whole: WholeLaid): number[] {
  const { frame, loss, rules } = shop
  const { grid, shortest, goodCuts, length } = rules.along
  const wanted = new Set(goodCuts.map((cut) => length - cut))
  for (const name of WALL_NAMES)
    for (const piece of whole[name]?.score.across.keys() ?? []) {
      const rest = frame.unitLength - piece - loss
      if (rest >= shortest) wanted.add(rest - (rest % grid))
      wanted.add(piece)
    }
  return [...wanted].sort((a, b) => b - a).slice(0, MOST_WANTED)
}

const MOST_WANTED = 16

export interface Exchanged extends Chosen {
  readonly exchanges: readonly RunExchange[]
}

/**
 * Fills runs one after the other otherwise, each between the courses beside it, as long as the whole gets better with its
 * cuts paired across all walls. Yields after each wall; done when a round over all walls changes nothing.
 */
export function* exchanged(shop: Workshop, before: Chosen, rounds: number): Generator<Exchanged> {
  let now: Exchanged = { ...before, exchanges: [] }
  for (let round = 0; round < rounds; round++) {
    const atStart = now.exchanges.length
    for (const name of WALL_NAMES) {
      now = wallExchanged(shop, now, name)
      yield now
    }
    if (now.exchanges.length === atStart) return
  }
}

function wallExchanged(shop: Workshop, before: Exchanged, name: (typeof WALL_NAMES)[number]): Exchanged {
  let now = before
  const wanted = lengthsWanted(shop, now.whole)
  const courses = now.whole[name]?.laid.length ?? 0
  const seen = new Set<LaidShape>()
  for (let course = 0; course < courses; course++) {
    const first = now.whole[name]?.laid[course]
    if (first === undefined || seen.has(first)) continue
    for (const [track, { lane, lie, runs }] of first.shape.tracks.entries())
      for (const [run, stretch] of runs.entries()) {
        const wall = now.whole[name]
        const laid = wall?.laid[course]
        if (!wall || laid === undefined || lie === 'across') continue
        const beside = [...(besides(wall.laid).get(laid) ?? [])].map(({ perpends }) => perpends)
        const avoid = perpendsNear(laid.shape, { lane, lie }, stretch, beside, shop.rules)
        const { from, to, startJoint, endJoint } = stretch
        for (const fill of otherFills(shop.rules[lie], to - from, startJoint, endJoint, avoid, wanted)) {
          const whole = { ...now.whole, [name]: refilled(shop, wall, laid, track, run, fill) }
          const score = wholeScore(shop, whole)
          if (wholeOrder(score, now.score, shop.sought) >= 0) continue
          const exchange = { wall: name, course, track, run, lengthsUm: fill.lengths }
          now = { whole, score, exchanges: [...now.exchanges, exchange] }
        }
      }
    const last = now.whole[name]?.laid[course]
    if (last !== undefined) seen.add(last)
  }
  return now
}

/** Makes the exchanges a search chose; one that does not fit the run any more is left out. */
export function withExchanges(shop: Workshop, before: WholeLaid, exchanges: readonly RunExchange[]): WholeLaid {
  let whole = before
  for (const { wall: name, course, track, run, lengthsUm } of exchanges) {
    const wall = whole[name]
    const laid = wall?.laid[course]
    const row = laid?.shape.tracks[track]
    const stretch = row?.runs[run]
    if (wall === null || laid === undefined || row === undefined || stretch === undefined) continue
    const { from, to, startJoint, endJoint } = stretch
    const fill = fillWith(shop.rules[row.lie], to - from, startJoint, endJoint, lengthsUm)
    if (fill !== null) whole = { ...whole, [name]: refilled(shop, wall, laid, track, run, fill) }
  }
  return whole
}
