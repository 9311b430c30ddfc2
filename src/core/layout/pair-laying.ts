import type { CourseShape, Perpend } from './course-shape.ts'
import { coursePaths, type CoursePaths, type Stretch } from './course-paths.ts'
import { layShape, perpendsNear, type LaidShape } from './laid-wall.ts'
import { pairSearch } from './pair-search.ts'
import type { Fillers, WallRules } from './remembered-fills.ts'
import { fewestPieces, fillWith, type Fill } from './run-filling.ts'
import { runWays, type RunWay } from './run-ways.ts'

/** A perpend that no piece places: passed, but with nothing to choose. */
const PASSED: RunWay = { pieces: 0, joint: 0, shifts: [0], cutCosts: new Float64Array(1) }

/** What is passed along the last row of a course: its runs, and the joints of walls that come through. */
interface Passed extends Omit<Stretch, 'ways'> {
  /** Index of the run in its row; -1 for a joint. */
  readonly run: number
}

/** Fills of the runs of two courses, by run. */
type PairFills = readonly [ReadonlyMap<number, Fill>, ReadonlyMap<number, Fill>]

/** Remembers the sections of pairs that were searched; null where no lawful laying was found. */
export type PairMemory = Map<string, readonly [readonly (Fill | null)[], readonly (Fill | null)[]] | null>

function passedAlong(shape: CourseShape, neighbours: readonly (readonly Perpend[])[], rules: WallRules): Passed[] {
  // Of two rows of stretchers the inner meets the corners: the outer can follow it.
  const track = shape.tracks.at(-1)
  if (track === undefined) return []
  const rule = rules[track.lie]
  const passed = track.runs.map((stretch, run): Passed => {
    const avoid = perpendsNear(shape, track, stretch, neighbours, rules).map((at) => at + stretch.from)
    return { ...stretch, rule, avoid, run }
  })
  for (const { at } of shape.extra)
    passed.push({ from: at, to: at, startJoint: true, endJoint: true, rule, avoid: [], run: -1 })
  return passed.sort((a, b) => a.from - b.from)
}

/** The stretches with all ways of filling them; null where one has none. */
function waysAlong(passed: readonly Passed[]): Stretch[] | null {
  const stretches: Stretch[] = []
  for (const one of passed) {
    const ends = (one.startJoint ? 1 : 0) + (one.endJoint ? 1 : 0)
    const ways = one.run < 0 ? [PASSED] : runWays(one.rule, one, fewestPieces(one.rule, one.to - one.from, ends))
    if (ways.length === 0) return null
    stretches.push({ ...one, ways })
  }
  return stretches
}

/** Where both courses pass from one run to the next at one place: what lies on either side has nothing to do with the other. */
function sectionsOf(a: readonly Passed[], b: readonly Passed[]): (readonly [readonly Passed[], readonly Passed[]])[] {
  const sections: (readonly [readonly Passed[], readonly Passed[]])[] = []
  let [fromA, fromB, atA, atB] = [0, 0, 0, 0]
  while (atA < a.length - 1 && atB < b.length - 1) {
    const gapA = [a[atA]?.to ?? 0, a[atA + 1]?.from ?? 0] as const
    const gapB = [b[atB]?.to ?? 0, b[atB + 1]?.from ?? 0] as const
    if (Math.max(gapA[0], gapB[0]) <= Math.min(gapA[1], gapB[1])) {
      sections.push([a.slice(fromA, atA + 1), b.slice(fromB, atB + 1)])
      fromA = ++atA
      fromB = ++atB
    } else if (gapA[1] < gapB[0]) atA++
    else atB++
  }
  sections.push([a.slice(fromA), b.slice(fromB)])
  return sections
}

const keyOf = (passed: readonly Passed[], base: number): string =>
  passed
    .map(({ from, to, startJoint, endJoint, rule, avoid, run }) =>
      [run < 0 ? 'j' : rule.length, from - base, to - base, startJoint ? 1 : 0, endJoint ? 1 : 0]
        .concat(avoid.map((at) => at - base))
        .join(),
    )
    .join(';')

/** The pieces of each run along a way of one course. */
function fillsAlong(paths: CoursePaths, nodes: readonly number[], passed: readonly Passed[]): (Fill | null)[] {
  const fills: (Fill | null)[] = passed.map(() => null)
  let lengths: number[] = []
  for (const [index, node] of nodes.entries()) {
    const begun = paths.begun[paths.way[node] ?? -1]
    if (begun === undefined) continue
    const { stretch, way } = begun
    const run = passed[stretch]
    const piece = paths.piece[node] ?? 0
    if (piece === 0) lengths = []
    else if (run !== undefined) {
      const before = way.shifts[paths.shift[nodes[index - 1] ?? 0] ?? 0] ?? 0
      lengths.push(run.rule.length - ((way.shifts[paths.shift[node] ?? 0] ?? 0) - before))
      if (piece === way.pieces)
        fills[stretch] = fillWith(run.rule, run.to - run.from, run.startJoint, run.endJoint, lengths)
    }
  }
  return fills
}

const byRun = (passed: readonly Passed[], fills: readonly (Fill | null)[], into: Map<number, Fill>): void =>
  passed.forEach(({ run }, index) => {
    const fill = fills[index]
    if (run >= 0 && fill) into.set(run, fill)
  })

