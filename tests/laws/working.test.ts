import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import type { Derived } from '../../src/core/basics/derived.ts'
import { compareWalls } from '../../src/core/choosing/compare-walls.ts'
import { CATALOGUE_UNITS } from '../../src/core/plan/catalogue.ts'
import { parsePlan } from '../../src/core/plan/parse-plan.ts'
import type { Plan } from '../../src/core/plan/schema.ts'
import { derivedIn } from './formula.ts'
import { forAnyPlan } from './for-any-plan.ts'
import { onSite, shownOf } from './shown.ts'
import { faults, workingFaults } from './working-faults.ts'

const root = path.resolve(import.meta.dirname, '../..')

const examples: readonly (readonly [string, Plan])[] = readdirSync(path.join(root, 'shared/examples'))
  .filter((name) => name.endsWith('.json'))
  .map((name) => {
    const found = parsePlan(JSON.parse(readFileSync(path.join(root, 'shared/examples', name), 'utf8')))
    if (!found.ok) throw new Error(`${name}: ${JSON.stringify(found.problems)}`)
    return [name, found.value]
  })

describe('every number that a plan gives', () => {
  it.each(examples)('has words, a formula that mathjs evaluates to it, and units that balance: %s', (_, plan) => {
    const [unit] = CATALOGUE_UNITS
    if (unit === undefined) throw new Error('no units')
    const compared = compareWalls(plan, [{ unit, leaf: 'single', bond: 'stretcher' }])
    const all = derivedIn({ shown: shownOf(plan), site: shownOf(onSite(plan)), compared })
    expect(all.length).toBeGreaterThan(200)
    expect([...new Set(all.flatMap(faults))]).toEqual([])
  })

  it('does so for any plan', () => {
    forAnyPlan(120, (plan) => {
      expect(workingFaults(onSite(plan))).toEqual([])
    })
  }, 120_000)
})

describe('the check of working', () => {
  const sound: Derived = {
    id: 'cost.left',
    value: 3,
    unit: 'm2',
    formula: 'a · b − c^2',
    inputs: {
      a: { id: 'cost.left', value: 2, unit: 'm', inputs: {} },
      b: { id: 'cost.left', value: 2, unit: 'm', inputs: {} },
      c: { id: 'cost.left', value: 1, unit: 'm', inputs: {} },
    },
  }
  it('lets a sound number pass and catches a wrong value, a wrong unit, a lost word and a sum of unlike things', () => {
    expect(faults(sound)).toEqual([])
    expect(faults({ ...sound, value: 3.0001 })).toHaveLength(1)
    expect(faults({ ...sound, unit: 'm3' })).toHaveLength(1)
    expect(faults({ ...sound, id: 'no-such-number' })).toHaveLength(1)
    expect(faults({ ...sound, formula: 'a · b − c' })).toHaveLength(1)
    expect(faults({ ...sound, formula: '', inputs: sound.inputs })).not.toEqual([])
  })
})
