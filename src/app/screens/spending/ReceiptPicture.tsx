import { useState } from 'react'
import { Sheet } from '../../parts/Sheet.tsx'
import { useWords } from '../../words/use-words.tsx'
import { useReceipt } from './use-receipt.ts'

/** A receipt as a small picture; a tap shows it as large as the phone. `what` says whose it is. */
export function ReceiptPicture({
  planId,
  receipt,
  what,
}: {
  readonly planId: string
  readonly receipt: string
  readonly what: string
}) {
  const { say } = useWords()
  const [isLarge, setIsLarge] = useState(false)
  const address = useReceipt(planId, receipt)
  if (address === 'missing') return <p className="quiet">{say('receipt.missing')}</p>
  const name = say('receipt.picture', { what })
  return (
    <>
      <button
        type="button"
        className="receipt"
        aria-label={say('receipt.show', { what })}
        onClick={() => {
          setIsLarge(true)
        }}
      >
        {address !== null && <img src={address} alt="" />}
      </button>
      {isLarge && address !== null && (
        <Sheet
          title={name}
          closeLabel={say('app.close')}
          onClose={() => {
            setIsLarge(false)
          }}
          height="full"
        >
          <img className="receipt-large" src={address} alt={name} />
        </Sheet>
      )}
    </>
  )
}
