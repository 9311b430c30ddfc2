import type { Bearing } from './heads.ts'
import type { LayoutChoices } from './layout-choices.ts'
import { pairCuts } from './pairing.ts'
import { backWall, crossWall, frontWall } from './schemes.ts'
import { lookingAt, type LaidWall, type Look, type Owns, type Workshop } from './workshop.ts'

/** All walls of one plan, laid. */
export interface WholeLaid {
  readonly owns: Owns
  readonly bearing: Bearing
  readonly front: LaidWall
  readonly back: LaidWall
  readonly left: LaidWall
  readonly right: LaidWall
  readonly divider: LaidWall | null
}

export interface WholeScore {
  readonly breaches: number
  readonly bought: number
  readonly cuts: number
  readonly cutLengths: number
  readonly smallestLap: number
}

const addTo = (into: Map<number, number>, from: ReadonlyMap<number, number>, times: number): void => {
  for (const [length, count] of from) into.set(length, (into.get(length) ?? 0) + count * times)
}

/** Each wall with the number of times it is built. */
function wallsOf(whole: WholeLaid, chambers: number): readonly (readonly [LaidWall, number])[] {
  const dividers: readonly (readonly [LaidWall, number])[] =
    whole.divider === null ? [] : [[whole.divider, chambers - 1] as const]
  return [[whole.front, 1], [whole.back, 1], [whole.left, 1], [whole.right, 1], ...dividers]
}

/** The whole plan's counts, cuts paired across all walls. */
export function wholeScore(shop: Workshop, whole: WholeLaid): WholeScore {
  const across = new Map<number, number>()
  const along = new Map<number, number>()
  let breaches = 0
  let bought = 0
  let cuts = 0
  let smallestLap = Infinity
  for (const [{ score }, times] of wallsOf(whole, shop.frame.chambers)) {
    breaches += score.breaches * times
    bought += score.whole * times
    cuts += score.cuts * times
    smallestLap = Math.min(smallestLap, score.smallestLap)
    addTo(across, score.across, times)
    addTo(along, score.along, times)
  }
  bought +=
    pairCuts(across, shop.frame.unitLength, shop.loss).units + pairCuts(along, shop.frame.unitWidth, shop.loss).units
  return { breaches, bought, cuts, cutLengths: across.size + along.size, smallestLap }
}

/** Smaller is better, in the order the layout is judged. */
export const wholeOrder = (a: WholeScore, b: WholeScore, sought: 'units' | 'cuts'): number =>
  a.breaches - b.breaches ||
  (sought === 'cuts' ? a.cuts - b.cuts : 0) ||
  a.bought - b.bought ||
  a.cuts - b.cuts ||
  a.cutLengths - b.cutLengths ||
  b.smallestLap - a.smallestLap

/** A plan laid, and what it costs. */
export interface Chosen {
  readonly whole: WholeLaid
  readonly score: WholeScore
}

/** How each wall is to be looked at. */
export type Looks = Readonly<Record<keyof LayoutChoices['cutPlaces'], Look>>

/** The same look at every wall. */
export const sameLook = (look: Look): Looks => ({ front: look, back: look, left: look, right: look, divider: look })

/** The looks that find again the layout chosen before. */
export const chosenLooks = ({ cutPlaces, starts, thorough }: LayoutChoices): Looks => ({
  front: lookingAt(cutPlaces.front, 0, thorough),
  back: lookingAt(cutPlaces.back, starts.back, thorough),
  left: lookingAt(cutPlaces.left, starts.left, thorough),
  right: lookingAt(cutPlaces.right, starts.right, thorough),
  divider: lookingAt(cutPlaces.divider, starts.divider, thorough),
})

type WallName = keyof LayoutChoices['cutPlaces']

/** The ways of laying each wall under one scheme, best first. */
type Ways = Readonly<Record<WallName, readonly LaidWall[]>>

function waysUnder(shop: Workshop, owns: Owns, bearing: Bearing, looks: Looks): Ways {
  const { chambers } = shop.frame
  return {
    front: frontWall(shop, owns, bearing, looks.front),
    back: backWall(shop, owns, looks.back),
    left: crossWall(shop, 0, owns, bearing, looks.left),
    right: crossWall(shop, chambers, owns, bearing, looks.right),
    divider: chambers > 1 ? crossWall(shop, 1, owns, bearing, looks.divider) : [],
  }
}

/** The first of the ways of laying a wall, which are best first. */
export const bestOf = (ways: readonly LaidWall[]): LaidWall => {
  const [first] = ways
  if (first === undefined) throw new Error('a wall with no way of laying it')
  return first
}

function firstWays(owns: Owns, bearing: Bearing, ways: Ways): WholeLaid {
  return {
    owns,
    bearing,
    front: bestOf(ways.front),
    back: bestOf(ways.back),
    left: bestOf(ways.left),
    right: bestOf(ways.right),
    divider: ways.divider[0] ?? null,
  }
}

/** The best way of each wall under one junction scheme, cuts not yet paired across walls. */
export const layWhole = (shop: Workshop, owns: Owns, bearing: Bearing, looks: Looks): WholeLaid =>
  firstWays(owns, bearing, waysUnder(shop, owns, bearing, looks))

/** Exchanges the way of one wall at a time as long as that makes the whole better, cuts paired across walls. */
export function pairedWhole(shop: Workshop, owns: Owns, bearing: Bearing, looks: Looks): Chosen {
  const ways = waysUnder(shop, owns, bearing, looks)
  let whole = firstWays(owns, bearing, ways)
  let score = wholeScore(shop, whole)
  let changed = true
  while (changed) {
    changed = false
    for (const name of ['front', 'back', 'divider', 'left', 'right'] as const)
      for (const way of ways[name]) {
        if (way === whole[name]) continue
        const other = { ...whole, [name]: way }
        const otherScore = wholeScore(shop, other)
        if (wholeOrder(otherScore, score, shop.sought) >= 0) continue
        whole = other
        score = otherScore
        changed = true
      }
  }
  return { whole, score }
}

/** Rules broken in all walls of a plan. */
export const breachesOf = (shop: Workshop, whole: WholeLaid): number => {
  let breaches = 0
  for (const [{ score }, times] of wallsOf(whole, shop.frame.chambers)) breaches += score.breaches * times
  return breaches
}
