import { derive, sumOf, typed, type Derived } from '../basics/derived.ts'
import { wholeNear } from '../basics/count.ts'
import { splitMinor } from '../basics/money.ts'
import { byText } from '../basics/order.ts'
import type { Finding } from '../basics/finding.ts'
import type { Contribution } from '../plan/money-records.ts'
import type { Plan } from '../plan/schema.ts'
import { argsOf } from '../purchase/line.ts'

/** One member's side of the book, minor units. */
export interface MemberAccount {
  readonly id: string
  readonly name: string
  readonly promised: Derived<'money'>
  /** Cash put in the box, material and labour at their stated worth. */
  readonly given: Derived<'money'>
  /** Promised and not given yet. */
  readonly due: Derived<'money'>
  /** Paid from the own pocket for the kiln, less what came back for returns. */
  readonly ownPocket: Derived<'money'>
  readonly paidOut: Derived<'money'>
  /** What this member has put in, all told. */
  readonly putIn: Derived<'money'>
  /** This member's share of what the kiln has taken so far. */
  readonly shareMinor: number
  /** Put in less share: what the others owe this member, or negative what this member owes. */
  readonly balanceMinor: number
}

/** Who pays whom so that all are even; null stands for the group's box. */
export interface Settlement {
  readonly from: string | null
  readonly to: string | null
  readonly amountMinor: number
}

/** The group's book: everything put in is either used up or still in the box. */
export interface GroupAccount {
  readonly members: readonly MemberAccount[]
  readonly promised: Derived<'money'>
  readonly given: Derived<'money'>
  /** Cash put in the box. */
  readonly cash: Derived<'money'>
  /** Material and labour given, at their stated worth. */
  readonly inKind: Derived<'money'>
  /** Paid for the kiln from the box, and from the members' own pockets, less what came back for returns. */
  readonly fromBox: Derived<'money'>
  readonly fromPockets: Derived<'money'>
  readonly paidOut: Derived<'money'>
  /** Cash that should be in the box. */
  readonly cashInBox: Derived<'money'>
  /** What the kiln has taken: money paid, material and labour given. */
  readonly used: Derived<'money'>
  readonly settlement: readonly Settlement[]
  readonly findings: readonly Finding[]
}

/** A contribution by its id, as worth. */
interface Given {
  readonly id: string
  readonly one: Contribution
  readonly promised: Derived<'money'>
  readonly given: Derived<'money'>
}

/**
 * The book of the group in minor units: what came in, what left the box, what each has put in less a share by weight
 * of what was used up, and the payments that settle it.
 */
