import { describe, expect, it } from 'vitest'
import { spendingAccount } from '../../../src/core/costs/spending.ts'
import type { Plan } from '../../../src/core/plan/schema.ts'
import { workOut } from '../../../src/core/work-out.ts'
import { bought, examplePlan } from './plans.ts'

const base: Plan = { ...examplePlan('one-chamber'), spending: {}, contributions: {}, payouts: {} }
const accountOf = (spending: Plan['spending']) => {
  const plan = { ...base, spending }
  const { purchase, costs } = workOut(plan)
  return spendingAccount(plan, purchase.lines, costs)
}
const itemOf = (account: ReturnType<typeof accountOf>, item: string) => {
  const found = account.items.find((one) => one.item === item)
  if (found === undefined) throw new Error(item)
  return found
}

describe('spending against the list', () => {
  it('forecasts the list itself before anything is bought', () => {
    const { costs } = workOut(base)
    const account = accountOf({})
    expect(account.paid.value).toBe(0)
    expect(account.forecast.value).toBe(costs.subtotal.value)
    expect(account.over.value).toBe(0)
    expect(account.findings).toEqual([])
  })

  it('takes what is bought off what is missing, and a return back on', () => {
    const need = itemOf(accountOf({}), 'wall-unit').missing.value
    const some = accountOf({ a: bought('wall-unit', 20, 9000) })
    expect(itemOf(some, 'wall-unit').missing.value).toBeCloseTo(need - 20, 9)
    expect(itemOf(some, 'wall-unit').paid.value).toBe(9000)
    const back = accountOf({ a: bought('wall-unit', 20, 9000), b: bought('wall-unit', 5, 2000, { kind: 'return' }) })
    expect(itemOf(back, 'wall-unit').missing.value).toBeCloseTo(need - 15, 9)
    expect(itemOf(back, 'wall-unit').paid.value).toBe(7000)
    expect(back.paid.value).toBe(7000)
  })

  it('asks nothing more for an item that is all there, whatever it really cost', () => {
    const account = accountOf({ a: bought('cement', 100, 99_000) })
    const cement = itemOf(account, 'cement')
    expect(cement.missing.value).toBe(0)
    expect(cement.toPay?.value).toBe(0)
    expect(cement.forecast?.value).toBe(99_000)
    expect(account.over.value).toBe(99_000 - (cement.planned?.value ?? 0))
    expect(account.findings.map(({ kind }) => kind)).toEqual(['money.over-plan'])
  })

  it('counts a substitute for what it stands in for', () => {
    const account = accountOf({ a: bought('cement', 75, 6000, { instead: 'Masonry cement in sacks of 25 kg' }) })
    expect(itemOf(account, 'cement').missing.value).toBe(0)
  })

  it('buys the boards that are still missing by the cutting plan', () => {
    const { purchase } = workOut(base)
    const rails = purchase.lines.filter(({ item }) => item === 'rail')
    const [first] = rails
    if (first === undefined) throw new Error('no rails')
    const account = accountOf({ a: bought('rail', first.bought.value, 1) })
    const rest = rails.slice(1).reduce((sum, line) => sum + (line.cost?.value ?? 0), 0)
    expect(itemOf(account, 'rail').toPay?.value).toBe(rest)
  })

  it('keeps money for things that no list knows', () => {
    const account = accountOf({ a: bought('tea-for-the-helpers', 1, 500) })
    expect(account.paid.value).toBe(500)
    expect(account.over.value).toBe(500)
    expect(account.findings.map(({ kind }) => kind)).toContain('money.unknown-item')
  })

  it('divides what is paid over the parts of the kiln to the minor unit', () => {
    const account = accountOf({ a: bought('cement', 50, 5101), b: bought('sand', 0.5, 4499), c: bought('mesh', 3, 7) })
    const parts = account.sections.reduce((sum, { cost }) => sum + cost.value, 0)
    expect(parts).toBe(5101 + 4499 + 7)
    expect(account.sections.every(({ cost }) => Number.isInteger(cost.value) && cost.value >= 0)).toBe(true)
  })
})
