import type { PaperRow, PaperSheet } from '../../state/paper-actions.ts'
import { amount, currencySign } from '../../words/money.ts'
import { itemName, lotsText, lotText, whyText } from '../buy/line-text.ts'
import type { SheetHand } from './sheet-kind.ts'

/** The list for the market: by seller, a box to tick, what to buy and how much of it, a column of prices filled or left to be written in. */
export function materialsSheet({ worked, words }: SheetHand, isFilled: boolean): PaperSheet {
  const { plan, list } = worked
  const currency = currencySign(plan.currency)
  const figure = (minor: number) => amount(minor, plan.currency)
  const rows: PaperRow[] = []
  for (const seller of list.groups) {
    const name = words.named(`seller.${seller.seller}`)
    const isPriced = isFilled && seller.rows.length > seller.unpriced
    rows.push({
      cells: [
        '',
        seller.sellerName === '' ? name : `${name}, ${seller.sellerName}`,
        isPriced ? figure(seller.cost.value) : '',
        '',
      ],
      look: 'group',
    })
    for (const line of seller.rows) {
      const lot = lotText(line, words)
      const item = itemName(line.item, plan, words)
      rows.push({
        box: true,
        cells: [
          lotsText(line, words),
          lot === '' ? item : `${item}, ${lot}`,
          isFilled ? (line.cost === null ? words.say('print.no-price') : figure(line.cost.value)) : '',
          '',
        ],
        under: ['', whyText(line, words), '', ''],
      })
    }
  }
  if (isFilled)
    rows.push({
      cells: [
        '',
        words.say('print.contingency', { share: words.share(plan.money.contingency) }),
        figure(list.contingency.value),
        '',
      ],
    })
  rows.push({
    cells: [
      '',
      words.say(isFilled && list.unpriced > 0 ? 'print.total-so-far' : 'print.total'),
      isFilled ? figure(list.total.value) : '',
      '',
    ],
    look: 'total',
  })
  if (list.free.length > 0) {
    rows.push({ cells: ['', words.say('buy.free'), '', ''], look: 'group' })
    for (const { item, gross } of list.free)
      rows.push({ box: true, cells: [words.inLine(gross.value, gross.unit), words.named(`item.${item}`), '', ''] })
  }
  return {
    title: words.say('print.title'),
    blocks: [
      {
        kind: 'table',
        columns: [
          { title: words.say('print.buy'), share: 0.25 },
          { title: words.say('print.what'), share: 0.39 },
          {
            title: isFilled ? words.say('print.about', { currency }) : words.say('print.price', { currency }),
            share: 0.18,
            align: 'right',
          },
          { title: words.say('print.paid', { currency }), share: 0.18, align: 'right' },
        ],
        rows,
      },
    ],
  }
}
