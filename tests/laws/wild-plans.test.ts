import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { LIMITS } from '../../src/core/plan/limits.ts'
import { parsePlan } from '../../src/core/plan/parse-plan.ts'
import type { Plan } from '../../src/core/plan/schema.ts'
import { workOut } from '../../src/core/work-out.ts'
import { derivedIn } from './formula.ts'
import { anyPlan } from './plans.ts'
import { cases } from './cases.ts'

type Json = Record<string, unknown>
const isRecord = (value: unknown): value is Json => typeof value === 'object' && value !== null

/** Numbers of a plan that have limits, by their paths. */
const limited = Object.entries(LIMITS)

/** A plan with some of its limited numbers put at an end of their limits or anywhere between. */
const wildPlan: fc.Arbitrary<Plan> = fc
  .tuple(
    anyPlan,
    fc.array(fc.tuple(fc.nat({ max: limited.length - 1 }), fc.constantFrom(0, 1, 0.5, 0.1, 0.9)), {
      minLength: 1,
      maxLength: 12,
    }),
  )
  .map(([plan, changes]) => {
    const copy = structuredClone(plan) as unknown as Json
    for (const [at, share] of changes) {
      const [path, limit] = limited[at] ?? []
      if (path === undefined || limit === undefined) continue
      const names = path.split('.')
      const last = names.pop() ?? ''
      const parent = names.reduce<unknown>((inside, name) => (isRecord(inside) ? inside[name] : undefined), copy)
      if (!isRecord(parent) || typeof parent[last] !== 'number') continue
      const value = limit.min + share * (limit.max - limit.min)
      parent[last] = limit.step >= 1 && limit.unit !== 'deg' ? Math.round(value) : value
    }
    return copy as unknown as Plan
  })
  .filter((plan) => parsePlan(plan).ok)

describe('a plan at the ends of its limits', () => {
  it('is worked out to finite numbers and whole money, whatever stands in it', () => {
    fc.assert(
      fc.property(wildPlan, (plan) => {
        const worked = workOut(plan)
        const broken = derivedIn(worked).filter(({ value }) => !Number.isFinite(value))
        expect(broken.map(({ id, value }) => `${id} ${String(value)}`)).toEqual([])
        expect(Number.isSafeInteger(worked.costs.total.value)).toBe(true)
        for (const { level, kind } of worked.findings)
          expect([kind, ['problem', 'caution', 'good'].includes(level)]).toEqual([kind, true])
      }),
      { numRuns: cases(1000) },
    )
  }, 300_000)

  it('gives the same result again', () => {
    fc.assert(
      fc.property(wildPlan, (plan) => {
        expect(workOut(structuredClone(plan)).costs).toEqual(workOut(plan).costs)
      }),
      { numRuns: cases(20) },
    )
  }, 300_000)
})
