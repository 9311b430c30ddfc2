import { groupAccount } from '../../../core/costs/group-account.ts'
import { spendingAccount } from '../../../core/costs/spending.ts'
import type { PaperBlock } from '../../state/paper-actions.ts'
import { showIsoDay } from '../../words/dates.ts'
import { itemName } from '../buy/line-text.ts'
import { byName, memberName } from '../spending/record-text.ts'
import type { SheetHand } from './sheet-kind.ts'

type PaperTable = Extract<PaperBlock, { kind: 'table' }>

/** What was bought and paid so far against what was planned, every record with its day and its payer; nothing before the first. */
export function spendingBlocks({ worked, words }: SheetHand): PaperBlock[] {
  const { plan, costs, purchase } = worked
  const { say, money } = words
  const records = Object.values(plan.spending).sort((a, b) => ((a.day ?? '') < (b.day ?? '') ? -1 : 1))
  if (records.length === 0) return []
  const account = spendingAccount(plan, purchase.lines, costs)
  const sums = [
    [say('spent.paid'), account.paid],
    [say('spent.to-pay'), account.toPay],
    [say('spent.forecast'), account.forecast],
    [say('spent.over'), account.over],
    [say('spent.reserve-left'), account.reserveLeft],
  ] as const
  return [
    { kind: 'heading', text: say('spent.title') },
    {
      kind: 'table',
      columns: columnsOf(['', 0.3], [say('spent.what'), 0.28], [say('spent.who-paid'), 0.22], [say('spent.paid'), 0.2]),
      rows: records.map((one) => ({
        cells: [
          one.day === null ? say('spent.no-day') : showIsoDay(one.day),
          one.instead === '' ? itemName(one.item, plan, words) : one.instead,
          one.paidBy === null ? say('spent.box') : memberName(plan, one.paidBy),
          one.kind === 'return' ? `−${money(one.paidMinor)}` : money(one.paidMinor),
        ],
      })),
    },
    {
      kind: 'table',
      columns: columnsOf(['', 0.64], ['', 0.36]),
      rows: sums.map(([name, { value }]) => ({ cells: [name, money(value)] })),
    },
  ]
}

/** The group's book to be read out and signed: the box, what everybody promised, put in and carries, and who is owed what. */
export function groupBlocks({ worked: { plan }, words }: SheetHand): PaperBlock[] {
  const { say, money } = words
  const account = groupAccount(plan)
  if (account.members.length === 0) return []
  const name = (id: string | null) => (id === null ? say('spent.box') : memberName(plan, id))
  const box = [
    [say('group.cash'), account.cash],
    [say('group.less-bought'), account.fromBox],
    [say('group.less-out'), account.paidOut],
  ] as const
  const blocks: PaperBlock[] = [
    { kind: 'heading', text: say('sheets.contributions') },
    {
      kind: 'table',
      columns: columnsOf(
        [say('sheets.member'), 0.28],
        [say('sheets.promised'), 0.18],
        [say('group.put-in'), 0.18],
        [say('group.share-of-used'), 0.18],
        [say('sheets.signature'), 0.18],
      ),
      rows: byName(plan, account.members).map(({ id, promised, putIn, shareMinor }) => ({
        cells: [name(id), money(promised.value), money(putIn.value), money(shareMinor), ''],
      })),
    },
    { kind: 'heading', text: say('group.title') },
    {
      kind: 'table',
      columns: columnsOf(['', 0.64], ['', 0.36]),
      rows: [
        ...box.map(([of, { value }]) => ({ cells: [of, money(value)] })),
        { cells: [say('group.in-box'), money(account.cashInBox.value)], look: 'total' as const },
      ],
    },
  ]
  if (account.settlement.length > 0)
    blocks.push(
      { kind: 'heading', text: say('group.settle') },
      { kind: 'text', text: say('group.settle-why') },
      ...account.settlement.map(({ from, to, amountMinor }): PaperBlock => ({
        kind: 'text',
        text: say('group.pays', { from: name(from), to: name(to), amount: money(amountMinor) }),
        strong: true,
      })),
    )
  return blocks
}

/** Columns by title and share of the width; the last ones hold money and stand at the right. */
const columnsOf = (...columns: readonly (readonly [title: string, share: number])[]): PaperTable['columns'] =>
  columns.map(([title, share], index) => ({ title, share, ...(index === columns.length - 1 && { align: 'right' }) }))
