import { choicesOf } from './choices.ts'
import { fittedBearings } from './fitted-bearings.ts'
import { bearingsToTry, type Bearing } from './heads.ts'
import { backWall, crossWall, frontWall } from './schemes.ts'
import {
  bestOf,
  breachesOf,
  chosenLooks,
  layWhole,
  pairedWhole,
  sameLook,
  wholeOrder,
  type Chosen,
  type WholeLaid,
} from './whole-laying.ts'
import { headFor, looking, withFewer, type LaidWall, type Look, type Owns, type Workshop } from './workshop.ts'

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

/** What a single wall can tell: to see which schemes are worth pairing cuts for. */
const rough = ({ score }: LaidWall, sought: Workshop['sought']): number =>
  score.breaches * 1e6 + score.units * 10 + score.cuts * (sought === 'cuts' ? 1000 : 0.01)

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

/** Bearings that bring the ends of the lintels onto the joints of a front that is laid. */
function fittedTo(shop: Workshop, { front }: WholeLaid, asked: Bearing): Bearing[] {
  const { outers, inners } = fittedBearings(shop.frame, headFor(shop, asked), front, asked)
  return (outers.length === 0 ? [asked.outer] : outers).flatMap((outer) =>
    (inners.length === 0 ? [asked.inner] : inners).map((inner) => ({ outer, inner })),
  )
}

/** The bearing asked, or the fitted one that a glance at the front finds better. */
function fittingBearing(shop: Workshop, owns: Owns, asked: Bearing): Bearing {
  const glance = sameLook(looking('glance'))
  const first = layWhole(shop, owns, asked, glance)
  let best = { bearing: asked, breaches: breachesOf(shop, first) }
  for (const bearing of fittedTo(shop, first, asked)) {
    if (best.breaches === 0) break
    const breaches = breachesOf(shop, layWhole(shop, owns, bearing, glance))
    if (breaches < best.breaches) best = { bearing, breaches }
  }
  return best.bearing
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
  const isEnglish = shop.frame.bond === 'english'
  for (const owns of schemes) {
    if (best !== undefined && best.score.breaches === 0 && isEnglish && effort === 'quick') break
    yield tried(owns, isEnglish ? fittingBearing(shop, owns, asked) : asked)
  }
  if (best === undefined) throw new Error('no junction scheme')
  if (!isEnglish && best.score.breaches > 0)
    for (const bearing of fittedTo(shop, best.whole, asked))
      if (best.score.breaches > 0) yield tried(best.whole.owns, bearing)
  const glance = sameLook(looking('glance'))
  // English bond turns as a whole: where the front lies in stretchers, so does the back.
  const turned = isEnglish ? 6 : 3
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
