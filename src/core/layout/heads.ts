import { modulesToCover } from '../basics/count.ts'
import { archPlan, type ArchPlan } from './arch.ts'
import type { Head, LayoutFinding } from './contract.ts'
import type { Obstacle } from './course-shape.ts'
import { jambAt, junctionAt, type Frame } from './frame.ts'
import type { Levels } from './levels.ts'
import { toMetres, toMicro } from './micrometres.ts'

export interface Bearing {
  readonly outer: number
  readonly inner: number
}

/** A lintel along the front, in micrometres; one piece where neighbours would meet. */
export interface LintelSpan {
  readonly from: number
  readonly to: number
  readonly chambers: readonly number[]
}

/** The front wall's openings and what carries the wall over them. */
export interface HeadPlan {
  readonly lintels: readonly LintelSpan[]
  /** First and last course the lintel or arch takes up; none when first > last. */
  readonly firstCourse: number
  readonly lastCourse: number
  /** Corbel: how far each course narrows the opening on each side, from the first course over the head. */
  readonly steps: readonly number[]
  readonly bridged: number
  /** Nothing can carry wall over the openings: they stay open to the top. */
  readonly openTop: boolean
  readonly stepLimit: number
  readonly arch: ArchPlan | null
  readonly findings: readonly LayoutFinding[]
}

/** Corbelled masonry steps out by no more than half the unit's height or a third of its bed depth (BIA Technical Note 36A). */
const corbelStepLimit = (unitHeight: number, bedDepth: number): number => Math.min(unitHeight / 2, bedDepth / 3)

function lintelSpans(frame: Frame, bearing: Bearing, jointMin: number): LintelSpan[] {
  const spans: LintelSpan[] = []
  for (let k = 0; k < frame.chambers; k++) {
    const jamb = jambAt(frame, k)
    const from = Math.max(0, jamb - (k === 0 ? bearing.outer : bearing.inner))
    const to = Math.min(frame.length, jamb + frame.opening + (k === frame.chambers - 1 ? bearing.outer : bearing.inner))
    const last = spans.at(-1)
    if (last !== undefined && from - last.to < jointMin)
      spans[spans.length - 1] = { from: last.from, to, chambers: [...last.chambers, k] }
    else spans.push({ from, to, chambers: [k] })
  }
  return spans
}

/** What spans the openings, and in which courses; micrometres. */
export function headPlan(frame: Frame, levels: Levels, head: Head, bearing: Bearing, jointMin: number): HeadPlan {
  const over = levels.count - levels.head
  const none = {
    lintels: [],
    firstCourse: 1,
    lastCourse: 0,
    steps: [],
    bridged: 0,
    openTop: false,
    stepLimit: 0,
    arch: null,
    findings: [],
  }
  const tooHigh = (neededCourses: number): HeadPlan => ({
    ...none,
    openTop: true,
    findings: [{ kind: 'head-above-wall', neededCourses, availableCourses: Math.max(0, over) }],
  })
  switch (head.kind) {
    case 'lintel': {
      if (over < head.courses) return tooHigh(head.courses)
      const lintels = lintelSpans(frame, bearing, jointMin)
      return { ...none, lintels, firstCourse: levels.head + 1, lastCourse: levels.head + head.courses }
    }
    case 'steel':
      return over < 1 ? tooHigh(1) : { ...none, lintels: lintelSpans(frame, bearing, jointMin) }
    case 'corbel': {
      const stepLimit = corbelStepLimit(levels.unitHeight, frame.unitWidth)
      const bridged = Math.min(frame.opening, frame.unitLength / 2)
      const projection = (frame.opening - bridged) / 2
      const count = modulesToCover(toMetres(projection), toMetres(stepLimit))
      if (over < count + 1) return tooHigh(count + 1)
      const steps = Array.from({ length: count }, (_, i) => Math.trunc((projection * (i + 1)) / count))
      const pier = Math.min(
        jambAt(frame, 0),
        frame.chambers > 1 ? (frame.clear + frame.thickness - frame.opening) / 2 : Infinity,
      )
      const findings: LayoutFinding[] =
        projection > pier / 2
          ? [{ kind: 'corbel-too-far', projectionM: toMetres(projection), limitM: toMetres(pier / 2) }]
          : []
      return { ...none, steps, bridged: frame.opening - 2 * (steps.at(-1) ?? 0), stepLimit, findings }
    }
    case 'arch': {
      const arch = archPlan(frame, levels, head.riseM, toMetres(jointMin))
      if (over < arch.courses) {
        const refused = tooHigh(arch.courses)
        return { ...refused, findings: [...arch.findings, ...refused.findings] }
      }
      const reach = arch.reach - Math.trunc(frame.opening / 2)
      const lintels = lintelSpans(frame, { outer: reach, inner: reach }, jointMin)
      return {
        ...none,
        lintels,
        arch,
        firstCourse: levels.head + 1,
        lastCourse: levels.head + arch.courses,
        findings: arch.findings,
      }
    }
  }
}

