import { lotsFor } from '../basics/count.ts'
import { counted, derive, sumOf, typed, type Derived } from '../basics/derived.ts'
import { byText } from '../basics/order.ts'
import type { Finding } from '../basics/finding.ts'
import type { Spending } from '../plan/money-records.ts'
import type { Plan } from '../plan/schema.ts'
import { argsOf, type PurchaseLine } from '../purchase/line.ts'
import { cheapestMix } from '../purchase/lot-mix.ts'
import { isPriced, offersByItem, termsFor } from '../purchase/offers.ts'
import { isItemKey, ITEM_KEYS, itemOf, type ItemKey } from '../quantities/items.ts'
import type { Costs } from './costs.ts'
import { sectionCosts } from './sections.ts'

/** One item of the list: what was planned, what was really got and paid, what is still missing and what the item will have cost. */
export interface ItemSpending {
  readonly item: ItemKey
  readonly lines: readonly PurchaseLine[]
  readonly records: readonly (readonly [id: string, record: Spending])[]
  /** Money planned; null where the list has no price. */
  readonly planned: Derived<'money'> | null
  readonly paid: Derived<'money'>
  readonly got: Derived
  /** Of the need with its waste, what is not got yet. */
  readonly missing: Derived
  /** Money that the rest will take at the prices on hand; null where there is none. */
  readonly toPay: Derived<'money'> | null
  readonly forecast: Derived<'money'> | null
}

/** The item of a record for something that no list has, a fare or a meal: its name stands in `instead`. */
export const OTHER_THINGS = 'other'

/** Planned against real, over all items. */
export interface SpendingAccount {
  readonly items: readonly ItemSpending[]
  readonly paid: Derived<'money'>
  readonly toPay: Derived<'money'>
  /** What the kiln will have cost: paid and still to pay. Knows only what has a price. */
  readonly forecast: Derived<'money'>
  /** Forecast over the list, before what is set aside; negative where it comes cheaper. */
  readonly over: Derived<'money'>
  /** What is left of the money set aside; negative where more is needed than was set aside. */
  readonly reserveLeft: Derived<'money'>
  /** Paid for things that are not on the list. */
  readonly others: Derived<'money'>
  readonly sections: Costs['sections']
  readonly findings: readonly Finding[]
}

/**
 * What was really bought and paid against the list: forecast = paid + what the rest costs at the prices on hand; over
 * = forecast − planned, before the reserve.
 */
export function spendingAccount(plan: Plan, lines: readonly PurchaseLine[], costs: Costs): SpendingAccount {
  const records = Object.entries(plan.spending).toSorted(([a], [b]) => byText(a, b))
  const offers = offersByItem(plan)
  const items = ITEM_KEYS.flatMap((item) => {
    const own = lines.filter((line) => line.item === item)
    const bought = records.filter(([, record]) => record.item === item)
    return own.length === 0 && bought.length === 0 ? [] : [itemSpending(item, own, bought, offers.get(item))]
  })
  // Money that went for something no list knows is spent all the same.
  const others = records
    .filter(([, { item }]) => !isItemKey(item))
    .map(([key, { kind, paidMinor }]) => {
      const p = typed('spent.record', 'money', paidMinor, `spending.${key}.paidMinor`, argsOf(OTHER_THINGS))
      return kind === 'purchase'
        ? p
        : derive('spent.record-back', 'money', '0 − p', { p }, (of) => 0 - of.p, { args: argsOf(OTHER_THINGS) })
    })
  const paid = sumOf('spent.paid', 'money', [...items.map((one) => one.paid), ...others])
  const toPay = sumOf(
    'spent.to-pay',
    'money',
    items.flatMap((one) => (one.toPay === null ? [] : [one.toPay])),
  )
  const forecast = derive('spent.forecast', 'money', 'p + q', { p: paid, q: toPay }, (of) => of.p + of.q)
  const over = derive('spent.over', 'money', 'f − s', { f: forecast, s: costs.subtotal }, (of) => of.f - of.s)
  return {
    items,
    paid,
    toPay,
    forecast,
    over,
    reserveLeft: derive(
      'spent.reserve-left',
      'money',
      'k − max(0, o)',
      { k: costs.contingency, o: over },
      (of) => of.k - Math.max(0, of.o),
    ),
    others: sumOf('spent.others', 'money', [
      ...items.flatMap(({ lines, paid: cost }) => (lines.length === 0 ? [cost] : [])),
      ...others,
    ]),
    sections: sectionCosts(
      items.flatMap(({ paid: cost, lines: [first] }) => (first === undefined ? [] : [{ cost, needs: first.needs }])),
    ),
    findings: findingsOf(plan, records, over, costs),
  }
}

