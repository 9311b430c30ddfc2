import { useEffect, useState } from 'react'
import { Button } from '../../parts/Button.tsx'
import { officeNote, shareWithOffice } from '../../state/office-actions.ts'
import { useApp } from '../../state/use-app.ts'
import { useWords } from '../../words/use-words.tsx'

/** The plan and the office's programme, where this phone has joined an office. */
export function OfficeShare({ planId }: { readonly planId: string }) {
  const { say } = useWords()
  const office = useApp((state) => state.office)
  const [isShared, setIsShared] = useState<boolean | null>(null)
  const plans = office?.plans
  useEffect(() => {
    let isHere = true
    void officeNote().then((note) => {
      if (isHere) setIsShared(note?.plans.includes(planId) ?? false)
    })
    return () => {
      isHere = false
    }
  }, [planId, plans])
  if (office === null || isShared === null) return null
  if (isShared) return <p>{say('office.is-shared')}</p>
  return (
    <Button icon="people" onPress={() => void shareWithOffice(planId)}>
      {say('office.share')}
    </Button>
  )
}
