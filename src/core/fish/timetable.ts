import { lotsFor, wholeDown } from '../basics/count.ts'
import { cited, derive, typed, type Derived } from '../basics/derived.ts'
import type { Plan } from '../plan/schema.ts'
import { FISH_DATA } from './fish-data.ts'

/** One line of the sheet beside the kiln. `order` is the stack from the fire upwards, trays numbered as they were loaded. */
export interface FiringStep {
  readonly atHours: number
  readonly action: 'light' | 'load' | 'turn' | 'bank' | 'unload'
  /** How many of the lowest trays go to the top; 0 where nothing moves. */
  readonly moves: number
  readonly order: readonly number[]
  readonly stage: 'cook' | 'dry'
  readonly gasDegC: number
}

/** A fire burns down to clean embers before fish goes over it: about half an hour. Common practice. */
const EMBERS_HOURS = 0.5
/** While drying the trays change places every two hours. Common practice. */
const DRY_TURN_HOURS = 2

/**
 * A firing as a timetable: embers, load, turns while cooking (every 45 minutes: ILO), fire banked, slower turns while drying, unload.
 *
 * Each turn brings the lowest trays to the top. As many move at once as brings every tray near the fire before the cooking ends.
 */
export function firingTimetable({ firing, trays }: Plan): FiringStep[] {
  const stack = Array.from({ length: trays.perChamber }, (_, index) => index + 1)
  const steps: FiringStep[] = []
  let order: readonly number[] = stack
  const add = (atHours: number, action: FiringStep['action'], stage: FiringStep['stage'], moves = 0) => {
    if (moves > 0) order = [...order.slice(moves), ...order.slice(0, moves)]
    steps.push({ atHours, action, moves, order, stage, gasDegC: stage === 'cook' ? firing.cookDegC : firing.dryDegC })
  }
  add(0, 'light', 'cook')
  add(EMBERS_HOURS, 'load', 'cook')
  const cooking = turnsWithin(firing.cookHours, FISH_DATA.turnMinutes.value / 60)
  const moves = stack.length > 1 ? lotsFor(stack.length, cooking.count + 1) % stack.length : 0
  for (let turn = 1; turn <= cooking.count && moves > 0; turn++)
    add(EMBERS_HOURS + turn * cooking.everyHours, 'turn', 'cook', moves)
  const cookedAt = EMBERS_HOURS + firing.cookHours
  if (firing.dryHours > 0) {
    add(cookedAt, 'bank', 'dry')
    const dryingTurns = turnsWithin(firing.dryHours, DRY_TURN_HOURS)
    const half = wholeDown(stack.length / 2)
    for (let turn = 1; turn <= dryingTurns.count && half > 0; turn++)
      add(cookedAt + turn * DRY_TURN_HOURS, 'turn', 'dry', half)
  }
  add(cookedAt + firing.dryHours, 'unload', firing.dryHours > 0 ? 'dry' : 'cook')
  return steps
}

/** Turns that fall inside a stage, its end left out: fish that comes off is not turned first. */
function turnsWithin(hours: number, everyHours: number): { readonly count: number; readonly everyHours: number } {
  const whole = wholeDown(hours / everyHours)
  const count = whole * everyHours >= hours - 1e-9 ? whole - 1 : whole
  return { count: Math.max(0, count), everyHours }
}

/** Hours from lighting to unloading. */
export const firingHours = ({ firing }: Pick<Plan, 'firing'>): number =>
  EMBERS_HOURS + firing.cookHours + firing.dryHours

/** The same with its working. */
export const firingTime = ({ firing }: Pick<Plan, 'firing'>): Derived<'h'> =>
  derive(
    'firing.hours',
    'h',
    'e + c + d',
    {
      e: cited('firing.embers', 'h', EMBERS_HOURS, 'common-practice'),
      c: typed('firing.cook-hours', 'h', firing.cookHours, 'firing.cookHours'),
      d: typed('firing.dry-hours', 'h', firing.dryHours, 'firing.dryHours'),
    },
    (v) => v.e + v.c + v.d,
  )
