import { describe, expect, it } from 'vitest'
import type { Offer, Plan } from '../../../src/core/plan/schema.ts'
import { workOut } from '../../../src/core/work-out.ts'
import { examplePlan } from '../costs/plans.ts'

const base = examplePlan('one-chamber')

function withOffer(item: string, change: Partial<Offer>): Plan {
  const found = Object.entries(base.offers).find(([, one]) => one.item === item)
  if (found === undefined) throw new Error(`the example sells no ${item}`)
  const others = Object.entries(base.offers).filter(([, one]) => one.item !== item)
  return { ...base, offers: { ...Object.fromEntries(others), [found[0]]: { ...found[1], ...change } } }
}

const told = (plan: Plan, kind: string) => workOut(plan).findings.filter((one) => one.kind === kind)
/** All other lines of the list, as they are bought. */
const others = (plan: Plan, item: string) =>
  workOut(plan)
    .purchase.lines.filter((line) => line.item !== item)
    .map(({ item: name, lots, cost }) => [name, lots.value, cost?.value])

describe('what no stock holds', () => {
  it.each([
    ['rail', { lotSize: 0.5 }],
    ['mesh', { widthM: 0 }],
    ['mesh', { lotName: 'roll', lotSize: 0.5 }],
  ] as const)('%s of %o leaves every other line as it was, and is told once', (item, change) => {
    const plan = withOffer(item, change)
    expect(others(plan, item)).toEqual(others(base, item))
    expect(
      workOut(plan).findings.filter(({ kind, level }) => kind.startsWith('buy.') && level === 'problem'),
    ).toHaveLength(1)
  })
})

describe('prices', () => {
  it.each(['rail', 'mesh', 'cover-sheet'])('of nothing for %s cost nothing, and the rest stands', (item) => {
    const plan = withOffer(item, { priceMinor: 0 })
    const lines = workOut(plan).purchase.lines.filter((line) => line.item === item)
    expect(lines.length).toBeGreaterThan(0)
    expect(lines.map(({ cost }) => cost?.value)).toEqual(lines.map(() => 0))
    expect(others(plan, item)).toEqual(others(base, item))
  })

  it.each(['rail', 'mesh', 'cover-sheet'])('missing for %s are told; its lots are bought all the same', (item) => {
    const plan = withOffer(item, { priceMinor: null })
    const lines = workOut(plan).purchase.lines.filter((line) => line.item === item)
    expect(lines.map(({ cost }) => cost)).toEqual([null])
    expect(lines[0]?.lots.value).toBeGreaterThan(0)
    expect(told(plan, 'money.unpriced')[0]?.args).toEqual({ count: 1 })
    expect(others(plan, item)).toEqual(others(base, item))
  })
})
