import { modulesToCover, SAME_LENGTH_M, wholeDown, wholeModulesIn, wholeNear } from '../basics/count.ts'
import type { CoursePlan, JointRange } from './contract.ts'

/** Levels the builder would like, all measured from the ground (z = 0), and the joint that may be used to meet them. */
export interface CourseWish {
  readonly unitHeightM: number
  readonly bed: JointRange
  readonly wanted: { readonly belowM: number; readonly aboveM: number; readonly headM: number }
  /** Thickest bed allowed on the footing to take up a difference; 0 for a bed like the others. */
  readonly levelling: number
}

export type Level = 'below' | 'above' | 'head'

/** One way of coursing: how many courses, at what joint, and what each level comes to. */
export interface CourseChoice {
  readonly plan: CoursePlan
  readonly gaugeM: number
  readonly reached: { readonly belowM: number; readonly aboveM: number; readonly headM: number }
  /** Reached less wanted: below +0.14 is founded 140 mm deeper than wished. */
  readonly moved: Readonly<Record<Level, number>>
  /** The level that moves most; null where all are met to the millimetre. */
  readonly moves: Level | null
  /** Marks of the gauge rod from the ground to the top, whole millimetres. */
  readonly rod: GaugeRod
}

/** A height shared out over courses in whole millimetres: `more` courses at one millimetre more than the rest. */
export interface GaugeRod {
  readonly courses: number
  readonly gaugeMm: number
  readonly fewer: number
  readonly wideGaugeMm: number
  readonly more: number
}

/**
 * Shares a height over a number of courses in whole millimetres: 2,150 mm in 28 courses is 22 at 77 and 6 at 76 mm
 * (J. Howell, The Independent).
 */
export function gaugeRod(heightM: number, courses: number): GaugeRod {
  const totalMm = wholeNear(heightM * 1000)
  const gaugeMm = wholeDown(totalMm / courses)
  const more = totalMm - gaugeMm * courses
  return { courses, gaugeMm, fewer: courses - more, wideGaugeMm: gaugeMm + 1, more }
}

const MET_M = 0.0005
/** A footing too shallow is worse than one too deep; a head or a top off its level lies between. */
const SHALLOW = 3
const DEEP = 0.7

const weight = ({ below, above, head }: CourseChoice['moved']): number =>
  (below < 0 ? -SHALLOW * below : DEEP * below) + Math.abs(above) + Math.abs(head)

function choiceOf(
  wish: CourseWish,
  count: number,
  bedM: number,
  aboveM: number,
  headCourses: number,
  firstBedM: number,
): CourseChoice | null {
  const gaugeM = wish.unitHeightM + bedM
  const belowM = count * gaugeM + firstBedM - bedM - aboveM
  const sillCourses = belowM < -SAME_LENGTH_M ? -1 : wholeModulesIn(belowM - firstBedM + bedM, gaugeM)
  const headM = headCourses * gaugeM + firstBedM - bedM - belowM
  if (sillCourses < 0 || headCourses <= sillCourses || headCourses > count || headM <= 0) return null
  const { wanted } = wish
  const moved = { below: belowM - wanted.belowM, above: aboveM - wanted.aboveM, head: headM - wanted.headM }
  const levels: readonly Level[] = ['below', 'above', 'head']
  const most = levels.reduce((a, b) => (Math.abs(moved[b]) > Math.abs(moved[a]) ? b : a))
  return {
    plan: { unitHeightM: wish.unitHeightM, bedM, firstBedM, count, belowM, aboveM, sillCourses, headCourses },
    gaugeM,
    reached: { belowM, aboveM, headM },
    moved,
    moves: Math.abs(moved[most]) < MET_M ? null : most,
    rod: gaugeRod(count * gaugeM, count),
  }
}

const noWorse = (a: CourseChoice, b: CourseChoice, usualM: number): boolean =>
  (['below', 'above', 'head'] as const).every(
    (level) => Math.abs(a.moved[level]) <= Math.abs(b.moved[level]) + MET_M,
  ) && Math.abs(a.plan.bedM - usualM) <= Math.abs(b.plan.bedM - usualM) + MET_M

/**
 * Course counts with one bed joint that come nearest to the levels wanted, undominated, best first. Joint = level difference
 * ÷ courses − unit height; where no joint in range meets two levels, the usual joint is kept and what moves is named.
 */
export function courseChoices(wish: CourseWish): CourseChoice[] {
  const { unitHeightM, bed, wanted } = wish
  const found: CourseChoice[] = []
  const total = wanted.belowM + wanted.aboveM
  const most = Math.max(1, modulesToCover(total + 2 * unitHeightM, unitHeightM + bed.minM))
  const add = (count: number, bedM: number, aboveM: number, headCourses: number): void => {
    if (bedM < bed.minM - 1e-9 || bedM > bed.maxM + 1e-9 || aboveM <= 0) return
    const firstBeds = new Set([bedM])
    const missing = wanted.belowM + aboveM - count * (unitHeightM + bedM)
    if (missing > 0 && bedM + missing <= wish.levelling + 1e-9) firstBeds.add(bedM + missing)
    for (const firstBedM of firstBeds) {
      const choice = choiceOf(wish, count, bedM, aboveM, headCourses, firstBedM)
      if (choice !== null) found.push(choice)
    }
  }
  for (let count = 1; count <= most; count++) {
    for (let over = 0; over < count; over++) {
      const head = count - over
      for (const joint of [bed.usualM, bed.minM, bed.maxM]) {
        add(count, joint, wanted.aboveM, head)
        add(count, joint, wanted.headM + over * (unitHeightM + joint), head)
      }
      add(count, total / count - unitHeightM, wanted.aboveM, head)
      if (over > 0) add(count, (wanted.aboveM - wanted.headM) / over - unitHeightM, wanted.aboveM, head)
      const toHead = (wanted.belowM + wanted.headM) / head - unitHeightM
      add(count, toHead, wanted.headM + over * (unitHeightM + toHead), head)
    }
  }
  const near = found.filter(
    ({ moved }) =>
      Math.abs(moved.below) <= unitHeightM &&
      Math.abs(moved.above) <= unitHeightM &&
      Math.abs(moved.head) <= unitHeightM,
  )
  const ranked = near.sort(
    (a, b) =>
      weight(a.moved) - weight(b.moved) || Math.abs(a.plan.bedM - bed.usualM) - Math.abs(b.plan.bedM - bed.usualM),
  )
  const kept: CourseChoice[] = []
  for (const choice of ranked) if (!kept.some((better) => noWorse(better, choice, bed.usualM))) kept.push(choice)
  return kept
}
