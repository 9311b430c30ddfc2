import type { LayoutRequest } from './contract.ts'
import type { CutPlace } from './layout-choices.ts'
import type { CourseShape, Obstacle } from './course-shape.ts'
import { crossShape, junctionAt, junctionKind, longShape, type Frame } from './frame.ts'
import { SLACK_UM, toMetres } from './micrometres.ts'

/** Extra courses under course 1 by place, micrometres; seen from the side that makes mirrored ground the same ground. */
export interface Ground {
  readonly extraAt: (x: number, y: number) => number
  readonly most: number
  readonly flipped: boolean
}

interface Span {
  readonly from: number
  readonly to: number
}

const MOST_EXTRA_COURSES = 40
const LOOK_EVERY_UM = 20_000

/** The ground under the walls; null where it is level. */
export function groundOf(request: LayoutRequest, frame: Frame): Ground | null {
  const { lowestCourseAt } = request
  if (lowestCourseAt === undefined) return null
  const at = (x: number, y: number): number =>
    Math.min(MOST_EXTRA_COURSES, Math.max(0, -Math.trunc(lowestCourseAt(toMetres(x), toMetres(y)))))
  const profile: number[] = []
  const mirrored: number[] = []
  let most = 0
  for (const y of [frame.thickness / 2, frame.depth / 2, frame.depth - frame.thickness / 2])
    for (let x = 0; x <= frame.length; x += LOOK_EVERY_UM) {
      profile.push(at(x, y))
      mirrored.push(at(frame.length - x, y))
      most = Math.max(most, at(x, y))
    }
  if (most === 0) return null
  const differs = profile.findIndex((value, index) => value !== mirrored[index])
  const flipped = differs >= 0 && (mirrored[differs] ?? 0) > (profile[differs] ?? 0)
  return { extraAt: flipped ? (x, y) => at(frame.length - x, y) : at, most, flipped }
}

/** Steps are set out to the millimetre; the deeper part takes the rest of it. */
const STEP_GRID_UM = 1000
const gridBelow = (u: number): number => u + SLACK_UM - ((u + SLACK_UM) % STEP_GRID_UM)
const gridAbove = (u: number): number => gridBelow(u + STEP_GRID_UM - 1 - 2 * SLACK_UM)

/** Parts of a stretch that reach down to a depth of extra courses. */
function deepParts(low: number, high: number, isDeep: (u: number) => boolean): Span[] {
  const spans: Span[] = []
  let from = isDeep(low) ? low : null
  let before = low
  while (before < high) {
    const next = Math.min(high, before + LOOK_EVERY_UM)
    if (isDeep(next) !== isDeep(before)) {
      let [a, b] = [before, next]
      while (b - a > 1) {
        const middle = a + ((b - a) >> 1)
        if (isDeep(middle) === isDeep(before)) a = middle
        else b = middle
      }
      if (from === null) from = Math.max(low, gridBelow(b))
      else {
        spans.push({ from, to: Math.min(high, gridAbove(b)) })
        from = null
      }
    }
    before = next
  }
  if (from !== null) spans.push({ from, to: high })
  return spans
}

/** What is not in the spans, as free edges: there the step of the footing ends the course. */
function gaps(low: number, high: number, spans: readonly Span[]): Obstacle[] {
  const free: Obstacle[] = []
  let from = low
  for (const span of spans) {
    if (span.from > from) free.push({ from, to: span.from, edge: 'free' })
    from = span.to
  }
  if (from < high) free.push({ from, to: high, edge: 'free' })
  return free
}

const joined = (spans: readonly Span[]): Span[] => {
  const whole: Span[] = []
  for (const span of [...spans].sort((a, b) => a.from - b.from)) {
    const last = whole.at(-1)
    if (last !== undefined && span.from <= last.to)
      whole[whole.length - 1] = { from: last.from, to: Math.max(last.to, span.to) }
    else whole.push(span)
  }
  return whole
}

/** One extra course: what of each wall it takes, and the shapes to fill. */
export interface ExtraCourse {
  readonly course: number
  readonly front: CourseShape
  readonly back: CourseShape
  readonly cross: readonly CourseShape[]
  readonly spans: {
    readonly front: readonly Span[]
    readonly back: readonly Span[]
    readonly cross: readonly (readonly Span[])[]
  }
}

/** The extra course that lies `under` courses under the level ones (1 is the first of them). */
export function extraCourse(frame: Frame, ground: Ground, owns: readonly (0 | 1)[], under: number): ExtraCourse {
  const { chambers, thickness, length, depth } = frame
  const course = 1 - under
  const parity = (course & 1) as 0 | 1
  const middle = thickness / 2
  const ends = { front: middle, back: depth - middle }
  const isDeep = (x: number, y: number): boolean => ground.extraAt(x, y) >= under
  const ks = Array.from({ length: chambers + 1 }, (_, k) => k)
  const inner = ks.map((k) => deepParts(thickness, depth - thickness, (y) => isDeep(junctionAt(frame, k) + middle, y)))
  const long = (end: 'front' | 'back') => {
    const y = ends[end]
    const deep = ks.map((k) => isDeep(junctionAt(frame, k) + middle, y))
    const bays = ks
      .slice(1)
      .map((k) => deepParts(junctionAt(frame, k - 1) + thickness, junctionAt(frame, k), (x) => isDeep(x, y)))
    const nodes = ks
      .filter((k) => deep[k])
      .map((k) => ({ from: junctionAt(frame, k), to: junctionAt(frame, k) + thickness }))
    const spans = joined([...nodes, ...bays.flat()])
    // Whoever goes on from a junction owns it; where both do, the scheme of the other courses holds.
    const owner = ks.map((k): 'long' | 'cross' => {
      const at = junctionAt(frame, k)
      const goesOn = spans.some(
        ({ from, to }) => (from < at && to > at) || (from < at + thickness && to > at + thickness),
      )
      const reach = end === 'front' ? thickness : depth - thickness
      const crossGoesOn = (inner[k] ?? []).some(({ from, to }) => (end === 'front' ? from : to) === reach)
      if (!crossGoesOn) return 'long'
      return goesOn && owns[junctionKind(end, k, chambers)] === parity ? 'long' : 'cross'
    })
    const inWay: Obstacle[] = gaps(0, length, spans)
    for (const k of ks)
      if (deep[k] && owner[k] === 'cross' && owns[junctionKind(end, k, chambers)] === parity)
        inWay.push({ from: junctionAt(frame, k), to: junctionAt(frame, k) + thickness, edge: 'joint' })
    const place: CutPlace = 'any'
    const shape = longShape(frame, end, parity, owns, (k) => owner[k] === 'long', inWay, [], place)
    return { shape, spans, owner, deep }
  }
  const front = long('front')
  const back = long('back')
  const cross = ks.map((k) => {
    const spans = joined([
      ...(front.deep[k] ? [{ from: 0, to: thickness }] : []),
      ...(inner[k] ?? []),
      ...(back.deep[k] ? [{ from: depth - thickness, to: depth }] : []),
    ])
    return crossShape(frame, k, parity, owns, { front: front.owner[k], back: back.owner[k] }, gaps(0, depth, spans))
  })
  return {
    course,
    front: front.shape,
    back: back.shape,
    cross,
    spans: { front: front.spans, back: back.spans, cross: inner },
  }
}
