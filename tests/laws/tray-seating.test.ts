import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { chambersFor, fishLoad } from '../../src/core/fish/load.ts'
import { trayFrame } from '../../src/core/fish/tray-frame.ts'
import { LIMITS } from '../../src/core/plan/limits.ts'
import type { Plan } from '../../src/core/plan/schema.ts'
import { workingsIn, wrongWorkings } from '../core/fish/check-working.ts'
import { anyPlan } from '../core/fish/plans.ts'
import { forAnyPlan } from './for-any-plan.ts'

const SEATING = new Set(['rail-over-fire', 'rail-near-fire', 'tray-over-edge', 'trays-clash'])

/** Writes fields by dotted path, as the app does when a remedy is taken. */
function applied(plan: Plan, set: Readonly<Record<string, unknown>>): Plan {
  const copy = structuredClone(plan) as unknown as Record<string, Record<string, unknown>>
  for (const [path, value] of Object.entries(set)) {
    const [room, field] = path.split('.')
    const into = copy[room ?? '']
    if (!into || field === undefined || !(field in into)) throw new Error(`no such field: ${path}`)
    into[field] = value
  }
  return copy as unknown as Plan
}

const outOfLimits = ([path, value]: [string, unknown]): boolean => {
  const limit = Object.entries(LIMITS).find(([field]) => field === path)?.[1]
  return limit === undefined || typeof value !== 'number' || value < limit.min || value > limit.max
}

describe('trays', () => {
  it('that raise no seating problem stand clear of the fire, of the outer edge and of each other', () => {
    forAnyPlan(500, (plan) => {
      const frame = trayFrame(plan)
      const wallM = frame.wall.value
      const seats = !frame.findings.some((one) => SEATING.has(one.kind))
      const { setbackM, railThicknessM, gapM } = plan.trays
      const clear =
        setbackM >= 0.01 - 1e-6 &&
        frame.side.value <= plan.chambers.clearSideM + 2 * wallM - 0.02 + 2e-6 &&
        (plan.chambers.count === 1 || 2 * (setbackM + railThicknessM) + gapM <= wallM + 2e-6)
      expect(seats).toBe(clear)
    })
  })

  it('seat once the remedy of a seating problem is taken, and its values are within limits', () => {
    forAnyPlan(500, (plan) => {
      const offered = trayFrame(plan).findings.flatMap((finding) =>
        finding.remedies.map((remedy) => ({ finding, remedy, again: trayFrame(applied(plan, remedy.set)).findings })),
      )
      expect(offered.flatMap(({ remedy }) => Object.entries(remedy.set)).filter(outOfLimits)).toEqual([])
      const left = offered.filter(({ finding, again }) =>
        SEATING.has(finding.kind)
          ? again.some((one) => SEATING.has(one.kind))
          : again.some((one) => one.kind === finding.kind && one.level === finding.level),
      )
      expect(left.map(({ finding }) => finding)).toEqual([])
    })
  })

  it('explain every number in formulas that compute it, in units that balance', () => {
    forAnyPlan(40, (plan) => {
      const all = [trayFrame(plan), fishLoad(plan)]
      expect(wrongWorkings(all)).toEqual([])
      expect(workingsIn(all)).toBeGreaterThan(15)
    })
  })
})

describe('load', () => {
  it('never needs fewer trays or chambers for more fish', () => {
    fc.assert(
      fc.property(anyPlan, fc.double({ min: 1, max: 3, noNaN: true }), (plan, factor) => {
        const less = fishLoad(plan)
        const fresh = plan.catch.freshKgPerDay * factor
        const more = fishLoad({ ...plan, catch: { ...plan.catch, freshKgPerDay: fresh } })
        expect(more.traysNeeded.value).toBeGreaterThanOrEqual(less.traysNeeded.value)
        expect(more.chambersNeeded.value).toBeGreaterThanOrEqual(less.chambersNeeded.value)
        for (const [index, one] of more.trade.entries())
          expect(one.traysPerChamber).toBeGreaterThanOrEqual(less.trade[index]?.traysPerChamber ?? 0)
      }),
    )
  })

  it('chooses the fewest chambers that carry the greatest day: one fewer is short', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const { count, carries } = chambersFor(plan)
        const perDay = (chambers: number) =>
          fishLoad({ ...plan, chambers: { ...plan.chambers, count: chambers } }).perDay.value
        const dressed = fishLoad(plan).seasons[0]?.dressed.value ?? 0
        expect(perDay(count) >= dressed * (1 - 1e-8)).toBe(carries)
        expect(count > 1 && perDay(count - 1) > dressed * (1 + 1e-8)).toBe(false)
      }),
    )
  })

  it('offers only ways out that carry the catch', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const offered = fishLoad(plan)
          .findings.filter((one) => one.kind === 'catch-too-much')
          .flatMap((one) => one.remedies)
        const short = offered.filter((remedy) =>
          fishLoad(applied(plan, remedy.set)).findings.some((one) => one.kind === 'catch-too-much'),
        )
        expect(short).toEqual([])
      }),
    )
  })
})