export function groupAccount(plan: Plan): GroupAccount {
  const contributions = Object.entries(plan.contributions)
    .toSorted(([a], [b]) => byText(a, b))
    .map(([id, one]): Given => ({ id, one, ...worthOf(id, one) }))
  const spending = Object.entries(plan.spending).toSorted(([a], [b]) => byText(a, b))
  const payouts = Object.entries(plan.payouts).toSorted(([a], [b]) => byText(a, b))

  const paidBy = (payer: string | null, id: string) => {
    const records = (kind: 'purchase' | 'return') =>
      spending
        .filter(([, record]) => record.paidBy === payer && record.kind === kind)
        .map(([key, { paidMinor, item }]) =>
          typed('spent.record', 'money', paidMinor, `spending.${key}.paidMinor`, argsOf(item)),
        )
    return derive(
      id,
      'money',
      'p − r',
      {
        p: sumOf('spent.purchases-all', 'money', records('purchase')),
        r: sumOf('spent.returns-all', 'money', records('return')),
      },
      (of) => of.p - of.r,
    )
  }
  const paidOutTo = (member: string | null) =>
    sumOf(
      'group.paid-out',
      'money',
      payouts
        .filter(([, payout]) => member === null || payout.member === member)
        .map(([key, { amountMinor }]) => typed('group.payout', 'money', amountMinor, `payouts.${key}.amountMinor`)),
    )
  const total = (id: string, of: 'promised' | 'given', among: readonly Given[]) =>
    sumOf(
      id,
      'money',
      among.map((each) => each[of]),
    )

  const cash = total(
    'group.cash',
    'given',
    contributions.filter(({ one }) => one.kind === 'cash'),
  )
  const inKind = total(
    'group.in-kind',
    'given',
    contributions.filter(({ one }) => one.kind !== 'cash'),
  )
  const fromBox = paidBy(null, 'group.from-box')
  const paidOut = paidOutTo(null)
  const cashInBox = derive(
    'group.box',
    'money',
    'c − p − o',
    { c: cash, p: fromBox, o: paidOut },
    (of) => of.c - of.p - of.o,
  )
  const ids = memberIds(plan)
  const pockets = ids.map((id) => paidBy(id, 'group.own-pocket'))
  const fromPockets = sumOf('group.from-pockets', 'money', pockets)
  const used = sumOf('group.used', 'money', [fromBox, fromPockets, inKind])
  const shares = splitMinor(
    used.value,
    ids.map((id) => plan.members[id]?.weight ?? 0),
  )
  const members = ids.map((id, at): MemberAccount => {
    const own = contributions.filter(({ one }) => one.member === id)
    const promised = total('group.promised', 'promised', own)
    const given = total('group.given', 'given', own)
    const ownPocket = pockets[at] ?? sumOf('group.own-pocket', 'money', [])
    const paidOut = paidOutTo(id)
    const putIn = derive(
      'group.put-in',
      'money',
      'g + p − o',
      { g: given, p: ownPocket, o: paidOut },
      (of) => of.g + of.p - of.o,
    )
    const shareMinor = shares[at] ?? 0
    return {
      id,
      name: plan.members[id]?.name ?? '',
      promised,
      given,
      due: derive('group.due', 'money', 'max(0, q − g)', { q: promised, g: given }, (of) => Math.max(0, of.q - of.g)),
      ownPocket,
      paidOut,
      putIn,
      shareMinor,
      balanceMinor: putIn.value - shareMinor,
    }
  })
  return {
    members,
    promised: total('group.promised-all', 'promised', contributions),
    given: total('group.given-all', 'given', contributions),
    cash,
    inKind,
    fromBox,
    fromPockets,
    paidOut,
    cashInBox,
    used,
    settlement: settled(members, cashInBox.value),
    findings: cashInBox.value < 0 ? [shortBox(-cashInBox.value)] : [],
  }
}

/** Members on the list, and whoever a record names though the list has lost them: their money must not vanish. */
function memberIds(plan: Plan): string[] {
  const ids = new Set(Object.keys(plan.members))
  for (const { member } of Object.values(plan.contributions)) ids.add(member)
  for (const { member } of Object.values(plan.payouts)) ids.add(member)
  for (const { paidBy } of Object.values(plan.spending)) if (paidBy !== null) ids.add(paidBy)
  return [...ids].toSorted(byText)
}

function worthOf(id: string, one: Contribution): { promised: Derived<'money'>; given: Derived<'money'> } {
  const path = `contributions.${id}`
  if (one.kind !== 'labour')
    return {
      promised: typed('group.promise', 'money', one.promisedMinor, `${path}.promisedMinor`),
      given: typed('group.gift', 'money', one.givenMinor, `${path}.givenMinor`),
    }
  const rate = typed('group.day-rate', 'money/day', one.rateMinor, `${path}.rateMinor`)
  const worth = (name: string, days: number, field: string) =>
    derive(name, 'money', 'round(d · r)', { d: typed('group.days', 'day', days, `${path}.${field}`), r: rate }, (of) =>
      wholeNear(of.d * of.r),
    )
  return {
    promised: worth('group.promise', one.promisedDays, 'promisedDays'),
    given: worth('group.gift', one.givenDays, 'givenDays'),
  }
}

/**
 * Payments that make all even: who is owed most is paid first by who owes most, the box's cash among them. Sums match exactly: what all are
 * owed less what all owe is what the box holds.
 */
function settled(members: readonly MemberAccount[], boxMinor: number): Settlement[] {
  const open = [
    { id: null as string | null, balance: -boxMinor },
    ...members.map(({ id, balanceMinor }) => ({ id: id as string | null, balance: balanceMinor })),
  ]
  const payments: Settlement[] = []
  for (;;) {
    const to = open.reduce((most, one) => (one.balance > most.balance ? one : most))
    const from = open.reduce((least, one) => (one.balance < least.balance ? one : least))
    const amountMinor = Math.min(to.balance, -from.balance)
    if (amountMinor <= 0) return payments
    payments.push({ from: from.id, to: to.id, amountMinor })
    to.balance -= amountMinor
    from.balance += amountMinor
  }
}

const shortBox = (shortMinor: number): Finding => ({
  level: 'problem',
  kind: 'money.box-short',
  args: { short: { value: shortMinor, unit: 'money' } },
  card: 'money',
  remedies: [],
})
