import type { CourseShape } from './course-shape.ts'
import { layWall, relaid, type LaidShape } from './laid-wall.ts'
import type { CutPlace } from './layout-choices.ts'
import { laidInPairs } from './pair-laying.ts'
import { fewestCuts, scoreOrder, wallScore, type WallScore } from './wall-score.ts'
import type { LaidWall, Look, Workshop } from './workshop.ts'

const sameCounts = (a: WallScore, b: WallScore): boolean =>
  Math.abs(a.units - b.units) < 1e-9 && a.breaches === b.breaches && a.cuts === b.cuts && a.whole === b.whole

type Laying = Pick<LaidWall, 'laid' | 'score'>

/**
 * One course after the other, and two at a time where that leaves a lap short; a wall of headers and stretchers, whose laps
 * leave no room, two at a time first.
 */
function firstLaying(
  shop: Workshop,
  shapes: readonly CourseShape[],
  start: number,
  place: CutPlace,
  { rounds, thorough }: Look,
): Laying {
  const { rules, fill, pairs, loss, frame } = shop
  const scored = (laid: readonly LaidShape[]): Laying => ({ laid, score: wallScore(laid, rules, loss) })
  const inTurn = (): Laying => scored(layWall(shapes, start, place, rules, fill))
  const inPairs = (): Laying => scored(laidInPairs(shapes, rules, fill, pairs))
  const isEnglish = frame.bond === 'english'
  const first = isEnglish ? inPairs() : inTurn()
  if (first.score.breaches === 0 || rounds === 0 || !(isEnglish || thorough)) return first
  const second = isEnglish ? inTurn() : inPairs()
  return scoreOrder(second.score, first.score, shop.sought) < 0 ? second : first
}

/** Ways of laying a wall from the starts and cut places given, best first; stops at one with no breach and no spare cut. */
export function waysOf(
  shop: Workshop,
  shapesFor: (place: CutPlace) => readonly CourseShape[],
  starts: readonly number[],
  places: readonly CutPlace[],
  look: Look,
): LaidWall[] {
  const isEnglish = shop.frame.bond === 'english'
  const single = look.keep === 1 && starts.length * places.length === 1
  const least = single || isEnglish ? 0 : fewestCuts(shapesFor('any'), shop.fill)
  const ways: LaidWall[] = []
  for (const place of places) {
    const shapes = shapesFor(place)
    for (const start of place === 'any' || look.thorough ? starts : starts.slice(0, 1)) {
      shop.tried++
      let { laid, score } = firstLaying(shop, shapes, start, place, look)
      const isBetter = (tried: readonly LaidShape[]): boolean => {
        const triedScore = wallScore(tried, shop.rules, shop.loss)
        if (scoreOrder(triedScore, score, shop.sought) >= 0) return false
        score = triedScore
        return true
      }
      for (let round = 0; round < look.rounds && (look.thorough || score.breaches > 0); round++)
        laid = relaid(laid, shop.rules, shop.fill, look.thorough ? 'all' : 'broken', isBetter)
      if (!ways.some((way) => sameCounts(way.score, score))) ways.push({ laid, score, place, start })
      if (!look.thorough && score.breaches === 0 && (isEnglish || score.cuts <= least))
        return [{ laid, score, place, start }]
    }
  }
  return ways.sort((a, b) => scoreOrder(a.score, b.score, shop.sought)).slice(0, look.keep)
}

/**
 * Laying in bays is another way only where there are bays. A wall of headers and stretchers is tried so first: what is lawful
 * in one bay is so in all.
 */
export function placesFor(shop: Workshop, { key, places }: Look, long: boolean): readonly CutPlace[] {
  const { bond, chambers } = shop.frame
  const bays = long && chambers > 1 ? places.filter(isBays) : []
  const others = places.filter((place) => !isBays(place))
  if (bond !== 'english') {
    const useful = (bays.length > 0 ? places : others).filter((place) => bond === 'stretcher' || place !== 'ends')
    return useful.length === 0 ? ['any'] : useful
  }
  if (long && chambers > 1 && key === 'glance') return ['bays']
  // Cuts at both ends seldom better such a wall, where closers decide.
  const useful = [...bays, ...others.filter((place) => place !== 'ends')]
  return useful.length === 0 ? ['any'] : useful
}

/** Laid alike from each dividing wall to the next. */
export const isBays = (place: CutPlace): boolean => place === 'bays' || place === 'half-bays'

/** A wall of one course starts there. */
export function startsFor(shop: Workshop, look: Look): readonly number[] {
  const starts = look.starts.filter((start) => start < shop.levels.count)
  return starts.length === 0 ? [0] : starts
}
