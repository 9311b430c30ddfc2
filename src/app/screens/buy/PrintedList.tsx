// The rule takes table cells for controls; these are paper: boxes to tick and columns to write in.
/* oxlint-disable jsx-a11y/control-has-associated-label */
import type { WorkedOut } from '../../../core/work-out.ts'
import { showDay } from '../../words/dates.ts'
import { amount, currencySign } from '../../words/money.ts'
import { useWords } from '../../words/use-words.tsx'
import { useNow } from '../use-now.ts'
import { itemName, lotsText, lotText, whyText } from './line-text.ts'

/** The list for the market on A4, black on white: a box to tick, what to buy, and a column of prices, filled or left blank. */
export function PrintedList({ worked, column }: { readonly worked: WorkedOut; readonly column: 'priced' | 'blank' }) {
  const words = useWords()
  const { say, named, share } = words
  const { plan, costs, list } = worked
  const currency = currencySign(plan.currency)
  const figure = (minor: number) => amount(minor, plan.currency)
  const isFilled = column === 'priced'
  const isPriced = costs.unpriced.length === 0
  return (
    <div className="print-only paper">
      <table className="market">
        <thead>
          <tr>
            <td colSpan={5}>
              <div className="paper-head">
                <div>
                  <small>{say('print.title')}</small>
                  <b>
                    {plan.name} {plan.example && say('print.example')}
                  </b>
                </div>
                <div>
                  <small>{say('print.date')}</small>
                  <b>{showDay(useNow())}</b>
                </div>
              </div>
            </td>
          </tr>
          <tr className="paper-names">
            <th aria-label={say('print.buy')} />
            <th>{say('print.buy')}</th>
            <th>{say('print.what')}</th>
            <th className="right">{isFilled ? say('print.about', { currency }) : say('print.price', { currency })}</th>
            <th className="right">{say('print.paid', { currency })}</th>
          </tr>
        </thead>
        {list.groups.map((seller) => (
          <tbody key={`${seller.seller} ${seller.sellerName}`}>
            <tr className="paper-seller">
              <td colSpan={3}>
                {named(`seller.${seller.seller}`)}
                {seller.sellerName !== '' && `, ${seller.sellerName}`}
              </td>
              <td className="right">
                {isFilled && seller.rows.length > seller.unpriced ? figure(seller.cost.value) : ''}
              </td>
              <td className="blank" />
            </tr>
            {seller.rows.map((line, index) => {
              const lot = lotText(line, words)
              return (
                <tr key={`${line.item} ${String(index)}`}>
                  <td>
                    <span className="paper-box" />
                  </td>
                  <td className="paper-count">{lotsText(line, words)}</td>
                  <td>
                    <b>
                      {itemName(line.item, plan, words)}
                      {lot !== '' && `, ${lot}`}
                    </b>
                    <br />
                    <span className="paper-why">{whyText(line, words)}</span>
                  </td>
                  <td className="right">{isFilled && line.cost !== null ? figure(line.cost.value) : ''}</td>
                  <td className="blank" />
                </tr>
              )
            })}
          </tbody>
        ))}
        <tbody className="paper-sums">
          {isFilled && (
            <tr>
              <td colSpan={3}>{say('print.contingency', { share: share(plan.money.contingency) })}</td>
              <td className="right">{figure(costs.contingency.value)}</td>
              <td className="blank" />
            </tr>
          )}
          <tr className="paper-total">
            <td colSpan={3}>{say(isPriced || !isFilled ? 'print.total' : 'print.total-so-far')}</td>
            <td className="right">{isFilled ? figure(costs.total.value) : ''}</td>
            <td className="blank" />
          </tr>
        </tbody>
      </table>
      <p className="paper-foot">{say('print.foot')}</p>
    </div>
  )
}
