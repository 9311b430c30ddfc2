import { describe, expect, it } from 'vitest'
import { cited, counted } from '../../../src/core/basics/derived.ts'
import { priceSwings } from '../../../src/core/costs/price-swings.ts'
import { sectionCosts } from '../../../src/core/costs/sections.ts'
import { spendingAccount } from '../../../src/core/costs/spending.ts'
import { totals } from '../../../src/core/costs/totals.ts'
import type { Plan } from '../../../src/core/plan/schema.ts'
import { need, type Section } from '../../../src/core/quantities/need.ts'
import { workOut } from '../../../src/core/work-out.ts'
import { bought, examplePlan, offered } from './plans.ts'

// Source of every expected value here: plain arithmetic, written beside it.

const none = cited('waste', '1', 0, 'common-practice')
const kilos = (section: Section, kg: number) => need('cement', section, 'mortar', counted('cement', 'kg', kg), none)
const cost = (value: number) => counted('cost', 'money', value)

describe('what several parts of the kiln share', () => {
  it('is divided by need, up to and with each part rounded, so that nothing is lost', () => {
    // 100 over 1 : 1 : 1 is 33⅓ each: up to the first 33, up to the second 67, all 100.
    const shares = sectionCosts([
      { cost: cost(100), needs: [kilos('ground', 1), kilos('walls', 1), kilos('trays', 1)] },
    ])
    expect(shares.map(({ section, cost: { value } }) => [section, value])).toEqual([
      ['ground', 33],
      ['walls', 34],
      ['trays', 33],
    ])
    // 10 over 3 : 1 is 7.5 and 2.5.
    const uneven = sectionCosts([{ cost: cost(10), needs: [kilos('walls', 3), kilos('ground', 1)] }])
    expect(uneven.map(({ section, cost: { value } }) => [section, value])).toEqual([
      ['ground', 2],
      ['walls', 8],
    ])
  })

  it('goes whole to the only part, and a line without a price to none', () => {
    const lines = [
      { cost: cost(7), needs: [kilos('walls', 2), kilos('walls', 1)] },
      { cost: null, needs: [kilos('trays', 1)] },
    ]
    expect(sectionCosts(lines).map(({ section, cost: { value } }) => [section, value])).toEqual([['walls', 7]])
  })
})

const base: Plan = { ...examplePlan('one-chamber'), spending: {}, contributions: {}, payouts: {}, members: {} }

describe('what the budget leaves', () => {
  const { purchase } = workOut(base)
  const { total } = totals(base, purchase.lines)
  const found = (budgetMinor: number | null, lines = purchase.lines) => {
    const { left, findings } = totals({ ...base, money: { ...base.money, budgetMinor } }, lines)
    return { left: left === null ? null : left.value, findings: findings.map(({ level, kind }) => [level, kind]) }
  }
  it('is nothing at the very total, and short by what it lacks', () => {
    expect(found(total.value)).toEqual({ left: 0, findings: [['good', 'money.within-budget']] })
    expect(found(total.value + 3)).toEqual({ left: 3, findings: [['good', 'money.within-budget']] })
    expect(found(total.value - 1)).toEqual({ left: -1, findings: [['problem', 'money.over-budget']] })
    expect(found(null)).toEqual({ left: null, findings: [] })
    const { findings } = totals({ ...base, money: { ...base.money, budgetMinor: total.value - 5 } }, purchase.lines)
    expect(findings[0]?.args).toEqual({ short: { value: 5, unit: 'money' } })
  })

  it('is not called kept while a price is missing', () => {
    const [first, ...others] = purchase.lines
    if (first === undefined) throw new Error('nothing to buy')
    const lines = [{ ...first, price: null, cost: null }, ...others]
    expect(found(total.value, lines).findings).toEqual([['caution', 'money.unpriced']])
  })
})

