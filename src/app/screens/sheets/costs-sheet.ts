import { totalRange } from '../../../core/choosing/total-range.ts'
import type { PaperBlock, PaperSheet } from '../../state/paper-actions.ts'
import { currencySign } from '../../words/money.ts'
import { groupBlocks, spendingBlocks } from './account-blocks.ts'
import type { SheetHand } from './sheet-kind.ts'

/** What the kiln costs by part and by seller, and who gave what: the sheet that is read out before the group. */
export function costsSheet(hand: SheetHand): PaperSheet {
  const { worked, words } = hand
  const { plan, costs } = worked
  const money = [
    { title: '', share: 0.64 },
    { title: currencySign(plan.currency), share: 0.36, align: 'right' as const },
  ]
  const line = (name: string, minor: number) => ({ cells: [name, words.money(minor)] })
  const blocks: PaperBlock[] = [
    { kind: 'heading', text: words.say('sheets.by-part') },
    {
      kind: 'table',
      columns: money,
      rows: [
        ...costs.sections.map(({ section, cost }) => line(words.named(`section.${section}`), cost.value)),
        line(words.say('print.contingency', { share: words.share(plan.money.contingency) }), costs.contingency.value),
        {
          ...line(words.say(costs.unpriced.length > 0 ? 'print.total-so-far' : 'print.total'), costs.total.value),
          look: 'total' as const,
        },
      ],
    },
    ...rangeText(worked.plan, words),
    { kind: 'heading', text: words.say('sheets.by-seller') },
    {
      kind: 'table',
      columns: money,
      rows: costs.sellers.map(({ seller, sellerName, cost }) =>
        line(sellerName === '' ? words.named(`seller.${seller}`) : sellerName, cost.value),
      ),
    },
  ]
  blocks.push(...spendingBlocks(hand), ...groupBlocks(hand))
  return { title: words.say('sheets.costs'), blocks }
}

/** Between what the total lies, in one line: the group decides on both ends. */
function rangeText(plan: SheetHand['worked']['plan'], words: SheetHand['words']): PaperBlock[] {
  const { cheapMinor, dearMinor, doubts } = totalRange(plan)
  const [widest] = doubts
  if (widest === undefined) return []
  const ends = { cheap: words.money(cheapMinor), dear: words.money(dearMinor) }
  const driver = words.named(`range.${widest.key}`)
  return [{ kind: 'text', text: words.say('range.sheet', { ...ends, driver }) }]
}
