import { describe, expect, it } from 'vitest'
import { withCurrency } from '../../../src/core/plan/currency-change.ts'
import { newPlan } from '../../../src/core/plan/defaults.ts'
import { parsePlan } from '../../../src/core/plan/parse-plan.ts'
import type { Plan } from '../../../src/core/plan/schema.ts'
import { offered } from '../costs/plans.ts'

const cedi = { code: 'GHS', digits: 2 }
const cfa = { code: 'XOF', digits: 0 }

function planWithPrice(priceMinor: number): Plan {
  const plan = newPlan({
    id: 'p',
    name: 'P',
    freshKgPerDay: 60,
    unitKey: 'hollow-450-150-225',
    soil: 'clay-firm',
    currency: cedi,
  })
  return {
    ...plan,
    offers: { a: offered('cement', 50, priceMinor, { transportMinor: 250 }) },
    money: { ...plan.money, budgetMinor: 100_000 },
  }
}

describe('another currency', () => {
  // Digits of the minor unit by ISO 4217: GHS 2, XOF 0.
  it('keeps what the figures read: 110.00 becomes 110', () => {
    const changed = withCurrency(planWithPrice(11_000), cfa)
    expect(changed.currency).toEqual(cfa)
    expect(changed.offers['a']?.priceMinor).toBe(110)
    expect(changed.money.budgetMinor).toBe(1000)
    expect(withCurrency(changed, cedi).offers['a']?.priceMinor).toBe(11_000)
  })

  it('rounds what the new currency has no coin for, and leaves whole minor units', () => {
    const changed = withCurrency(planWithPrice(11_050), cfa)
    expect(changed.offers['a']?.priceMinor).toBe(111)
    expect(changed.offers['a']?.transportMinor).toBe(3)
  })

  it('touches nothing but money', () => {
    const plan = planWithPrice(11_000)
    const { offers: _offers, money: _money, currency: _currency, ...rest } = withCurrency(plan, cfa)
    const { offers: _o, money: _m, currency: _c, ...before } = plan
    expect(rest).toEqual(before)
    expect(parsePlan(rest).ok).toBe(false)
  })
})