describe('what is paid beyond the list', () => {
  const { purchase, costs } = workOut(base)
  const reserve = costs.contingency.value
  const account = (spending: Plan['spending']) => spendingAccount({ ...base, spending }, purchase.lines, costs)
  const fare = (paidMinor: number) => ({ fare: bought('other', 1, paidMinor) })

  it('takes from the reserve first, and is over the plan from the next minor unit on', () => {
    expect(reserve).toBeGreaterThan(10)
    expect(account(fare(4)).findings).toMatchObject([
      {
        level: 'caution',
        kind: 'money.uses-contingency',
        args: { used: { value: 4, unit: 'money' }, left: { value: reserve - 4, unit: 'money' } },
      },
    ])
    expect(account(fare(reserve)).findings.map(({ kind }) => kind)).toEqual(['money.uses-contingency'])
    expect(account(fare(reserve + 2)).findings).toMatchObject([
      { level: 'problem', kind: 'money.over-plan', args: { over: { value: 2, unit: 'money' } } },
    ])
    expect(account(fare(0)).findings).toEqual([])
    expect(account(fare(9)).reserveLeft.value).toBe(reserve - 9)
  })

  it('comes back when it is given back, and stands among the other things', () => {
    const both = account({ ...fare(9), back: bought('other', 1, 2, { kind: 'return' }) })
    expect(both.paid.value).toBe(7)
    expect(both.others.value).toBe(7)
    expect(both.over.value).toBe(7)
  })

  it('names those who paid and are on the list no more', () => {
    const found = account({ a: bought('other', 1, 0, { paidBy: 'gone' }), b: bought('other', 1, 0) }).findings
    expect(found).toMatchObject([{ level: 'caution', kind: 'money.payer-gone', args: { count: 1 } }])
  })
})

describe('what is still to be paid', () => {
  const toPay = (offers: Plan['offers'], spending: Plan['spending'], item: string) => {
    const plan = { ...base, offers, spending }
    const { purchase, costs } = workOut(plan)
    return spendingAccount(plan, purchase.lines, costs).items.find((one) => one.item === item)
  }
  const needKg = workOut(base).purchase.lines.find(({ item }) => item === 'cement')?.gross.value ?? Number.NaN

  it('is whole bags for the rest, with a trip where the seller asks for one', () => {
    const offers = { a: offered('cement', 10, 100, { transportMinor: 7 }) }
    const rest = toPay(offers, { x: bought('cement', 10, 1) }, 'cement')
    expect(rest?.toPay?.value).toBe(Math.ceil((needKg - 10) / 10 - 1e-9) * 100 + 7)
    expect(rest?.forecast?.value).toBe(Math.ceil((needKg - 10) / 10 - 1e-9) * 100 + 7 + 1)
    expect(toPay(offers, {}, 'cement')?.toPay?.value).toBe(Math.ceil(needKg / 10 - 1e-9) * 100 + 7)
  })

  it('is unknown where no price is, and nothing where nothing is missing', () => {
    const offers = { a: offered('cement', 10, null) }
    expect(toPay(offers, { x: bought('cement', 10, 1) }, 'cement')?.toPay).toBeNull()
    expect(toPay(offers, { x: bought('cement', 10, 1) }, 'cement')?.forecast).toBeNull()
    expect(toPay(offers, { x: bought('cement', needKg, 1) }, 'cement')?.toPay?.value).toBe(0)
  })

  it('of boards is the boards not there yet and their trip, which the last board still takes', () => {
    const offers = { a: offered('rail', 4, 50, { lotName: 'length', transportMinor: 9 }) }
    const boards = toPay(offers, {}, 'rail')?.lines[0]?.lots.value ?? Number.NaN
    expect(boards).toBeGreaterThan(1)
    expect(toPay(offers, {}, 'rail')?.toPay?.value).toBe(50 * boards + 9)
    const allButOne = { x: bought('rail', 4 * (boards - 1), 1) }
    expect(toPay(offers, allButOne, 'rail')?.toPay?.value).toBe(50 + 9)
    expect(toPay({ a: offered('rail', 4, null) }, { x: bought('rail', 1, 1) }, 'rail')?.toPay).toBeNull()
  })
})

describe('a price that moves', () => {
  it('moves the total by as much on each of its lots, the reserve with it, and the longest swing stands first', () => {
    const offers = { a: offered('cement', 50, 1000), b: offered('sand', 1, 2000), c: offered('nails', 1, null) }
    const plan = { ...base, offers, money: { ...base.money, contingency: 0 } }
    const { needs, purchase } = workOut(plan)
    const lots = (item: string) => purchase.lines.find((line) => line.item === item)?.lots.value ?? Number.NaN
    const subtotal = lots('cement') * 1000 + lots('sand') * 2000
    const expected = (['cement', 'sand'] as const)
      .map((item) => {
        const own = lots(item) * (item === 'cement' ? 1000 : 2000)
        return { item, lowMinor: subtotal - own / 5, highMinor: subtotal + own / 5, spanMinor: (2 * own) / 5 }
      })
      .toSorted((a, b) => b.spanMinor - a.spanMinor)
    expect(priceSwings(plan, needs)).toEqual(expected)
  })
})
