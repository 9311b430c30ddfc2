import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { newPlan } from '../../../src/core/plan/defaults.ts'
import { LIMITS, MOST_MONEY_MINOR } from '../../../src/core/plan/limits.ts'
import { parsePlan, type PlanProblem } from '../../../src/core/plan/parse-plan.ts'
import { PLAN_VERSION } from '../../../src/core/plan/schema.ts'
import { anyPlan } from '../../laws/plans.ts'

const plan = newPlan({
  id: 'a',
  name: 'A plan',
  freshKgPerDay: 30,
  unitKey: 'hollow-450-150-225',
  soil: 'sand-dense',
  currency: { code: 'XTS', digits: 2 },
})

/** A copy with one value by a path with dots. */
function changed(path: string, value: unknown): unknown {
  const copy = structuredClone(plan) as unknown as Record<string, unknown>
  const names = path.split('.')
  const last = names.pop() ?? ''
  let at = copy
  for (const name of names) at = at[name] as Record<string, unknown>
  at[last] = value
  return copy
}

const problems = (raw: unknown): readonly PlanProblem[] => {
  const found = parsePlan(raw)
  return found.ok ? [] : found.problems
}

describe('the door for plans', () => {
  it('lets a new plan and every example through unchanged', () => {
    expect(parsePlan(structuredClone(plan))).toEqual({ ok: true, value: plan })
    const folder = path.resolve(import.meta.dirname, '../../../shared/examples')
    const names = readdirSync(folder)
    expect(names).toHaveLength(3)
    for (const name of names) {
      const raw: unknown = JSON.parse(readFileSync(path.join(folder, name), 'utf8'))
      const found = parsePlan(raw)
      expect(found).toEqual({ ok: true, value: raw })
      expect(found.ok && found.value.example).toBe(true)
    }
  })

  it('lets any plan within the limits through', () => {
    fc.assert(
      fc.property(anyPlan, (one) => {
        expect(parsePlan(structuredClone(one))).toEqual({ ok: true, value: one })
      }),
      { numRuns: 200 },
    )
  })

  it.each([
    null,
    undefined,
    3,
    'plan',
    [],
    {},
    [plan],
    { format: 'something-else', version: 1 },
    { ...plan, format: 'Plan' },
  ])('says that %j is no plan', (raw) => expect(problems(raw)).toEqual([{ kind: 'not-a-plan' }]))

  it('tells a newer plan from a damaged one', () => {
    expect(problems({ ...plan, version: 99 })).toEqual([{ kind: 'newer', theirVersion: 99, ourVersion: PLAN_VERSION }])
    for (const version of ['1', null, 1.5, 0, -1, Number.NaN])
      expect(problems({ ...plan, version })).toEqual([{ kind: 'damaged', field: 'version', reason: 'invalid_type' }])
  })

  it.each([
    ['chambers.count', 0],
    ['chambers.count', 9],
    ['chambers.count', 2.5],
    ['chambers.count', '2'],
    ['chambers.clearSideM', Number.NaN],
    ['chambers.clearSideM', Number.POSITIVE_INFINITY],
    ['chambers.clearSideM', -0.68],
    ['chambers.clearSideM', 2.01],
    ['walls.unit.lengthM', 0],
    ['walls.unit.voidFraction', 1],
    ['walls.aboveM', 1e9],
    ['currency.code', 'Cfa'],
    ['currency.digits', 4],
    ['money.budgetMinor', 0.5],
    ['money.budgetMinor', MOST_MONEY_MINOR + 1],
    ['money.budgetMinor', -1],
    ['name', ''],
    ['name', 'x'.repeat(81)],
    ['id', 'x'.repeat(61)],
    ['catch.form', 'whale'],
    ['offers', []],
    ['trays', null],
  ])('names the field that is wrong: %s = %s', (field, value) => {
    const found = problems(changed(field, value))
    expect(found.length).toBeGreaterThan(0)
    expect(found.every((problem) => problem.kind === 'damaged' && problem.field.startsWith(field))).toBe(true)
  })

  it('names all wrong fields at once, and one that is missing or unknown', () => {
    const broken = { ...plan, chambers: { count: 99, clearSideM: 99 } }
    expect(problems(broken).map((problem) => problem.kind === 'damaged' && problem.field)).toEqual([
      'chambers.count',
      'chambers.clearSideM',
    ])
    const { trays: _trays, ...without } = plan
    expect(problems(without)).toEqual([{ kind: 'damaged', field: 'trays', reason: 'invalid_type' }])
    expect(problems({ ...plan, surprise: 1 })).toHaveLength(1)
    expect(problems(changed('walls.surprise', 1))).toHaveLength(1)
  })

  it('holds the limits at both ends of every limited number', () => {
    for (const [field, { min, max }] of Object.entries(LIMITS)) {
      const names = field.split('.')
      let at: unknown = plan
      for (const name of names)
        at = typeof at === 'object' && at !== null ? (at as Record<string, unknown>)[name] : undefined
      if (typeof at !== 'number') continue
      const cross = (found: readonly PlanProblem[]) =>
        found.filter((problem) => problem.kind !== 'damaged' || problem.reason !== 'order')
      expect([field, cross(problems(changed(field, min)))]).toEqual([field, []])
      expect([field, cross(problems(changed(field, max)))]).toEqual([field, []])
      expect([field, problems(changed(field, min - 1)).length]).not.toEqual([field, 0])
      expect([field, problems(changed(field, max + 1)).length]).not.toEqual([field, 0])
    }
  })

  it('refuses what no single field can say', () => {
    expect(problems(changed('walls.joint', { minM: 0.012, usualM: 0.01, maxM: 0.015 }))).toEqual([
      { kind: 'damaged', field: 'walls.joint', reason: 'order' },
    ])
    expect(problems(changed('catch.moistureFinal', 0.7))).toHaveLength(0)
    expect(problems({ ...plan, catch: { ...plan.catch, moistureFresh: 0.5, moistureFinal: 0.5 } })).toEqual([
      { kind: 'damaged', field: 'catch.moistureFinal', reason: 'order' },
    ])
    expect(problems(changed('mixes.mortar', { cement: 0, clay: 0, sand: 0, dryFactor: 1.33 }))).toEqual([
      { kind: 'damaged', field: 'mixes.mortar', reason: 'no-binder' },
    ])
    expect(problems(changed('mixes.concrete', { cement: 0, sand: 2, stone: 4, dryFactor: 1.54 }))).toEqual([
      { kind: 'damaged', field: 'mixes.concrete', reason: 'no-binder' },
    ])
  })

  it('takes no harm from hostile text', () => {
    const hostile: unknown = JSON.parse(
      `{"format":"kilnwright-plan","version":1,"__proto__":{"polluted":true},"constructor":{"prototype":{"polluted":true}}}`,
    )
    expect(problems(hostile).length).toBeGreaterThan(0)
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined()
    const inOffers = structuredClone(plan) as unknown as Record<string, unknown>
    inOffers['offers'] = JSON.parse('{"__proto__":{"item":"cement"}}')
    const found = parsePlan(inOffers)
    // zod drops or refuses the name: it must never become the prototype of the offers.
    const offers: object = found.ok ? found.value.offers : {}
    expect(Object.getPrototypeOf(offers)).toBe(Object.prototype)
    expect(({} as Record<string, unknown>)['item']).toBeUndefined()
    let deep: unknown = {}
    for (let level = 0; level < 5000; level++) deep = { deep }
    expect(problems({ ...plan, deep })).toHaveLength(1)
    expect(problems(changed('name', '<script>alert(1)</script>'))).toHaveLength(0)
  })
})
