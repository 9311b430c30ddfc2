import { useEffect, useRef, useState } from 'react'
import { Button } from '../../parts/Button.tsx'
import { FileButton } from '../../parts/FileButton.tsx'
import { keepReceipt, type ReceiptProblem } from '../../state/receipt-actions.ts'
import { useWords } from '../../words/use-words.tsx'
import { ReceiptPicture } from './ReceiptPicture.tsx'

/** The photo of a record's receipt: chosen or taken, looked at, taken away. It is on the phone at once, and belongs to the record when that is kept. */
export function ReceiptPart({
  planId,
  receipt,
  what,
  onChange,
}: {
  readonly planId: string
  readonly receipt: string | null
  readonly what: string
  readonly onChange: (receipt: string | null) => void
}) {
  const { say } = useWords()
  const [said, setSaid] = useState<'making' | ReceiptProblem | null>(null)
  // The photo takes a while to make small, and typing goes on meanwhile.
  const tell = useRef(onChange)
  useEffect(() => {
    tell.current = onChange
  })
  const take = async ([photo]: readonly File[]) => {
    if (photo === undefined) return
    setSaid('making')
    const kept = await keepReceipt(planId, photo).catch(() => null)
    setSaid(kept?.ok === true ? null : (kept?.problems[0] ?? 'failed'))
    if (kept?.ok === true) tell.current(kept.value)
  }
  return (
    <div className="receipt-part">
      {receipt !== null && <ReceiptPicture key={receipt} planId={planId} receipt={receipt} what={what} />}
      {receipt === null ? (
        <FileButton icon="plus" label={say('receipt.add')} accept="image/*" onFiles={take} />
      ) : (
        <Button
          icon="close"
          onPress={() => {
            onChange(null)
          }}
        >
          {say('receipt.take-away')}
        </Button>
      )}
      <p className={said === null || said === 'making' ? 'quiet' : undefined} role="status">
        {say(said === null ? 'receipt.why' : `receipt.${said}`)}
      </p>
    </div>
  )
}