const isOpen = (levels: Levels, plan: HeadPlan, course: number): boolean =>
  course > levels.sill && (course <= levels.head || plan.openTop)

/** What stands in the way of the front wall in a course. */
export function frontObstacles(frame: Frame, levels: Levels, plan: HeadPlan, course: number): Obstacle[] {
  if (isOpen(levels, plan, course)) return openings(frame, 0)
  if (course >= plan.firstCourse && course <= plan.lastCourse)
    return plan.lintels.map(({ from, to }) => ({ from, to, edge: 'lintel' as const }))
  const step = plan.steps[course - levels.head - 1]
  return step === undefined ? [] : openings(frame, step)
}

const openings = (frame: Frame, narrowed: number): Obstacle[] =>
  Array.from({ length: frame.chambers }, (_, k) => {
    const jamb = jambAt(frame, k)
    return { from: jamb + narrowed, to: jamb + frame.opening - narrowed, edge: 'free' as const }
  })

/** Name of what is in the way in a course; courses with the same name and parity have the same shape. */
export function frontKind(levels: Levels, plan: HeadPlan, course: number): string {
  if (isOpen(levels, plan, course)) return 'opening'
  if (course >= plan.firstCourse && course <= plan.lastCourse) return 'head'
  const over = course - levels.head - 1
  if (over >= 0 && over < plan.steps.length) return `corbel${over}`
  return over === plan.steps.length && plan.steps.length > 0 ? 'bridge' : 'plain'
}

/** Where the course that bridges a corbelled head must have no perpend. */
export function bridgeClear(frame: Frame, levels: Levels, plan: HeadPlan, course: number): number[] {
  if (plan.steps.length === 0 || course !== levels.head + plan.steps.length + 1) return []
  const narrowed = plan.steps.at(-1) ?? 0
  return Array.from({ length: frame.chambers }, (_, k) => jambAt(frame, k)).flatMap((jamb) => [
    jamb + narrowed,
    jamb + frame.opening / 2,
    jamb + frame.opening - narrowed,
  ])
}

/** Does a lintel lie so close to junction k that the cross wall cannot come through beside it? */
export function lintelForces(frame: Frame, plan: HeadPlan, course: number, k: number, jointMin: number): boolean {
  if (course < plan.firstCourse || course > plan.lastCourse) return false
  const from = junctionAt(frame, k) - jointMin
  const to = junctionAt(frame, k) + frame.thickness + jointMin
  return plan.lintels.some((lintel) => lintel.from < to && lintel.to > from)
}

/** Do the lintels of a course lie over the whole end of cross wall k? Two may meet there with a joint. */
export function lintelCovers({ thickness }: Frame, { lintels }: HeadPlan, junction: number, jointMax: number): boolean {
  let reached = junction
  for (const { from, to } of lintels)
    if (from <= reached + (reached > junction ? jointMax : 0)) reached = Math.max(reached, to)
  return reached >= junction + thickness
}

/** Bearings worth trying: as asked, longer by small steps, up to meeting the neighbour with a joint or reaching the corner. */
export function bearingsToTry(
  frame: Frame,
  head: Head,
  jointUsual: number,
): { readonly outers: readonly number[]; readonly inners: readonly number[] } {
  if (head.kind !== 'lintel' && head.kind !== 'steel') return { outers: [0], inners: [0] }
  const asked = toMicro(head.bearingM)
  if (head.kind === 'steel') return { outers: [asked], inners: [asked] }
  const mostExtra = frame.bond === 'english' ? MOST_EXTRA.thick : MOST_EXTRA.single
  const longer = (most: number, joined: number): number[] => {
    const list = [asked]
    // One lintel over all openings has no end to lap: tried before longer single ones.
    if (joined > asked && joined - asked <= mostExtra) list.push(joined)
    for (let extra = BEARING_STEP; extra <= 3 * BEARING_STEP; extra += BEARING_STEP)
      if (asked + extra < most) list.push(asked + extra)
    if (most > asked && most - asked <= mostExtra) list.push(most)
    return list
  }
  const toCorner = jambAt(frame, 0)
  const toNeighbour = Math.trunc((frame.clear + frame.thickness - frame.opening - jointUsual) / 2)
  const joined = Math.trunc((frame.clear + frame.thickness - frame.opening) / 2)
  return { outers: longer(toCorner, 0), inners: frame.chambers > 1 ? longer(toNeighbour, joined) : [asked] }
}

const BEARING_STEP = 40_000
const MOST_EXTRA = { thick: 200_000, single: 260_000 }
