import * as fc from 'fast-check'
import { CATALOGUE_SOILS, CATALOGUE_UNITS } from '../../src/core/plan/catalogue.ts'
import { mortarWasteFor, newPlan, wallsFor } from '../../src/core/plan/defaults.ts'
import type { Spending } from '../../src/core/plan/money-records.ts'
import type { Offer, Plan } from '../../src/core/plan/schema.ts'

/** A plan as three answers make it. */
export const planOf = (id = 'plan-1', name = 'Three chambers by the landing'): Plan =>
  newPlan({
    id,
    name,
    freshKgPerDay: 60,
    unitKey: 'hollow-450-150-225',
    soil: 'clay-firm',
    currency: { code: 'XXX', digits: 2 },
  })

export const offerOf = (item: string, priceMinor: number | null): Offer => ({
  item,
  lotSize: 50,
  lotName: 'bag',
  priceMinor,
  seller: 'hardware',
  sellerName: 'Corner shop (example)',
  place: '',
  seen: null,
  leastLots: 1,
  transportMinor: 0,
  tripLots: 0,
  widthM: 0,
  chosen: true,
})

/** A bag of cement from the box, with whatever is said otherwise. */
export const spendingOf = (said: Partial<Spending> = {}): Spending => ({
  kind: 'purchase',
  item: 'cement',
  quantity: 50,
  paidMinor: 5300,
  seller: 'hardware',
  sellerName: '',
  instead: '',
  day: '2026-03-02',
  paidBy: null,
  receipt: null,
  ...said,
})

type Contribution = Plan['contributions'][string]
const given = { member: 'm1', note: '', day: null }
const labourOf = (days: number): Contribution => ({
  kind: 'labour',
  ...given,
  promisedDays: days,
  givenDays: 0,
  rateMinor: 500,
})
const cashOf = (amount: number): Contribution => ({ kind: 'cash', ...given, promisedMinor: amount, givenMinor: 0 })

/** What one person does to a plan at one moment. Each keeps every limit, so that it may be done at any time. */
export type Deed = (plan: Plan) => Plan

const withoutOffer = (plan: Plan, id: string): Plan['offers'] =>
  Object.fromEntries(Object.entries(plan.offers).filter(([key]) => key !== id))

/** Deeds of every kind: a plain field, parts that go together, an entry added, changed and taken away. `who` keeps the ids of entries apart. */
export const deedsOf = (who: string): fc.Arbitrary<Deed> => {
  const offerId = fc.constantFrom(`${who}-a`, `${who}-b`, 'shared')
  return fc.oneof(
    fc.integer({ min: 1, max: 8 }).map((count): Deed => (plan) => ({ ...plan, chambers: { ...plan.chambers, count } })),
    fc.double({ min: 0.4, max: 2, noNaN: true }).map((clearSideM): Deed => (plan) => ({
      ...plan,
      chambers: { ...plan.chambers, clearSideM },
    })),
    fc.string({ minLength: 1, maxLength: 80, unit: 'grapheme' }).map((name): Deed => (plan) => ({
      ...plan,
      name: name.slice(0, 80),
    })),
    fc.constantFrom(...CATALOGUE_UNITS).map((unit): Deed => (plan) => ({
      ...plan,
      walls: { ...plan.walls, ...wallsFor(unit) },
      waste: { ...plan.waste, mortar: mortarWasteFor(unit) },
    })),
    fc.constantFrom(...CATALOGUE_SOILS).map(({ key }): Deed => (plan) => ({
      ...plan,
      ground: { ...plan.ground, soil: key },
    })),
    fc.option(fc.integer({ min: 0, max: 1e12 })).map((budgetMinor): Deed => (plan) => ({
      ...plan,
      money: { ...plan.money, budgetMinor },
    })),
    fc.tuple(offerId, fc.option(fc.integer({ min: 0, max: 1e9 }))).map(([id, priceMinor]): Deed => (plan) => ({
      ...plan,
      offers: { ...plan.offers, [id]: offerOf('cement', priceMinor) },
    })),
    offerId.map((id): Deed => (plan) => ({ ...plan, offers: withoutOffer(plan, id) })),
    fc.tuple(offerId, fc.boolean(), fc.nat(1000)).map(([id, isLabour, amount]): Deed => (plan) => ({
      ...plan,
      contributions: { ...plan.contributions, [id]: isLabour ? labourOf(amount / 100) : cashOf(amount) },
    })),
    fc.nat(1000).map((amount): Deed => (plan) => ({
      ...plan,
      contributions: Object.fromEntries(
        Object.entries(plan.contributions).map(([id, one]) => [
          id,
          one.kind === 'labour' ? { ...one, givenDays: amount / 100 } : { ...one, givenMinor: amount },
        ]),
      ),
    })),
    fc.double({ min: 0.05, max: 0.29, noNaN: true }).map((moistureFinal): Deed => (plan) => ({
      ...plan,
      catch: { ...plan.catch, moistureFinal },
    })),
  )
}
