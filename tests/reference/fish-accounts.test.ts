import { describe, expect, it } from 'vitest'
import { cited, type Derived } from '../../src/core/basics/derived.ts'
import { firingAccount } from '../../src/core/schedule/firing-account.ts'
import { firingLog } from '../../src/core/schedule/firing-log.ts'
import type { Firing } from '../../src/core/plan/schema.ts'
import { plainPlan } from '../core/fish/plans.ts'

/**
 * FAO Fisheries and Aquaculture Technical Paper 535, table 9: accounts of one firing, 4 m block kiln and open grill, in US dollars.
 * Amounts with prices: fresh fish 0.6 a kg, wood 0.07 a kg, salt 0.2 a kg, water 1, baskets 1, labour 2; transport and cleaning as sums.
 */
const KILN = {
  fresh: 300,
  wood: 100,
  salt: 10,
  water: 2,
  baskets: 3,
  labour: 3,
  transport: 15,
  cleaning: 1,
  smoked: 105,
  price: 3.5,
}
const GRILL = {
  fresh: 150,
  wood: 150,
  salt: 5,
  water: 1,
  baskets: 2,
  labour: 2,
  transport: 7,
  cleaning: 0.5,
  smoked: 60,
  price: 3,
}
type Account = typeof KILN

const kg = (value: number): Derived<'kg'> => cited('test', 'kg', value, 'fao-tp535')
const otherCents = (of: Account) =>
  of.salt * 20 + of.water * 100 + of.baskets * 100 + of.labour * 200 + of.transport * 100 + of.cleaning * 100

const accountOf = (of: Account) => {
  const plan = plainPlan()
  const run = {
    ...plan.run,
    freshPriceMinor: 60,
    woodPriceMinor: 7,
    smokedPriceMinor: of.price * 100,
    otherCostMinor: otherCents(of),
  }
  return firingAccount({ ...plan, run }, { fresh: kg(of.fresh), wood: kg(of.wood), product: kg(of.smoked) })
}

const firingOf = (of: Account): Firing => ({
  day: '2026-03-01',
  freshKg: of.fresh,
  productKg: of.smoked,
  woodKg: of.wood,
  hours: null,
  fishCostMinor: of.fresh * 60,
  woodCostMinor: of.wood * 7,
  otherCostMinor: otherCents(of),
  salesMinor: of.smoked * of.price * 100,
  note: '',
})

const logOf = (of: Account) => {
  const plan = plainPlan()
  return firingLog({ ...plan, run: { ...plan.run, firings: { one: firingOf(of) } } }).firings[0]
}

describe.each([
  ['the block kiln', KILN, { cost: 216, sales: 367.5, net: 151.5, left: 0.35, perFresh: 0.333, perSmoked: 0.952 }],
  ['the open grill', GRILL, { cost: 116, sales: 180, net: 64, left: 0.4, perFresh: 1, perSmoked: 2.5 }],
])('accounts of one firing of %s', (_name, of, published) => {
  it('cost what was published', () => expect((accountOf(of)?.cost.value ?? 0) / 100).toBeCloseTo(published.cost, 9))
  it('bring what was published', () => expect((accountOf(of)?.sales.value ?? 0) / 100).toBeCloseTo(published.sales, 9))
  it('leave what was published', () => expect((accountOf(of)?.net.value ?? 0) / 100).toBeCloseTo(published.net, 9))
  it('leave the same in the log', () => expect((logOf(of)?.net?.value ?? 0) / 100).toBeCloseTo(published.net, 9))
  it('have the published yield', () => expect(logOf(of)?.yieldOfFresh?.value).toBeCloseTo(published.left, 9))
  it('have the published wood per kilogram', () => {
    expect(logOf(of)?.woodPerFresh?.value).toBeCloseTo(published.perFresh, 3)
    expect(logOf(of)?.woodPerProduct?.value).toBeCloseTo(published.perSmoked, 3)
  })
  it('stay inside the expected wood', () => expect(logOf(of)?.woodIs).toBe('within'))
})
