import * as z from 'zod/mini'
import doubtsJson from '../../../shared/doubts.json' with { type: 'json' }
import { byText } from '../basics/order.ts'
import type { Plan } from '../plan/schema.ts'
import { SOURCES, type SourceId } from '../sources/sources.ts'
import { workOut } from '../work-out.ts'

const KEYS = ['void', 'units-waste', 'mortar-waste', 'concrete-waste', 'timber-waste', 'dry-factor', 'output'] as const
export type DoubtKey = (typeof KEYS)[number]

const { doubts: DOUBTS } = z
  .object({
    doubts: z.array(
      z.strictObject({
        key: z.enum(KEYS),
        low: z.number(),
        high: z.number(),
        /** The ends are added to the plan's own figure. */
        relative: z.boolean(),
        source: z.enum(Object.keys(SOURCES) as [SourceId, ...SourceId[]]),
      }),
    ),
  })
  .parse(doubtsJson)

interface DoubtWay {
  readonly of: (plan: Plan) => number
  readonly set: (plan: Plan, value: number) => Plan
  readonly applies?: (plan: Plan) => boolean
}

const wasteWay = (part: 'units' | 'mortar' | 'concrete' | 'timber'): DoubtWay => ({
  of: (plan) => plan.waste[part],
  set: (plan, value) => ({ ...plan, waste: { ...plan.waste, [part]: value } }),
})

/** How each doubted figure stands in a plan. */
const WAYS: Readonly<Record<DoubtKey, DoubtWay>> = {
  void: {
    of: (plan) => plan.walls.unit.voidFraction,
    set: (plan, voidFraction) => ({
      ...plan,
      walls: { ...plan.walls, unit: { ...plan.walls.unit, ...withVoid(plan.walls.unit, voidFraction) } },
    }),
    applies: (plan) => plan.walls.unit.cells.length > 0,
  },
  'units-waste': wasteWay('units'),
  'mortar-waste': wasteWay('mortar'),
  'concrete-waste': wasteWay('concrete'),
  'timber-waste': wasteWay('timber'),
  'dry-factor': {
    of: (plan) => plan.mixes.concrete.dryFactor,
    set: (plan, dryFactor) => ({ ...plan, mixes: { ...plan.mixes, concrete: { ...plan.mixes.concrete, dryFactor } } }),
  },
  // Work done in an hour against the usual: what is done in a day of as many hours.
  output: {
    of: () => 1,
    set: (plan, output) => ({ ...plan, build: { ...plan.build, hoursPerDay: plan.build.hoursPerDay * output } }),
  },
}

/** Cells grow and shrink across the wall, so that they hold what the void fraction says. */
function withVoid({ cells, voidFraction: was }: Plan['walls']['unit'], voidFraction: number) {
  return { voidFraction, cells: cells.map((cell) => ({ ...cell, widthM: (cell.widthM * voidFraction) / was })) }
}

/** One figure that is a range, and what the total would be with it at either end, minor units. */
export interface Doubt {
  readonly key: DoubtKey
  readonly low: number
  readonly high: number
  readonly source: SourceId
  readonly cheapMinor: number
  readonly dearMinor: number
}

/** Between what the total lies while the figures behind it are ranges. Prices are taken as typed. */
export interface TotalRange {
  readonly totalMinor: number
  /** All doubted figures at their cheap ends at once, and all at their dear ends. */
  readonly cheapMinor: number
  readonly dearMinor: number
  /** Widest first; those that move nothing are left out. */
  readonly doubts: readonly Doubt[]
}

/**
 * The total as an interval: each doubted figure is put at both its ends with the rest as planned, and then all of them at the end that cost less,
 * and all at the end that cost more. Whole lots make it jump, so that ends are tried and not guessed from a slope.
 * Stops after each, so that a screen can breathe between them.
 */
export function* rangingTotal(plan: Plan): Generator<undefined, TotalRange> {
  const totalOf = (of: Plan): number => workOut(of).costs.total.value
  const totalMinor = totalOf(plan)
  let cheapPlan = plan
  let dearPlan = plan
  const doubts: Doubt[] = []
  for (const { key, source, ...ends } of DOUBTS) {
    const way = WAYS[key]
    if (way.applies?.(plan) === false) continue
    const now = way.of(plan)
    const from = ends.relative ? now : 0
    const low = Math.max(0, Math.min(now, from + ends.low))
    const high = Math.max(now, from + ends.high)
    const atLow = totalOf(way.set(plan, low))
    const atHigh = totalOf(way.set(plan, high))
    const isLowCheap = atLow <= atHigh
    cheapPlan = way.set(cheapPlan, isLowCheap ? low : high)
    dearPlan = way.set(dearPlan, isLowCheap ? high : low)
    const cheapMinor = Math.min(atLow, atHigh, totalMinor)
    const dearMinor = Math.max(atLow, atHigh, totalMinor)
    if (cheapMinor < dearMinor) doubts.push({ key, low, high, source, cheapMinor, dearMinor })
    yield
  }
  const span = (one: Doubt): number => one.dearMinor - one.cheapMinor
  return {
    totalMinor,
    cheapMinor: Math.min(totalMinor, totalOf(cheapPlan), ...doubts.map((one) => one.cheapMinor)),
    dearMinor: Math.max(totalMinor, totalOf(dearPlan), ...doubts.map((one) => one.dearMinor)),
    doubts: doubts.sort((a, b) => span(b) - span(a) || byText(a.key, b.key)),
  }
}

/** The same, all at once. */
export function totalRange(plan: Plan): TotalRange {
  const steps = rangingTotal(plan)
  let step = steps.next()
  while (step.done !== true) step = steps.next()
  return step.value
}