/** The cheapest lawful pieces of both courses of a section; null where there are none. */
function sectionFilled(
  a: readonly Passed[],
  b: readonly Passed[],
  laps: { readonly lap: number; readonly aim: number },
): readonly [readonly (Fill | null)[], readonly (Fill | null)[]] | null {
  const [waysA, waysB] = [waysAlong(a), waysAlong(b)]
  if (waysA === null || waysB === null) return null
  const [pathsA, pathsB] = [coursePaths(waysA), coursePaths(waysB)]
  const way = pairSearch(pathsA, pathsB, laps)
  return way === null ? null : [fillsAlong(pathsA, way.below, a), fillsAlong(pathsB, way.above, b)]
}

/** Fills both courses together, section by section; runs of sections in which no lawful laps are possible are left out. */
function filledTogether(a: readonly Passed[], b: readonly Passed[], rules: WallRules, memory: PairMemory): PairFills {
  const laps = { lap: rules.along.lap, aim: Math.min(rules.along.aim, rules.across.aim) }
  const found = [new Map<number, Fill>(), new Map<number, Fill>()] as const
  for (const [partA, partB] of sectionsOf(a, b)) {
    const base = Math.min(partA[0]?.from ?? 0, partB[0]?.from ?? 0)
    const key = `${keyOf(partA, base)}|${keyOf(partB, base)}`
    let fills = memory.get(key)
    if (fills === undefined) {
      fills = sectionFilled(partA, partB, laps)
      memory.set(key, fills)
    }
    if (fills === null) continue
    byRun(partA, fills[0], found[0])
    byRun(partB, fills[1], found[1])
  }
  return found
}

/** A stretch of courses of two shapes in turn, or a single course. */
interface Zone {
  readonly from: number
  readonly to: number
}

/** The courses parted into zones, the longest first where two could have a course. */
function zonesOf(shapes: readonly CourseShape[], from: number, to: number): Zone[] {
  if (from >= to) return []
  let best: Zone = { from, to: from + 1 }
  for (let start = from; start < to - 1; start++) {
    if (shapes[start] === shapes[start + 1]) continue
    let end = start + 2
    while (end < to && shapes[end] === shapes[end - 2]) end++
    if (end - start > best.to - best.from) best = { from: start, to: end }
  }
  return [...zonesOf(shapes, from, best.from), best, ...zonesOf(shapes, best.to, to)]
}

/** Lays the two courses of a zone together, beside those laid already. */
function pairLaid(
  [a, b]: readonly [CourseShape, CourseShape],
  [besideA, besideB]: readonly [readonly (readonly Perpend[])[], readonly (readonly Perpend[])[]],
  rules: WallRules,
  fill: Fillers,
  memory: PairMemory,
): readonly [LaidShape, LaidShape] {
  const [foundA, foundB] = filledTogether(passedAlong(a, besideA, rules), passedAlong(b, besideB, rules), rules, memory)
  // A course of one row is laid before one of two, which has to follow it.
  if (a.tracks.length > b.tracks.length) {
    const laidB = layShape(b, [a.known, ...besideB], rules, fill, 'any', foundB)
    return [layShape(a, [laidB.perpends, ...besideA], rules, fill, 'any', foundA), laidB]
  }
  const laidA = layShape(a, [b.known, ...besideA], rules, fill, 'any', foundA)
  return [laidA, layShape(b, [laidA.perpends, ...besideB], rules, fill, 'any', foundB)]
}

/**
 * Lays a wall zone by zone, the two courses of a zone together: what one course at a time cannot see, such as a cut in both
 * at one place. Begins with the longest zone; what has no lawful laying is laid one course after the other.
 */
export function laidInPairs(
  shapes: readonly CourseShape[],
  rules: WallRules,
  fill: Fillers,
  memory: PairMemory,
): readonly LaidShape[] {
  const zones = zonesOf(shapes, 0, shapes.length)
  const longest = zones.reduce((most, { from, to }) => Math.max(most, to - from), 0)
  const start = zones.findIndex(({ from, to }) => to - from === longest)
  const laid: (LaidShape | undefined)[] = shapes.map(() => undefined)
  const beside = (course: number): (readonly Perpend[])[] =>
    [laid[course - 1], laid[course + 1]].flatMap((one) => (one === undefined ? [] : [one.perpends]))
  const foreseen = (course: number): (readonly Perpend[])[] =>
    [course - 1, course + 1].flatMap((at) => (laid[at] === undefined ? [shapes[at]?.known ?? []] : []))
  for (const { from, to } of [...zones.slice(0, start + 1).reverse(), ...zones.slice(start + 1)]) {
    const [a, b] = [shapes[from], shapes[from + 1]]
    if (a === undefined) continue
    if (b === undefined || to - from === 1) {
      laid[from] = layShape(a, [...beside(from), ...foreseen(from)], rules, fill, 'any')
      continue
    }
    const besideEnds: [(readonly Perpend[])[], (readonly Perpend[])[]] = [[], []]
    for (const end of [from, to - 1]) besideEnds[(end - from) % 2 === 0 ? 0 : 1].push(...beside(end))
    const pair = pairLaid([a, b], besideEnds, rules, fill, memory)
    for (let course = from; course < to; course++) laid[course] = pair[(course - from) % 2 === 0 ? 0 : 1]
  }
  return laid.filter((one) => one !== undefined)
}
