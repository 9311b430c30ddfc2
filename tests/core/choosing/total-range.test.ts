import { describe, expect, it } from 'vitest'
import { totalRange } from '../../../src/core/choosing/total-range.ts'
import type { Plan } from '../../../src/core/plan/schema.ts'
import { workOut } from '../../../src/core/work-out.ts'
import { examplePlan } from '../costs/plans.ts'

const example = examplePlan('two-chambers')
const without = (plan: Plan, doubted: readonly string[]): Plan => ({
  ...plan,
  offers: Object.fromEntries(Object.entries(plan.offers).filter(([, { item }]) => !doubted.includes(item))),
})

describe('the total as a range', () => {
  it('holds the total, every doubt alone, and each doubt inside it', () => {
    const range = totalRange(example)
    expect(range.totalMinor).toBe(workOut(example).costs.total.value)
    expect(range.cheapMinor).toBeLessThan(range.totalMinor)
    expect(range.dearMinor).toBeGreaterThan(range.totalMinor)
    for (const { cheapMinor, dearMinor, low, high } of range.doubts) {
      expect(low).toBeLessThan(high)
      expect(cheapMinor).toBeGreaterThanOrEqual(range.cheapMinor)
      expect(dearMinor).toBeLessThanOrEqual(range.dearMinor)
      expect(cheapMinor).toBeLessThan(dearMinor)
    }
  })

  it('names what drives it, the widest first', () => {
    const spans = totalRange(example).doubts.map(({ cheapMinor, dearMinor }) => dearMinor - cheapMinor)
    expect(spans).toEqual([...spans].sort((a, b) => b - a))
  })

  it('is as wide as the work is: more waste of units by hand is what it says', () => {
    // By hand: the total with a tenth of the units broken, worked out as a plan of its own.
    const wasteful = { ...example, waste: { ...example.waste, units: 0.1 } }
    const doubt = totalRange(example).doubts.find(({ key }) => key === 'units-waste')
    expect(doubt?.high).toBe(0.1)
    expect(doubt?.dearMinor).toBe(workOut(wasteful).costs.total.value)
  })

  it('leaves out what costs nothing: no labour priced, no doubt about its output', () => {
    const keys = (plan: Plan) => totalRange(plan).doubts.map(({ key }) => key)
    expect(keys(example)).toContain('output')
    expect(keys(without(example, ['mason', 'labourer', 'carpenter']))).not.toContain('output')
  })

  it('has no doubt about the hollow of a solid unit', () => {
    const solid = { ...example.walls.unit, cells: [], voidFraction: 0 }
    const plan = { ...example, walls: { ...example.walls, unit: solid, fill: 'none' as const } }
    expect(totalRange(plan).doubts.map(({ key }) => key)).not.toContain('void')
  })
})
