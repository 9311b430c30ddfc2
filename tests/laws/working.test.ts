import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import type { Derived } from '../../src/core/basics/derived.ts'
import { compareWalls } from '../../src/core/choosing/compare-walls.ts'
import { CATALOGUE_UNITS } from '../../src/core/plan/catalogue.ts'
import { parsePlan } from '../../src/core/plan/parse-plan.ts'
import type { Plan } from '../../src/core/plan/schema.ts'
import { derivedIn, dimensionOf, evaluated, formulaDimension, sameDimension } from './formula.ts'
import { forAnyPlan } from './for-any-plan.ts'
import { onSite, shownOf } from './shown.ts'

const root = path.resolve(import.meta.dirname, '../..')

const examples: readonly (readonly [string, Plan])[] = readdirSync(path.join(root, 'shared/examples'))
  .filter((name) => name.endsWith('.json'))
  .map((name) => {
    const found = parsePlan(JSON.parse(readFileSync(path.join(root, 'shared/examples', name), 'utf8')))
    if (!found.ok) throw new Error(`${name}: ${JSON.stringify(found.problems)}`)
    return [name, found.value]
  })

/** All messages in English, as written. */
const words = new Set(
  readdirSync(path.join(root, 'src/app/words/en'))
    .filter((name) => name.endsWith('.json'))
    .flatMap((name) =>
      Object.keys(
        JSON.parse(readFileSync(path.join(root, 'src/app/words/en', name), 'utf8')) as Record<string, string>,
      ),
    ),
)

/** What is wrong with the working of a number: each entry names it. */
function faults(one: Derived): string[] {
  const found: string[] = []
  if (!words.has(`working.${one.id}`)) found.push(`${one.id}: no words`)
  if (!Number.isFinite(one.value)) found.push(`${one.id}: ${String(one.value)}`)
  const { formula } = one
  if (formula === undefined) {
    if (Object.keys(one.inputs).length > 0) found.push(`${one.id}: inputs without a formula`)
    return found
  }
  const value =
    one.addends === true ? Object.values(one.inputs).reduce((sum, each) => sum + each.value, 0) : evaluated(one)
  const error = Math.abs(value - one.value)
  if (!(error <= 1e-9 * Math.max(Math.abs(value), Math.abs(one.value)) + 1e-12))
    found.push(`${one.id}: ${formula} = ${String(value)}, not ${String(one.value)}`)
  try {
    const unit = one.addends === true ? sumDimension(one) : formulaDimension(formula, one.inputs)
    if (unit !== 'zero' && !sameDimension(unit, dimensionOf(one.unit)))
      found.push(`${one.id}: ${formula} is not in ${one.unit}`)
  } catch (error) {
    found.push(`${one.id}: ${String(error)}`)
  }
  return found
}

function sumDimension({ inputs, id }: Derived) {
  const sizes = Object.values(inputs).map((each) => dimensionOf(each.unit))
  const [first] = sizes
  if (first === undefined) return 'zero' as const
  if (!sizes.every((each) => sameDimension(each, first))) throw new Error(`${id}: a sum of unlike units`)
  return first
}

const faultsOf = (plan: Plan): string[] => [...new Set(derivedIn(shownOf(plan)).flatMap(faults))]

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
      expect(faultsOf(onSite(plan))).toEqual([])
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
