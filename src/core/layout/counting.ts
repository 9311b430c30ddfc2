import type { CutCount, LayoutCounts } from './contract.ts'
import type { LaidShape } from './laid-wall.ts'
import { courseBound } from './lower-bound.ts'
import { toMetres } from './micrometres.ts'
import { pairCuts } from './pairing.ts'
import type { Workshop } from './workshop.ts'
import type { WallPlace } from './stamping.ts'
import { wallScore } from './wall-score.ts'
import { wholeUp } from '../basics/count.ts'

/** Bricks of the arches, which lie in no course: whole ones, ones cut across to the ring's depth, ones cut to fit round it. */
export interface ArchBricks {
  readonly whole: number
  readonly bats: number
  readonly batLength: number
  readonly fitted: number
}

interface WallCount {
  readonly whole: number
  readonly across: ReadonlyMap<number, number>
  readonly along: ReadonlyMap<number, number>
  readonly bound: number
}

/** Counts over all walls, cuts paired on whole units, with the bound that no layout can go under. */
export function countsOf(shop: Workshop, places: readonly WallPlace[], arches: ArchBricks): LayoutCounts {
  const { frame, loss, rules } = shop
  const across = new Map<number, number>()
  const along = new Map<number, number>()
  const known = new Map<readonly LaidShape[], WallCount>()
  const add = (into: Map<number, number>, from: ReadonlyMap<number, number>): void => {
    for (const [length, count] of from) into.set(length, (into.get(length) ?? 0) + count)
  }
  let full = 0
  let bound = 0
  for (const { laid } of places) {
    const before = known.get(laid)
    const count = before ?? {
      ...wallScore(laid, rules, loss),
      bound: laid.reduce((sum, course) => sum + courseBound(course, rules, loss), 0),
    }
    known.set(laid, count)
    full += count.whole
    bound += count.bound
    add(across, count.across)
    add(along, count.along)
  }
  const inCourses = full + total(across) + total(along)
  if (arches.bats > 0) add(across, new Map([[arches.batLength, arches.bats]]))
  const ways = [
    { way: 'across' as const, pieces: across, pairing: pairCuts(across, frame.unitLength, loss) },
    { way: 'along' as const, pieces: along, pairing: pairCuts(along, frame.unitWidth, loss) },
  ]
  const cuts: CutCount[] = ways.flatMap(({ way, pieces }) =>
    [...pieces].sort(([a], [b]) => b - a).map(([length, count]) => ({ lengthM: toMetres(length), count, way })),
  )
  const cutPieces = total(across) + total(along)
  const cutStock = ways.reduce((sum, { pairing }) => sum + pairing.units, 0)
  const whole = full + arches.whole
  const bought = whole + arches.fitted + cutStock
  const batShare = (arches.bats * (arches.batLength + loss)) / (frame.unitLength + loss)
  const lowerBound = wholeUp(bound + batShare) + arches.whole + arches.fitted
  return {
    laid: inCourses,
    whole,
    cuts,
    cutPieces,
    cutPatterns: ways.flatMap(({ way, pairing }) =>
      pairing.patterns.map(({ pieces, units }) => ({ way, piecesM: pieces.map(toMetres), units })),
    ),
    archUnits: arches.whole + arches.bats + arches.fitted,
    fittedUnits: arches.fitted,
    bought,
    savedByPairing: cutPieces - cutStock,
    lowerBound,
    gap: bought === 0 ? 0 : (bought - lowerBound) / bought,
  }
}

const total = (counts: ReadonlyMap<number, number>): number => {
  let sum = 0
  for (const count of counts.values()) sum += count
  return sum
}
