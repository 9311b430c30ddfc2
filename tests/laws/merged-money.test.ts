import Big from 'big.js'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { groupAccount } from '../../src/core/costs/group-account.ts'
import { spendingAccount } from '../../src/core/costs/spending.ts'
import type { Plan } from '../../src/core/plan/schema.ts'
import { workOut } from '../../src/core/work-out.ts'
import { applyUpdate, encodeDocument, stateOf } from '../../src/device/database/document-bytes.ts'
import { changesTo, documentFrom, documentOf, readPlan, write } from '../../src/device/database/plan-document.ts'
import { EVERYTHING } from '../../src/device/sharing/chosen.ts'
import { packHandOver, unpackHandOver } from '../../src/device/sharing/hand-over.ts'
import { bought, examplePlan } from '../core/costs/plans.ts'
import { cases } from './cases.ts'

type Records = Pick<Plan, 'spending' | 'contributions' | 'payouts'>
type Kind = keyof Records

const example = examplePlan('one-chamber')
const members = Object.keys(example.members)
const worked = workOut(example)

const amount = fc.integer({ min: 0, max: 1_000_000 })
const member = fc.constantFrom(...members)
/** What a treasurer writes down: bought or given back, promised and given, paid out. */
const entry: fc.Arbitrary<readonly [Kind, unknown]> = fc.oneof(
  fc
    .tuple(
      fc.constantFrom('cement', 'sand', 'wall-unit', 'staples', 'other'),
      fc.constantFrom<'purchase' | 'return'>('purchase', 'purchase', 'return'),
      amount,
      fc.option(member, { nil: null }),
    )
    .map(([item, kind, paid, paidBy]) => ['spending', bought(item, paid % 50, paid, { kind, paidBy })] as const),
  fc
    .tuple(member, amount, amount)
    .map(
      ([who, promisedMinor, givenMinor]) =>
        ['contributions', { kind: 'cash', member: who, promisedMinor, givenMinor, note: '', day: null }] as const,
    ),
  fc
    .tuple(member, fc.nat(40), amount)
    .map(
      ([who, days, rateMinor]) =>
        [
          'contributions',
          { kind: 'labour', member: who, promisedDays: 20, givenDays: days / 2, rateMinor, note: '', day: null },
        ] as const,
    ),
  fc.tuple(member, amount).map(([who, amountMinor]) => ['payouts', { member: who, amountMinor, day: null }] as const),
)

/** On which phone, what: a new record, one of its own set right or taken away, or a meeting with another phone. */
type Deed =
  | { readonly kind: 'record'; readonly phone: number; readonly entry: readonly [Kind, unknown] }
  | { readonly kind: 'set-right'; readonly phone: number; readonly which: number; readonly minor: number }
  | { readonly kind: 'take-away'; readonly phone: number; readonly which: number }
  | { readonly kind: 'meet'; readonly phone: number; readonly from: number; readonly how: 'whole' | 'changes' | 'code' }

const deedsOn = (phones: number): fc.Arbitrary<Deed[]> => {
  const phone = fc.nat(phones - 1)
  const recorded = fc.record({ kind: fc.constant('record' as const), phone, entry })
  return fc.array(
    fc.oneof(
      { arbitrary: recorded, weight: 4 },
      {
        arbitrary: fc.record({ kind: fc.constant('set-right' as const), phone, which: fc.nat(), minor: amount }),
        weight: 1,
      },
      { arbitrary: fc.record({ kind: fc.constant('take-away' as const), phone, which: fc.nat() }), weight: 1 },
      {
        arbitrary: fc.record({
          kind: fc.constant('meet' as const),
          phone,
          from: phone,
          how: fc.constantFrom('whole' as const, 'changes' as const, 'code' as const),
        }),
        weight: 3,
      },
    ),
    { minLength: 1, maxLength: 24 },
  )
}

const start: Plan = { ...example, spending: {}, contributions: {}, payouts: {} }

/** Phones that got the plan from each other once, and what each is known to have written down: the law's own book, kept apart from theirs. */
function group(count: number) {
  const first = encodeDocument(documentOf(start))
  const docs = Array.from({ length: count }, () => documentFrom([first]).doc)
  const book = new Map<string, { readonly phone: number; readonly at: Kind; readonly value: unknown }>()
  const planOn = (phone: number): Plan => {
    const read = readPlan(docs[phone] ?? documentOf(start))
    if (!read.ok) throw new Error('no plan any more')
    return read.value
  }
  const put = (phone: number, plan: Plan) => {
    const doc = docs[phone]
    if (doc !== undefined) write(doc, changesTo(doc, plan), 'by-hand')
  }
  const writeDown = (phone: number, at: Kind, id: string, value: unknown) => {
    const plan = planOn(phone)
    put(phone, { ...plan, [at]: { ...plan[at], [id]: value } })
    book.set(id, { phone, at, value })
  }
  /** A record that this phone wrote, as far as it has any. */
  const own = (phone: number, which: number) => {
    const ids = [...book].filter(([, one]) => one.phone === phone)
    return ids[which % Math.max(1, ids.length)]
  }
  const meet = (phone: number, from: number, how: 'whole' | 'changes' | 'code') => {
    const [mine, theirs] = [docs[phone], docs[from]]
    if (mine === undefined || theirs === undefined) return
    if (how === 'whole') applyUpdate(mine, encodeDocument(theirs), 'file')
    else if (how === 'changes') applyUpdate(mine, encodeDocument(theirs, stateOf(mine)), 'changes')
    else {
      const bytes = packHandOver({ planId: start.id, document: encodeDocument(theirs), chosen: EVERYTHING })
      const read = unpackHandOver(bytes)
      if (read.ok) applyUpdate(mine, read.value.document, 'code')
    }
  }
  let next = 0
  const act = (deed: Deed) => {
    if (deed.kind === 'meet') {
      meet(deed.phone, deed.from, deed.how)
      return
    }
    if (deed.kind === 'record') {
      writeDown(deed.phone, deed.entry[0], `r${String(next++)}`, deed.entry[1])
      return
    }
    const [id, one] = own(deed.phone, deed.which) ?? []
    if (id === undefined || one === undefined) return
    if (deed.kind === 'set-right') {
      const field = { spending: 'paidMinor', contributions: 'promisedDays', payouts: 'amountMinor' }[one.at]
      const value = { ...(one.value as object) }
      if (field in value)
        writeDown(deed.phone, one.at, id, { ...value, [field]: field.endsWith('Days') ? deed.minor % 100 : deed.minor })
      return
    }
    const plan = planOn(deed.phone)
    put(deed.phone, {
      ...plan,
      [one.at]: Object.fromEntries(Object.entries(plan[one.at]).filter(([key]) => key !== id)),
    })
    book.delete(id)
  }
  return { act, meet, planOn, book, count }
}

