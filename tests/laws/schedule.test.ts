import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { TRADES } from '../../src/core/schedule/crew.ts'
import { schedule, type Schedule } from '../../src/core/schedule/schedule.ts'
import { buildTasks, type Task } from '../../src/core/schedule/tasks.ts'
import { calendarOf } from '../../src/core/schedule/calendar.ts'
import { dayNumber, dayText, weekdayOf } from '../../src/core/schedule/day-number.ts'
import type { Plan } from '../../src/core/plan/schema.ts'
import { workOut } from '../../src/core/work-out.ts'
import { wrongWorkings } from '../core/fish/check-working.ts'
import { plainPlan } from '../core/fish/plans.ts'
import { unbuiltPlan } from './plans.ts'
import { cases } from './cases.ts'

const anyBuild: fc.Arbitrary<Plan['build']> = fc.record({
  startDay: fc.option(fc.constantFrom('2026-02-26', '2027-12-30', '2028-02-27'), { nil: null }),
  masons: fc.integer({ min: 0, max: 5 }),
  labourers: fc.integer({ min: 0, max: 5 }),
  carpenters: fc.integer({ min: 0, max: 3 }),
  hoursPerDay: fc.double({ min: 1, max: 12, noNaN: true }),
  restWeekdays: fc.uniqueArray(fc.integer({ min: 0, max: 6 }), { maxLength: 6 }),
  rainShare: fc.double({ min: 0, max: 0.8, noNaN: true }),
  lostDays: fc.constantFrom([], ['2026-02-27', '2026-03-03']),
  ticks: fc.constant({}),
})

const tasksOf = (plan: Plan): Task[] => {
  const { tray, geometry, layout } = workOut(plan)
  return buildTasks(plan, tray, geometry, layout)
}
const aPlan = plainPlan()
const clayPlan: Plan = { ...aPlan, mixes: { ...aPlan.mixes, mortar: { ...aPlan.mixes.mortar, cement: 0, clay: 1 } } }
const blockTasks = tasksOf(aPlan)
const clayTasks = tasksOf(clayPlan)
const anyTasks = fc.constantFrom(blockTasks, clayTasks)
const lengthOf = (build: Plan['build'], tasks: readonly Task[]) => schedule({ ...aPlan, build }, tasks).length.value

/** Steps that begin before something they need has ended. */
const tooEarly = ({ steps }: Schedule) =>
  steps.filter((step) =>
    step.needs.some(
      (id) => (steps.find((other) => other.id === id)?.end ?? Number.POSITIVE_INFINITY) > step.start + 1e-9,
    ),
  )

describe('schedule', () => {
  it('starts no step before what it needs has ended', () => {
    fc.assert(
      fc.property(anyBuild, anyTasks, (build, tasks) => {
        expect(tooEarly(schedule({ ...aPlan, build }, tasks))).toEqual([])
      }),
    )
  })

  it('gives a trade one thing to do at a time', () => {
    fc.assert(
      fc.property(anyBuild, anyTasks, (build, tasks) => {
        const { steps } = schedule({ ...aPlan, build }, tasks)
        const overlaps = TRADES.flatMap((trade) => {
          const own = steps.filter((step) => (step.hours[trade]?.value ?? 0) > 0).toSorted((a, b) => a.start - b.start)
          return own.filter((step, index) => index > 0 && (own[index - 1]?.end ?? 0) > step.start + 1e-9)
        })
        expect(overlaps).toEqual([])
      }),
    )
  })

  it('begins and ends work on days when there is work, and works no longer than the hours it has', () => {
    fc.assert(
      fc.property(anyBuild, anyTasks, (build, tasks) => {
        const plan = { ...aPlan, build }
        const calendar = calendarOf(plan)
        const wrong = schedule(plan, tasks).steps.filter((step) => {
          if (step.wait !== undefined) return false
          const kind = calendar.kindOf(Math.floor(step.start + 1e-9))
          const allowed = kind === 'work' || (kind === 'rain' && !step.outdoors)
          const crew = { mason: build.masons, labourer: build.labourers, carpenter: build.carpenters }
          const days = TRADES.map(
            (trade) => (step.hours[trade]?.value ?? 0) / Math.max(1, crew[trade]) / build.hoursPerDay,
          )
          return !allowed || step.end - step.start < Math.max(...days) - 1e-6
        })
        expect(wrong).toEqual([])
      }),
    )
  })

  it('is never slower with one more hand, longer days, less rain or fewer rest days', () => {
    fc.assert(
      fc.property(anyBuild, anyTasks, fc.constantFrom('masons', 'labourers', 'carpenters'), (build, tasks, trade) => {
        const length = lengthOf(build, tasks)
        expect(lengthOf({ ...build, [trade]: Math.max(1, build[trade]) + 1 }, tasks)).toBeLessThanOrEqual(length)
        expect(lengthOf({ ...build, hoursPerDay: build.hoursPerDay + 1 }, tasks)).toBeLessThanOrEqual(length)
        expect(lengthOf({ ...build, rainShare: 0 }, tasks)).toBeLessThanOrEqual(length)
        expect(lengthOf({ ...build, restWeekdays: build.restWeekdays.slice(1) }, tasks)).toBeLessThanOrEqual(length)
      }),
    )
  })

  it('is never shorter when one thing takes longer', () => {
    fc.assert(
      fc.property(anyBuild, anyTasks, fc.nat(), (build, tasks, pick) => {
        const at = pick % tasks.length
        const longer = tasks.map((task, index) => {
          if (index !== at) return task
          if (task.wait !== undefined) return { ...task, wait: { ...task.wait, value: task.wait.value + 1 } }
          const hours = Object.fromEntries(
            Object.entries(task.hours).map(([trade, of]) => [trade, { ...of, value: of.value * 1.5 }]),
          )
          return { ...task, hours }
        })
        expect(lengthOf(build, longer)).toBeGreaterThanOrEqual(lengthOf(build, tasks))
      }),
    )
  })

  it('links critical steps from the first peg to the first full load', () => {
    fc.assert(
      fc.property(anyBuild, anyTasks, (build, tasks) => {
        const { steps } = schedule({ ...aPlan, build }, tasks)
        const critical = steps.filter((step) => step.critical)
        expect(critical[0]?.id).toBe('set-out')
        expect(critical.at(-1)?.id).toBe('first-fires')
      }),
    )
  })

  it('works out every plan, in formulas that compute and units that balance', () => {
    fc.assert(
      fc.property(unbuiltPlan, (plan) => {
        const made = schedule(plan, tasksOf(plan))
        expect(wrongWorkings(made)).toEqual([])
        expect(tooEarly(made)).toEqual([])
        expect(made.length.value).toBeGreaterThanOrEqual(10)
      }),
      { numRuns: cases(8) },
    )
  })
})

