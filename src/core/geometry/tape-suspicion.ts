import { adjustPegs, type AdjustedPegs, type Peg, type TapeReading } from './tape-network.ts'
import { planLength } from './tape-plan.ts'

/** A reading that the others do not bear out. */
export interface SuspiciousTape {
  readonly from: string
  readonly to: string
  readonly readM: number
  /** What the other tapes make of it. */
  readonly expectedM: number
}

export interface TapeQuarrel {
  /** The tapes contradict each other by more than careful reading allows. */
  readonly disagree: boolean
  /** The one at fault, where the others point it out. */
  readonly tape: SuspiciousTape | null
}

/** How many times careful reading a contradiction must be before anybody is told to measure again. */
const CLEAR = 3

/** The largest correction for its share of checking: the usual outlier measure of an adjustment, m. */
const strainOf = ({ corrections, checked }: AdjustedPegs): number =>
  Math.max(0, ...corrections.map((correction, index) => strain(correction, checked[index] ?? 0)))

const strain = (correctionM: number, checked: number): number =>
  checked < 1e-6 ? 0 : Math.abs(correctionM) / Math.sqrt(checked)

/**
 * Do the tapes quarrel, and which one is likely misread?
 *
 * Each tape is left out in turn. If the rest agree without just one of them, that is the one. If they agree without any of several (six tapes have
 * one to spare, so every tape can be blamed), the one is named without which the pegs stand plainly nearest to the plan, and none where that is not plain.
 */
export function tapeQuarrel(
  plan: readonly Peg[],
  readings: readonly TapeReading[],
  adjusted: AdjustedPegs,
  parallelogram: boolean,
  readingM: number,
): TapeQuarrel {
  const worst = strainOf(adjusted)
  if (adjusted.redundancy < 1 || worst <= CLEAR * readingM) return { disagree: false, tape: null }
  const peaceful = readings.flatMap((reading, index) => {
    // The tape at fault is strained most, or nearly so where the checks are weak; the others need no trial.
    if (strain(adjusted.corrections[index] ?? 0, adjusted.checked[index] ?? 0) < worst / 2) return []
    const others = readings.filter((other) => other !== reading)
    const rest = adjustPegs(plan, others, parallelogram)
    if (rest === null || strainOf(rest) > CLEAR * readingM) return []
    const expectedM = planLength(rest.pegs, reading.from, reading.to)
    return [{ reading, expectedM, offPlanM: offPlan(plan, rest.pegs, readings) }]
  })
  const [best, second] = peaceful.toSorted((one, other) => one.offPlanM - other.offPlanM)
  if (best === undefined || (second !== undefined && !(best.offPlanM * 2 < second.offPlanM)))
    return { disagree: true, tape: null }
  const { from, to, lengthM: readM } = best.reading
  return { disagree: true, tape: { from, to, readM, expectedM: best.expectedM } }
}

const offPlan = (plan: readonly Peg[], pegs: readonly Peg[], readings: readonly TapeReading[]): number =>
  Math.max(...readings.map(({ from, to }) => Math.abs(planLength(pegs, from, to) - planLength(plan, from, to))))