const sum = (values: readonly number[]): Big => values.reduce((total, value) => total.plus(value), new Big(0))

/** What the law's own book says, added up by a decimal library. */
function asBooked(book: ReturnType<typeof group>['book']) {
  const of = <T>(at: Kind): T[] => [...book.values()].flatMap((one) => (one.at === at ? [one.value as T] : []))
  const spent = of<Plan['spending'][string]>('spending').map(({ kind, paidMinor, paidBy }) => ({
    paidBy,
    minor: kind === 'purchase' ? paidMinor : -paidMinor,
  }))
  const gifts = of<Plan['contributions'][string]>('contributions')
  const cash = sum(gifts.flatMap((one) => (one.kind === 'cash' ? [one.givenMinor] : [])))
  // Half days at a whole rate end in a half at most: halves of money go up.
  const labour = sum(
    gifts.flatMap((one) =>
      one.kind === 'labour' ? [Number(new Big(one.givenDays).times(one.rateMinor).round(0, Big.roundHalfUp))] : [],
    ),
  )
  const paidOut = sum(of<Plan['payouts'][string]>('payouts').map(({ amountMinor }) => amountMinor))
  const fromBox = sum(spent.flatMap(({ paidBy, minor }) => (paidBy === null ? [minor] : [])))
  const fromPockets = sum(spent.flatMap(({ paidBy, minor }) => (paidBy === null ? [] : [minor])))
  return { cash, labour, paidOut, fromBox, fromPockets, inBox: cash.minus(fromBox).minus(paidOut) }
}

function holdsTheBook({ planOn, book, count }: ReturnType<typeof group>): void {
  const told = asBooked(book)
  const first = planOn(0)
  const recorded = { spending: 0, contributions: 0, payouts: 0 }
  for (const [id, { at, value }] of book) {
    recorded[at]++
    expect([id, first[at][id]]).toEqual([id, value])
  }
  for (const at of ['spending', 'contributions', 'payouts'] as const)
    expect([at, Object.keys(first[at]).length]).toEqual([at, recorded[at]])
  for (let phone = 1; phone < count; phone++) expect(planOn(phone)).toEqual(first)
  const account = groupAccount(first)
  expect(told.cash.eq(account.cash.value)).toBe(true)
  expect(told.labour.eq(account.inKind.value)).toBe(true)
  expect(told.fromBox.eq(account.fromBox.value)).toBe(true)
  expect(told.fromPockets.eq(account.fromPockets.value)).toBe(true)
  expect(told.inBox.eq(account.cashInBox.value)).toBe(true)
  const paid = spendingAccount(first, worked.purchase.lines, worked.costs).paid.value
  expect(told.fromBox.plus(told.fromPockets).eq(paid)).toBe(true)
  // Put in = used up + in the box; shares add up to what is used; after the settlement all are even and the box is empty.
  const putIn = sum(account.members.map((one) => one.putIn.value))
  expect(putIn.minus(account.used.value).eq(account.cashInBox.value)).toBe(true)
  expect(sum(account.members.map(({ shareMinor }) => shareMinor)).eq(account.used.value)).toBe(true)
  const balances = new Map<string | null, Big>(account.members.map((one) => [one.id, new Big(one.balanceMinor)]))
  balances.set(null, new Big(-account.cashInBox.value))
  for (const { from, to, amountMinor } of account.settlement) {
    expect(amountMinor).toBeGreaterThan(0)
    balances.set(from, (balances.get(from) ?? new Big(0)).plus(amountMinor))
    balances.set(to, (balances.get(to) ?? new Big(0)).minus(amountMinor))
  }
  expect([...balances.values()].every((rest) => rest.eq(0))).toBe(true)
}

describe.each([2, 3])('records of %i treasurers', (phones) => {
  it('whenever and however their phones meet: none lost, none counted twice, none back that was taken away', () => {
    fc.assert(
      fc.property(deedsOn(phones), fc.array(fc.nat(phones - 1), { maxLength: 6 }), (deeds, lastMeetings) => {
        const all = group(phones)
        for (const deed of deeds) all.act(deed)
        // In the end everybody has met everybody, after some meetings more and one too many.
        for (const [at, from] of lastMeetings.entries()) all.meet(at % phones, from, 'whole')
        for (let round = 0; round < 2; round++)
          for (let phone = 0; phone < phones; phone++)
            for (let from = 0; from < phones; from++) all.meet(phone, from, round === 0 ? 'whole' : 'code')
        expect(all.planOn(0).id).toBe(start.id)
        holdsTheBook(all)
      }),
      { numRuns: cases(60) },
    )
  }, 120_000)
})
