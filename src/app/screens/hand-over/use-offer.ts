import { useEffect, useState } from 'react'
import type { Private } from '../../state/file-actions.ts'
import { codeTools, offerHandOver, type HandOverOffer } from '../../state/hand-over-actions.ts'

export interface ReadyOffer {
  readonly offer: HandOverOffer
  readonly codeOf: Awaited<ReturnType<typeof codeTools>>['codeOf']
}

/** The hand-over of a plan for what was chosen; null while it is made ready, `gone` where the plan cannot be read. */
export function useOffer(planId: string, { names, receipts }: Private, changesOnly: boolean, round: number) {
  const [ready, setReady] = useState<ReadyOffer | 'gone' | null>(null)
  useEffect(() => {
    let isHere = true
    const make = async () => {
      const [offered, { codeOf }] = await Promise.all([
        offerHandOver(planId, { names, receipts }, changesOnly),
        codeTools(),
      ])
      if (isHere) setReady(offered.ok ? { offer: offered.value, codeOf } : 'gone')
    }
    void make()
    return () => {
      isHere = false
    }
  }, [planId, names, receipts, changesOnly, round])
  return ready
}
