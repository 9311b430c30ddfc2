import type { LayoutChoices } from './layout-choices.ts'
import { choicesOf } from './choices.ts'
import type { LaidWall, Look, Owns, Workshop } from './schemes.ts'
import { backWall, crossWall, frontWall, looking, lookingAt, withFewer } from './schemes.ts'
import { bearingsToTry, type Bearing } from './heads.ts'
import { pairCuts } from './pairing.ts'

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

/** Junction schemes: which parity of courses the front and back walls run through, at corners and at dividing walls. */
function junctionSchemes(shop: Workshop): Owns[] {
  if (shop.frame.bond === 'english')
    return [
      [0, 0, 0, 0, 0, 0],
      [1, 1, 1, 1, 1, 1],
    ]
  const schemes: Owns[] = []
  const single = shop.frame.chambers === 1
  for (let bits = 0; bits < 64; bits++) {
    const owns = [0, 1, 2, 3, 4, 5].map((bit) => ((bits >> bit) & 1) as 0 | 1)
    const [frontLeft = 0, frontMiddle = 0, frontRight = 0, backLeft = 0, backMiddle = 0, backRight = 0] = owns
    if (single && (frontMiddle === 1 || backMiddle === 1)) continue
    // The mirror image of another scheme needs the same units.
    if (frontLeft > frontRight || (frontLeft === frontRight && backLeft > backRight)) continue
    schemes.push(owns)
  }
  return schemes
}

/** How each wall is to be looked at. */
export type Looks = Readonly<Record<keyof LayoutChoices['cutPlaces'], Look>>

const sameLook = (look: Look): Looks => ({ front: look, back: look, left: look, right: look, divider: look })

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

