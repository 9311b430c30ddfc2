import { useEffect, useState } from 'react'
import { receiptPicture } from '../../state/receipt-actions.ts'

/** The address of a receipt's picture; null while it is fetched, `missing` where this phone does not have it. */
export function useReceipt(planId: string, receipt: string | null): string | null {
  const [shown, setShown] = useState<string | null>(null)
  useEffect(() => {
    if (receipt === null) return
    let address: string | null = null
    let isHere = true
    const fetchIt = async () => {
      const picture = await receiptPicture(planId, receipt).catch(() => null)
      if (!isHere) return
      address = picture && URL.createObjectURL(picture)
      setShown(address ?? 'missing')
    }
    void fetchIt()
    return () => {
      isHere = false
      setShown(null)
      if (address !== null) URL.revokeObjectURL(address)
    }
  }, [planId, receipt])
  return shown
}
