import { useState } from 'react'
import { readPriceTable, type PriceTable } from '../../../core/documents/price-table.ts'
import { pricesToKeep, type KeptPrice, type PriceBook } from '../../../core/plan/price-book.ts'
import { Button } from '../../parts/Button.tsx'
import { FileButton } from '../../parts/FileButton.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { notify } from '../../state/notices.ts'
import { useWords } from '../../words/use-words.tsx'
import { newKey } from '../buy/new-key.ts'
import { tableProblemText } from './price-text.ts'

/** A table of 5,000 lines is far below this. */
const MOST_BYTES = 2_000_000

/** Opens a table of prices: what is wrong is told line by line, and the good lines are kept only when one says so. */
export function TableButton({
  currency,
  known,
  onKeep,
}: {
  readonly currency: PriceBook['currency']
  readonly known: readonly KeptPrice[]
  readonly onKeep: (prices: readonly KeptPrice[]) => Promise<boolean>
}) {
  const words = useWords()
  const { say } = words
  const [table, setTable] = useState<PriceTable | 'unreadable' | null>(null)
  const take = async ([file]: readonly File[]) => {
    if (file === undefined) return
    const text = file.size > MOST_BYTES ? null : await file.text().catch(() => null)
    setTable(text === null ? 'unreadable' : readPriceTable(text, 'table', currency, newKey))
  }
  const close = () => {
    setTable(null)
  }
  const keep = async (book: PriceBook) => {
    const prices = pricesToKeep(known, currency, book.offers, (id) => id)
    if (!(await onKeep(prices))) return
    close()
    notify({ key: 'prices.kept', args: { count: prices.length } })
  }
  return (
    <>
      <FileButton icon="file" label={say('prices.open-table')} accept=".csv,text/csv,text/plain" onFiles={take} />
      {table !== null && (
        <Sheet title={say('prices.open-table')} closeLabel={say('app.close')} onClose={close}>
          {table === 'unreadable' ? (
            <p role="alert">{say('prices.file-failed')}</p>
          ) : (
            <Found table={table} onKeep={() => void keep(table.book)} />
          )}
        </Sheet>
      )}
    </>
  )
}

function Found({ table, onKeep }: { readonly table: PriceTable; readonly onKeep: () => void }) {
  const words = useWords()
  const { say } = words
  const count = Object.keys(table.book.offers).length
  return (
    <>
      <p role="status">{say('prices.good', { count })}</p>
      {table.problems.length > 0 && (
        <ul className="table-problems">
          {table.problems.map((problem, index) => (
            <li key={index}>{tableProblemText(problem, words)}</li>
          ))}
        </ul>
      )}
      {count > 0 && (
        <Button shape="big" tone="fire" icon="tick" onPress={onKeep}>
          {say('prices.keep-good', { count })}
        </Button>
      )}
    </>
  )
}
