import Big from 'big.js'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { shareMinor, splitMinor } from '../../src/core/basics/money.ts'
import { totals } from '../../src/core/costs/totals.ts'
import { cheapestMix, mixCost } from '../../src/core/purchase/lot-mix.ts'
import { workOut } from '../../src/core/work-out.ts'
import { offered } from '../core/costs/plans.ts'
import { anyPlan } from './plans.ts'
import { cases } from './cases.ts'
import { forAnyPlan } from './for-any-plan.ts'

const sum = (values: readonly number[]): Big => values.reduce((total, value) => total.plus(value), new Big(0))

describe('money of any plan', () => {
  it('adds up to the minor unit: lines, sellers, parts of the kiln, contingency, total', () => {
    forAnyPlan(100, (plan) => {
      const { costs: money, purchase } = workOut(plan)
      const lines = purchase.lines.flatMap(({ cost }) => (cost === null ? [] : [cost.value]))
      for (const value of lines) expect(Number.isSafeInteger(value) && value >= 0).toBe(true)
      const all = sum(lines)
      expect(all.eq(money.subtotal.value)).toBe(true)
      expect(sum(money.sellers.map(({ cost }) => cost.value)).eq(all)).toBe(true)
      expect(sum(money.sections.map(({ cost }) => cost.value)).eq(all)).toBe(true)
      for (const { cost } of money.sections) expect(Number.isSafeInteger(cost.value) && cost.value >= 0).toBe(true)
      // Halves up to whole minor units, by a decimal library.
      const contingency = all.times(plan.money.contingency).round(0, Big.roundHalfUp)
      expect(contingency.minus(money.contingency.value).abs().lte(1)).toBe(true)
      expect(all.plus(money.contingency.value).eq(money.total.value)).toBe(true)
      const { budgetMinor } = plan.money
      expect(money.left === null ? null : money.left.value).toBe(
        budgetMinor === null ? null : budgetMinor - money.total.value,
      )
    })
  }, 120_000)

  it('names every line without a price, and never counts it as nothing', () => {
    forAnyPlan(60, (plan) => {
      const { costs: money, purchase } = workOut(plan)
      const without = purchase.lines.filter((line) => line.price === null)
      expect(money.unpriced).toEqual(without.map(({ item }) => item))
      expect(without.every((line) => line.cost === null)).toBe(true)
      expect(money.findings.some((one) => one.kind === 'money.unpriced')).toBe(without.length > 0)
      expect(money.total.id).toBe(without.length > 0 ? 'cost.priced-so-far' : 'cost.total')
    })
  }, 120_000)

  it('is told apart from a slip when it passes what can be counted exactly', () => {
    const [plan] = fc.sample(anyPlan, { numRuns: 1, seed: 3 })
    const offer = offered('cement', 1e-4, 1e12, { chosen: true })
    if (plan === undefined) throw new Error('no plan')
    const { costs: money } = workOut({ ...plan, offers: { offer } })
    expect(money.findings.map(({ kind }) => kind)).toContain('money.too-large')
  })

  it('costs nothing where nothing is bought', () => {
    const { purchase } = workOut(fc.sample(anyPlan, { numRuns: 1, seed: 3 })[0] as Parameters<typeof workOut>[0])
    expect(purchase.lines.length).toBeGreaterThan(0)
    const [plan] = fc.sample(anyPlan, { numRuns: 1, seed: 3 })
    if (plan === undefined) throw new Error('no plan')
    expect(totals(plan, []).total.value).toBe(0)
  })
})

