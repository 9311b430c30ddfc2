import { wholeNear } from '../basics/count.ts'
import { derive, sumOf, typed, type Derived } from '../basics/derived.ts'
import type { Finding } from '../basics/finding.ts'
import type { Plan } from '../plan/schema.ts'
import type { PurchaseLine } from '../purchase/line.ts'
import type { ItemKey } from '../quantities/items.ts'

/** Money of the plan in minor units. Where lines have no price the total says what is priced so far, and `unpriced` names the rest. */
export interface Totals {
  readonly subtotal: Derived<'money'>
  readonly contingency: Derived<'money'>
  readonly total: Derived<'money'>
  readonly unpriced: readonly ItemKey[]
  /** What the budget leaves; negative where it is short; null without a budget. */
  readonly left: Derived<'money'> | null
  readonly findings: readonly Finding[]
}

/**
 * Subtotal of the priced lines, reserve as a share of it rounded to the minor unit, total, and what the budget
 * leaves.
 */
export function totals(plan: Plan, lines: readonly PurchaseLine[]): Totals {
  const priced = lines.flatMap(({ cost }) => (cost === null ? [] : [cost]))
  const unpriced = lines.filter((line) => line.cost === null).map((line) => line.item)
  const complete = unpriced.length === 0
  const subtotal = sumOf(complete ? 'cost.lines' : 'cost.lines-priced', 'money', priced)
  const share = typed('cost.contingency-share', '1', plan.money.contingency, 'money.contingency')
  const contingency = derive('cost.contingency', 'money', 'round(s · k)', { s: subtotal, k: share }, (of) =>
    wholeNear(of.s * of.k),
  )
  const total = derive(
    complete ? 'cost.total' : 'cost.priced-so-far',
    'money',
    's + k',
    { s: subtotal, k: contingency },
    (of) => of.s + of.k,
  )
  const left = budgetLeft(plan, total)
  return {
    subtotal,
    contingency,
    total,
    unpriced,
    left,
    findings: findingsOf(unpriced.length, left, total),
  }
}

function budgetLeft(plan: Plan, total: Derived<'money'>): Derived<'money'> | null {
  if (plan.money.budgetMinor === null) return null
  const budget = typed('cost.budget', 'money', plan.money.budgetMinor, 'money.budgetMinor')
  return derive('cost.left', 'money', 'b − t', { b: budget, t: total }, (of) => of.b - of.t)
}

function findingsOf(unpriced: number, left: Derived<'money'> | null, total: Derived<'money'>): Finding[] {
  const findings: Finding[] = []
  const add = (level: Finding['level'], kind: string, args: Finding['args']) =>
    findings.push({ level, kind, args, card: 'money', remedies: [] })
  if (!Number.isSafeInteger(total.value)) add('problem', 'money.too-large', {})
  if (unpriced > 0) add('caution', 'money.unpriced', { count: unpriced })
  if (left !== null && left.value < 0)
    add('problem', 'money.over-budget', { short: { value: -left.value, unit: 'money' } })
  if (left !== null && left.value >= 0 && unpriced === 0)
    add('good', 'money.within-budget', { left: { value: left.value, unit: 'money' } })
  return findings
}