const bestOf = (ways: readonly LaidWall[]): LaidWall => {
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
function pairedWhole(shop: Workshop, owns: Owns, bearing: Bearing, looks: Looks): Chosen {
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

/** What a single wall can tell: to see which schemes are worth pairing cuts for. */
const rough = ({ score }: LaidWall, sought: Workshop['sought']): number =>
  score.breaches * 1e6 + score.units * 10 + score.cuts * (sought === 'cuts' ? 1000 : 0.01)

export interface Chosen {
  readonly whole: WholeLaid
  readonly score: WholeScore
}

const LOOKED_AT_AGAIN = 3
/** A longer bearing is looked at again where a glance finds it no worse than this, against the best so far looked at twice. */
const WORTH_A_LOOK = 1.2

/** Junction schemes by what a glance at each wall tells, best first. Each wall hangs on its own junctions only. */
function rankedSchemes(shop: Workshop, bearing: Bearing): Owns[] {
  const { frame, sought } = shop
  const { chambers } = frame
  const glance = looking('glance')
  const known: number[] = []
  const sum = (owns: Owns): number => {
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = owns
    const once = (place: number, wall: () => readonly LaidWall[]): number =>
      (known[place] ??= rough(bestOf(wall()), sought))
    const cross = (place: number, k: number): number => once(place, () => crossWall(shop, k, owns, bearing, glance))
    return (
      once(a + 2 * b + 4 * c, () => frontWall(shop, owns, bearing, glance)) +
      once(8 + d + 2 * e + 4 * f, () => backWall(shop, owns, glance)) +
      cross(16 + a + 2 * d, 0) +
      cross(20 + c + 2 * f, chambers) +
      (chambers > 1 ? (chambers - 1) * cross(24 + b + 2 * e, 1) : 0)
    )
  }
  return junctionSchemes(shop)
    .map((owns) => ({ owns, rough: sum(owns) }))
    .sort((one, other) => one.rough - other.rough)
    .map(({ owns }) => owns)
}

/** Longer bearings to try, both ends or one: over everything first, which leaves no lintel end to lap. */
function longerBearings(
  [askedOuter = 0, ...outer]: readonly number[],
  [askedInner = 0, ...inner]: readonly number[],
  effort: 'quick' | 'deep',
): Bearing[] {
  const at = (outers: readonly number[], inners: readonly number[]): Bearing[] =>
    outers.flatMap((o) => inners.map((i) => ({ outer: o, inner: i })))
  const over = outer.slice(-1)
  const few = inner.slice(0, 2)
  if (effort === 'quick') return [...at(over, inner.slice(0, 1)), ...at([askedOuter], few), ...at(over, [askedInner])]
  return [...at(over, inner.slice(0, 1)), ...at(outer, [askedInner]), ...at([askedOuter], inner), ...at(outer, inner)]
}

/** The best of the plans tried so far, and how many. */
export interface SearchStep {
  readonly tried: Chosen
  readonly best: Chosen
  readonly done: number
  readonly of: number
}

/**
 * Tries junction schemes at the bearing asked, the likeliest first; then longer bearings for the best, where laps in its
 * front are short. Quick looks at a few schemes again; deep at all, in every way.
 */
export function* searched(shop: Workshop, effort: 'quick' | 'deep'): Generator<SearchStep> {
  const { outers, inners } = bearingsToTry(shop.frame, shop.head, shop.rules.along.jointUsual)
  const asked = { outer: outers[0] ?? 0, inner: inners[0] ?? 0 }
  const looks = sameLook(looking(effort))
  const ranked = rankedSchemes(shop, asked)
  const schemes = effort === 'deep' ? ranked : ranked.slice(0, LOOKED_AT_AGAIN)
  const longer = longerBearings(outers, inners, effort)
  const of = schemes.length + 3 * longer.length
  let best: Chosen | undefined
  let done = 0
  const tried = (owns: Owns, bearing: Bearing): SearchStep => {
    const chosen = pairedWhole(shop, owns, bearing, looks)
    if (best === undefined || wholeOrder(chosen.score, best.score, shop.sought) < 0) best = chosen
    done++
    return { tried: chosen, best, done, of }
  }
  for (const owns of schemes) yield tried(owns, asked)
  if (best === undefined) throw new Error('no junction scheme')
  const glance = sameLook(looking('glance'))
  // English bond turns as a whole: where the front lies in stretchers, so does the back.
  const turned = shop.frame.bond === 'english' ? 6 : 3
  for (const bearing of longer)
    for (const frontOwns of [null, 0, 1] as const) {
      const { whole, score } = best
      if (score.breaches === 0) return
      const owns = whole.owns.map((parity, junction) => (junction < turned && frontOwns !== null ? frontOwns : parity))
      // The owners as they are have been tried at this bearing as they are.
      if (frontOwns !== null && owns.every((parity, junction) => parity === whole.owns[junction])) continue
      const breaches = breachesOf(shop, layWhole(shop, owns, bearing, glance))
      if (breaches <= score.breaches * WORTH_A_LOOK) yield tried(owns, bearing)
    }
  const { whole, score } = best
  if (score.breaches === 0 || whole.bearing === asked) return
  // Under lintels of another length other junctions may be the likeliest.
  const [likeliest] = rankedSchemes(shop, whole.bearing)
  if (likeliest !== undefined) yield tried(likeliest, whole.bearing)
}

const breachesOf = (shop: Workshop, whole: WholeLaid): number => {
  let breaches = 0
  for (const [{ score }, times] of wallsOf(whole, shop.frame.chambers)) breaches += score.breaches * times
  return breaches
}

/** A row of more chambers is laid as this many are: the same junctions, bearings and ways of laying each wall. */
const PATTERN_CHAMBERS = 3

/** The way chosen, and the two in which one bay is laid like the next. */
const inBays = (look: Look): Look => {
  const places = [...new Set([...look.places, 'bays' as const, 'half-bays' as const])]
  return { ...look, key: `${look.key}bays`, places, keep: places.length }
}

/** The whole search at once. */
export function chooseWhole(shop: Workshop): Chosen {
  if (shop.frame.chambers > PATTERN_CHAMBERS) {
    const { whole } = chooseWhole(withFewer(shop, PATTERN_CHAMBERS))
    const looks = chosenLooks(choicesOf(whole, false, []))
    const { front, back } = looks
    const repeated = { front: inBays(front), back: inBays(back) }
    return pairedWhole(shop, whole.owns, whole.bearing, { ...looks, ...repeated })
  }
  let best: Chosen | undefined
  for (const step of searched(shop, 'quick')) best = step.best
  if (best === undefined) throw new Error('no junction scheme')
  return best
}
