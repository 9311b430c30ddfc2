import { useCallback, useEffect, useState } from 'react'
import type { KeptPrice } from '../../../core/plan/price-book.ts'
import { forgetPrices, keepPrices, keptPrices } from '../../state/price-actions.ts'
import { notify } from '../../state/notices.ts'

export interface PriceBookHand {
  /** Null until the phone has answered. */
  readonly prices: readonly KeptPrice[] | null
  readonly keep: (prices: readonly KeptPrice[]) => Promise<boolean>
  /** Takes one away, with a way back for a while. */
  readonly forget: (price: KeptPrice) => void
}

/** The phone's price book in hand: what is shown is always what the phone has kept. */
export function usePriceBook(): PriceBookHand {
  const [prices, setPrices] = useState<readonly KeptPrice[] | null>(null)
  const load = useCallback(async () => {
    setPrices(await keptPrices())
  }, [])
  useEffect(() => {
    let isHere = true
    void keptPrices().then((found) => {
      if (isHere) setPrices(found)
    })
    return () => {
      isHere = false
    }
  }, [])
  const keep = useCallback(
    async (some: readonly KeptPrice[]) => {
      const isKept = await keepPrices(some)
      if (!isKept) notify({ key: 'prices.not-kept' })
      await load()
      return isKept
    },
    [load],
  )
  const forget = useCallback(
    (price: KeptPrice) => {
      void forgetPrices([price.id])
        .then(load)
        .then(() => {
          notify({ key: 'prices.forgotten', undo: () => void keep([price]) })
        })
    },
    [keep, load],
  )
  return { prices, keep, forget }
}