describe('waits', () => {
  // US Navy and Army concrete texts: moist curing for seven days at least before load or fire.
  it('cure for seven whole days between the last mortar and the first fire', () => {
    const { steps } = schedule(aPlan, blockTasks)
    const wet = steps.filter((step) => ['walls', 'heads', 'slabs', 'faces'].includes(step.kind)).map((step) => step.end)
    const fires = steps.find((step) => step.kind === 'first-fires')?.start ?? 0
    expect(fires - Math.max(...wet)).toBeGreaterThanOrEqual(7)
  })
  // Zinsou & Wentholt, practical guide to building an improved smoker: clay walls to 300 mm on day 1, dry on days 2 and 3, to 600 mm from day 4.
  it('let each 300 mm of clay dry for two days', () => {
    const { steps } = schedule({ ...clayPlan, build: { ...clayPlan.build, restWeekdays: [] } }, clayTasks)
    const first = steps.find((step) => step.kind === 'walls' && Math.abs((step.toM ?? 0) - 0.3) < 1e-9)
    const next = steps.find((step) => step.kind === 'walls' && Math.abs((step.fromM ?? 0) - 0.3) < 1e-9)
    expect(Math.floor(next?.start ?? 0) - Math.floor((first?.end ?? 0) - 1e-9)).toBe(3)
  })
})

describe('ticks', () => {
  const build = { ...aPlan.build, startDay: '2026-03-02', restWeekdays: [] }
  const made = (ticks: Plan['build']['ticks']) => schedule({ ...aPlan, build: { ...build, ticks } }, blockTasks)
  it('move what follows by the days lost or won', () => {
    const planned = made({})
    const heads = planned.steps.find((step) => step.id === 'heads')?.endDay ?? ''
    const lateBy = (days: number) => {
      const day = dayText((dayNumber(heads) ?? 0) + days)
      return made({ heads: { day, who: '' } }).length.value - planned.length.value
    }
    expect([lateBy(0), lateBy(4)]).toEqual([expect.any(Number), expect.any(Number)])
    expect(lateBy(4) - lateBy(0)).toBe(4)
    expect(made({ heads: { day: heads, who: 'A' } }).steps.find((step) => step.id === 'heads')?.done).toEqual({
      day: heads,
      who: 'A',
    })
  })
  it('that cross are kept and told', () => {
    const crossed = made({ dig: { day: '2026-03-10', who: '' }, footing: { day: '2026-03-05', who: '' } })
    expect(crossed.findings.map((one) => one.kind)).toEqual(['ticks-cross'])
    expect(made({ dig: { day: '2026-02-20', who: '' } }).findings.map((one) => one.kind)).toEqual(['tick-before-start'])
  })
})

describe('days', () => {
  it('are the days of the platform’s own calendar', () => {
    fc.assert(
      fc.property(fc.integer({ min: -20_000, max: 60_000 }), (number) => {
        const date = new Date(number * 86_400_000)
        expect(dayText(number)).toBe(date.toISOString().slice(0, 10))
        expect(dayNumber(dayText(number))).toBe(number)
        expect(weekdayOf(number)).toBe(date.getUTCDay())
      }),
    )
  })
  it('that do not exist are told apart', () => {
    expect(['2026-02-29', '2026-13-01', '2026-00-10', '2026-04-31'].map(dayNumber)).toEqual([null, null, null, null])
    expect(dayNumber('2028-02-29')).not.toBeNull()
  })
})
