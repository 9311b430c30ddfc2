import { useEffect, useState } from 'react'
import { receiptLoad } from '../../state/receipt-actions.ts'
import { useWords } from '../../words/use-words.tsx'
import { sizeText } from './size-text.ts'

/** What photos of receipts add to the file, and that nothing else carries them. */
export function ReceiptsSize({ planId }: { readonly planId: string }) {
  const words = useWords()
  const [load, setLoad] = useState<Awaited<ReturnType<typeof receiptLoad>> | null>(null)
  useEffect(() => {
    let isHere = true
    void receiptLoad(planId).then((found) => {
      if (isHere) setLoad(found)
    })
    return () => {
      isHere = false
    }
  }, [planId])
  return (
    <p role="status">
      {load && words.say('hand-over.receipts-size', { count: load.count, size: sizeText(load.sizeBytes, words) })}
    </p>
  )
}
