import { isLawfulLap, lawfulLapCost, type PieceRule } from './cut-placing.ts'
import type { RunWay } from './run-ways.ts'

/** Something of a course that is passed from one end to the other: a run and the ways of filling it, or a perpend that is there. */
export interface Stretch {
  readonly from: number
  readonly to: number
  readonly startJoint: boolean
  readonly endJoint: boolean
  readonly rule: PieceRule
  readonly ways: readonly RunWay[]
  /** Perpends of courses that are laid, sorted, to keep clear of. */
  readonly avoid: readonly number[]
}

/** What a step along a course ends at: a free edge, a perpend that the pieces place, or one that no piece can move. */
export const EDGE = 0
const PLACED = 1
export const FIXED = 2

/**
 * All ways along one course. A node is a place reached: after some pieces of a way, perpends moved back by one of its shifts.
 * Nodes are numbered so that every step leads to a greater number; 0 is the start and the last the end.
 */
export interface CoursePaths {
  readonly nodes: number
  readonly at: Float64Array
  readonly kind: Uint8Array
  /** What the perpend there costs against the courses that are laid. */
  readonly cost: Float64Array
  /** Of each node: the way, pieces laid and shift; -1 between runs. */
  readonly way: Int32Array
  readonly piece: Int32Array
  readonly shift: Int32Array
  /** Where each way begins: its run, the way, its first node. */
  readonly begun: readonly { readonly stretch: number; readonly way: RunWay; readonly base: number }[]
  /** First nodes of the ways of each run; the end after the last. */
  readonly starts: readonly (readonly number[])[]
}

/** What a placed perpend costs near others that lie: nothing far off, Infinity where the lap is short. */
function besideCost(at: number, { avoid, rule }: Stretch): number {
  let nearest = Infinity
  for (const other of avoid) nearest = Math.min(nearest, Math.abs(other - at))
  return isLawfulLap(nearest, rule) ? lawfulLapCost(nearest, rule.aim) : Infinity
}

/** The ways along a course of these runs. */
export function coursePaths(stretches: readonly Stretch[]): CoursePaths {
  const begun: { stretch: number; way: RunWay; base: number }[] = []
  const starts: number[][] = []
  let nodes = 1
  stretches.forEach(({ ways }, stretch) => {
    starts.push(
      ways.map((way) => {
        const base = nodes
        begun.push({ stretch, way, base })
        nodes += (way.pieces + 1) * way.shifts.length
        return base
      }),
    )
  })
  starts.push([nodes])
  nodes++
  const paths = {
    nodes,
    at: new Float64Array(nodes),
    kind: new Uint8Array(nodes),
    cost: new Float64Array(nodes),
    way: new Int32Array(nodes).fill(-1),
    piece: new Int32Array(nodes),
    shift: new Int32Array(nodes),
    begun,
    starts,
  }
  paths.at[0] = -Infinity
  paths.at[nodes - 1] = Infinity
  begun.forEach(({ stretch, way, base }, index) => {
    const run = stretches[stretch]
    if (run === undefined) return
    const { pieces, joint, shifts } = way
    const { length } = run.rule
    for (let piece = 0; piece <= pieces; piece++)
      for (let step = 0; step < shifts.length; step++) {
        const node = base + piece * shifts.length + step
        paths.way[node] = index
        paths.piece[node] = piece
        paths.shift[node] = step
        if (piece === 0) {
          paths.at[node] = run.from + (run.startJoint ? joint / 2 : 0)
          paths.kind[node] = run.startJoint ? FIXED : EDGE
        } else if (piece === pieces) {
          paths.at[node] = run.to - (run.endJoint ? joint / 2 : 0)
          paths.kind[node] = run.endJoint ? FIXED : EDGE
        } else {
          const at =
            run.from + (run.startJoint ? joint : 0) + piece * (length + joint) - joint / 2 - (shifts[step] ?? 0)
          paths.at[node] = at
          paths.kind[node] = PLACED
          paths.cost[node] = besideCost(at, run)
        }
      }
  })
  return paths
}
