import { counted, derive, sumOf, typed, type Derived } from '../basics/derived.ts'
import { wholeDown, wholeUp } from '../basics/count.ts'
import type { Finding } from '../basics/finding.ts'
import type { Plan } from '../plan/schema.ts'
import { calendarOf, type Calendar, type DayKind } from './calendar.ts'
import { dayNumber, dayText } from './day-number.ts'
import { CREW_FIELD, TRADES } from './crew.ts'
import { crewFindings, tickFindings } from './schedule-findings.ts'
import type { Task } from './tasks.ts'
import type { Trade } from './wall-work.ts'

/** A task on the calendar, in days from the start: 2.5 is the middle of the third day. */
export interface Step extends Task {
  readonly start: number
  readonly end: number
  readonly startDay: string | null
  /** The last day on which anything is done or waited for. */
  readonly endDay: string | null
  /** A delay of it delays the first smoking. */
  readonly critical: boolean
  /** Ticked as done: its days are then the true ones. */
  readonly done: { readonly day: string; readonly who: string } | null
}

/** One column of the day chart. */
export interface ChartDay {
  readonly index: number
  readonly day: string | null
  readonly kind: DayKind
  readonly steps: readonly string[]
}

export interface Schedule {
  readonly steps: readonly Step[]
  readonly days: readonly ChartDay[]
  /** Days from the first peg to the first full load, rest and rain and waiting counted in. */
  readonly length: Derived<'day'>
  readonly readyDay: string | null
  readonly labour: Readonly<Record<Trade, { readonly hours: Derived<'h'>; readonly days: Derived<'day'> }>>
  readonly findings: readonly Finding[]
}

/**
 * Puts the tasks on the calendar. A crew takes up one task at a time, in the order given, as soon as what it needs is done; so more hands,
 * less work or an earlier start never end later. Where a trade has nobody, one is assumed and a finding says so.
 */
export function schedule(plan: Plan, tasks: readonly Task[]): Schedule {
  const { build } = plan
  const calendar = calendarOf(plan)
  const startNumber = build.startDay === null ? null : dayNumber(build.startDay)
  const dated = (day: number) => (startNumber === null ? null : dayText(startNumber + day))
  const ticked = tickedDays(plan, startNumber)
  const placed = placedTasks(plan, tasks, calendar, ticked)
  const length = placed.reduce((last, one) => Math.max(last, one.end), 0)
  const critical = criticalOf(placed)
  const steps = placed.map(({ task, start, end }) => ({
    ...task,
    start,
    end,
    startDay: dated(wholeDay(start)),
    endDay: dated(Math.max(wholeDay(start), wholeUp(end) - 1)),
    critical: critical.has(task.id),
    done: build.ticks[task.id] ?? null,
  }))
  const count = wholeUp(length)
  return {
    steps,
    days: stepsByDay(steps, count).map((ids, index) => ({
      index,
      day: dated(index),
      kind: calendar.kindOf(index),
      steps: ids,
    })),
    length: counted('schedule.length', 'day', count),
    readyDay: dated(count),
    labour: labourOf(plan, tasks),
    findings: [...crewFindings(plan, tasks, startNumber), ...tickFindings(steps, build.startDay)],
  }
}

/** For each day the steps of which a part falls on it, in their order. */
function stepsByDay(steps: readonly Step[], count: number): string[][] {
  const days = Array.from({ length: count }, (): string[] => [])
  for (const { id, start, end } of steps)
    for (let index = Math.max(0, wholeDown(start)); index < end; index++) days[index]?.push(id)
  return days
}

const wholeDay = (time: number) => wholeUp(time + 1e-6) - 1

interface Placed {
  readonly task: Task
  readonly start: number
  readonly end: number
  /** What it had to wait for last: the id of the task that ended as it could begin. */
  readonly after: string | null
}

function placedTasks(
  { build }: Plan,
  tasks: readonly Task[],
  calendar: Calendar,
  ticked: ReadonlyMap<string, number>,
): Placed[] {
  const done = new Map<string, Placed>()
  const busy = new Map<Trade, Placed>()
  for (const task of tasks) {
    const trades = TRADES.filter((trade) => (task.hours[trade]?.value ?? 0) > 0)
    const before = [...task.needs.map((id) => done.get(id)), ...trades.map((trade) => busy.get(trade))]
    let last: Placed | null = null
    for (const one of before) if (one !== undefined && (last === null || one.end > last.end)) last = one
    const earliest = last?.end ?? 0
    const crew = (trade: Trade) => Math.max(build[CREW_FIELD[trade]], 1)
    const days = Math.max(
      0,
      ...trades.map((trade) => (task.hours[trade]?.value ?? 0) / crew(trade) / build.hoursPerDay),
    )
    const doneOn = ticked.get(task.id)
    const time =
      doneOn !== undefined
        ? { start: Math.min(earliest, doneOn), end: doneOn + 1 }
        : task.wait === undefined
          ? calendar.workFrom(earliest, days, task.outdoors)
          : { start: earliest, end: calendar.waitFrom(earliest, task.wait.value) }
    const placed = { task, ...time, after: last?.task.id ?? null }
    done.set(task.id, placed)
    for (const trade of trades) busy.set(trade, placed)
  }
  return [...done.values()]
}

/** Day indices on which steps were truly finished; without a start there is nothing to count from. */
function tickedDays({ build }: Plan, startNumber: number | null): ReadonlyMap<string, number> {
  const days = new Map<string, number>()
  if (startNumber === null) return days
  for (const [id, { day }] of Object.entries(build.ticks)) {
    const number = dayNumber(day)
    if (number !== null) days.set(id, Math.max(0, number - startNumber))
  }
  return days
}

/** From the last task back to the first, always to what it waited for. */
function criticalOf(placed: readonly Placed[]): Set<string> {
  const byId = new Map(placed.map((one) => [one.task.id, one]))
  const chain = new Set<string>()
  let at = placed.reduce<Placed | undefined>(
    (last, one) => (last === undefined || one.end > last.end ? one : last),
    undefined,
  )
  while (at !== undefined) {
    chain.add(at.task.id)
    at = at.after === null ? undefined : byId.get(at.after)
  }
  return chain
}

function labourOf({ build }: Plan, tasks: readonly Task[]): Schedule['labour'] {
  const perDay = typed('build.hours-per-day', 'h/day', build.hoursPerDay, 'build.hoursPerDay')
  const of = (trade: Trade) => {
    const hours = sumOf(
      `labour.${trade}-hours`,
      'h',
      tasks.flatMap((task) => task.hours[trade] ?? []),
    )
    return { hours, days: derive(`labour.${trade}-days`, 'day', 'H / k', { H: hours, k: perDay }, (v) => v.H / v.k) }
  }
  return { mason: of('mason'), labourer: of('labourer'), carpenter: of('carpenter') }
}
