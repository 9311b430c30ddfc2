import Big from 'big.js'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { groupAccount } from '../../../src/core/costs/group-account.ts'
import type { Plan } from '../../../src/core/plan/schema.ts'
import { bought, examplePlan } from './plans.ts'

const base: Plan = { ...examplePlan('one-chamber'), spending: {}, contributions: {}, payouts: {}, members: {} }

const amount = fc.integer({ min: 0, max: 1_000_000 })
const member = fc.constantFrom('ana', 'ben', 'cho', 'gone')
const record = <T>(value: fc.Arbitrary<T>) =>
  fc.dictionary(fc.string({ minLength: 1, maxLength: 8 }), value, { maxKeys: 8 })

/** Any group's records: also of members whom the list has lost. */
const group: fc.Arbitrary<Plan> = fc
  .record({
    members: fc.record({
      ana: fc.record({ name: fc.constant('Net menders'), weight: fc.integer({ min: 0, max: 5 }) }),
      ben: fc.record({ name: fc.constant('Boat crew'), weight: fc.integer({ min: 0, max: 5 }) }),
      cho: fc.record({ name: fc.constant('Smokers'), weight: fc.integer({ min: 0, max: 5 }) }),
    }),
    contributions: record(
      fc.oneof(
        fc.record({
          kind: fc.constantFrom<'cash' | 'material'>('cash', 'material'),
          member,
          promisedMinor: amount,
          givenMinor: amount,
          note: fc.constant(''),
          day: fc.constant(null),
        }),
        fc.record({
          kind: fc.constant('labour' as const),
          member,
          promisedDays: fc.integer({ min: 0, max: 40 }).map((halves) => halves / 2),
          givenDays: fc.integer({ min: 0, max: 40 }).map((halves) => halves / 2),
          rateMinor: fc.integer({ min: 0, max: 10_000 }),
          note: fc.constant(''),
          day: fc.constant(null),
        }),
      ),
    ),
    spending: record(
      fc
        .tuple(fc.constantFrom<'purchase' | 'return'>('purchase', 'return'), amount, fc.option(member, { nil: null }))
        .map(([kind, paid, paidBy]) => bought('cement', 1, paid, { kind, paidBy })),
    ),
    payouts: record(fc.record({ member, amountMinor: amount, day: fc.constant(null) })),
  })
  .map((records) => ({ ...base, ...records }))

describe('the book of a group', () => {
  it('loses nothing: what is put in is used up or in the box, and all settle to the minor unit', () => {
    fc.assert(
      fc.property(group, (plan) => {
        const account = groupAccount(plan)
        const putIn = account.members.reduce((sum, one) => sum.plus(one.putIn.value), new Big(0))
        expect(putIn.minus(account.used.value).eq(account.cashInBox.value)).toBe(true)
        const shares = account.members.reduce((sum, one) => sum.plus(one.shareMinor), new Big(0))
        expect(account.members.length === 0 || shares.eq(account.used.value)).toBe(true)

        const left = new Map<string | null, number>(account.members.map(({ id, balanceMinor }) => [id, balanceMinor]))
        left.set(null, -account.cashInBox.value)
        for (const { from, to, amountMinor } of account.settlement) {
          expect(Number.isInteger(amountMinor) && amountMinor > 0).toBe(true)
          left.set(from, (left.get(from) ?? 0) + amountMinor)
          left.set(to, (left.get(to) ?? 0) - amountMinor)
        }
        expect([...left.values()].every((balance) => balance === 0)).toBe(true)
        expect(account.settlement.length).toBeLessThanOrEqual(account.members.length)
      }),
      { numRuns: 500 },
    )
  })

  it('is the same whichever phone wrote first', () => {
    fc.assert(
      fc.property(group, (plan) => {
        const turned = <T>(of: Readonly<Record<string, T>>) => Object.fromEntries(Object.entries(of).toReversed())
        const other = {
          ...plan,
          members: turned(plan.members),
          contributions: turned(plan.contributions),
          spending: turned(plan.spending),
          payouts: turned(plan.payouts),
        }
        expect(groupAccount(other)).toEqual(groupAccount(plan))
      }),
      { numRuns: 100 },
    )
  })

  it('holds records of two treasurers together: none lost, none twice', () => {
    const shared = { both: bought('cement', 1, 100) }
    const one = { ...base, spending: { ...shared, mine: bought('sand', 1, 20) } }
    const other = { ...base, spending: { ...shared, theirs: bought('stone', 1, 3) } }
    const merged = { ...base, spending: { ...one.spending, ...other.spending } }
    expect(groupAccount(merged).used.value).toBe(123)
  })

  // Plain arithmetic: ana gives 600 cash, ben 300, the box buys for 500, ben pays 100 himself; equal shares of 600 are 300.
  it('says who is owed what', () => {
    const plan: Plan = {
      ...base,
      members: { ana: { name: 'Net menders', weight: 1 }, ben: { name: 'Boat crew', weight: 1 } },
      contributions: {
        a: { kind: 'cash', member: 'ana', promisedMinor: 700, givenMinor: 600, note: '', day: null },
        b: { kind: 'cash', member: 'ben', promisedMinor: 300, givenMinor: 300, note: '', day: null },
      },
      spending: { x: bought('cement', 50, 500), y: bought('nails', 1, 100, { paidBy: 'ben' }) },
    }
    const account = groupAccount(plan)
    expect(account.cashInBox.value).toBe(400)
    expect(account.used.value).toBe(600)
    expect(account.members.map(({ id, due, balanceMinor }) => [id, due.value, balanceMinor])).toEqual([
      ['ana', 100, 300],
      ['ben', 0, 100],
    ])
    expect(account.settlement).toEqual([
      { from: null, to: 'ana', amountMinor: 300 },
      { from: null, to: 'ben', amountMinor: 100 },
    ])
    expect(account.findings).toEqual([])
  })

  it('warns when more left the box than was put in', () => {
    const account = groupAccount({ ...base, spending: { x: bought('cement', 50, 500) } })
    expect(account.cashInBox.value).toBe(-500)
    expect(account.findings.map(({ kind }) => kind)).toEqual(['money.box-short'])
  })
})
