import { readFileSync } from 'node:fs'
import path from 'node:path'
import { bench, describe } from 'vitest'
import { withinOurMoney, type DesignSpace } from '../../src/core/choosing/within-our-money.ts'
import { CATALOGUE_UNITS } from '../../src/core/plan/catalogue.ts'
import { wallsFor } from '../../src/core/plan/defaults.ts'
import { parsePlan } from '../../src/core/plan/parse-plan.ts'
import type { Plan } from '../../src/core/plan/schema.ts'
import { workOut } from '../../src/core/work-out.ts'

const example = (name: string): Plan => {
  const file = path.resolve(import.meta.dirname, `../../shared/examples/${name}.json`)
  const found = parsePlan(JSON.parse(readFileSync(file, 'utf8')))
  if (!found.ok) throw new Error(name)
  return found.value
}
const unit = (key: string) => {
  const found = CATALOGUE_UNITS.find((one) => one.key === key)
  if (found === undefined) throw new Error(key)
  return found
}

const one = example('one-chamber')
const two: Plan = { ...one, chambers: { ...one.chambers, count: 2 } }
const eightInBrick: Plan = {
  ...one,
  chambers: { count: 8, clearSideM: 0.77 },
  walls: { ...one.walls, ...wallsFor(unit('brick-190-90-90')), leaf: 'one-brick', bond: 'english' },
}

// Blueprint of the product: two chambers at most 2 ms, eight in small brick at most 15 ms, median on one core.
describe('the whole calculation', () => {
  bench('1 chamber, hollow block', () => void workOut(one))
  bench('2 chambers, hollow block', () => void workOut(two))
  bench('8 chambers, one brick of 190 × 90 × 90', () => void workOut(eightInBrick))
})

const space: DesignSpace = {
  chambers: [1, 2, 3, 4],
  clearSidesM: [0.6, 0.68, 0.77, 0.84, 0.92],
  shells: ['hollow-450-150-225', 'solid-450-125-225', 'earth-290-140-90'].map((key) => ({
    walls: { unit: unit(key), leaf: 'single', bond: 'stretcher' },
    aboveM: 0.6,
  })),
  perChamber: Array.from({ length: 15 }, (_, at) => at + 1),
}
const limits = { budgetMinor: 200_000, mostDays: null, mostBoughtInMinor: null }

// At least 2,000 complete designs a second on one core: this space has 900.
describe('within our money', () => {
  bench('900 designs', () => {
    const search = withinOurMoney(one, space, limits)
    while (search.next().done !== true);
  })
})
