import { describe, expect, it } from 'vitest'
import { oldPriceFindings, oldPrices } from '../../../src/core/documents/old-prices.ts'
import { workOut } from '../../../src/core/work-out.ts'
import { examplePlan } from '../costs/plans.ts'

const plan = examplePlan('one-chamber')
const { purchase } = workOut(plan)
const used = new Set(purchase.lines.flatMap(({ offerId }) => (offerId === null ? [] : [offerId])))

describe('prices seen long ago', () => {
  // The example's prices are of 2 March 2026; 60 days later is 1 May (29 days of March, 30 of April, 1 of May).
  it('are told from the sixty-first day on, and only where the list uses them', () => {
    expect(oldPrices(plan, purchase.lines, '2026-05-01')).toEqual([])
    expect(new Set(oldPrices(plan, purchase.lines, '2026-05-02'))).toEqual(used)
    expect(oldPriceFindings(oldPrices(plan, purchase.lines, '2026-05-02')).map(({ args }) => args['count'])).toEqual([
      used.size,
    ])
    expect(oldPriceFindings([])).toEqual([])
  })

  it('are not judged without a day, on either side', () => {
    const undated = {
      ...plan,
      offers: Object.fromEntries(Object.entries(plan.offers).map(([id, offer]) => [id, { ...offer, seen: null }])),
    }
    expect(oldPrices(undated, purchase.lines, '2030-01-01')).toEqual([])
    expect(oldPrices(plan, purchase.lines, 'some day')).toEqual([])
  })
})
