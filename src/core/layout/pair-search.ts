import { lawfulLapCost } from './cut-placing.ts'
import { EDGE, FIXED, type CoursePaths } from './course-paths.ts'
import { SLACK_UM } from './micrometres.ts'

/** Pairs of places looked at in one search at most: a section of three bays of the smallest bricks has fewer. */
const MOST_PAIRS = 1 << 18

const costs = new Float64Array(MOST_PAIRS)
const cameFrom = new Int32Array(MOST_PAIRS)
const inBucket = new Int32Array(MOST_PAIRS)
const seenIn = new Int32Array(MOST_PAIRS)
let search = 0

/** Places of both courses from start to end, in order. */
export interface PairFound {
  readonly cost: number
  readonly below: readonly number[]
  readonly above: readonly number[]
}

/**
 * The cheapest way along two courses that lie on each other with every lap of its length, or null where there is none.
 * The course that lags is always taken a piece on, so that each new perpend has to be held only against the last of the
 * other course: the one before lies at least a piece further back.
 */
export function pairSearch(
  a: CoursePaths,
  b: CoursePaths,
  { lap, aim }: { readonly lap: number; readonly aim: number },
): PairFound | null {
  if (a.nodes * b.nodes > MOST_PAIRS) return null
  const width = b.nodes
  const heads = new Int32Array(a.nodes + b.nodes).fill(-1)
  const last = a.nodes * width - 1
  search++
  seenIn[0] = search
  costs[0] = 0
  cameFrom[0] = -1
  inBucket[0] = -1
  heads[0] = 0
  for (let sum = 0; sum < heads.length; sum++)
    for (let pair = heads[sum] ?? -1; pair >= 0 && pair !== last; pair = inBucket[pair] ?? -1) {
      const atA = Math.trunc(pair / width)
      const atB = pair - atA * width
      const lagsA = (a.at[atA] ?? 0) <= (b.at[atB] ?? 0) && atA < a.nodes - 1
      const course = lagsA ? a : b
      const other = lagsA ? b : a
      const node = lagsA ? atA : atB
      const beside = lagsA ? atB : atA
      const besideAt = other.at[beside] ?? 0
      const besideKind = other.kind[beside] ?? EDGE
      const stride = lagsA ? width : 1
      const cost = costs[pair] ?? 0
      const begun = course.begun[course.way[node] ?? -1]
      const piece = course.piece[node] ?? 0
      const isBetween = begun === undefined || piece === begun.way.pieces
      const starts = isBetween ? (course.starts[begun === undefined ? 0 : begun.stretch + 1] ?? []) : []
      const count = begun?.way.shifts.length ?? 0
      const from = course.shift[node] ?? 0
      const row = (begun?.base ?? 0) + (piece + 1) * count
      const cutCosts = begun?.way.cutCosts
      const first = isBetween ? 0 : piece + 1 === begun.way.pieces ? count - 1 : from
      const end = isBetween ? starts.length : count
      for (let step = first; step < end; step++) {
        const next = isBetween ? (starts[step] ?? 0) : row + step
        let all = cost + (course.cost[next] ?? 0)
        if (!isBetween) all += cutCosts?.[from * count + step] ?? 0
        if (all === Infinity) continue
        const kind = course.kind[next] ?? EDGE
        if (kind !== EDGE && besideKind !== EDGE && (kind !== FIXED || besideKind !== FIXED)) {
          const distance = Math.abs((course.at[next] ?? 0) - besideAt)
          if (distance < lap - SLACK_UM) continue
          all += lawfulLapCost(distance, aim)
        }
        const to = pair + (next - node) * stride
        if (seenIn[to] !== search) {
          const bucket = sum + next - node
          seenIn[to] = search
          inBucket[to] = heads[bucket] ?? -1
          heads[bucket] = to
        } else if (all >= (costs[to] ?? Infinity)) continue
        costs[to] = all
        cameFrom[to] = pair
      }
    }
  if (seenIn[last] !== search) return null
  const below: number[] = []
  const above: number[] = []
  for (let pair = last; pair >= 0; pair = cameFrom[pair] ?? -1) {
    const atA = Math.trunc(pair / width)
    const atB = pair - atA * width
    if (below.at(-1) !== atA) below.push(atA)
    if (above.at(-1) !== atB) above.push(atB)
  }
  return { cost: costs[last] ?? 0, below: below.reverse(), above: above.reverse() }
}
