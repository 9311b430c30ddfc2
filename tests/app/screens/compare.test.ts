import { describe, expect, it } from 'vitest'
import { barShares, compareRows } from '../../../src/app/screens/compare/rows.ts'
import { parsePlan } from '../../../src/core/plan/parse-plan.ts'
import { workOut } from '../../../src/core/work-out.ts'
import example from '../../../shared/examples/two-chambers.json' with { type: 'json' }

describe('walls side by side', () => {
  const read = parsePlan(example)
  if (!read.ok) throw new Error('the example is damaged')
  const worked = workOut(read.value)
  const rows = compareRows(worked)

  it('begin with what is planned, as it is planned, and never show it twice', () => {
    expect(rows[0]?.choice).toBeNull()
    expect(rows[0]?.figures.money.value).toBe(worked.costs.total.value)
    expect(new Set(rows.map(({ unit }) => unit.key)).size).toBe(rows.length)
    expect(rows.slice(1).every(({ choice }) => choice !== null)).toBe(true)
  })

  it('count what has no price, so that it is not taken for cheap', () => {
    const unpriced = rows.filter(({ unpriced: count }) => count > 0)
    expect(unpriced.length).toBeGreaterThan(0)
    expect(rows[0]?.unpriced).toBe(0)
  })

  it('draw bars as shares of the longest', () => {
    expect(barShares([50, 100, 0])).toEqual([0.5, 1, 0])
    expect(barShares([0, 0])).toEqual([0, 0])
    expect(barShares([])).toEqual([])
  })
})
