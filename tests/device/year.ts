import { CATALOGUE_SOILS } from '../../src/core/plan/catalogue.ts'
import type { Plan } from '../../src/core/plan/schema.ts'
import { memoryShelf } from '../../src/device/database/memory-shelf.ts'
import { adoptDocument, beginSession, type PlanSession } from '../../src/device/database/plan-session.ts'
import { documentFromOutside, readPlan } from '../../src/device/database/plan-document.ts'
import { planOf, type Deed } from './plans.ts'

/** A day of 2026 by its number from 0. */
const dayOf = (number: number): string => new Date(Date.UTC(2026, 0, 1 + number)).toISOString().slice(0, 10)

const firingOf = (number: number): Plan['run']['firings'][string] => ({
  day: dayOf(number),
  freshKg: 60 + (number % 40),
  productKg: 20 + (number % 15),
  woodKg: 30 + (number % 20),
  hours: 9 + (number % 4),
  fishCostMinor: 4000 + number,
  woodCostMinor: 300 + number,
  otherCostMinor: null,
  salesMinor: 9000 + number,
  note: number % 7 === 0 ? 'Rain in the afternoon' : '',
})
const spendingOf = (number: number): Plan['spending'][string] => ({
  kind: 'purchase',
  item: 'cement',
  quantity: 1 + (number % 5),
  paidMinor: 1200 + number,
  seller: 'hardware',
  sellerName: 'Corner shop (example)',
  instead: '',
  day: dayOf(number % 365),
  paidBy: null,
  receipt: null,
})
const withFiring = (plan: Plan, id: string, firing: Plan['run']['firings'][string]): Plan => ({
  ...plan,
  run: { ...plan.run, firings: { ...plan.run.firings, [id]: firing } },
})

/**
 * What `who` does in a year of daily work, in turn: half firings noted and a fifth of them put right later, the rest purchases, ticks and decisions made anew.
 */
export function yearOf(who: string, changes: number): Deed[] {
  return Array.from({ length: changes }, (_, number): Deed => {
    const id = `${who}-${String(number)}`
    const tenth = number % 10
    if (tenth < 5) return (plan) => withFiring(plan, id, firingOf(number % 365))
    if (tenth < 7) {
      const before = `${who}-${String(number - 5)}`
      return (plan) => {
        const firing = plan.run.firings[before]
        return firing === undefined ? plan : withFiring(plan, before, { ...firing, salesMinor: 8000 + number })
      }
    }
    if (tenth === 7) return (plan) => ({ ...plan, spending: { ...plan.spending, [id]: spendingOf(number) } })
    if (tenth === 8)
      return (plan) => ({
        ...plan,
        build: { ...plan.build, ticks: { ...plan.build.ticks, [id]: { day: dayOf(number % 365), who } } },
      })
    const soil = CATALOGUE_SOILS[number % CATALOGUE_SOILS.length]?.key ?? ''
    return (plan) => ({ ...plan, ground: { ...plan.ground, soil }, money: { ...plan.money, budgetMinor: number } })
  })
}

const around = () => ({ shelf: memoryShelf(), tabs: { tell: () => {} }, onChange: () => {}, phone: () => 'A phone' })

/** A phone with a plan that begins from answers. */
export const phoneWithPlan = (): PlanSession => beginSession(planOf(), around())

/** A phone that got this document. */
export function phoneWith(document: Uint8Array): PlanSession {
  const doc = documentFromOutside(document)
  const plan = doc.ok ? readPlan(doc.value) : null
  if (!doc.ok || plan?.ok !== true) throw new Error('no document of a plan')
  return adoptDocument(doc.value, plan.value, around())
}

/** Does these deeds one after another, each an edit of its own. */
export function doAll(session: PlanSession, deeds: readonly Deed[]): void {
  for (const deed of deeds) if (!session.edit(deed(session.plan())).ok) throw new Error('a deed was refused')
}
