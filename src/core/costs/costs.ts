import { derive, sumOf, typed, type Derived } from '../basics/derived.ts'
import { wholeNear } from '../basics/count.ts'
import type { Finding } from '../basics/finding.ts'
import type { Offer, Plan } from '../plan/schema.ts'
import type { PurchaseLine } from '../purchase/line.ts'
import { SECTIONS, type Need, type Section } from '../quantities/need.ts'
import type { ItemKey } from '../quantities/items.ts'

export interface SellerCost {
  readonly seller: Offer['seller']
  readonly sellerName: string
  readonly lines: readonly PurchaseLine[]
  readonly cost: Derived<'money'>
  /** Lines without a price: their cost is not in the sum. */
  readonly unpriced: number
}

/** Money of the plan in minor units. Where lines have no price the total says what is priced so far, and `unpriced` names the rest. */
export interface Costs {
  readonly sections: readonly { readonly section: Section; readonly cost: Derived<'money'> }[]
  readonly sellers: readonly SellerCost[]
  readonly subtotal: Derived<'money'>
  readonly contingency: Derived<'money'>
  readonly total: Derived<'money'>
  readonly unpriced: readonly ItemKey[]
  /** What the budget leaves; negative where it is short; null without a budget. */
  readonly left: Derived<'money'> | null
  readonly findings: readonly Finding[]
}

export function costs(plan: Plan, lines: readonly PurchaseLine[]): Costs {
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
    sections: sectionCosts(lines),
    sellers: sellerCosts(lines),
    subtotal,
    contingency,
    total,
    unpriced,
    left,
    findings: findingsOf(unpriced.length, left),
  }
}

function budgetLeft(plan: Plan, total: Derived<'money'>): Derived<'money'> | null {
  if (plan.money.budgetMinor === null) return null
  const budget = typed('cost.budget', 'money', plan.money.budgetMinor, 'money.budgetMinor')
  return derive('cost.left', 'money', 'b − t', { b: budget, t: total }, (of) => of.b - of.t)
}

function findingsOf(unpriced: number, left: Derived<'money'> | null): Finding[] {
  const findings: Finding[] = []
  const add = (level: Finding['level'], kind: string, args: Finding['args']) =>
    findings.push({ level, kind, args, card: 'money', remedies: [] })
  if (unpriced > 0) add('caution', 'money.unpriced', { count: unpriced })
  if (left !== null && left.value < 0)
    add('problem', 'money.over-budget', { short: { value: -left.value, unit: 'money' } })
  if (left !== null && left.value >= 0 && unpriced === 0)
    add('good', 'money.within-budget', { left: { value: left.value, unit: 'money' } })
  return findings
}

function sellerCosts(lines: readonly PurchaseLine[]): SellerCost[] {
  const groups = new Map<string, PurchaseLine[]>()
  for (const line of lines) {
    const key = `${line.seller}\n${line.sellerName}`
    const group = groups.get(key)
    if (group === undefined) groups.set(key, [line])
    else group.push(line)
  }
  return [...groups.values()].map((group) => {
    const [first] = group
    if (first === undefined) throw new Error('a seller without lines')
    const { seller, sellerName } = first
    const priced = group.flatMap(({ cost }) => (cost === null ? [] : [cost]))
    return {
      seller,
      sellerName,
      lines: group,
      cost: sumOf('cost.seller', 'money', priced, {
        args: { seller: sellerName === '' ? `seller.${seller}` : sellerName },
      }),
      unpriced: group.length - priced.length,
    }
  })
}

/** Cost of each part of the kiln. What several parts share is divided by what each needs, whole to the minor unit. */
function sectionCosts(lines: readonly PurchaseLine[]): Costs['sections'] {
  const parts = new Map<Section, Derived<'money'>[]>()
  for (const line of lines) {
    if (line.cost === null) continue
    for (const [section, cost] of sharesOf(line.cost, line.needs)) {
      const list = parts.get(section)
      if (list === undefined) parts.set(section, [cost])
      else list.push(cost)
    }
  }
  return SECTIONS.flatMap((section) => {
    const list = parts.get(section)
    return list === undefined
      ? []
      : [{ section, cost: sumOf('cost.section', 'money', list, { args: { section: `section.${section}` } }) }]
  })
}

/**
 * Shares of one cost by need: each is the rounded cost up to and with this need, less what went before, so that the shares add up exactly and
 * none is negative.
 */
function sharesOf(cost: Derived<'money'>, needs: readonly Need[]): [Section, Derived<'money'>][] {
  const [only] = needs
  if (only !== undefined && needs.every((one) => one.section === only.section)) return [[only.section, cost]]
  const all = sumOf(
    'cost.need-all',
    only?.gross.unit ?? '1',
    needs.map((one) => one.gross),
  )
  let before: Derived<'money'> | null = null
  return needs.map((one, at) => {
    const reached = sumOf(
      'cost.need-reached',
      all.unit,
      needs.slice(0, at + 1).map((each) => each.gross),
    )
    const upTo = derive('cost.up-to', 'money', 'round(c · r / a)', { c: cost, r: reached, a: all }, (of) =>
      wholeNear((of.c * of.r) / of.a),
    )
    const share =
      before === null
        ? upTo
        : derive('cost.share', 'money', 'u − b', { u: upTo, b: before }, (of) => of.u - of.b, {
            args: { section: `section.${one.section}` },
          })
    before = upTo
    return [one.section, share]
  })
}
