import type { Layout, LayoutRequest, PlacedUnit } from '../../../src/core/layout/contract.ts'

/** What an outside judge sees wrong along one face line of a wall; measured from the placed boxes alone. */
export interface Seen {
  readonly kind: 'lap-short' | 'joint-out-of-range' | 'lintel-end'
  readonly course: number
  readonly xM: number
  readonly yM: number
  readonly value: number
}

interface Line {
  readonly alongX: boolean
  readonly across: readonly [number, number]
}

const SAME_M = 1e-5

function linesOf(layout: Layout, request: LayoutRequest): Line[] {
  const t = layout.thicknessM
  const lines: Line[] = [
    { alongX: true, across: [0, t] },
    { alongX: true, across: [layout.depthM - t, layout.depthM] },
  ]
  for (let k = 0; k <= request.chambers; k++) {
    const x = k * (request.clearSideM + t)
    lines.push({ alongX: false, across: [x, x + t] })
  }
  return lines
}

/** Middle of a joint, and the lintel end it stands beside. */
interface Joint {
  readonly at: number
  readonly end: number | null
}

interface Stretch {
  readonly from: number
  readonly to: number
}

/** Everything solid of a course that crosses a line, as stretches along it. */
function stretches(line: Line, solids: readonly { xM: number; yM: number; dxM: number; dyM: number }[]): Stretch[] {
  const [low, high] = line.across
  return solids
    .filter((s) => {
      const from = line.alongX ? s.yM : s.xM
      const to = from + (line.alongX ? s.dyM : s.dxM)
      return Math.min(to, high) - Math.max(from, low) > SAME_M
    })
    .map((s) => (line.alongX ? { from: s.xM, to: s.xM + s.dxM } : { from: s.yM, to: s.yM + s.dyM }))
    .sort((a, b) => a.from - b.from)
    .reduce<Stretch[]>((merged, next) => {
      // Two units of a crossing wall may stand side by side across this one: to it they are one.
      const last = merged.at(-1)
      if (last !== undefined && next.from < last.to - SAME_M)
        merged[merged.length - 1] = { from: last.from, to: Math.max(last.to, next.to) }
      else merged.push(next)
      return merged
    }, [])
}

/**
 * Joints and laps of a wall one unit thick, read off the boxes: a gap narrower than half the smallest opening between two
 * neighbours is a joint, and its middle is compared with the middles of the joints in the course below.
 */
export function judged(layout: Layout, request: LayoutRequest): Seen[] {
  const seen: Seen[] = []
  const { minM, maxM } = request.perpend
  const byCourse = new Map<number, PlacedUnit[]>()
  for (const unit of layout.units) byCourse.set(unit.course, [...(byCourse.get(unit.course) ?? []), unit])
  const lintels = layout.lintels.filter(({ dzM }) => dzM > 0)
  const widestJoint = Math.min(0.1, request.opening.widthM / 2)
  for (const line of linesOf(layout, request)) {
    let below: Joint[] = []
    for (const { index, zBottomM, zTopM } of layout.courses) {
      const middle = (zBottomM + zTopM) / 2
      const inCourse = lintels.filter(({ zM, dzM }) => zM < middle && zM + dzM > middle)
      const row = stretches(line, [...(byCourse.get(index) ?? []), ...inCourse])
      const joints: Joint[] = []
      // Along its front wall a lintel ends left and right; in a cross wall that it lies over, at its back face.
      const ends = inCourse.flatMap(({ xM, dxM, yM, dyM }) => (line.alongX ? [xM, xM + dxM] : [yM + dyM]))
      row.forEach((next, i) => {
        const before = row[i - 1]
        if (before === undefined) return
        const gap = next.from - before.to
        if (gap > widestJoint) return
        const at = (next.from + before.to) / 2
        const end = ends.find((x) => Math.abs(x - before.to) < SAME_M || Math.abs(x - next.from) < SAME_M) ?? null
        joints.push({ at, end })
        const spot = line.alongX
          ? { xM: at, yM: (line.across[0] + line.across[1]) / 2 }
          : { xM: (line.across[0] + line.across[1]) / 2, yM: at }
        if (gap < minM - SAME_M || gap > maxM + SAME_M)
          seen.push({ kind: 'joint-out-of-range', course: index, ...spot, value: gap })
        // A lintel two courses deep ends in one joint: its two halves are no lap, but must be told.
        if (end !== null && below.some((other) => other.end === end))
          seen.push({ kind: 'lintel-end', course: index, ...spot, value: 0 })
        const others = below.filter((other) => end === null || other.end !== end)
        const lap = Math.min(...others.map((other) => Math.abs(other.at - at)))
        if (lap < request.unit.lengthM / 4 - SAME_M)
          seen.push({ kind: 'lap-short', course: index, ...spot, value: lap })
      })
      below = joints
    }
  }
  return seen
}
