import type { ReactNode } from 'react'
import { Icon } from '../../parts/Icon.tsx'
import { useWords } from '../../words/use-words.tsx'

/** A caution where the work is. */
export function Caution({ children }: { readonly children: ReactNode }) {
  const { say } = useWords()
  return (
    <p className="caution-line">
      <Icon name="caution" />
      <span>
        <b>{say('finding.word.caution')}</b> {children}
      </span>
    </p>
  )
}
