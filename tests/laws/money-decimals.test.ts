import Big from 'big.js'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { amount, readMoney } from '../../src/app/words/money.ts'
import { splitMinor } from '../../src/core/basics/money.ts'
import { groupAccount } from '../../src/core/costs/group-account.ts'
import { majorText, readDecimal } from '../../src/core/documents/price-table.ts'
import type { Plan } from '../../src/core/plan/schema.ts'
import { bought, examplePlan } from '../core/costs/plans.ts'
import { cases } from './cases.ts'

/** Currencies by the number of digits that ISO 4217 (table A.1) gives them. */
const CURRENCIES = [
  { code: 'XOF', digits: 0 },
  { code: 'GHS', digits: 2 },
  { code: 'TND', digits: 3 },
] as const

const base: Plan = { ...examplePlan('one-chamber'), spending: {}, contributions: {}, payouts: {} }
const gift = (member: string, givenMinor: number) => ({
  kind: 'cash' as const,
  member,
  promisedMinor: givenMinor,
  givenMinor,
  note: '',
  day: null,
})

describe.each(CURRENCIES)('money with $digits digits, $code', (currency) => {
  const { digits } = currency
  const unit = new Big(10).pow(digits)
  /** An amount as people say it, exact: 12.345 has at most as many decimals as the currency. */
  const major = fc.integer({ min: 0, max: 1_000_000_000 }).map((minor) => new Big(minor).div(unit))
  const typed = (text: Big) => {
    const minor = readMoney(text.toFixed(digits), currency)
    if (minor === null) throw new Error(`not read: ${text.toFixed(digits)}`)
    return minor
  }

  it('is read and written exactly as a decimal library says, and no finer than the currency', () => {
    fc.assert(
      fc.property(major, (exact) => {
        const minor = typed(exact)
        expect(new Big(minor).eq(exact.times(unit))).toBe(true)
        expect(majorText(minor, digits)).toBe(exact.toFixed(digits))
        expect(readDecimal(majorText(minor, digits))).toBe(Number(exact))
        expect(amount(minor, currency).replaceAll(/[^\d.]/g, '')).toBe(exact.toFixed(digits))
        expect(readMoney(`${exact.toFixed(digits)}${digits === 0 ? '.5' : '5'}`, currency)).toBeNull()
      }),
      { numRuns: cases(300) },
    )
  })

  it('in the box is what was given less what was bought and paid out, and shares of it add up', () => {
    fc.assert(
      fc.property(
        fc.array(major, { minLength: 3, maxLength: 9 }),
        fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 3, maxLength: 3 }),
        (amounts, weights) => {
          const ids = ['a', 'b', 'c']
          const at = <T>(part: number, make: (exact: Big, index: number) => T) =>
            Object.fromEntries(
              amounts.flatMap((exact, index) =>
                index % 3 === part ? [[`r${String(index)}`, make(exact, index)]] : [],
              ),
            )
          const plan: Plan = {
            ...base,
            currency,
            members: Object.fromEntries(ids.map((id, index) => [id, { name: id, weight: weights[index] ?? 1 }])),
            contributions: at(0, (exact, index) => gift(ids[index % 2] ?? 'a', typed(exact))),
            spending: at(1, (exact, index) =>
              bought('cement', 1, typed(exact), { kind: index % 2 === 0 ? 'purchase' : 'return' }),
            ),
            payouts: at(2, (exact, index) => ({ member: ids[index % 3] ?? 'a', amountMinor: typed(exact), day: null })),
          }
          const total = amounts.reduce((sum, exact, index) => {
            const back = index % 3 === 1 && index % 2 === 1
            return index % 3 === 0 || back ? sum.plus(exact) : sum.minus(exact)
          }, new Big(0))
          const { cashInBox, used, members } = groupAccount(plan)
          expect(new Big(cashInBox.value).div(unit).eq(total)).toBe(true)
          const shares = members.map(({ shareMinor }) => new Big(shareMinor).div(unit))
          expect(shares.reduce((sum, one) => sum.plus(one), new Big(0)).eq(new Big(used.value).div(unit))).toBe(true)
          // Each share within one smallest coin of the exact one.
          const all = weights.reduce((sum, one) => sum + one, 0)
          for (const [index, share] of shares.entries()) {
            const part = all === 0 ? new Big(1).div(3) : new Big(weights[index] ?? 0).div(all)
            expect(part.times(used.value).div(unit).minus(share).abs().times(unit).lt(1)).toBe(true)
          }
        },
      ),
      { numRuns: cases(200) },
    )
  })

  it('is split by the largest remainder, worked by a decimal library', () => {
    fc.assert(
      fc.property(
        major,
        fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 1, maxLength: 8 }),
        (exact, weights) => {
          const minor = typed(exact)
          const all = weights.reduce((sum, one) => sum + one, 0)
          const exactShares = weights.map((weight) => new Big(minor).times(weight).div(all))
          const floors = exactShares.map((share) => share.round(0, Big.roundDown))
          const left = Number(floors.reduce((sum, one) => sum.minus(one), new Big(minor)))
          const parts = splitMinor(minor, weights)
          expect(parts.reduce((sum, one) => sum.plus(one), new Big(0)).eq(minor)).toBe(true)
          const got = parts.map((part, index) => Number(new Big(part).minus(floors[index] ?? 0)))
          expect(got.every((extra) => extra === 0 || extra === 1)).toBe(true)
          expect(got.filter((extra) => extra === 1)).toHaveLength(left)
          // Nobody who got nothing more had a larger remainder than anybody who did (equal ones may fall either way).
          const rest = exactShares.map((share, index) => Number(share.minus(floors[index] ?? 0)))
          const least = Math.min(...rest.filter((_, index) => got[index] === 1))
          expect(rest.filter((remainder, index) => got[index] === 0 && remainder > least + 1e-6)).toEqual([])
        },
      ),
      { numRuns: cases(300) },
    )
  })
})