function itemSpending(
  item: ItemKey,
  lines: readonly PurchaseLine[],
  records: ItemSpending['records'],
  offers: Parameters<typeof termsFor>[1],
): ItemSpending {
  const args = argsOf(item)
  const unit = itemOf(item).unit
  const bought = records.filter(([, { kind }]) => kind === 'purchase')
  const back = records.filter(([, { kind }]) => kind === 'return')
  const money = (id: string, list: ItemSpending['records']) =>
    sumOf(
      id,
      'money',
      list.map(([key, { paidMinor }]) => typed('spent.record', 'money', paidMinor, `spending.${key}.paidMinor`, args)),
      { args },
    )
  const amount = (id: string, list: ItemSpending['records']) =>
    sumOf(
      id,
      unit,
      list.map(([key, { quantity }]) => typed('spent.amount', unit, quantity, `spending.${key}.quantity`, args)),
      { args },
    )
  const paid = derive(
    'spent.item',
    'money',
    'p − r',
    { p: money('spent.purchases', bought), r: money('spent.returns', back) },
    (of) => of.p - of.r,
    { args },
  )
  const got = derive(
    'spent.got',
    unit,
    'b − r',
    { b: amount('spent.bought', bought), r: amount('spent.back', back) },
    (of) => of.b - of.r,
    { args },
  )
  const wanted = lines[0]?.gross ?? counted('spent.nothing-wanted', unit, 0, args)
  const missing = derive(
    'spent.missing',
    unit,
    'max(0, g − b)',
    { g: wanted, b: got },
    (of) => Math.max(0, of.g - of.b),
    { args },
  )
  const planned = plannedCost(lines, args)
  const toPay = restCost(item, lines, got, missing, offers)
  return {
    item,
    lines,
    records,
    planned,
    paid,
    got,
    missing,
    toPay,
    forecast:
      toPay === null
        ? null
        : derive('spent.item-forecast', 'money', 'p + q', { p: paid, q: toPay }, (of) => of.p + of.q, { args }),
  }
}

function plannedCost(lines: readonly PurchaseLine[], args: ReturnType<typeof argsOf>): Derived<'money'> | null {
  const costs = lines.flatMap(({ cost }) => (cost === null ? [] : [cost]))
  return costs.length < lines.length ? null : sumOf('spent.planned', 'money', costs, { args })
}

/**
 * Money for what is missing. Items that are divided take the cheapest mix of whole lots for the rest; things cut from stock take the lots
 * of the list that are not there yet, so that the cutting plan still holds.
 */
function restCost(
  item: ItemKey,
  lines: readonly PurchaseLine[],
  got: Derived,
  missing: Derived,
  offers: Parameters<typeof termsFor>[1],
): Derived<'money'> | null {
  const args = argsOf(item)
  if (missing.value <= 0 || lines.length === 0) return counted('spent.nothing-to-pay', 'money', 0, args)
  if (itemOf(item).cut !== undefined) {
    let have = got.value
    let cost = 0
    for (const line of lines) {
      if (line.price === null) return null
      const lots = Math.max(0, lotsFor(line.bought.value - have, line.bought.value / line.lots.value))
      have = Math.max(0, have - line.bought.value)
      cost += lots * line.price.value + (lots > 0 ? (line.carriage?.value ?? 0) : 0)
    }
    return counted('spent.rest-cut', 'money', cost, args)
  }
  const terms = termsFor(item, offers).filter(isPriced)
  if (terms.length === 0) return null
  if (got.value === 0) {
    const planned = plannedCost(lines, args)
    if (planned !== null) return planned
  }
  return counted('spent.rest-mix', 'money', cheapestMix(missing.value, terms).costMinor, args)
}

function findingsOf(
  plan: Plan,
  records: readonly (readonly [string, Spending])[],
  over: Derived<'money'>,
  costs: Costs,
): Finding[] {
  const findings: Finding[] = []
  const add = (level: Finding['level'], kind: string, args: Finding['args']) =>
    findings.push({ level, kind, args, card: 'money', remedies: [] })
  if (records.length === 0) return findings
  const strange = records.filter(([, { item }]) => !isItemKey(item) && item !== OTHER_THINGS).length
  if (strange > 0) add('caution', 'money.unknown-item', { count: strange })
  if (over.value > costs.contingency.value)
    add('problem', 'money.over-plan', { over: { value: over.value - costs.contingency.value, unit: 'money' } })
  else if (over.value > 0)
    add('caution', 'money.uses-contingency', {
      used: { value: over.value, unit: 'money' },
      left: { value: costs.contingency.value - over.value, unit: 'money' },
    })
  const nobody = records.filter(([, { paidBy }]) => paidBy !== null && plan.members[paidBy] === undefined).length
  if (nobody > 0) add('caution', 'money.payer-gone', { count: nobody })
  return findings
}