describe('whole lots of any plan', () => {
  it('cover the need with its waste, and one lot fewer does not', () => {
    forAnyPlan(100, (any) => {
      // What is at hand need not be bought: `tests/laws/cutting.test.ts` has its own laws.
      const plan = { ...any, trays: { ...any.trays, owned: {} } }
      const { purchase } = workOut(plan)
      const items = new Set(purchase.lines.map(({ item }) => item))
      for (const item of items) {
        const lines = purchase.lines.filter((line) => line.item === item)
        const bought = lines.reduce((total, line) => total + line.bought.value, 0)
        const gross = lines[0]?.gross.value ?? Number.NaN
        const tooLong = purchase.findings.some((one) => one.kind === 'buy.piece-too-long')
        expect([item, tooLong || bought >= gross * (1 - 1e-9)]).toEqual([item, true])
        for (const line of lines) {
          expect(Number.isInteger(line.lots.value) && line.lots.value > 0).toBe(true)
          expect(line.surplus.value).toBeCloseTo(line.bought.value - line.covers.value, 9)
        }
        // Cut items are bought by the cutting plan, and a seller's least order may be more than is needed.
        const [only] = lines
        if (lines.length > 1 || only === undefined || purchase.cutting.has(item) || only.widthM > 0) continue
        const least = plan.offers[only.offerId ?? '']?.leastLots ?? 1
        const fewer = (only.lots.value - 1) * only.lotSize.value
        expect([item, only.lots.value <= least || fewer < gross]).toEqual([item, true])
      }
    })
  }, 120_000)

  it('of the cheapest mix cost no more than any other mix', () => {
    const terms = fc.record({
      lotSize: fc.constantFrom(1, 2.5, 5, 7, 25, 50),
      priceMinor: fc.integer({ min: 0, max: 60 }),
      leastLots: fc.constantFrom(1, 1, 2, 4),
      transportMinor: fc.constantFrom(0, 0, 13),
      tripLots: fc.constantFrom(0, 2, 5),
    })
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.array(terms, { minLength: 1, maxLength: 3 }), (need, offers) => {
        const mix = cheapestMix(need, offers)
        const covered = offers.reduce((total, offer, at) => total + (mix.lots[at] ?? 0) * offer.lotSize, 0)
        expect(covered).toBeGreaterThanOrEqual(need)
        expect(offers.reduce((total, offer, at) => total + mixCost(mix.lots[at] ?? 0, offer), 0)).toBe(mix.costMinor)
        for (const [at, offer] of offers.entries()) {
          const lots = mix.lots[at] ?? 0
          expect(lots === 0 || lots >= offer.leastLots).toBe(true)
        }
        expect(mix.proven).toBe(true)
        expect(mix.costMinor).toBe(cheapestByTrial(need, offers))
      }),
      { numRuns: cases(300) },
    )
  })

  it('of more needs never cost less', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 1, max: 50 }), (need, more) => {
        const offers = [
          { lotSize: 50, priceMinor: 90, leastLots: 1, transportMinor: 5, tripLots: 3 },
          { lotSize: 20, priceMinor: 40, leastLots: 1, transportMinor: 0, tripLots: 0 },
        ]
        expect(cheapestMix(need + more, offers).costMinor).toBeGreaterThanOrEqual(cheapestMix(need, offers).costMinor)
      }),
    )
  })
})

/** Every number of lots of every offer that could be of use, tried one after the other. */
function cheapestByTrial(need: number, offers: readonly Parameters<typeof mixCost>[1][]): number {
  let best = Number.POSITIVE_INFINITY
  const go = (at: number, missing: number, cost: number): void => {
    const offer = offers[at]
    if (missing <= 0) {
      best = Math.min(best, cost)
      return
    }
    if (offer === undefined) return
    const most = Math.max(Math.ceil(missing / offer.lotSize), offer.leastLots)
    for (let lots = 0; lots <= most; lots++) {
      if (lots > 0 && lots < offer.leastLots) continue
      const trips = lots === 0 ? 0 : offer.tripLots === 0 ? 1 : Math.ceil(lots / offer.tripLots)
      go(at + 1, missing - lots * offer.lotSize, cost + lots * offer.priceMinor + trips * offer.transportMinor)
    }
  }
  go(0, need, 0)
  return best
}

describe('shares of money', () => {
  it('add up exactly and are within one minor unit of the exact share', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1_000_000_000 }),
        fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 1, maxLength: 12 }),
        (amount, weights) => {
          const parts = splitMinor(amount, weights)
          expect(sum(parts).eq(amount)).toBe(true)
          const all = sum(weights)
          for (const [at, part] of parts.entries()) {
            const exact = all.eq(0)
              ? new Big(amount).div(weights.length)
              : new Big(amount).times(weights[at] ?? 0).div(all)
            expect(exact.minus(part).abs().lt(1)).toBe(true)
          }
        },
      ),
      { numRuns: cases(500) },
    )
  })

  it('of a hundredth are rounded to the nearest, whatever is left over', () => {
    // One hundredth of 0 to 99 leaves every hundredth there is.
    for (let amount = 0; amount < 100; amount++)
      expect([amount, shareMinor(amount, 0.01)]).toEqual([
        amount,
        Number(new Big(amount).div(100).round(0, 1).toFixed()),
      ])
  })

  it('of a hundredth are rounded like a decimal library rounds them', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1_000_000_000 }), fc.integer({ min: 0, max: 100 }), (amount, percent) => {
        const exact = new Big(amount).times(percent).div(100)
        // The share is a binary number: exact halves may fall either way.
        expect(
          exact
            .minus(shareMinor(amount, percent / 100))
            .abs()
            .lte(0.5),
        ).toBe(true)
      }),
    )
  })
})
